package dev.injectorplanner.core.schedule.days;

import dev.injectorplanner.core.schedule.OpenDay;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** A depot's week on the wall: what stands in which bay when, and what is left of hours. */
final class Board {
    private static final double MINUTES = 60;
    private static final double ROUNDING = 1e-6;

    private final DepotWeek week;
    private final Shift shift;
    private final int[] minutesLeft;
    private int overtimeLeft;
    private final List<List<Place>> bays = new ArrayList<>();

    Board(DepotWeek week, Shift shift) {
        this.week = week;
        this.shift = shift;
        this.minutesLeft = week.days().stream()
                .mapToInt(day -> (int) Math.floor(day.labourHours() * MINUTES + ROUNDING))
                .toArray();
        this.overtimeLeft = (int) Math.floor(week.overtimeHours() * MINUTES + ROUNDING);
        int most = week.days().stream().mapToInt(OpenDay::bays).max().orElse(0);
        for (int bay = 0; bay < most; bay++) {
            bays.add(new ArrayList<>());
        }
    }

    static int labourMinutes(DayVisit visit) {
        return (int) Math.ceil(visit.labourHours() * MINUTES - ROUNDING);
    }

    /** Places for a visit as things stand, best first. */
    List<Place> places(DayVisit visit) {
        List<Place> places = new ArrayList<>();
        for (int bay = 0; bay < bays.size(); bay++) {
            for (int day = 0; day < minutesLeft.length; day++) {
                for (int start : starts(bay, day)) {
                    Place place = place(visit, bay, day, start);
                    if (place != null) {
                        places.add(place);
                    }
                }
            }
        }
        places.sort(Place.BEST_FIRST);
        return places;
    }

    /** When a visit could begin: at opening, or when another leaves the bay. */
    private int[] starts(int bay, int day) {
        return IntStream.concat(
                        IntStream.of(shift.opensMinute()),
                        bays.get(bay).stream()
                                .filter(other -> other.lastDay() == day && other.endMinute() < shift.closesMinute())
                                .mapToInt(Place::endMinute))
                .distinct()
                .toArray();
    }

    private @Nullable Place place(DayVisit visit, int bay, int firstDay, int start) {
        int left = labourMinutes(visit);
        int overtime = overtimeLeft;
        int[] labour = new int[minutesLeft.length - firstDay];
        int from = start;
        int end = start;
        int day = firstDay;
        for (; day < minutesLeft.length && left > 0; day++) {
            int most = (int) Math.floor((shift.closesMinute() - from) * shift.labourPerBayHour() + ROUNDING);
            int done = Math.min(left, Math.min(most, minutesLeft[day] + overtime));
            if (bay >= week.days().get(day).bays() || (done == 0 && day == firstDay)) {
                return null;
            }
            overtime -= Math.max(0, done - minutesLeft[day]);
            labour[day - firstDay] = done;
            left -= done;
            end = from + (int) Math.ceil(done / shift.labourPerBayHour() - ROUNDING);
            from = shift.opensMinute();
        }
        if (left > 0) {
            return null;
        }
        LocalDate first = week.days().get(firstDay).date();
        LocalDate last = week.days().get(day - 1).date();
        Place place = new Place(
                bay, firstDay, start, Arrays.copyOf(labour, day - firstDay), end, ChronoUnit.DAYS.between(first, last));
        boolean away = first.datesUntil(last.plusDays(1)).anyMatch(visit.notOn()::contains);
        return away || bays.get(bay).stream().anyMatch(other -> overlap(place, other)) ? null : place;
    }

    private static boolean overlap(Place one, Place other) {
        return before(one.firstDay(), one.startMinute(), other.lastDay(), other.endMinute())
                && before(other.firstDay(), other.startMinute(), one.lastDay(), one.endMinute());
    }

    private static boolean before(int day, int minute, int otherDay, int otherMinute) {
        return day < otherDay || (day == otherDay && minute < otherMinute);
    }

    void take(Place place) {
        bays.get(place.bay()).add(place);
        for (int i = 0; i < place.labourMinutes().length; i++) {
            int day = place.firstDay() + i;
            int over = Math.max(0, place.labourMinutes()[i] - Math.max(0, minutesLeft[day]));
            minutesLeft[day] -= place.labourMinutes()[i] - over;
            overtimeLeft -= over;
        }
    }

    Board copy() {
        Board copy = new Board(week, shift);
        System.arraycopy(minutesLeft, 0, copy.minutesLeft, 0, minutesLeft.length);
        copy.overtimeLeft = overtimeLeft;
        for (int bay = 0; bay < bays.size(); bay++) {
            copy.bays.get(bay).addAll(bays.get(bay));
        }
        return copy;
    }

    /** Labour that is left in the week, overtime included. */
    double hoursLeft() {
        return (Arrays.stream(minutesLeft).sum() + overtimeLeft) / MINUTES;
    }

    DayPlan.Laid told(DayVisit visit, Place place) {
        List<DayPlan.DayWork> days = new ArrayList<>();
        for (int i = 0; i < place.labourMinutes().length; i++) {
            days.add(new DayPlan.DayWork(
                    week.days().get(place.firstDay() + i).date(), place.labourMinutes()[i] / MINUTES));
        }
        return new DayPlan.Laid(
                visit.truck(),
                place.bay() + 1,
                days.get(0).date().atStartOfDay().plusMinutes(place.startMinute()),
                days.get(days.size() - 1).date().atStartOfDay().plusMinutes(place.endMinute()),
                days);
    }
}
