package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A place where trucks are looked after.
 *
 * @param depot its name in the tables
 * @param name what people call it
 * @param timeZone zone of its clock
 * @param bays trucks that can be worked on at once, at least 1
 * @param labourHoursPerDay technicians' hours for planned work on a working day
 * @param workDays days of the week with work, at least one
 * @param labourPerHour cost of an hour of labour
 * @param overtimePerHour cost of an hour of overtime, not below {@code labourPerHour}
 * @param overtimeHoursPerWeek the most overtime in a week, hours
 * @param recordsSince failures of its trucks' injectors are on record from that day on; null: since each truck's first reading
 */
public record Depot(
        String depot,
        String name,
        ZoneId timeZone,
        int bays,
        double labourHoursPerDay,
        Set<DayOfWeek> workDays,
        BigDecimal labourPerHour,
        BigDecimal overtimePerHour,
        double overtimeHoursPerWeek,
        @Nullable LocalDate recordsSince) {
    private static final int MOST_BAYS = 200;

    public Depot {
        depot = Require.name("depot", depot);
        name = Require.name("name", name);
        Require.within("bays", bays, 1, MOST_BAYS);
        Require.within("labour_hours_per_day", labourHoursPerDay, 0, 24.0 * MOST_BAYS);
        if (workDays.isEmpty()) {
            throw new InvalidValueException("work_days", "", "names no day", "name the days, such as Mon-Fri");
        }
        workDays = Collections.unmodifiableSet(EnumSet.copyOf(workDays));
        labourPerHour = Require.money("labour_per_hour", labourPerHour);
        overtimePerHour = Require.money("overtime_per_hour", overtimePerHour);
        if (overtimePerHour.compareTo(labourPerHour) < 0) {
            throw new InvalidValueException(
                    "overtime_per_hour",
                    overtimePerHour,
                    "is below labour_per_hour " + labourPerHour,
                    "enter the full cost of an overtime hour");
        }
        Require.within("overtime_hours_per_week", overtimeHoursPerWeek, 0, 7 * 24.0 * MOST_BAYS);
    }

    /** A depot whose records began with each truck's first reading. */
    public Depot(
            String depot,
            String name,
            ZoneId timeZone,
            int bays,
            double labourHoursPerDay,
            Set<DayOfWeek> workDays,
            BigDecimal labourPerHour,
            BigDecimal overtimePerHour,
            double overtimeHoursPerWeek) {
        this(
                depot,
                name,
                timeZone,
                bays,
                labourHoursPerDay,
                workDays,
                labourPerHour,
                overtimePerHour,
                overtimeHoursPerWeek,
                null);
    }
}
