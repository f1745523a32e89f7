package dev.injectorplanner.core.schedule.days;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Random weeks: what no layout may break, added up minute by minute by code that shares nothing with the planner; and one
 * violation of each kind, planted by hand, that the checker of every plan must catch.
 */
class DayLawsTest {
    private static final LocalDate MONDAY = LocalDate.of(2026, 6, 1);
    private static final double CLOSE = 1e-6;

    private record Case(DepotWeek week, List<DayVisit> visits, DutySpare spare) {}

    private static Case random(long seed) {
        Random random = new Random(seed);
        int opens = 360 + 15 * random.nextInt(8);
        int noon = 720 + 5 * random.nextInt(6);
        List<Span> spans = random.nextInt(4) == 0
                ? List.of(new Span(opens, opens + 480))
                : List.of(new Span(opens, noon), new Span(noon + 30, opens + 510));
        int bays = 1 + random.nextInt(3);
        double hours = bays * (4 + random.nextInt(5));
        List<WorkDay> days = new ArrayList<>();
        Map<LocalDate, Integer> spare = new TreeMap<>();
        for (int day = 0; day < 6; day++) {
            if (random.nextInt(6) > 0) {
                boolean fewer = random.nextInt(8) == 0;
                days.add(new WorkDay(MONDAY.plusDays(day), hours, fewer ? bays - 1 : bays, spans));
            }
            spare.put(MONDAY.plusDays(day), random.nextInt(3));
        }
        DepotWeek week = new DepotWeek(0, days, random.nextInt(3) * 4);
        List<DayVisit> visits = new ArrayList<>();
        double left = random.nextInt(3) == 0 ? 1.1 : 0.3 + random.nextDouble();
        left *= days.stream().mapToDouble(WorkDay::labourHours).sum();
        for (int v = 1; left > 0.3 && v < 14; v++) {
            double its = Math.round(100 * Math.min(left, 0.5 + 11 * random.nextDouble())) / 100.0;
            left -= its;
            Set<LocalDate> notOn = random.nextInt(4) > 0 ? Set.of() : Set.of(MONDAY.plusDays(random.nextInt(6)));
            String group = random.nextInt(4) > 0 ? null : "G";
            visits.add(new DayVisit("T" + v, 0, its, false, group, notOn, false, null));
        }
        return new Case(week, visits, new DutySpare(Map.of("G", spare)));
    }

    private static DayPlan laid(Case one) {
        return new DayPlanner().plan(List.of(one.week()), one.visits(), one.spare());
    }

    @Test
    void randomWeeksHoldEveryLimit() {
        int laid = 0;
        int asked = 0;
        for (int seed = 0; seed < 80; seed++) {
            Case one = random(seed);
            DayPlan plan = laid(one);
            check(one, plan, "seed " + seed);
            assertThat(DayChecker.listViolations(List.of(one.week()), one.visits(), one.spare(), plan))
                    .as("seed %d", seed)
                    .isEmpty();
            laid += plan.laid().size();
            asked += one.visits().size();
        }
        assertThat(laid).as("%d asked for", asked).isGreaterThan(asked * 6 / 10);
    }

    @Test
    void theOrderOfVisitsDoesNotMatter() {
        for (int seed = 0; seed < 12; seed++) {
            Case one = random(seed);
            List<DayVisit> mixed = new ArrayList<>(one.visits());
            Collections.shuffle(mixed, new Random(seed));
            assertThat(laid(new Case(one.week(), mixed, one.spare())))
                    .as("seed %d", seed)
                    .isEqualTo(laid(one));
        }
    }

