package dev.injectorplanner.core.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** One depot, N, four weeks; 10 h and 2 bay-days a week, 2 h overtime at a premium of 30. */
class EarliestFitTest {
    private static final int WEEKS = 4;

    private static TruckOptions truck(String name, String group, double hours, double days, double... costs) {
        return new TruckOptions(
                name,
                "N",
                group,
                IntStream.range(0, costs.length)
                        .mapToObj(week -> new VisitOption(week, List.of(1), hours, days, costs[week]))
                        .toList(),
                null);
    }

    private static ScheduleRequest request(double bayDays, double groupDays, TruckOptions... trucks) {
        return new ScheduleRequest(
                WEEKS,
                List.of(trucks),
                IntStream.range(0, WEEKS)
                        .mapToObj(week -> new WeekCapacity("N", week, 10, 2, 30, bayDays))
                        .toList(),
                IntStream.range(0, WEEKS)
                        .mapToObj(week -> new GroupCapacity("G", week, groupDays))
                        .toList());
    }

    private static Schedule solve(ScheduleRequest request) {
        Schedule schedule = new EarliestFit().schedule(request);
        assertThat(ScheduleChecker.listViolations(request, schedule)).isEmpty();
        return schedule;
    }

    private static List<Integer> weeks(Schedule schedule) {
        return schedule.choices().stream().map(choice -> choice.option().week()).toList();
    }

    @Test
    void theFirstComesFirstAndTheNextGoesWhereThereIsRoom() {
        Schedule schedule = solve(request(
                5, 9, truck("A", null, 7, 1, 0, 0, 0), truck("B", null, 7, 1, 0, 0, 0), truck("C", null, 3, 1, 0, 0)));
        assertThat(weeks(schedule)).containsExactly(0, 1, 0);
        assertThat(schedule.cost()).isZero();
        assertThat(schedule.bound()).isNull();
    }

    @Test
    void lateWorkTakesOvertimeNowRatherThanPlainHoursLater() {
        Schedule schedule = solve(request(5, 9, truck("A", null, 7, 1, 1, 8), truck("B", null, 5, 1, 1, 8)));
        assertThat(weeks(schedule)).containsExactly(0, 0);
        assertThat(schedule.cost()).isCloseTo(1 + 1 + 2 * 30, within(1e-9));
    }

    @Test
    void workThatIsInTimeWaitsForPlainHours() {
        Schedule schedule = solve(request(5, 9, truck("A", null, 7, 1, 0, 0), truck("B", null, 5, 1, 0, 0)));
        assertThat(weeks(schedule)).containsExactly(0, 1);
    }

    @Test
    void overtimeRatherThanLate() {
        Schedule schedule = solve(request(5, 9, truck("A", null, 7, 1, 0, 0), truck("B", null, 5, 1, 0, 7)));
        assertThat(weeks(schedule)).containsExactly(0, 0);
    }

    @Test
    void baysStopIt() {
        Schedule schedule = solve(request(1.5, 9, truck("A", null, 2, 1, 1), truck("B", null, 2, 1, 1)));
        assertThat(schedule.notPlaced())
                .containsExactly(new Schedule.NotPlaced(
                        "B", "no room in any of the 1 week it could come in; limited by: bays in 1"));
    }

    @Test
    void theDutyGroupStopsItAndOnlyItsOwnTrucks() {
        Schedule schedule = solve(request(
                5,
                1,
                truck("A", "G", 2, 1, 1, 1),
                truck("B", "G", 2, 1, 1, 1),
                truck("C", "G", 2, 1, 1, 1),
                truck("D", null, 2, 1, 1)));
        assertThat(weeks(schedule)).containsExactly(0, 1, 0);
        assertThat(schedule.notPlaced().get(0).reason())
                .isEqualTo("no room in any of the 2 weeks it could come in; limited by: trucks the duty group must keep"
                        + " on the road in 2");
    }

    @Test
    void aVisitLongerThanAnyWeekIsNotPlaced() {
        Schedule schedule = solve(request(5, 9, truck("A", null, 12.5, 1, 1, 1, 1, 1)));
        assertThat(schedule.notPlaced().get(0).reason()).endsWith("labour hours in 4");
    }

    @Test
    void randomSchedulesHoldEveryLimitAndAreTheSameTwice() {
        for (long seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            List<TruckOptions> trucks = new ArrayList<>();
            for (int i = 0; i < 25; i++) {
                trucks.add(truck(
                        "T" + i,
                        random.nextBoolean() ? "G" : null,
                        random.nextInt(40) / 10.0,
                        0.25 + random.nextInt(4) / 4.0,
                        random.doubles(1 + random.nextInt(WEEKS), -3, 9).toArray()));
            }
            ScheduleRequest request = request(3, 2, trucks.toArray(TruckOptions[]::new));
            Schedule schedule = new EarliestFit().schedule(request);
            assertThat(ScheduleChecker.listViolations(request, schedule))
                    .as("seed %d", seed)
                    .isEmpty();
            assertThat(new EarliestFit().schedule(request)).as("seed %d", seed).isEqualTo(schedule);
        }
    }
}
