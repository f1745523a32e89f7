package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FaultCode;
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
@Table(name = "fault")
class FaultRow implements Row<Fault> {
    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "fault_seq")
    @SequenceGenerator(name = "fault_seq", sequenceName = "fault_seq", allocationSize = 1000)
    private long id;

    @Column(nullable = false, length = 60)
    private String truck;

    @Column(nullable = false)
    private Instant seenAt;

    @Column(nullable = false, length = 40)
    private String code;

    private @Nullable Integer cylinder;

    @Column(name = "occurrences", nullable = false)
    private int count;

    private @Nullable Double odometerKm;

    private @Nullable Instant lastSeenAt;

    @Column(nullable = false)
    private int cylinderKey;

    protected FaultRow() {}

    @Override
    public void take(Fault row) {
        this.truck = row.truck();
        this.seenAt = row.seenAt();
        this.code = row.code().text();
        this.cylinder = row.cylinder();
        this.count = row.count();
        this.odometerKm = row.odometerKm();
        this.lastSeenAt = row.lastSeenAt();
        this.cylinderKey = row.cylinder() == null ? 0 : row.cylinder();
    }

    @Override
    public Fault row() {
        return new Fault(truck, seenAt, new FaultCode(code), cylinder, count, odometerKm, lastSeenAt);
    }
}
