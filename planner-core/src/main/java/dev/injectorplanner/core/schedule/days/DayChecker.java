package dev.injectorplanner.core.schedule.days;

import dev.injectorplanner.core.units.Figures;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Whether visits laid into days hold every limit: hours a day and overtime, bays, shifts and quarter hours, pieces of work,
 * days on which a truck cannot be in, pins, duty groups, and diagnosis visits in the places they were given. Adds up the
 * finished days from clock times and shares no code with whatever laid them.
 */
public final class DayChecker {
    private static final double ROUNDING = 1e-6;
    private static final double MINUTE = 1 / 60.0;

    private final Map<LocalDate, WorkDay> open = new TreeMap<>();
    private final Map<LocalDate, Integer> weekOf = new HashMap<>();
    private final Map<String, DayVisit> asked = new HashMap<>();
    private final Map<LocalDate, Double> booked = new TreeMap<>();
    private final List<String> wrong = new ArrayList<>();

    private DayChecker() {}

    /** What is wrong, in words; empty where all limits hold. */
    public static List<String> listViolations(
            List<DepotWeek> weeks, List<DayVisit> visits, DutySpare spare, DayPlan plan) {
        DayChecker checker = new DayChecker();
        weeks.forEach(week -> week.days().forEach(day -> {
            checker.open.put(day.date(), day);
            checker.weekOf.put(day.date(), week.week());
        }));
        visits.forEach(visit -> checker.asked.put(key(visit.truck(), visit.week(), visit.diagnosis()), visit));
        checker.each(plan);
        checker.forgotten(plan);
        checker.bays(plan.laid());
        checker.groups(plan.laid(), spare);
        weeks.forEach(week -> checker.hours(week, plan));
        return checker.wrong;
    }

    private static String key(String truck, int week, boolean diagnosis) {
        return truck + "\n" + week + (diagnosis ? "\ndiagnosis" : "");
    }

    private void add(DayPlan.Laid laid, String what) {
        wrong.add("truck " + laid.truck() + (laid.diagnosis() ? " (diagnosis)" : "") + ": " + what);
    }

    private void each(DayPlan plan) {
        for (DayPlan.Laid laid : plan.laid()) {
            Integer week = weekOf.get(laid.start().toLocalDate());
            DayVisit visit = week == null ? null : asked.get(key(laid.truck(), week, laid.diagnosis()));
            if (visit == null) {
                add(laid, "starts on " + laid.start() + ", a closed day or one of a week without this visit");
                continue;
            }
            times(laid);
            work(laid, visit);
            days(laid, visit);
        }
    }

    private void times(DayPlan.Laid laid) {
        if (laid.start().getMinute() % 15 != 0 || laid.start().getSecond() != 0) {
            add(laid, "starts at " + laid.start().toLocalTime() + ", not on a quarter hour");
        }
        if (!inShift(laid.start(), false) || !inShift(laid.end(), true)) {
            add(laid, laid.start() + " to " + laid.end() + " is not inside the shift and around its breaks");
        }
    }

    private boolean inShift(LocalDateTime at, boolean end) {
        WorkDay day = open.get(at.toLocalDate());
        int minute = at.getHour() * 60 + at.getMinute();
        return day != null
                && day.spans().stream()
                        .anyMatch(span -> end
                                ? minute > span.from() && minute <= span.to()
                                : minute >= span.from() && minute < span.to());
    }

    private void work(DayPlan.Laid laid, DayVisit visit) {
        double sum = 0;
        for (DayPlan.DayWork work : laid.days()) {
            sum += work.labourHours();
            booked.merge(work.date(), work.labourHours(), Double::sum);
            if (work.labourHours() < Math.min(1, visit.labourHours()) - ROUNDING) {
                add(laid, Figures.hours(work.labourHours()) + " on " + work.date() + " is a piece under an hour");
            }
            if (work.labourHours() > bayHours(laid, work.date()) + MINUTE + ROUNDING) {
                add(
                        laid,
                        Figures.hours(work.labourHours()) + " on " + work.date() + " do not fit between " + laid.start()
                                + " and " + laid.end());
            }
        }
        if (Math.abs(sum - visit.labourHours()) > MINUTE) {
            add(laid, Figures.hours(sum) + " of work laid, it takes " + Figures.hours(visit.labourHours()));
        }
    }

    /** Hours of a day's spans that lie between a visit's start and end. */
    private double bayHours(DayPlan.Laid laid, LocalDate date) {
        WorkDay day = open.get(date);
        int from = date.equals(laid.start().toLocalDate())
                ? laid.start().toLocalTime().toSecondOfDay() / 60
                : 0;
        int to =
                date.equals(laid.end().toLocalDate()) ? laid.end().toLocalTime().toSecondOfDay() / 60 : 24 * 60;
        return day == null
                ? 0
                : day.spans().stream()
                                .mapToInt(span -> Math.max(0, Math.min(span.to(), to) - Math.max(span.from(), from)))
                                .sum()
                        / 60.0;
    }

