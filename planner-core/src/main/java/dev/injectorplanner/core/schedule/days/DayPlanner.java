package dev.injectorplanner.core.schedule.days;

import static java.util.Comparator.comparing;
import static java.util.Comparator.comparingDouble;

import dev.injectorplanner.core.units.Figures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Lays the visits of a depot's weeks into days. The longest visits choose first; each takes the place with the fewest
 * nights and then the earliest end, and gives way to its next best places where a later visit would find none. The work
 * this may take is limited; what then has no place is told with the reason. Technicians' hours are held as sums of a
 * day: which of them works where at what minute is left to the shop.
 */
public final class DayPlanner {
    private static final int MOST_TRIES = 2_000;
    private static final int MOST_PLACES = 4;

    private final Shift shift;

    public DayPlanner(Shift shift) {
        this.shift = shift;
    }

    /** Same weeks and visits, same answer, whatever their order. */
    public DayPlan plan(List<DepotWeek> weeks, List<DayVisit> visits) {
        Map<Integer, DepotWeek> byWeek = new TreeMap<>();
        weeks.forEach(week -> byWeek.put(week.week(), week));
        Map<Integer, List<DayVisit>> visitsOf = new TreeMap<>();
        visits.forEach(visit -> visitsOf.computeIfAbsent(visit.week(), week -> new ArrayList<>())
                .add(visit));
        List<DayPlan.Laid> laid = new ArrayList<>();
        List<DayPlan.NotLaid> notLaid = new ArrayList<>();
        visitsOf.forEach((number, those) -> {
            DepotWeek week = byWeek.getOrDefault(number, new DepotWeek(number, List.of(), 0));
            new Week(week, those).lay(laid, notLaid);
        });
        laid.sort(
                comparing(DayPlan.Laid::start).thenComparing(DayPlan.Laid::bay).thenComparing(DayPlan.Laid::truck));
        return new DayPlan(laid, notLaid);
    }

    /** One week's search. */
    private final class Week {
        private final DepotWeek week;
        private final List<DayVisit> visits;
        private Map<DayVisit, Place> best = new LinkedHashMap<>();
        private Board bestBoard;
        private int tries;

        Week(DepotWeek week, List<DayVisit> visits) {
            this.week = week;
            this.visits = visits.stream()
                    .sorted(comparingDouble(DayVisit::labourHours).reversed().thenComparing(DayVisit::truck))
                    .toList();
            this.bestBoard = new Board(week, shift);
        }

        void lay(List<DayPlan.Laid> laid, List<DayPlan.NotLaid> notLaid) {
            search(0, bestBoard, new LinkedHashMap<>());
            for (DayVisit visit : visits) {
                Place place = best.get(visit);
                if (place != null) {
                    laid.add(bestBoard.told(visit, place));
                } else {
                    notLaid.add(new DayPlan.NotLaid(visit.truck(), week.week(), reason(visit)));
                }
            }
        }

        /** Goes on with the visit of this number; true when all are laid or the tries are used up. */
        private boolean search(int number, Board board, Map<DayVisit, Place> chosen) {
            if (chosen.size() > best.size()) {
                best = new LinkedHashMap<>(chosen);
                bestBoard = board;
            }
            if (number == visits.size()) {
                return chosen.size() == visits.size();
            }
            DayVisit visit = visits.get(number);
            List<Place> places = board.places(visit);
            for (Place place : places.subList(0, Math.min(MOST_PLACES, places.size()))) {
                if (++tries > MOST_TRIES) {
                    return true;
                }
                Board next = board.copy();
                next.take(place);
                chosen.put(visit, place);
                if (search(number + 1, next, chosen)) {
                    return true;
                }
                chosen.remove(visit);
            }
            return search(number + 1, board, chosen);
        }

        private String reason(DayVisit visit) {
            if (week.days().isEmpty()) {
                return "the depot has no working day that week";
            }
            List<LocalDate> away = week.days().stream()
                    .map(day -> day.date())
                    .filter(visit.notOn()::contains)
                    .toList();
            if (new Board(week, shift).places(visit).isEmpty()) {
                return away.isEmpty()
                        ? "it needs more than one bay and its technicians have in the whole week"
                        : "the days on which it can be spared are too few or not consecutive; it cannot be spared on "
                                + Figures.count(away.size(), "day", "days");
            }
            double left = bestBoard.hoursLeft();
            return left + 1e-9 < visit.labourHours()
                    ? "with the other visits " + Figures.tidy(left) + " h are left in the week, and it takes "
                            + Figures.tidy(visit.labourHours()) + " h"
                    : "the week has enough hours, but no bay is free for long enough while technicians are available";
        }
    }
}
