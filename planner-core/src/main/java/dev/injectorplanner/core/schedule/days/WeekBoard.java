package dev.injectorplanner.core.schedule.days;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** A depot's week on the wall: what stands in which bay when, and what is left of hours and of each duty group. */
final class WeekBoard {
    final DepotWeek week;
    final List<WorkDay> days;
    final DutySpare spare;
    private final int[] plainLeft;
    private final Map<DayVisit, Place> places = new HashMap<>();

    /** @param spare trucks of each duty group that may be in a bay, other depots' counted already */
    WeekBoard(DepotWeek week, DutySpare spare) {
        this.week = week;
        this.days = week.days();
        this.spare = spare;
        this.plainLeft = days.stream().mapToInt(Ticks::plain).toArray();
    }

    int bays() {
        return days.stream().mapToInt(WorkDay::bays).max().orElse(0);
    }

    Map<DayVisit, Place> places() {
        return places;
    }

    int plainLeft(int day) {
        return plainLeft[day];
    }

    /** The best place in one piece or full days, with so much overtime at most; null where there is none. */
    @Nullable
    Place best(DayVisit visit, int overtime) {
        Place best = null;
        for (int bay = 0; bay < bays(); bay++) {
            for (int day = 0; day < days.size(); day++) {
                for (int start : starts(visit, bay, day)) {
                    Place place = place(visit, bay, day, start, overtime);
                    if (place != null && (best == null || Place.BEST_FIRST.compare(place, best) < 0)) {
                        best = place;
                    }
                }
            }
        }
        return best;
    }

    /** Quarter hours at which a visit could begin: at opening, or once another has left the bay. */
    private TreeSet<Integer> starts(DayVisit visit, int bay, int day) {
        TreeSet<Integer> all = new TreeSet<>();
        days.get(day).starts().forEach(minute -> all.add(minute * Ticks.MINUTE));
        TreeSet<Integer> starts = new TreeSet<>();
        if (!all.isEmpty()) {
            starts.add(all.first());
        }
        DayPin pin = visit.pin();
        if (pin != null && pin.start() != null) {
            starts.addAll(all); // a start that is asked for may be any quarter hour
        }
        for (Place other : places.values()) {
            if (other.bay() == bay && other.lastDay() == day) {
                Integer next = all.ceiling(other.end());
                if (next != null) {
                    starts.add(next);
                }
            }
        }
        return starts;
    }

    /** A place in a bay from a start on, as much work a day as hours allow; null where limits forbid it. */
    @Nullable
    Place place(DayVisit visit, int bay, int firstDay, int start, int overtime) {
        int total = Ticks.labour(visit);
        int left = total;
        int overLeft = overtime;
        int[] labour = new int[days.size() - firstDay];
        int from = start;
        int end = start;
        int day = firstDay;
        for (; day < days.size() && left > 0; day++) {
            int most = Math.min(Ticks.work(days.get(day)) - from, Math.max(0, plainLeft[day]) + overLeft);
            int done = Math.min(left, most);
            if (left > done && left - done < Ticks.LEAST_PIECE) {
                done = left - Ticks.LEAST_PIECE;
            }
            if (bay >= days.get(day).bays() || done <= 0 || (done < left || day > firstDay) && done < piece(total)) {
                return null;
            }
            overLeft -= Math.max(0, done - Math.max(0, plainLeft[day]));
            labour[day - firstDay] = done;
            left -= done;
            end = from + done;
            from = 0;
        }
        if (left > 0) {
            return null;
        }
        int[] worked = java.util.Arrays.copyOf(labour, day - firstDay);
        Place place = new Place(bay, firstDay, start, worked, end);
        boolean free = places.values().stream().noneMatch(other -> other.bay() == bay && other.overlaps(place));
        return free && mayStand(visit, place) && keepsPin(visit, place) ? place : null;
    }

    private static int piece(int total) {
        return Math.min(total, Ticks.LEAST_PIECE);
    }

    private boolean keepsPin(DayVisit visit, Place place) {
        DayPin pin = visit.pin();
        if (pin == null) {
            return true;
        }
        WorkDay first = days.get(place.firstDay());
        boolean onTime = pin.start() == null
                || first.begins(place.start() / Ticks.MINUTE) == pin.start().toSecondOfDay() / 60;
        return pin.day().equals(first.date()) && onTime && (pin.bay() == null || pin.bay() == place.bay() + 1);
    }

    private boolean mayStand(DayVisit visit, Place place) {
        LocalDate last = days.get(place.lastDay()).date();
        return days.get(place.firstDay())
                .date()
                .datesUntil(last.plusDays(1))
                .allMatch(day -> !visit.notOn().contains(day) && mayBeOff(visit, day));
    }

    private boolean mayBeOff(DayVisit visit, LocalDate day) {
        return visit.diagnosis() || visit.dutyGroup() == null || off(visit.dutyGroup(), day) < spare(visit, day);
    }

    private int spare(DayVisit visit, LocalDate day) {
        return visit.dutyGroup() == null ? Integer.MAX_VALUE : spare.spare(visit.dutyGroup(), day);
    }

    /** Trucks of a group in a bay on a day, for ordinary visits. */
    private long off(String group, LocalDate day) {
        return places.entrySet().stream()
                .filter(each -> group.equals(each.getKey().dutyGroup())
                        && !each.getKey().diagnosis())
                .filter(each -> !day.isBefore(
                                days.get(each.getValue().firstDay()).date())
                        && !day.isAfter(days.get(each.getValue().lastDay()).date()))
                .count();
    }

    void take(DayVisit visit, Place place) {
        places.put(visit, place);
        for (int i = 0; i < place.labour().length; i++) {
            plainLeft[place.firstDay() + i] -= place.labour()[i];
        }
    }

    /** Overtime of the week so far, in ticks. */
    int overtime() {
        int sum = 0;
        for (int left : plainLeft) {
            sum += Math.max(0, -left);
        }
        return sum;
    }

    DayPlan.Laid told(DayVisit visit, Place place) {
        List<DayPlan.DayWork> work = new ArrayList<>();
        for (int i = 0; i < place.labour().length; i++) {
            work.add(new DayPlan.DayWork(days.get(place.firstDay() + i).date(), Ticks.hours(place.labour()[i])));
        }
        WorkDay first = days.get(place.firstDay());
        WorkDay last = days.get(place.lastDay());
        return new DayPlan.Laid(
                visit.truck(),
                place.bay() + 1,
                first.date().atStartOfDay().plusMinutes(first.begins(place.start() / Ticks.MINUTE)),
                last.date().atStartOfDay().plusMinutes(last.ends(Ticks.minutes(place.end()))),
                work,
                visit.diagnosis());
    }
}