    private void days(DayPlan.Laid laid, DayVisit visit) {
        List<LocalDate> worked = laid.days().stream().map(DayPlan.DayWork::date).toList();
        laid.start()
                .toLocalDate()
                .datesUntil(laid.end().toLocalDate().plusDays(1))
                .forEach(date -> {
                    if (visit.notOn().contains(date)) {
                        add(laid, "in a bay on " + date + ", when it cannot be in");
                    }
                    WorkDay day = open.get(date);
                    if (day != null && !worked.contains(date)) {
                        add(laid, "stands idle on " + date);
                    }
                    if (day != null && laid.bay() > day.bays()) {
                        add(laid, "in bay " + laid.bay() + " on " + date + ", which has " + day.bays());
                    }
                });
        DayPin pin = visit.pin();
        if (pin != null
                && (!pin.day().equals(laid.start().toLocalDate())
                        || pin.bay() != null && pin.bay() != laid.bay()
                        || pin.start() != null
                                && !pin.start().equals(laid.start().toLocalTime()))) {
            add(laid, "pinned to " + pin.words() + ", laid to " + laid.start() + ", bay " + laid.bay());
        }
    }

    private void forgotten(DayPlan plan) {
        Map<String, Integer> seen = new HashMap<>();
        for (DayPlan.Laid laid : plan.laid()) {
            Integer week = weekOf.get(laid.start().toLocalDate());
            seen.merge(key(laid.truck(), week == null ? -1 : week, laid.diagnosis()), 1, Integer::sum);
        }
        plan.notLaid().forEach(each -> seen.merge(key(each.truck(), each.week(), false), 1, Integer::sum));
        asked.forEach((key, visit) -> {
            if (seen.getOrDefault(key, 0) != 1) {
                wrong.add("truck " + visit.truck() + ": named " + seen.getOrDefault(key, 0) + " times, not once");
            }
        });
    }

    private void bays(List<DayPlan.Laid> laid) {
        for (int i = 0; i < laid.size(); i++) {
            for (int j = i + 1; j < laid.size(); j++) {
                DayPlan.Laid one = laid.get(i);
                DayPlan.Laid other = laid.get(j);
                boolean together =
                        one.start().isBefore(other.end()) && other.start().isBefore(one.end());
                if (one.bay() == other.bay() && together) {
                    add(one, "in bay " + one.bay() + " together with truck " + other.truck());
                }
            }
        }
    }

    private void groups(List<DayPlan.Laid> laid, DutySpare spare) {
        Map<String, Map<LocalDate, Integer>> off = new TreeMap<>();
        for (DayPlan.Laid each : laid) {
            Integer week = weekOf.get(each.start().toLocalDate());
            DayVisit visit = week == null ? null : asked.get(key(each.truck(), week, each.diagnosis()));
            if (visit != null && visit.dutyGroup() != null && !visit.diagnosis()) {
                Map<LocalDate, Integer> days = off.computeIfAbsent(visit.dutyGroup(), none -> new TreeMap<>());
                each.start()
                        .toLocalDate()
                        .datesUntil(each.end().toLocalDate().plusDays(1))
                        .forEach(day -> days.merge(day, 1, Integer::sum));
            }
        }
        off.forEach((group, days) -> days.forEach((day, trucks) -> {
            int most = Math.max(0, spare.byGroup().getOrDefault(group, Map.of()).getOrDefault(day, trucks));
            if (trucks > most) {
                wrong.add(
                        "duty group " + group + " on " + day + ": " + trucks + " in bays, " + most + " can be spared");
            }
        }));
    }

    private void hours(DepotWeek week, DayPlan plan) {
        double over = 0;
        double plain = 0;
        for (WorkDay day : week.days()) {
            plain += day.labourHours();
            over += Math.max(0, booked.getOrDefault(day.date(), 0.0) - day.labourHours());
        }
        if (over > week.overtimeHours() + ROUNDING + week.days().size() * MINUTE / 5) {
            wrong.add("week " + week.week() + ": " + Figures.hours(over) + " beyond the plain hours of its days, "
                    + Figures.hours(week.overtimeHours()) + " of overtime there are");
        }
        double needs = asked.values().stream()
                .filter(visit -> visit.week() == week.week())
                .mapToDouble(DayVisit::labourHours)
                .sum();
        boolean named = plan.limits().stream().anyMatch(limit -> limit.startsWith("Week " + week.week() + ":"))
                || asked.values().stream().anyMatch(visit -> visit.diagnosis() && visit.week() == week.week());
        if (over > Math.max(0, needs - plain) + MINUTE && !named) {
            wrong.add("week " + week.week() + ": " + Figures.hours(over)
                    + " of overtime while plain hours are left, and no limit is named");
        }
    }
}
