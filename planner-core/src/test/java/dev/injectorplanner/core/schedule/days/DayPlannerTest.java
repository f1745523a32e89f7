package dev.injectorplanner.core.schedule.days;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Monday 1 June 2026; a shift from 7:00 to 15:30 with half an hour's break at noon. */
class DayPlannerTest {
    private static final LocalDate MONDAY = LocalDate.of(2026, 6, 1);
    private static final List<Span> SHIFT = List.of(new Span(7 * 60, 12 * 60), new Span(12 * 60 + 30, 15 * 60 + 30));

    private static DepotWeek week(double hoursADay, int bays, double overtime) {
        List<WorkDay> days = new ArrayList<>();
        for (int day = 0; day < 5; day++) {
            days.add(new WorkDay(MONDAY.plusDays(day), hoursADay, bays, SHIFT));
        }
        return new DepotWeek(0, days, overtime);
    }

    private static DayVisit visit(String truck, double hours, LocalDate... notOn) {
        return new DayVisit(truck, 0, hours, Set.of(notOn));
    }

    private static DayVisit pinned(String truck, double hours, LocalDate day, @Nullable Integer bay, LocalTime start) {
        return new DayVisit(truck, 0, hours, false, null, Set.of(), true, new DayPin(day, bay, start));
    }

    private static DayVisit inGroup(String truck, double hours) {
        return new DayVisit(truck, 0, hours, false, "G", Set.of(), false, null);
    }

    private static DayPlan plan(DepotWeek week, DayVisit... visits) {
        return plan(week, DutySpare.NONE, visits);
    }

    private static DayPlan plan(DepotWeek week, DutySpare spare, DayVisit... visits) {
        DayPlan plan = new DayPlanner().plan(List.of(week), List.of(visits), spare);
        assertThat(DayChecker.listViolations(List.of(week), List.of(visits), spare, plan))
                .isEmpty();
        return plan;
    }

    private static List<String> places(DayPlan plan) {
        return plan.laid().stream()
                .map(laid -> laid.truck() + " bay " + laid.bay() + ", " + laid.start() + " to " + laid.end())
                .toList();
    }

    private static List<Double> hours(DayPlan plan) {
        return plan.loads().stream().map(DayPlan.DayLoad::bookedHours).toList();
    }

    @Test
    void oneAfterTheOtherInOneBayAroundTheBreak() {
        assertThat(places(plan(week(8, 1, 0), visit("A", 5), visit("B", 3), visit("C", 6.5))))
                .containsExactly(
                        "C bay 1, 2026-06-01T07:00 to 2026-06-01T14:00",
                        "A bay 1, 2026-06-02T07:00 to 2026-06-02T12:00",
                        "B bay 1, 2026-06-02T12:30 to 2026-06-02T15:30");
    }

    @Test
    void theNextTruckStartsOnTheQuarterHour() {
        assertThat(places(plan(week(8, 1, 0), visit("A", 2.2), visit("B", 2.1))))
                .containsExactly(
                        "A bay 1, 2026-06-01T07:00 to 2026-06-01T09:12",
                        "B bay 1, 2026-06-01T09:15 to 2026-06-01T11:21");
    }

    @Test
    void sideBySideInTwoBays() {
        assertThat(places(plan(week(16, 2, 0), visit("A", 8), visit("B", 8))))
                .containsExactly(
                        "A bay 1, 2026-06-01T07:00 to 2026-06-01T15:30",
                        "B bay 2, 2026-06-01T07:00 to 2026-06-01T15:30");
    }

