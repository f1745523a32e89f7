package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.DepotShift;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.DayOfWeek;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/** Times are kept as text: databases differ in what a time of day is. */
@Entity
@Table(name = "depot_shift")
class DepotShiftRow implements Row<DepotShift> {
    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "depot_shift_seq")
    @SequenceGenerator(name = "depot_shift_seq", sequenceName = "depot_shift_seq", allocationSize = 1000)
    private long id;

    @Column(nullable = false, length = 60)
    private String depot;

    @Enumerated(EnumType.STRING)
    @Column(nullable = false, length = 9)
    private DayOfWeek weekday;

    @Column(nullable = false, length = 5)
    private String startsAt;

    @Column(nullable = false, length = 5)
    private String endsAt;

    @Column(length = 5)
    private @Nullable String breakStartsAt;

    @Column(length = 5)
    private @Nullable String breakEndsAt;

    protected DepotShiftRow() {}

    @Override
    public void take(DepotShift row) {
        this.depot = row.depot();
        this.weekday = row.weekday();
        this.startsAt = row.start().toString();
        this.endsAt = row.end().toString();
        this.breakStartsAt = text(row.breakStart());
        this.breakEndsAt = text(row.breakEnd());
    }

    private static @Nullable String text(@Nullable LocalTime time) {
        return time == null ? null : time.toString();
    }

    private static @Nullable LocalTime time(@Nullable String text) {
        return text == null ? null : LocalTime.parse(text);
    }

    @Override
    public DepotShift row() {
        return new DepotShift(
                depot,
                weekday,
                LocalTime.parse(startsAt),
                LocalTime.parse(endsAt),
                time(breakStartsAt),
                time(breakEndsAt));
    }
}
