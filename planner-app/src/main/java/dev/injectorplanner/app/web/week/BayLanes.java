package dev.injectorplanner.app.web.week;

import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.office.VisitStates;
import dev.injectorplanner.app.web.week.WeekView.Bar;
import dev.injectorplanner.app.web.week.WeekView.Lane;
import dev.injectorplanner.app.web.week.WeekView.Place;
import dev.injectorplanner.app.web.week.WeekView.Stay;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.DepotShift;
import dev.injectorplanner.core.plan.Holds;
import dev.injectorplanner.core.schedule.days.DayPlan.DayWork;
import dev.injectorplanner.core.schedule.days.DayPlan.Laid;
import dev.injectorplanner.core.schedule.days.ShiftBook;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** The bays of a depot in a week, one lane a bay; a visit stands where it starts, to the quarter hour. */
final class BayLanes {
    private static final int QUARTER = 15; // minutes
    private static final int HOUR = 60;
    private static final int DAY = 24 * HOUR;

    /** Of a lane where no shift says how long a day is: eight hours and a break. */
    private static final int SHORTEST = 9 * HOUR;

    private static final String HOURS = "\u00a0h";

    private final DepotPlan plan;
    private final List<LocalDate> days;
    private final Predicate<LocalDate> open;
    private final Holds holds;
    private final List<Standing> standing;
    private final int opens;
    private final int closes;

    /** A visit of the week with its place. */
    private record Standing(Visit visit, Laid laid) {
        boolean isIn(LocalDate day) {
            return !day.isBefore(laid.start().toLocalDate()) && !day.isAfter(lastDay(laid));
        }
    }

    /**
     * @param days days shown
     * @param open whether the depot works on a day
     */
    BayLanes(DepotPlan plan, IsoWeek week, List<LocalDate> days, Predicate<LocalDate> open, Holds holds) {
        this.plan = plan;
        this.days = days;
        this.open = open;
        this.holds = holds;
        this.standing = standing(plan, week);
        this.opens = opens() / HOUR * HOUR;
        this.closes = Math.min(DAY, (Math.max(closes(), opens + SHORTEST) + HOUR - 1) / HOUR * HOUR);
    }

    private static List<Standing> standing(DepotPlan plan, IsoWeek week) {
        List<Standing> found = new ArrayList<>();
        for (Laid laid : plan.days().laid()) {
            if (IsoWeek.of(laid.start().toLocalDate()).equals(week)) {
                plan.findVisit(laid).ifPresent(visit -> found.add(new Standing(visit, laid)));
            }
        }
        found.sort(Comparator.comparing((Standing each) -> each.laid().start())
                .thenComparing(each -> each.laid().truck()));
        return found;
    }

    /** Where the lanes begin, minutes after midnight: the first shift or the first truck. */
    private int opens() {
        int shift =
                shifts().stream().mapToInt(each -> minute(each.start())).min().orElse(minute(ShiftBook.OPENS));
        return Math.min(
                shift,
                standing.stream()
                        .mapToInt(each -> minute(each.laid().start().toLocalTime()))
                        .min()
                        .orElse(shift));
    }

    private int closes() {
        int shift = shifts().stream().mapToInt(each -> minute(each.end())).max().orElse(0);
        return Math.max(
                shift,
                standing.stream().mapToInt(each -> endMinute(each.laid())).max().orElse(shift));
    }

    private List<DepotShift> shifts() {
        return plan.fleet().shiftsOf(plan.depot());
    }

    /** The day of its last minute: who is done at midnight is not in on the next day. */
    private static LocalDate lastDay(Laid laid) {
        return laid.end().minusNanos(1).toLocalDate();
    }

    /** When it ends on its last day, minutes after midnight. */
    private static int endMinute(Laid laid) {
        int minute = minute(laid.end().toLocalTime());
        return minute == 0 ? DAY : minute;
    }

    private static int minute(LocalTime time) {
        return time.toSecondOfDay() / 60;
    }

    int quarters() {
        return (closes - opens) / QUARTER;
    }

    String span() {
        return clock(opens) + " to " + clock(closes);
    }

    private static String clock(int minute) {
        return String.format(Locale.ROOT, "%02d:%02d", minute / HOUR, minute % HOUR);
    }

    /** Labour hours of a day. */
    double booked(LocalDate day) {
        return standing.stream()
                .flatMap(each -> each.laid().days().stream())
                .filter(work -> work.date().equals(day))
                .mapToDouble(DayWork::labourHours)
                .sum();
    }

    List<Lane> lanes() {
        int bays = Math.max(
                plan.site().bays(),
                standing.stream().mapToInt(each -> each.laid().bay()).max().orElse(0));
        return IntStream.rangeClosed(1, bays)
                .mapToObj(bay ->
                        new Lane(bay, days.stream().map(day -> place(bay, day)).toList()))
                .toList();
    }

    private Place place(int bay, LocalDate day) {
        List<Standing> here = standing.stream()
                .filter(each -> each.laid().bay() == bay && each.isIn(day))
                .toList();
        List<Stay> stays = new ArrayList<>();
        for (Standing each : here) {
            each.laid().days().stream()
                    .filter(work -> work.date().equals(day))
                    .findFirst()
                    .ifPresent(work -> stays.add(stay(each, work)));
        }
        return new Place(
                day.toString(),
                DisplayFormat.day(day),
                open.test(day),
                here.stream().map(each -> bar(each.laid(), day)).toList(),
                stays);
    }

    private Bar bar(Laid laid, LocalDate day) {
        int from = laid.start().toLocalDate().equals(day) ? minute(laid.start().toLocalTime()) : opens;
        int to = lastDay(laid).equals(day) ? endMinute(laid) : closes;
        int first = Math.max(0, from - opens) / QUARTER;
        int last = Math.min(quarters(), (Math.max(to, from) - opens + QUARTER - 1) / QUARTER);
        return new Bar(first, Math.max(1, last - first));
    }

    private Stay stay(Standing each, DayWork work) {
        Visit visit = each.visit();
        Laid laid = each.laid();
        String hours = DisplayFormat.tenth(work.labourHours());
        if (!laid.start().toLocalDate().equals(work.date())) {
            return new Stay(
                    visit.truck(),
                    "continues",
                    until(laid.end(), work.date()) + ", " + hours + HOURS,
                    "",
                    "",
                    false,
                    "");
        }
        VisitStates.State state = VisitStates.of(plan, visit, holds);
        return new Stay(
                visit.truck(),
                plan.work(visit),
                DisplayFormat.time(laid.start()) + " " + until(laid.end(), work.date()) + ", " + hours
                        + (laid.days().size() == 1 ? "" : " of " + DisplayFormat.tenth(visit.labourHours())) + HOURS,
                state.mark(),
                state.words(),
                state.strong(),
                plan.plan().isMain(visit) ? laid.start().toLocalDate().toString() : "");
    }

    /** {@code to 15:00}, or {@code to Tue 3 Mar, 11:00} on an earlier day. */
    private static String until(LocalDateTime end, LocalDate day) {
        return "to " + (end.toLocalDate().equals(day) ? DisplayFormat.time(end) : DisplayFormat.dayAndTime(end));
    }
}