    @Test
    void aLongVisitSpansDaysAndHoldsItsBay() {
        DayPlan plan = plan(week(8, 1, 0), visit("A", 20), visit("B", 4));
        assertThat(places(plan))
                .containsExactly(
                        "A bay 1, 2026-06-01T07:00 to 2026-06-03T11:00",
                        "B bay 1, 2026-06-03T11:00 to 2026-06-03T15:30");
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
                        "A bay 1, 2026-06-01T07:00 to 2026-06-01T15:30",
                        "B bay 1, 2026-06-02T07:00 to 2026-06-02T15:30");
    }

    /** What a real week showed: 22.9 of 20 hours on Monday while four days hold none, and 2.2 hours in crumbs over four days. */
    @Test
    void aWeekWithRoomUsesNoOvertimeAndSplitsNothingSmall() {
        DayPlan plan = plan(
                week(20, 3, 10),
                visit("T012", 9.2),
                visit("T018", 9.2),
                visit("T031", 9.2),
                visit("T035", 2.2),
                visit("T044", 7.4),
                visit("T050", 6.1),
                visit("T051", 2.5));
        assertThat(plan.notLaid()).isEmpty();
        assertThat(plan.limits()).isEmpty();
        assertThat(hours(plan)).allSatisfy(booked -> assertThat(booked).isLessThanOrEqualTo(20.0));
        assertThat(plan.laid())
                .filteredOn(laid -> laid.truck().equals("T035"))
                .singleElement()
                .satisfies(laid -> assertThat(laid.days()).hasSize(1));
    }

    /** Five visits of 9 h 20 min need 46 h 40 min of one bay's 40 plain and 8 overtime hours... of two bays, 40 plain hours. */
    @Test
    void overtimeIsNoMoreThanTheWeekNeeds() {
        DayPlan plan = plan(week(8, 2, 8), visit("A", 14), visit("B", 14), visit("C", 14));
        assertThat(plan.notLaid()).isEmpty();
        assertThat(plan.loads().stream()
                        .mapToDouble(DayPlan.DayLoad::overtimeHours)
                        .sum())
                .isEqualTo(2);
    }

    /** 8 h can stand on Monday alone, which has 6 plain hours; the overtime is named though Tuesday to Friday are empty. */
    @Test
    void aLimitThatForcesOvertimeIsNamed() {
        LocalDate[] restOfWeek = {MONDAY.plusDays(1), MONDAY.plusDays(2), MONDAY.plusDays(3), MONDAY.plusDays(4)};
        DayPlan plan = plan(week(6, 1, 2), visit("A", 8, restOfWeek));
        assertThat(plan.notLaid()).isEmpty();
        assertThat(plan.limits())
                .singleElement()
                .asString()
                .startsWith("Week 0: 2 h of overtime")
                .contains("A");
        assertThat(plan(week(6, 1, 1), visit("A", 8, restOfWeek)).notLaid()).hasSize(1);
    }

    /** 8 h 30 min would leave half an hour for the second day: an hour is kept for it. */
    @Test
    void noPieceIsShorterThanAnHour() {
        assertThat(plan(week(8, 1, 0), visit("A", 8.5)).laid().get(0).days())
                .containsExactly(new DayPlan.DayWork(MONDAY, 7.5), new DayPlan.DayWork(MONDAY.plusDays(1), 1));
    }

    @Test
    void aTruckThatCannotBeSparedThatDayComesOnAnother() {
        assertThat(places(plan(week(8, 1, 0), visit("A", 10, MONDAY, MONDAY.plusDays(2)))))
                .containsExactly("A bay 1, 2026-06-04T07:00 to 2026-06-05T09:00");
    }

    /** Three visits of 16 h, 16 h and 8 h fill one bay's week of 40 h exactly. The one of 8 h can only come on Wednesday. */
    @Test
    void earlierPlacesAreGivenUpForALaterVisit() {
        DayPlan plan = plan(
                week(8, 1, 0),
                visit("A", 16),
                visit("B", 16),
                visit("C", 8, MONDAY, MONDAY.plusDays(1), MONDAY.plusDays(3), MONDAY.plusDays(4)));
        assertThat(plan.notLaid()).isEmpty();
    }

    @Test
    void aWeekThatIsFullToTheLastHundredthOfAnHourIsLaidOut() {
        DayPlan plan = plan(
                week(8, 1, 0), visit("A", 9.27), visit("B", 9.27), visit("C", 9.27), visit("D", 2.99), visit("E", 9.2));
        assertThat(plan.notLaid().size()).isLessThanOrEqualTo(1);
        assertThat(hours(plan)).allSatisfy(booked -> assertThat(booked).isLessThanOrEqualTo(8.0 + 1e-9));
    }

    /** 3 x 24 h fit two bays of 40 h by their sums (72 of 80) and no week can hold them: two visits to a bay are 48 h. */
    @Test
    void sumsThatFitAndAWeekThatDoesNotAreReported() {
        DayPlan plan = plan(week(16, 2, 0), visit("A", 24), visit("B", 24), visit("C", 24));
        assertThat(plan.notLaid())
                .singleElement()
                .satisfies(each -> assertThat(each.reason())
                        .isEqualTo("the week has enough hours, but no bay is free for long enough while technicians are"
                                + " available"));
    }

    @Test
    void aPinnedVisitKeepsDayBayAndStart() {
        assertThat(places(plan(
                        week(16, 2, 0), visit("A", 8), visit("B", 8), pinned("P", 3, MONDAY, 2, LocalTime.of(9, 30)))))
                .contains("P bay 2, 2026-06-01T09:30 to 2026-06-01T13:00");
    }

    @Test
    void aPinThatCannotBeKeptSaysWhy() {
        DayPlan plan = plan(week(8, 1, 0), pinned("P", 3, MONDAY, 1, LocalTime.of(12, 0)));
        assertThat(plan.notLaid().get(0).reason())
                .isEqualTo("it is pinned to Monday 2026-06-01, bay 1, 12:00, and does not fit there");
    }

    /** Three bays and hours for all, but only one truck of the group may be off the road on a day. */
    @Test
    void aDutyGroupKeepsItsMinimumEachDay() {
        Map<LocalDate, Integer> one = Map.of(
                MONDAY, 1, MONDAY.plusDays(1), 1, MONDAY.plusDays(2), 1, MONDAY.plusDays(3), 1, MONDAY.plusDays(4), 1);
        DayPlan plan = plan(
                week(24, 3, 0), new DutySpare(Map.of("G", one)), inGroup("A", 4), inGroup("B", 4), inGroup("C", 9));
        assertThat(plan.notLaid()).isEmpty();
        assertThat(plan.laid().stream().flatMap(laid -> laid.days().stream()).map(DayPlan.DayWork::date))
                .doesNotHaveDuplicates();
    }

    @Test
    void reasons() {
        assertThat(plan(week(8, 1, 0), visit("A", 41)).notLaid().get(0).reason())
                .isEqualTo("it needs more than one bay and its technicians have in the whole week");
        assertThat(plan(week(8, 1, 0), visit("A", 30), visit("B", 15))
                        .notLaid()
                        .get(0)
                        .reason())
                .isEqualTo("with the other visits 25.0 h are left in the week, and it takes 30.0 h");
        assertThat(plan(week(8, 1, 0), visit("A", 17, MONDAY.plusDays(2)))
                        .notLaid()
                        .get(0)
                        .reason())
                .isEqualTo(
                        "the days on which it can be spared are too few or not consecutive; it cannot be spared on 1 day");
        assertThat(new DayPlanner()
                        .plan(List.of(), List.of(visit("A", 1)), DutySpare.NONE)
                        .notLaid()
                        .get(0)
                        .reason())
                .isEqualTo("the depot has no working day that week");
    }
}