    /** Written apart from planner and checker: minute by minute for bays, day by day for hours and groups. */
    private static void check(Case one, DayPlan plan, String which) {
        assertThat(plan.laid().size() + plan.notLaid().size())
                .as(which)
                .isEqualTo(one.visits().size());
        Map<String, DayVisit> asked = new HashMap<>();
        one.visits().forEach(visit -> asked.put(visit.truck(), visit));
        Map<LocalDate, WorkDay> open = new HashMap<>();
        one.week().days().forEach(day -> open.put(day.date(), day));
        Map<LocalDate, Double> booked = new TreeMap<>();
        Map<LocalDate, Integer> groupOff = new TreeMap<>();
        boolean[][] taken = new boolean[10][7 * 24 * 60];
        for (DayPlan.Laid laid : plan.laid()) {
            DayVisit visit = asked.get(laid.truck());
            double sum = 0;
            for (DayPlan.DayWork day : laid.days()) {
                assertThat(open).as(which).containsKey(day.date());
                sum += day.labourHours();
                booked.merge(day.date(), day.labourHours(), Double::sum);
                assertThat(laid.bay())
                        .as(which)
                        .isBetween(1, open.get(day.date()).bays());
                assertThat(day.labourHours())
                        .as(which)
                        .isGreaterThanOrEqualTo(Math.min(1, visit.labourHours()) - CLOSE);
            }
            assertThat(sum).as(which).isBetween(visit.labourHours() - CLOSE, visit.labourHours() + 1 / 300.0 + CLOSE);
            assertThat(laid.start().getMinute() % 15).as(which).isZero();
            assertThat((double) minutesOf(open, laid))
                    .as("%s: %s", which, laid)
                    .isGreaterThanOrEqualTo(60 * sum - CLOSE);
            for (LocalDate day = laid.start().toLocalDate();
                    !day.isAfter(laid.end().toLocalDate());
                    day = day.plusDays(1)) {
                assertThat(visit.notOn()).as(which).doesNotContain(day);
                groupOff.merge(day, visit.dutyGroup() == null ? 0 : 1, Integer::sum);
            }
            int from = minute(laid.start());
            int to = minute(laid.end());
            for (int minute = from; minute < to; minute++) {
                assertThat(taken[laid.bay()][minute])
                        .as("%s: %s, minute %d", which, laid, minute)
                        .isFalse();
                taken[laid.bay()][minute] = true;
            }
        }
        groupOff.forEach((day, off) -> assertThat(off)
                .as("%s, group on %s", which, day)
                .isLessThanOrEqualTo(one.spare().byGroup().get("G").getOrDefault(day, 99)));
        hours(one, plan, booked, which);
    }

    private static void hours(Case one, DayPlan plan, Map<LocalDate, Double> booked, String which) {
        double over = 0;
        double free = 0;
        for (WorkDay day : one.week().days()) {
            double its = booked.getOrDefault(day.date(), 0.0);
            over += Math.max(0, its - day.labourHours());
            free += Math.max(0, day.labourHours() - its);
        }
        assertThat(over).as(which).isLessThanOrEqualTo(one.week().overtimeHours() + CLOSE);
        double needs = one.visits().stream().mapToDouble(DayVisit::labourHours).sum();
        double plain =
                one.week().days().stream().mapToDouble(WorkDay::labourHours).sum();
        boolean paid = over <= Math.max(0, needs - plain) + 0.05;
        assertThat(over < CLOSE || free < CLOSE || paid || !plan.limits().isEmpty())
                .as("%s: %s h overtime, %s h free, no limit named", which, over, free)
                .isTrue();
    }

    private static int minute(LocalDateTime at) {
        return (int) Duration.between(MONDAY.atStartOfDay(), at).toMinutes();
    }

    /** Minutes of open spans between start and end. */
    private static long minutesOf(Map<LocalDate, WorkDay> open, DayPlan.Laid laid) {
        long sum = 0;
        for (WorkDay day : open.values()) {
            for (Span span : day.spans()) {
                int midnight = minute(day.date().atStartOfDay());
                int from = Math.max(minute(laid.start()), midnight + span.from());
                int to = Math.min(minute(laid.end()), midnight + span.to());
                sum += Math.max(0, to - from);
            }
        }
        return sum;
    }

    private static final DepotWeek WEEK = new DepotWeek(
            0,
            List.of(
                    new WorkDay(MONDAY, 10, 2, List.of(new Span(420, 720), new Span(750, 930))),
                    new WorkDay(MONDAY.plusDays(1), 10, 2, List.of(new Span(420, 720), new Span(750, 930)))),
            4);
    private static final DutySpare ONE = new DutySpare(Map.of("G", Map.of(MONDAY, 1, MONDAY.plusDays(1), 1)));
    private static final List<DayVisit> THREE = List.of(
            new DayVisit("A", 0, 5, false, "G", Set.of(), false, null),
            new DayVisit("B", 0, 4, false, "G", Set.of(MONDAY), false, null),
            new DayVisit("C", 0, 3, false, null, Set.of(), true, new DayPin(MONDAY, 2, LocalTime.of(9, 0))));

    private static DayPlan.Laid laid(String truck, int bay, int day, String from, String to, double hours) {
        LocalDate date = MONDAY.plusDays(day);
        return new DayPlan.Laid(
                truck,
                bay,
                date.atTime(LocalTime.parse(from)),
                date.atTime(LocalTime.parse(to)),
                List.of(new DayPlan.DayWork(date, hours)));
    }

    private static List<DayPlan.Laid> sound() {
        return List.of(
                laid("A", 1, 0, "07:00", "12:00", 5),
                laid("B", 1, 1, "07:00", "11:00", 4),
                laid("C", 2, 0, "09:00", "12:00", 3));
    }

    private static List<String> violations(UnaryOperator<DayPlan.Laid> planted) {
        List<DayPlan.Laid> rows = sound().stream().map(planted).toList();
        return DayChecker.listViolations(List.of(WEEK), THREE, ONE, new DayPlan(rows, List.of()));
    }

    private static UnaryOperator<DayPlan.Laid> plant(DayPlan.Laid row) {
        return sound -> sound.truck().equals(row.truck()) ? row : sound;
    }

