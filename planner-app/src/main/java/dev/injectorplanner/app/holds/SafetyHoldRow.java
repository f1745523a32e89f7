package dev.injectorplanner.app.holds;

import dev.injectorplanner.core.plan.HeldOff;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.Set;

@Entity
@Table(name = "safety_hold")
class SafetyHoldRow {
    @Id
    @Column(length = 60)
    private String truck;

    @Column(nullable = false, length = 2000)
    private String reason;

    @Column(nullable = false, length = 60)
    private String heldBy;

    @Column(nullable = false)
    private LocalDate since;

    /** Fault codes, a line each. */
    @Column(nullable = false, length = 2000)
    private String codes;

    protected SafetyHoldRow() {}

    SafetyHoldRow(String truck, HeldOff held) {
        this.truck = truck;
        this.reason = held.reason();
        this.heldBy = held.by();
        this.since = held.since();
        this.codes = String.join("\n", held.codes());
    }

    String truck() {
        return truck;
    }

    HeldOff held() {
        return new HeldOff(reason, heldBy, since, codes.isEmpty() ? Set.of() : Set.of(codes.split("\n")));
    }
}
