package dev.injectorplanner.core.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.replay.keeper.AgesAndSigns;
import dev.injectorplanner.core.replay.keeper.Clairvoyant;
import dev.injectorplanner.core.replay.keeper.RuleFigures;
import dev.injectorplanner.core.replay.run.CostKind;
import dev.injectorplanner.core.replay.run.FleetRun;
import dev.injectorplanner.core.replay.run.Keeper;
import dev.injectorplanner.core.replay.scenario.Scenario;
import dev.injectorplanner.core.replay.scenario.Scenarios;
import dev.injectorplanner.core.replay.world.TruckWorld;
import dev.injectorplanner.core.replay.world.World;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold in every replay, whatever the figures. */
class ReplayLawsTest {
    private static final Planner PLANNER = new Planner(new ExactScheduler(new SearchLimits(1, 1e-3, 1, 1)));

    static List<Scenario> scenarios() {
        return Scenarios.list();
    }

    private static ReplayResult rules(Scenario scenario, int threads) {
        return Replay.run(new ReplayRequest(scenario, 3, 1, 5, List.of(), threads), PLANNER, ReplayWatch.NONE);
    }

    @Test
    void the_same_seed_gives_the_same_result_on_any_number_of_threads() {
        Scenario scenario = Scenarios.getScenario("mixed").withTrucks(12);
        assertThat(rules(scenario, 1)).isEqualTo(rules(scenario, 3));
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void no_rule_comes_near_the_clairvoyant_and_each_kind_of_rule_betters_the_one_before(Scenario scenario) {
        ReplayResult result = rules(scenario.withTrucks(12), 2);
        double failing = cost(result, ReplayResult.RUN_TO_FAILURE);
        double interval = cost(result, ReplayResult.FIXED_INTERVAL);
        double thresholds = cost(result, ReplayResult.THRESHOLDS);
        double signs = cost(result, ReplayResult.SIGNS);
        // each search begins where the one before ended; families share hours and parts a little, hence the per mille
        assertThat(interval).isLessThanOrEqualTo(failing * 1.001);
        assertThat(thresholds).isLessThanOrEqualTo(interval * 1.001);
        assertThat(signs).isLessThanOrEqualTo(thresholds * 1.001);
        assertThat(cost(result, ReplayResult.CLAIRVOYANT)).isLessThan(0.9 * signs);
    }

    private static double cost(ReplayResult result, String policy) {
        return result.findPolicy(policy).orElseThrow().costPer1000Km();
    }

    @Test
    void kinds_of_cost_add_up() {
        for (PolicyResult policy :
                rules(Scenarios.getScenario("ageing").withTrucks(15), 2).policies()) {
            double sum = policy.costKinds().values().stream()
                    .mapToDouble(Double::doubleValue)
                    .sum();
            assertThat(policy.costKinds()).hasSize(CostKind.values().length);
            assertThat(sum).as(policy.policy()).isCloseTo(policy.costPer1000Km(), within(1e-9 * sum));
        }
    }

    @Test
    void where_failures_come_by_chance_no_age_pays() {
        ReplayResult result = rules(Scenarios.getScenario("by-chance"), 2);
        assertThat(result.findPolicy(ReplayResult.FIXED_INTERVAL).orElseThrow().difference())
                .isZero();
        assertThat(cost(result, ReplayResult.RUN_TO_FAILURE))
                .isEqualTo(cost(result, ReplayResult.FIXED_INTERVAL), within(1e-9));
    }

    /**
     * Run to failure by hand: with a constant hazard each cylinder fails once in its mean life of km of wear, whatever its age.
     * Trucks wear by 1/exp(0.12 z), idlers (a tenth) 1.35 times as fast: on average 1.035 x exp(0.12^2 / 2) km of wear a km.
     */
    @Test
    void failures_by_chance_come_at_their_rate() {
        ReplayResult result = Replay.run(
                new ReplayRequest(Scenarios.getScenario("by-chance"), 30, 2, 11, List.of(), 2),
                PLANNER,
                ReplayWatch.NONE);
        PolicyResult failing = result.findPolicy(ReplayResult.RUN_TO_FAILURE).orElseThrow();
        double wear = 1.035 * Math.exp(0.5 * 0.12 * 0.12);
        double expected = failing.thousandKm() * 1_000 * 8 * wear / 420_000;
        double error = Math.sqrt(expected / 30); // Poisson, 30 fleets; trucks' own wear adds some
        assertThat(failing.roadFailures()).isCloseTo(expected, within(5 * error));
    }

    @Test
    void every_policy_meets_the_same_fleet_and_the_same_lives() {
        World world = World.of(Scenarios.getScenario("mixed").withTrucks(6), 3, 52);
        World again = World.of(Scenarios.getScenario("mixed").withTrucks(6), 3, 52);
        FleetRun one = new FleetRun(world);
        one.playUntil(world.end(), failedOnly(2));
        FleetRun other = new FleetRun(again);
        other.playUntil(again.end(), new Clairvoyant(14, 200));
        for (int t = 0; t < 6; t++) {
            TruckWorld first = world.trucks().get(t);
            TruckWorld second = again.trucks().get(t);
            assertThat(first.kmOn(world.end())).isEqualTo(second.kmOn(world.end()));
            for (int c = 0; c < first.cylinders(); c++) {
                assertThat(first.unit(c, 4).lifeKm())
                        .isEqualTo(second.unit(c, 4).lifeKm());
                assertThat(first.balance(c, first.unit(c, 1), 1_000, 20_500))
                        .isEqualTo(second.balance(c, second.unit(c, 1), 1_000, 20_500));
            }
        }
    }

    private static Keeper failedOnly(int families) {
        return new AgesAndSigns(Collections.nCopies(families, RuleFigures.runToFailure()));
    }

    @Test
    void records_tell_nothing_of_what_is_to_come() {
        World world = World.of(Scenarios.getScenario("ageing").withTrucks(20), 9, 104);
        FleetRun run = new FleetRun(world);
        run.beginRecords(9);
        run.playUntil(world.begin(), failedOnly(2));
        FleetSnapshot before = run.snapshot(run.today());
        LocalDate today = LocalDate.ofEpochDay(run.today());
        assertThat(before.readings())
                .isNotEmpty()
                .allMatch(row -> day(row.takenAt()).isBefore(today));
        assertThat(before.faults())
                .isNotEmpty()
                .allMatch(row -> day(row.seenAt()).isBefore(today));
        assertThat(before.injectors()).allMatch(row -> row.fittedOn().isBefore(today));
        assertThat(before.trucks())
                .allMatch(row ->
                        row.outOfServiceOn() == null || !row.outOfServiceOn().isAfter(today.plusDays(182)));
        // what was noted by a day does not depend on what is decided after it
        FleetRun later = run.copy(true);
        later.playUntil(world.begin() + 70, new Clairvoyant(14, 100));
        assertThat(run.snapshot(run.today())).isEqualTo(before);
        assertThat(later.snapshot(later.today()).readings()).containsAll(before.readings());
        assertThat(later.snapshot(later.today()).faults()).containsAll(before.faults());
        // a fitted row is the same for an injector that fails tomorrow and for one that lasts
        assertThat(before.injectors().stream().filter(row -> row.removedOn() == null))
                .allMatch(row -> row.found() == null && row.serial() == null && row.calibrationCode() == null);
    }

    private static LocalDate day(java.time.Instant moment) {
        return moment.atZone(java.time.ZoneOffset.UTC).toLocalDate();
    }

    /** One value over its limit is false more often than not, as fleets report: checked on a shop that tests often. */
    @Test
    void most_single_balance_values_over_their_limit_are_false() {
        World world = World.of(Scenarios.getScenario("mixed").withTrucks(120), 21, 104);
        AtomicInteger over = new AtomicInteger();
        AtomicInteger defect = new AtomicInteger();
        for (TruckWorld truck : world.trucks()) {
            for (int c = 0; c < truck.cylinders(); c++) {
                for (int day = truck.firstDay() + 60; day < world.end(); day += 60) {
                    double age = truck.wearSince(truck.kmOn(truck.firstDay()), day);
                    if (age < truck.unit(c, 0).lifeKm()
                            && age < 220_000
                            && Math.abs(truck.balance(c, truck.unit(c, 0), age, day)) > 4) {
                        over.incrementAndGet();
                        defect.addAndGet(age > truck.unit(c, 0).defectKm() ? 1 : 0);
                    }
                }
            }
        }
        assertThat((double) defect.get() / over.get()).isBetween(0.2, 0.5);
    }

    @Test
    void a_replay_that_is_stopped_compares_what_was_finished() {
        ReplayWatch stop = new ReplayWatch() {
            @Override
            public boolean stopped() {
                return true;
            }
        };
        ReplayResult result = Replay.run(
                new ReplayRequest(Scenarios.getScenario("small-fleet"), 2, 1, 5, List.of(), 1), PLANNER, stop);
        assertThat(result.stopped()).isTrue();
        assertThat(result.policies()).isEmpty();
        assertThat(result.fleets()).isZero();
    }

    @Test
    void tests_of_a_shop_stand_in_the_records_of_all_cylinders() {
        World world = World.of(Scenarios.getScenario("v8-wear").withTrucks(3), 2, 52);
        FleetRun run = new FleetRun(world);
        run.beginRecords(2);
        run.playUntil(
                world.begin(),
                new AgesAndSigns(List.of(new RuleFigures(200_000, 0, RuleFigures.NEVER, 0, 60, 40_000, true))));
        FleetSnapshot snapshot = run.snapshot(run.today());
        assertThat(snapshot.cylinderTests().stream().map(CylinderTest::cylinder).distinct())
                .containsExactlyInAnyOrder(1, 2, 3, 4, 5, 6, 7, 8);
        assertThat(snapshot.injectors().stream()
                        .filter(row -> row.removedOn() == null)
                        .map(FittedInjector::cylinder))
                .hasSize(24);
    }
}
