package dev.injectorplanner.core.schedule.days;

import static java.util.Comparator.comparing;
import static java.util.Comparator.comparingInt;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Lays the visits of a depot's weeks into days. Hours a day are a hard limit; a week takes overtime only where its visits
 * need more than its plain hours, and no more than that unless a limit makes it, which is then named. A visit holds its bay
 * from start to end, nights included, starts on a quarter hour, and is not split into pieces under an hour. Diagnosis visits
 * keep the place they were given. Technicians' hours are held as sums of a day: which of them works where at what minute is
 * left to the shop.
 */
public final class DayPlanner {
    /**
     * Lays out a depot's weeks. Same weeks and visits, same answer, whatever their order.
     *
     * @param weeks weeks of one depot
     * @param visits its visits; a diagnosis must be pinned to day, bay and start
     * @param spare how many trucks of each duty group may be in a bay
     */
    public DayPlan plan(List<DepotWeek> weeks, List<DayVisit> visits, DutySpare spare) {
        Map<Integer, DepotWeek> byWeek = new TreeMap<>();
        weeks.forEach(week -> byWeek.put(week.week(), week));
        Map<Integer, List<DayVisit>> visitsOf = new TreeMap<>();
        byWeek.keySet().forEach(week -> visitsOf.put(week, new ArrayList<>()));
        visits.forEach(visit -> visitsOf.computeIfAbsent(visit.week(), week -> new ArrayList<>())
                .add(visit));
        List<DayPlan.Laid> laid = new ArrayList<>();
        List<DayPlan.NotLaid> notLaid = new ArrayList<>();
        List<DayPlan.DayLoad> loads = new ArrayList<>();
        List<String> limits = new ArrayList<>();
        visitsOf.forEach((number, those) -> {
            DepotWeek week = byWeek.getOrDefault(number, new DepotWeek(number, List.of(), 0));
            WeekLayout layout = new WeekLayout(week, those, spare);
            layout.lay();
            laid.addAll(layout.laid());
            notLaid.addAll(layout.notLaid());
            loads.addAll(layout.loads());
            limits.addAll(layout.limits());
        });
        laid.sort(
                comparing(DayPlan.Laid::start).thenComparing(DayPlan.Laid::bay).thenComparing(DayPlan.Laid::truck));
        notLaid.sort(comparingInt(DayPlan.NotLaid::week).thenComparing(DayPlan.NotLaid::truck));
        return new DayPlan(laid, notLaid, loads, limits);
    }
}
