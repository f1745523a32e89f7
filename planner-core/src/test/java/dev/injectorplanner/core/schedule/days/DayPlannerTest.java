package dev.injectorplanner.core.schedule.days;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.schedule.OpenDay;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Monday 1 June 2026; a shift from 7 to 15, one labour hour an hour in a bay. */
class DayPlannerTest {
    private static final LocalDate MONDAY = LocalDate.of(2026, 6, 1);
    private static final Shift SHIFT = new Shift(LocalTime.of(7, 0), LocalTime.of(15, 0), 1);

    private static DepotWeek week(double hoursADay, int bays, double overtime) {
        List<OpenDay> days = new ArrayList<>();
        for (int day = 0; day < 5; day++) {
            days.add(new OpenDay(MONDAY.plusDays(day), hoursADay, bays));
        }
        return new DepotWeek(0, days, overtime);
    }

    private static DayVisit visit(String truck, double hours, LocalDate... notOn) {
        return new DayVisit(truck, 0, hours, Set.of(notOn));
    }

    private static DayPlan plan(DepotWeek week, DayVisit... visits) {
        DayPlan plan = new DayPlanner(SHIFT).plan(List.of(week), List.of(visits));
        check(week, List.of(visits), plan, SHIFT);
        return plan;
    }

    private static List<String> places(DayPlan plan) {
        return plan.laid().stream()
                .map(laid -> laid.truck() + " bay " + laid.bay() + ", " + laid.start() + " to " + laid.end())
                .toList();
    }

    @Test
    void oneAfterTheOtherInOneBay() {
        assertThat(places(plan(week(8, 1, 0), visit("A", 5), visit("B", 3), visit("C", 6.5))))
                .containsExactly(
                        "C bay 1, 2026-06-01T07:00 to 2026-06-01T13:30",
                        "A bay 1, 2026-06-02T07:00 to 2026-06-02T12:00",
                        "B bay 1, 2026-06-02T12:00 to 2026-06-02T15:00");
    }

    @Test
    void sideBySideInTwoBays() {
        assertThat(places(plan(week(16, 2, 0), visit("A", 8), visit("B", 8))))
                .containsExactly(
                        "A bay 1, 2026-06-01T07:00 to 2026-06-01T15:00",
                        "B bay 2, 2026-06-01T07:00 to 2026-06-01T15:00");
    }

    @Test
    void aLongVisitSpansDaysAndHoldsItsBay() {
        DayPlan plan = plan(week(8, 1, 0), visit("A", 20), visit("B", 4));
        assertThat(places(plan))
                .containsExactly(
                        "A bay 1, 2026-06-01T07:00 to 2026-06-03T11:00",
                        "B bay 1, 2026-06-03T11:00 to 2026-06-03T15:00");
        assertThat(plan.laid().get(0).days())
                .containsExactly(
                        new DayPlan.DayWork(MONDAY, 8),
                        new DayPlan.DayWork(MONDAY.plusDays(1), 8),
                        new DayPlan.DayWork(MONDAY.plusDays(2), 4));
    }

    /** Two bays, but technicians for one truck at a time: the second truck gets the next day. */
    @Test
    void techniciansHoursAreHeld() {
        assertThat(places(plan(week(8, 2, 0), visit("A", 8), visit("B", 8))))
                .containsExactly(
                        "A bay 1, 2026-06-01T07:00 to 2026-06-01T15:00",
                        "B bay 1, 2026-06-02T07:00 to 2026-06-02T15:00");
    }

    @Test
    void overtimeIsUsedInsideTheShift() {
        DayPlan plan = plan(new DepotWeek(0, List.of(new OpenDay(MONDAY, 6, 1)), 2), visit("A", 8));
        assertThat(plan.notLaid()).isEmpty();
        assertThat(plan(new DepotWeek(0, List.of(new OpenDay(MONDAY, 6, 1)), 1), visit("A", 8))
                        .notLaid())
                .hasSize(1);
    }

    @Test
    void aTruckThatCannotBeSparedThatDayComesOnAnother() {
        assertThat(places(plan(week(8, 1, 0), visit("A", 10, MONDAY, MONDAY.plusDays(2)))))
                .containsExactly("A bay 1, 2026-06-04T07:00 to 2026-06-05T09:00");
    }

    /**
     * Three visits of 16 h, 16 h and 8 h fill one bay's week of 40 h exactly. The one of 8 h can only come on Wednesday,
     * so the first places tried (Monday and Tuesday, Wednesday and Thursday) must be failed for good again.
     */
    @Test
    void earlierPlacesAreGivenUpForALaterVisit() {
        DayPlan plan = plan(
                week(8, 1, 0),
                visit("A", 16),
                visit("B", 16),
                visit("C", 8, MONDAY, MONDAY.plusDays(1), MONDAY.plusDays(3), MONDAY.plusDays(4)));
        assertThat(plan.notLaid()).isEmpty();
    }