    @Test
    void aSoundPlanHasNoViolation() {
        assertThat(violations(UnaryOperator.identity())).isEmpty();
    }

    @Test
    void plantedViolationsAreCaught() {
        assertThat(violations(plant(laid("A", 1, 0, "07:10", "12:40", 5)))).anyMatch(w -> w.contains("quarter hour"));
        assertThat(violations(plant(laid("A", 1, 0, "06:00", "11:00", 5)))).anyMatch(w -> w.contains("shift"));
        assertThat(violations(plant(laid("A", 1, 0, "07:00", "12:15", 5)))).anyMatch(w -> w.contains("breaks"));
        assertThat(violations(plant(laid("A", 2, 0, "07:00", "12:00", 5)))).anyMatch(w -> w.contains("together"));
        assertThat(violations(plant(laid("A", 3, 0, "07:00", "12:00", 5)))).anyMatch(w -> w.contains("bay 3"));
        assertThat(violations(plant(laid("A", 1, 1, "11:00", "15:30", 5)))).anyMatch(w -> w.contains("do not fit"));
        assertThat(violations(plant(laid("A", 1, 0, "07:00", "11:00", 4)))).anyMatch(w -> w.contains("it takes 5"));
        assertThat(violations(plant(laid("A", 1, 2, "07:00", "12:00", 5)))).anyMatch(w -> w.contains("closed day"));
        assertThat(violations(plant(laid("B", 1, 0, "12:30", "15:30", 4)))).anyMatch(w -> w.contains("cannot be in"));
        assertThat(violations(plant(laid("A", 2, 1, "07:00", "12:00", 5)))).anyMatch(w -> w.contains("duty group G"));
        assertThat(violations(plant(laid("C", 2, 0, "07:00", "10:00", 3)))).anyMatch(w -> w.contains("pinned"));
    }

    /** 5 and 8 hours on a Monday of 10, while Tuesday holds none. */
    @Test
    void overtimeBesideAFreeDayIsCaught() {
        List<DayVisit> two = List.of(new DayVisit("A", 0, 5, Set.of()), new DayVisit("B", 0, 7.5, Set.of()));
        DayPlan plan = new DayPlan(
                List.of(laid("A", 1, 0, "07:00", "12:00", 5), laid("B", 2, 0, "07:00", "15:00", 7.5)), List.of());
        assertThat(DayChecker.listViolations(List.of(WEEK), two, DutySpare.NONE, plan))
                .singleElement()
                .asString()
                .contains("overtime while plain hours are left");
    }

    @Test
    void moreOvertimeThanThereIsAndCrumbsAreCaught() {
        DepotWeek none = new DepotWeek(0, WEEK.days(), 0);
        List<DayVisit> two = List.of(new DayVisit("A", 0, 5, Set.of()), new DayVisit("B", 0, 7.5, Set.of()));
        DayPlan over = new DayPlan(
                List.of(laid("A", 1, 0, "07:00", "12:00", 5), laid("B", 2, 0, "07:00", "15:00", 7.5)), List.of());
        assertThat(DayChecker.listViolations(List.of(none), two, DutySpare.NONE, over))
                .anyMatch(w -> w.contains("beyond the plain hours"));
        DayPlan.Laid crumbs = new DayPlan.Laid(
                "A",
                1,
                MONDAY.atTime(15, 0),
                MONDAY.plusDays(1).atTime(11, 30),
                List.of(new DayPlan.DayWork(MONDAY, 0.5), new DayPlan.DayWork(MONDAY.plusDays(1), 4.5)));
        assertThat(DayChecker.listViolations(
                        List.of(WEEK),
                        List.of(new DayVisit("A", 0, 5, Set.of())),
                        DutySpare.NONE,
                        new DayPlan(List.of(crumbs), List.of())))
                .singleElement()
                .asString()
                .contains("piece under an hour");
    }

    /** A diagnosis takes the first open day with a free bay, whatever is pinned there; a second one shares the day. */
    @Test
    void diagnosesComeFirst() {
        List<DayVisit> placed = DiagnosisPlanner.place(
                List.of(WEEK),
                List.of(
                        new DiagnosisPlanner.Asking("L1", 1.5, Set.of()),
                        new DiagnosisPlanner.Asking("L2", 1.5, Set.of()),
                        new DiagnosisPlanner.Asking("L3", 1.5, Set.of(MONDAY))),
                List.of(new DayPin(MONDAY, 1, LocalTime.of(7, 0))));
        assertThat(placed)
                .extracting(visit -> visit.truck() + " "
                        + (visit.pin() == null ? "" : visit.pin().words()))
                .containsExactly(
                        "L1 Monday 2026-06-01, bay 2, 07:00",
                        "L2 Monday 2026-06-01, bay 1, 07:00",
                        "L3 Tuesday 2026-06-02, bay 1, 07:00");
    }
}
