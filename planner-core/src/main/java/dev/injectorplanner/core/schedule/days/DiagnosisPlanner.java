package dev.injectorplanner.core.schedule.days;

import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Gives diagnosis visits the first open day with a free bay, before every other visit: neither parts nor duty groups nor
 * pins hold them back, and they may take overtime. Only a truck that is not there cannot come.
 */
public final class DiagnosisPlanner {
    private DiagnosisPlanner() {}

    /**
     * A truck that asks for a diagnosis.
     *
     * @param truck the truck
     * @param hours labour of its diagnosis
     * @param notOn days on which it is away
     */
    public record Asking(String truck, double hours, Set<LocalDate> notOn) {
        public Asking {
            Require.positive("diagnosis_hours", hours);
            notOn = Set.copyOf(notOn);
        }
    }

    /**
     * Places the diagnoses of a depot, the most pressing first.
     *
     * @param weeks its weeks, in order
     * @param asking trucks, the most pressing first
     * @param held bays that the foreman gave to other visits on a day: taken last
     * @return the diagnosis of each truck that has a place, pinned to it
     */
    public static List<DayVisit> place(List<DepotWeek> weeks, List<Asking> asking, List<DayPin> held) {
        List<WeekBoard> boards =
                weeks.stream().map(week -> new WeekBoard(week, DutySpare.NONE)).toList();
        List<DayVisit> placed = new ArrayList<>();
        for (Asking truck : asking) {
            DayVisit found = first(boards, truck, held);
            if (found != null) {
                placed.add(found);
            }
        }
        return placed;
    }

    private static @Nullable DayVisit first(List<WeekBoard> boards, Asking truck, List<DayPin> held) {
        DayVisit found = first(boards, truck, held, false);
        return found != null ? found : first(boards, truck, held, true);
    }

    /** @param split whether it may go over several days, as one that is longer than any day must */
    private static @Nullable DayVisit first(List<WeekBoard> boards, Asking truck, List<DayPin> held, boolean split) {
        for (WeekBoard board : boards) {
            DayVisit visit = new DayVisit(
                    truck.truck(), board.week.week(), truck.hours(), true, null, truck.notOn(), true, null);
            for (int day = 0; day < board.days.size(); day++) {
                Place place = firstOn(board, visit, day, held);
                if (place != null && (split || place.days() == 1)) {
                    DayVisit pinned = pinned(board, visit, place);
                    board.take(pinned, place);
                    return pinned;
                }
            }
        }
        return null;
    }

    private static @Nullable Place firstOn(WeekBoard board, DayVisit visit, int day, List<DayPin> held) {
        WorkDay open = board.days.get(day);
        List<Integer> bays = new ArrayList<>();
        for (int bay = 0; bay < open.bays(); bay++) {
            bays.add(bay);
        }
        bays.sort(Comparator.comparing((Integer bay) -> isHeld(held, open.date(), bay + 1)));
        for (int start : open.starts()) {
            for (int bay : bays) {
                Place place = board.place(visit, bay, day, start * Ticks.MINUTE, overtimeLeft(board));
                if (place != null) {
                    return place;
                }
            }
        }
        return null;
    }

    private static boolean isHeld(List<DayPin> held, LocalDate day, int bay) {
        return held.stream().anyMatch(pin -> pin.day().equals(day) && pin.bay() != null && pin.bay() == bay);
    }

    private static int overtimeLeft(WeekBoard board) {
        return Math.max(0, Ticks.overtime(board.week) - board.overtime());
    }

    private static DayVisit pinned(WeekBoard board, DayVisit visit, Place place) {
        WorkDay open = board.days.get(place.firstDay());
        int minute = open.begins(place.start() / Ticks.MINUTE);
        DayPin pin = new DayPin(open.date(), place.bay() + 1, LocalTime.ofSecondOfDay(minute * 60L));
        return new DayVisit(visit.truck(), visit.week(), visit.labourHours(), true, null, visit.notOn(), true, pin);
    }

    /** The place that a diagnosis was given; null where its pin is not complete or no such place can be. */
    static @Nullable Place placeOf(WeekBoard board, DayVisit visit) {
        DayPin pin = visit.pin();
        for (int day = 0; pin != null && day < board.days.size(); day++) {
            WorkDay open = board.days.get(day);
            LocalTime start = pin.start();
            Integer bay = pin.bay();
            if (open.date().equals(pin.day()) && start != null && bay != null) {
                int at = open.workAt(start.toSecondOfDay() / 60);
                return at < 0 ? null : board.place(visit, bay - 1, day, at * Ticks.MINUTE, overtimeLeft(board));
            }
        }
        return null;
    }
}
