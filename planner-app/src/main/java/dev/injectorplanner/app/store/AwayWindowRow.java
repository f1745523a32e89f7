package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.AwayWindow;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.LocalDate;

@Entity
@Table(name = "away")
class AwayWindowRow implements Row<AwayWindow> {
    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "away_seq")
    @SequenceGenerator(name = "away_seq", sequenceName = "away_seq", allocationSize = 1000)
    private long id;

    @Column(nullable = false, length = 60)
    private String truck;

    @Column(name = "from_day", nullable = false)
    private LocalDate from;

    @Column(name = "to_day", nullable = false)
    private LocalDate to;

    @Column(nullable = false, length = 2000)
    private String reason;

    protected AwayWindowRow() {}

    @Override
    public void take(AwayWindow row) {
        this.truck = row.truck();
        this.from = row.from();
        this.to = row.to();
        this.reason = row.reason();
    }

    @Override
    public AwayWindow row() {
        return new AwayWindow(truck, from, to, reason);
    }
}
