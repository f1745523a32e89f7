package dev.injectorplanner.app.web.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.replay.outlook.Outlook;
import dev.injectorplanner.core.schedule.WeekLoad;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Hours expected on top of the booked ones, from the outlook: what a month takes in the middle of its runs less what the plan has
 * booked in it, spread evenly over its weeks.
 */
final class LaterWork {
    private static final int DAYS = 7;

    private final Map<String, Map<YearMonth, Double>> months = new HashMap<>();

    /** @param outlook or null where none is known: then nothing is expected */
    LaterWork(@Nullable Outlook outlook) {
        if (outlook != null) {
            for (Outlook.Month month : outlook.depots()) {
                months.computeIfAbsent(String.valueOf(month.depot()), depot -> new HashMap<>())
                        .put(month.month(), month.hours().median());
            }
        }
    }

    /** By week, h; missing where nothing is known of its month. */
    Map<IsoWeek, Double> of(String depot, List<WeekLoad> loads) {
        Map<YearMonth, Double> hours = months.getOrDefault(depot, Map.of());
        Map<YearMonth, Double> days = new HashMap<>();
        Map<YearMonth, Double> booked = new HashMap<>();
        for (WeekLoad load : loads) {
            for (int day = 0; day < DAYS; day++) {
                LocalDate date = load.week().monday().plusDays(day);
                days.merge(YearMonth.from(date), 1.0, Double::sum);
                booked.merge(YearMonth.from(date), load.labourHours() / DAYS, Double::sum);
            }
        }
        Map<IsoWeek, Double> weeks = new HashMap<>();
        for (WeekLoad load : loads) {
            double more = 0;
            boolean known = false;
            for (int day = 0; day < DAYS; day++) {
                YearMonth month = YearMonth.from(load.week().monday().plusDays(day));
                Double all = hours.get(month);
                if (all != null) {
                    known = true;
                    double covered = days.getOrDefault(month, 0.0);
                    double here = all * covered / month.lengthOfMonth();
                    more += Math.max(0, here - booked.getOrDefault(month, 0.0)) / covered;
                }
            }
            if (known) {
                weeks.put(load.week(), more);
            }
        }
        return weeks;
    }
}
