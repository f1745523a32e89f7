package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.plan.PlanChange.DayChange;
import dev.injectorplanner.core.schedule.days.DayPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** Holds the days of two schedules against each other. */
final class DaysChange {
    private record Where(String truck, String depot, String words) {}

    private DaysChange() {}

    static List<DayChange> of(List<DepotDays> before, List<DepotDays> after) {
        Map<String, Where> was = places(before);
        Map<String, Where> is = places(after);
        TreeSet<String> keys = new TreeSet<>(was.keySet());
        keys.addAll(is.keySet());
        List<DayChange> changes = new ArrayList<>();
        for (String key : keys) {
            Where one = was.get(key);
            Where other = is.get(key);
            String from = one == null ? "" : one.words();
            String to = other == null ? "" : other.words();
            Where either = other != null ? other : one;
            if (either != null && !from.equals(to)) {
                changes.add(new DayChange(either.truck(), either.depot(), from, to));
            }
        }
        return changes;
    }

    private static Map<String, Where> places(List<DepotDays> days) {
        Map<String, Where> places = new TreeMap<>();
        for (DepotDays depot : days) {
            for (DayPlan.Laid laid : depot.days().laid()) {
                String words = laid.start().toLocalDate() + " " + laid.start().toLocalTime() + ", bay " + laid.bay();
                String key = laid.truck() + (laid.diagnosis() ? "\ndiagnosis" : "");
                places.put(
                        places.containsKey(key) ? key + "\nlater" : key, new Where(laid.truck(), depot.depot(), words));
            }
        }
        return places;
    }

    static double overtime(List<DepotDays> days) {
        return days.stream()
                .flatMap(depot -> depot.days().loads().stream())
                .mapToDouble(DayPlan.DayLoad::overtimeHours)
                .sum();
    }

    static List<String> limits(List<DepotDays> days) {
        return days.stream().flatMap(depot -> depot.days().limits().stream()).toList();
    }
}
