package dev.injectorplanner.app.holds;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.schedule.days.DayPin;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "plan_hold")
class HoldRow {
    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "plan_hold_seq")
    @SequenceGenerator(name = "plan_hold_seq", sequenceName = "plan_hold_seq", allocationSize = 50)
    private long id;

    @Column(nullable = false, length = 60)
    private String truck;

    @Enumerated(EnumType.STRING)
    @Column(nullable = false, length = 10)
    private Hold.Kind kind;

    @Column(length = 8)
    private @Nullable String week;

    @Column(nullable = false, length = 8)
    private String slot;

    @Column(nullable = false)
    private Instant madeAt;

    @Column(nullable = false, length = 60)
    private String madeBy;

    @Column(nullable = false, length = 2000)
    private String why;

    private @Nullable LocalDate pinDay;

    private @Nullable Integer pinBay;

    @Column(length = 5)
    private @Nullable String pinStart;

    protected HoldRow() {}

    static HoldRow of(Hold hold) {
        HoldRow row = new HoldRow();
        IsoWeek week = hold.week();
        row.truck = hold.truck();
        row.kind = hold.kind();
        row.week = week == null ? null : week.toString();
        row.slot = hold.slot();
        row.madeAt = hold.madeAt();
        row.madeBy = hold.madeBy();
        row.why = hold.why();
        DayPin day = hold.day();
        if (day != null) {
            LocalTime start = day.start();
            row.pinDay = day.day();
            row.pinBay = day.bay();
            row.pinStart = start == null ? null : start.toString();
        }
        return row;
    }

    Hold hold() {
        return new Hold(truck, kind, week == null ? null : IsoWeek.parse(week), madeAt, madeBy, why, day());
    }

    private @Nullable DayPin day() {
        LocalDate on = pinDay;
        return on == null ? null : new DayPin(on, pinBay, pinStart == null ? null : LocalTime.parse(pinStart));
    }
}
