package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.LogSource;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "log_source")
class LogSourceRow implements Row<LogSource> {
    private static final int ALL = -1;

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "log_source_seq")
    @SequenceGenerator(name = "log_source_seq", sequenceName = "log_source_seq", allocationSize = 1000)
    private long id;

    @Column(nullable = false, length = 120)
    private String log;

    private @Nullable Integer sourceAddress;

    @Column(length = 60)
    private @Nullable String truck;

    private @Nullable Integer spnLayout;

    @Column(nullable = false)
    private int sourceKey;

    protected LogSourceRow() {}

    @Override
    public void take(LogSource row) {
        this.log = row.log();
        this.sourceAddress = row.sourceAddress();
        this.truck = row.truck();
        this.spnLayout = row.spnLayout();
        this.sourceKey = row.sourceAddress() == null ? ALL : row.sourceAddress();
    }

    @Override
    public LogSource row() {
        return new LogSource(log, sourceAddress, truck, spnLayout);
    }
}
