package dev.injectorplanner.core.schedule.days;

import static java.util.Comparator.comparing;
import static java.util.Comparator.comparingInt;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Places visits one after the other, each where it is done soonest, in several orders of which the best is taken. */
final class OneByOne {
    private static final int HELD = 10;

    private final Supplier<WeekBoard> boards;
    private final List<DayVisit> visits;

    /** @param boards gives a board with what is placed before all visits */
    OneByOne(Supplier<WeekBoard> boards, List<DayVisit> visits) {
        this.boards = boards;
        this.visits = visits;
    }

    /** How many are placed, those with a fixed week counted tenfold. */
    static int worth(Map<DayVisit, Place> places) {
        return places.keySet().stream()
                .mapToInt(visit -> visit.held() ? HELD : 1)
                .sum();
    }

    /** @param overtime the most the week may take, in ticks, what the board has taken included */
    Map<DayVisit, Place> best(int overtime) {
        Map<DayVisit, Place> best = Map.of();
        for (Comparator<DayVisit> order : orders()) {
            Map<DayVisit, Place> places = inOrder(order, overtime);
            boolean better = worth(places) > worth(best) || worth(places) == worth(best) && days(places) < days(best);
            best = better ? places : best;
        }
        return best;
    }

    private List<Comparator<DayVisit>> orders() {
        Comparator<DayVisit> fixed =
                comparing((DayVisit visit) -> visit.pin() == null).thenComparing(visit -> !visit.held());
        Comparator<DayVisit> longest = comparingInt(Ticks::labour).reversed().thenComparing(DayVisit::truck);
        Comparator<DayVisit> fewestDays = comparingInt(visit -> -visit.notOn().size());
        Comparator<DayVisit> groups = comparing(visit -> visit.dutyGroup() == null);
        return List.of(
                fixed.thenComparing(longest),
                fixed.thenComparing(fewestDays).thenComparing(longest),
                fixed.thenComparing(groups).thenComparing(fewestDays).thenComparing(longest),
                fixed.thenComparing(fewestDays).thenComparing(longest.reversed()));
    }

    private static int days(Map<DayVisit, Place> places) {
        return places.values().stream().mapToInt(Place::days).sum();
    }

    private Map<DayVisit, Place> inOrder(Comparator<DayVisit> order, int overtime) {
        WeekBoard board = boards.get();
        Map<DayVisit, Place> places = new LinkedHashMap<>();
        for (DayVisit visit : visits.stream().sorted(order).toList()) {
            Place place = board.best(visit, 0);
            if (place == null && overtime > board.overtime()) {
                place = board.best(visit, overtime - board.overtime());
            }
            if (place != null) {
                board.take(visit, place);
                places.put(visit, place);
            }
        }
        return places;
    }
}