    /** 3 x 24 h fit two bays of 40 h by their sums (72 of 80) and no week can hold them: two visits to a bay are 48 h. */
    @Test
    void sumsThatFitAndAWeekThatDoesNotAreReported() {
        DayPlan plan = plan(week(16, 2, 0), visit("A", 24), visit("B", 24), visit("C", 24));
        assertThat(plan.notLaid())
                .containsExactly(
                        new DayPlan.NotLaid(
                                "C",
                                0,
                                "the week has enough hours, but no bay is free for long enough while technicians are available"));
    }

    @Test
    void reasons() {
        assertThat(plan(week(8, 1, 0), visit("A", 41)).notLaid().get(0).reason())
                .isEqualTo("it needs more than one bay and its technicians have in the whole week");
        assertThat(plan(week(8, 1, 0), visit("A", 30), visit("B", 15))
                        .notLaid()
                        .get(0)
                        .reason())
                .isEqualTo("with the other visits 10.0 h are left in the week, and it takes 15.0 h");
        assertThat(plan(week(8, 1, 0), visit("A", 17, MONDAY.plusDays(2)))
                        .notLaid()
                        .get(0)
                        .reason())
                .isEqualTo(
                        "the days on which it can be spared are too few or not consecutive; it cannot be spared on 1 day");
        assertThat(new DayPlanner(SHIFT)
                        .plan(List.of(), List.of(visit("A", 1)))
                        .notLaid()
                        .get(0)
                        .reason())
                .isEqualTo("the depot has no working day that week");
    }

    @Test
    void aShiftAcrossMidnightIsRefused() {
        assertThatThrownBy(() -> new Shift(LocalTime.of(22, 0), LocalTime.of(6, 0), 1))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("ends before midnight");
    }

    @Test
    void randomWeeksHoldEveryLimitAndDoNotDependOnTheOrder() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            Shift shift =
                    new Shift(LocalTime.of(6, 30), LocalTime.of(14 + random.nextInt(4), 15), 1 + random.nextInt(2));
            List<OpenDay> days = new ArrayList<>();
            for (int day = 0; day < 6; day++) {
                if (random.nextInt(5) > 0) {
                    days.add(new OpenDay(MONDAY.plusDays(day), random.nextInt(320) / 10.0, random.nextInt(4)));
                }
            }
            DepotWeek week = new DepotWeek(0, days, random.nextInt(6));
            List<DayVisit> visits = new ArrayList<>();
            for (int v = random.nextInt(9); v > 0; v--) {
                LocalDate[] away =
                        random.nextInt(3) > 0 ? new LocalDate[0] : new LocalDate[] {MONDAY.plusDays(random.nextInt(6))};
                visits.add(visit("T" + v, (1 + random.nextInt(250)) / 10.0, away));
            }
            DayPlan plan = new DayPlanner(shift).plan(List.of(week), visits);
            check(week, visits, plan, shift);
            Collections.shuffle(visits, random);
            assertThat(new DayPlanner(shift).plan(List.of(week), visits))
                    .as("seed %d", seed)
                    .isEqualTo(plan);
        }
    }

    /** Written apart from the planner: minute by minute for bays, day by day for hours. */
    private static void check(DepotWeek week, List<DayVisit> visits, DayPlan plan, Shift shift) {
        assertThat(plan.laid().size() + plan.notLaid().size()).isEqualTo(visits.size());
        Map<String, DayVisit> asked = new HashMap<>();
        visits.forEach(visit -> asked.put(visit.truck(), visit));
        Map<LocalDate, OpenDay> open = new HashMap<>();
        week.days().forEach(day -> open.put(day.date(), day));
        Map<LocalDate, Double> booked = new HashMap<>();
        boolean[][] taken = new boolean[1_000][7 * 24 * 60];
        for (DayPlan.Laid laid : plan.laid()) {
            DayVisit visit = asked.get(laid.truck());
            double sum = 0;
            for (DayPlan.DayWork day : laid.days()) {
                sum += day.labourHours();
                booked.merge(day.date(), day.labourHours(), Double::sum);
                assertThat(laid.bay()).isBetween(1, open.get(day.date()).bays());
            }
            assertThat(sum).isCloseTo(visit.labourHours(), within(1 / 60.0));
            laid.start()
                    .toLocalDate()
                    .datesUntil(laid.end().toLocalDate().plusDays(1))
                    .forEach(day -> assertThat(visit.notOn()).doesNotContain(day));
            assertThat(laid.start().toLocalTime()).isBetween(shift.opens(), shift.closes());
            assertThat(laid.end().toLocalTime()).isBetween(shift.opens(), shift.closes());
            int from =
                    (int) Duration.between(MONDAY.atStartOfDay(), laid.start()).toMinutes();
            int to = (int) Duration.between(MONDAY.atStartOfDay(), laid.end()).toMinutes();
            for (int minute = from; minute < to; minute++) {
                assertThat(taken[laid.bay()][minute])
                        .as("%s, minute %d", laid, minute)
                        .isFalse();
            }
            Arrays.fill(taken[laid.bay()], from, to, true);
        }
        double over = 0;
        for (Map.Entry<LocalDate, Double> day : booked.entrySet()) {
            over += Math.max(0, day.getValue() - open.get(day.getKey()).labourHours());
        }
        assertThat(over)
                .isLessThanOrEqualTo(week.overtimeHours() + 1e-6 + week.days().size() / 60.0);
    }
}
