package dev.injectorplanner.core.schedule.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.schedule.Schedule.Stop;
import dev.injectorplanner.core.schedule.Schedule.Wish;
import dev.injectorplanner.core.schedule.ScheduleChecker;
import dev.injectorplanner.core.schedule.ScheduleRequest;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import dev.injectorplanner.core.schedule.WeekCapacity;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ExactSchedulerTest {
    private static final SearchLimits TO_THE_END = new SearchLimits(20, 0, 1, 1);

    private static Schedule solve(ScheduleRequest request, SearchLimits limits) {
        Schedule schedule = new ExactScheduler(limits).schedule(request);
        assertThat(ScheduleChecker.listViolations(request, schedule)).isEmpty();
        return schedule;
    }

    @Test
    void equalsTheBestOfAllChoicesOnSmallRequests() {
        for (int seed = 0; seed < 500; seed++) {
            ScheduleRequest request = SmallRequests.of(new Random(seed), 6);
            Schedule schedule = solve(request, TO_THE_END);
            Set<String> waived = new HashSet<>();
            int[] broken = new int[2];
            for (Schedule.BrokenWish wish : schedule.brokenWishes()) {
                waived.add(wish.truck() + " " + wish.wish());
                broken[wish.wish() == Wish.LATEST_WEEK ? 0 : 1]++;
            }
            double best = BruteForce.leastCost(request, waived);
            assertThat(schedule.cost()).as("cost, seed %d", seed).isCloseTo(best, within(1e-6));
            assertThat(schedule.bound()).as("bound, seed %d", seed).isLessThanOrEqualTo(best + 1e-9);
            assertThat(schedule.stop()).as("stop, seed %d", seed).isEqualTo(Stop.PROVEN);
            int[] most = BruteForce.mostWishes(request);
            assertThat(asked(request, Wish.LATEST_WEEK) - broken[0])
                    .as("latest weeks kept, seed %d", seed)
                    .isEqualTo(most[0]);
            assertThat(asked(request, Wish.PIN) - broken[1])
                    .as("pins kept, seed %d", seed)
                    .isEqualTo(most[1]);
        }
    }

    private static int asked(ScheduleRequest request, Wish wish) {
        return (int) request.trucks().stream()
                .filter(truck -> (wish == Wish.PIN ? truck.pinnedWeek() : truck.latestWeek()) != null)
                .count();
    }

    /** The bound alone, before any exact solving, is never above the best. */
    @Test
    void theBoundOfWhateverMultipliersIsBelowTheBest() {
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            ScheduleRequest request = SmallRequests.of(random, 6);
            Set<String> all = new HashSet<>();
            request.trucks()
                    .forEach(truck -> all.addAll(List.of(truck.truck() + " PIN", truck.truck() + " LATEST_WEEK")));
            double best = BruteForce.leastCost(request, all);
            Problem problem = new Problem(
                    request.trucks(), new boolean[request.trucks().size()], request.depots(), request.groups());
            Multipliers at = Multipliers.none(problem);
            for (double[] prices : List.of(at.truck(), at.bay(), at.group())) {
                for (int i = 0; i < prices.length; i++) {
                    prices[i] = Math.max(0, 300 * random.nextDouble() - 100);
                }
            }
            Relaxation relaxation = new Relaxation(problem, Workers.NONE, problem.low);
            BoundSearch search = new BoundSearch(problem, relaxation, Scope.whole(problem), at);
            for (int step = 0; step < 5; step++) {
                search.run(1, best);
                assertThat(search.bound()).as("seed %d", seed).isLessThanOrEqualTo(best + 1e-9);
            }
        }
    }

    @Test
    void sameAnswerAgainAndShuffledAndWithTwoThreads() {
        for (int seed = 0; seed < 3; seed++) {
            ScheduleRequest request = MiddleRequests.of(new Random(seed), 40, 6);
            SearchLimits little = new SearchLimits(0.05, 0, 1, 7);
            Schedule schedule = solve(request, little);
            assertThat(solve(request, little)).as("seed %d", seed).isEqualTo(schedule);
            assertThat(solve(request, new SearchLimits(0.05, 0, 2, 7)))
                    .as("seed %d", seed)
                    .isEqualTo(schedule);
            List<TruckOptions> shuffled = new ArrayList<>(request.trucks());
            Collections.shuffle(shuffled, new Random(seed));
            Schedule other =
                    solve(new ScheduleRequest(request.weeks(), shuffled, request.depots(), request.groups()), little);
            assertThat(new HashSet<>(other.choices())).as("seed %d", seed).isEqualTo(new HashSet<>(schedule.choices()));
            assertThat(other.cost()).isEqualTo(schedule.cost());
            assertThat(other.bound()).isEqualTo(schedule.bound());
        }
    }

    private static TruckOptions truck(String name, Integer latest, Integer pinned, double... costs) {
        List<VisitOption> options = new ArrayList<>();
        for (int week = 0; week < costs.length; week++) {
            options.add(new VisitOption(week, List.of(1), 6, 1, costs[week]));
        }
        return new TruckOptions(name, "N", null, options, latest, pinned);
    }

    private static ScheduleRequest oneVisitAWeek(TruckOptions... trucks) {
        return new ScheduleRequest(
                3,
                List.of(trucks),
                List.of(
                        new WeekCapacity("N", 0, 8, 0, 0, 5),
                        new WeekCapacity("N", 1, 8, 0, 0, 5),
                        new WeekCapacity("N", 2, 8, 0, 0, 5)),
                List.of());
    }

    @Test
    void ofTwoPinsOnOneRoomOneIsReportedAndTheRestIsPlanned() {
        Schedule schedule = solve(
                oneVisitAWeek(
                        truck("A", null, 1, -10, -10, -10),
                        truck("B", null, 1, -10, -30, -10),
                        truck("C", null, null, -50, 0, 0)),
                TO_THE_END);
        assertThat(schedule.brokenWishes())
                .containsExactly(new Schedule.BrokenWish(
                        "A", Wish.PIN, 1, "the labour hours of week 1 are taken by B, also pinned or due"));
        assertThat(schedule.cost()).isCloseTo(-30 - 50 - 10, within(1e-9));
    }

    @Test
    void aTruckThatMustComeDoesSoThoughItCosts() {
        Schedule schedule =
                solve(oneVisitAWeek(truck("A", 0, null, 40, 20, 5), truck("B", null, null, -30, -10, -9)), TO_THE_END);
        assertThat(schedule.brokenWishes()).isEmpty();
        assertThat(schedule.cost()).isCloseTo(40 - 10, within(1e-9));
    }

    @Test
    void aPinWithoutAVisitThatWeekSaysSo() {
        Schedule schedule = solve(oneVisitAWeek(truck("A", null, 2, -10, -20)), TO_THE_END);
        assertThat(schedule.brokenWishes())
                .containsExactly(new Schedule.BrokenWish(
                        "A",
                        Wish.PIN,
                        2,
                        "no visit is possible then: the truck cannot be spared, or parts come later"));
        assertThat(schedule.cost()).isCloseTo(-20, within(1e-9));
    }

    @Test
    void aPinAfterTheLatestWeekGivesWay() {
        Schedule schedule = solve(oneVisitAWeek(truck("A", 0, 2, -10, -20, -30)), TO_THE_END);
        assertThat(schedule.brokenWishes())
                .containsExactly(new Schedule.BrokenWish("A", Wish.PIN, 2, "it must come in by week 0 of the plan"));
        assertThat(schedule.cost()).isCloseTo(-10, within(1e-9));
    }

    @Test
    void aTruckLeftOutIsToldWhatStoppedIt() {
        Schedule schedule = solve(
                oneVisitAWeek(truck("A", null, null, -10), truck("B", null, null, -30), truck("C", null, null, 5)),
                TO_THE_END);
        assertThat(schedule.notPlaced())
                .containsExactly(
                        new Schedule.NotPlaced(
                                "A",
                                "other trucks save more in the 1 visit it could have; limited by: labour hours in 1"),
                        new Schedule.NotPlaced("C", "deferring it costs less than any of its visits"));
    }

    @Test
    void theClockStopsIt() {
        Schedule schedule = new ExactScheduler(TO_THE_END, () -> 0).schedule(MiddleRequests.of(new Random(1), 40, 6));
        assertThat(schedule.stop()).isEqualTo(Stop.CLOCK);
    }

    @Test
    void nothingToPlan() {
        Schedule schedule = solve(new ScheduleRequest(4, List.of(), List.of(), List.of()), TO_THE_END);
        assertThat(schedule.cost()).isZero();
        assertThat(schedule.gap()).isZero();
    }
}
