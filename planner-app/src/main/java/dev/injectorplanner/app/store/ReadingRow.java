package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.Reading;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "reading")
class ReadingRow implements Row<Reading> {
    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "reading_seq")
    @SequenceGenerator(name = "reading_seq", sequenceName = "reading_seq", allocationSize = 1000)
    private long id;

    @Column(nullable = false, length = 60)
    private String truck;

    @Column(nullable = false)
    private Instant takenAt;

    private @Nullable Double odometerKm;

    private @Nullable Double engineHours;

    @Column(nullable = false)
    private boolean meterReplaced;

    protected ReadingRow() {}

    @Override
    public void take(Reading row) {
        this.truck = row.truck();
        this.takenAt = row.takenAt();
        this.odometerKm = row.odometerKm();
        this.engineHours = row.engineHours();
        this.meterReplaced = row.meterReplaced();
    }

    @Override
    public Reading row() {
        return new Reading(truck, takenAt, odometerKm, engineHours, meterReplaced);
    }
}
