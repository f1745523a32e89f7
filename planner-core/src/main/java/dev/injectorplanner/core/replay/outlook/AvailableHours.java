package dev.injectorplanner.core.replay.outlook;

import dev.injectorplanner.core.fleet.CapacityOverride;
import dev.injectorplanner.core.fleet.Depot;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;

/** Plain labour hours of a depot in a month: its work days, with closed days and other changes. */
public final class AvailableHours {
    private AvailableHours() {}

    /**
     * Hours from a day on.
     *
     * @param capacity table capacity, of this depot or of more
     * @param from days before it count nothing
     */
    public static double of(Depot depot, List<CapacityOverride> capacity, YearMonth month, LocalDate from) {
        double hours = 0;
        for (LocalDate day = month.atDay(1); YearMonth.from(day).equals(month); day = day.plusDays(1)) {
            LocalDate date = day;
            double usual = depot.workDays().contains(day.getDayOfWeek()) ? depot.labourHoursPerDay() : 0;
            hours += day.isBefore(from)
                    ? 0
                    : capacity.stream()
                            .filter(row -> row.depot().equals(depot.depot())
                                    && row.date().equals(date))
                            .mapToDouble(CapacityOverride::labourHours)
                            .findFirst()
                            .orElse(usual);
        }
        return hours;
    }
}
