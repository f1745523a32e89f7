package dev.injectorplanner.core.replay;

import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.replay.keeper.PlannerKeeper;
import dev.injectorplanner.core.replay.keeper.PlannerKeeper.Tests;
import dev.injectorplanner.core.replay.keeper.PlannerKeeper.WhileOpen;
import dev.injectorplanner.core.replay.run.CostKind;
import dev.injectorplanner.core.replay.scenario.Scenario;
import dev.injectorplanner.core.replay.scenario.Scenarios;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The planner against simple rules and a clairvoyant, cost per 1,000 km.
 *
 * <p>{@code mvn -o -pl planner-core -Pbenchmark test -Dtest=ReplayBenchmark -Dreplay.scenario=mixed,v8-wear}. Settings:
 * {@code replay.scenario} (names by comma, or all), {@code replay.fleets}, {@code replay.trucks}, {@code replay.years},
 * {@code replay.seed}, {@code replay.weeks} (horizon of the plans), {@code replay.threads}, {@code replay.open} (what else is
 * done while a truck is open: FAILED_ONLY, PLANNED_SOON, ADVISED), {@code replay.planners} (as, due, none by comma: what is done
 * with the tests of the plan; empty for the rules alone).
 */
@Tag("benchmark")
class ReplayBenchmark {
    private static final int FLEETS = Integer.getInteger("replay.fleets", 8);
    private static final int TRUCKS = Integer.getInteger("replay.trucks", 0);
    private static final int YEARS = Integer.getInteger("replay.years", 2);
    private static final int WEEKS = Integer.getInteger("replay.weeks", 26);
    private static final int THREADS = Integer.getInteger("replay.threads", 2);
    private static final long SEED = Long.getLong("replay.seed", 7);
    private static final String OPEN = System.getProperty("replay.open", "ADVISED");
    private static final String PLANNERS = System.getProperty("replay.planners", "as");
    private static final SearchLimits LIMITS = new SearchLimits(2, 5e-4, 1, 1);

    @Test
    void cost_per_thousand_km() {
        for (Scenario scenario : scenarios()) {
            Scenario sized = TRUCKS > 0 ? scenario.withTrucks(TRUCKS) : scenario;
            long start = System.nanoTime();
            ReplayResult result = Replay.run(
                    new ReplayRequest(sized, FLEETS, YEARS, SEED, uses(), THREADS),
                    new Planner(new ExactScheduler(LIMITS)),
                    watch(start));
            print(result, (System.nanoTime() - start) / 1e9);
        }
    }

    private static List<Scenario> scenarios() {
        String names = System.getProperty("replay.scenario", "mixed");
        if (names.equals("all")) {
            return Scenarios.list();
        }
        return List.of(names.split(",")).stream().map(Scenarios::getScenario).toList();
    }

    private static List<PlannerKeeper.Use> uses() {
        Policy policy = Policy.standard().withWeeks(WEEKS);
        WhileOpen open = WhileOpen.valueOf(OPEN);
        List<PlannerKeeper.Use> uses = new ArrayList<>();
        for (String name : PLANNERS.split(",")) {
            switch (name) {
                case "as" -> uses.add(new PlannerKeeper.Use("planner", policy, Tests.AS_PLANNED, open));
                case "due" ->
                    uses.add(new PlannerKeeper.Use("planner, tests only when due", policy, Tests.WHEN_DUE, open));
                case "none" -> uses.add(new PlannerKeeper.Use("planner, no tests", policy, Tests.NONE, open));
                default -> {}
            }
        }
        return uses;
    }

    /** Tells on standard error how far it is, each tenth of the way. */
    private static ReplayWatch watch(long start) {
        return new ReplayWatch() {
            @Override
            public void progress(String what, int done, int all) {
                if (all > 0 && done % Math.max(1, all / 10) == 0) {
                    System.err.printf(
                            Locale.ROOT,
                            "%s: %d of %d weeks, %.0f s%n",
                            what,
                            done,
                            all,
                            (System.nanoTime() - start) / 1e9);
                }
            }
        };
    }

    private static void print(ReplayResult result, double seconds) {
        System.out.printf(
                Locale.ROOT,
                "%n%s: %s%n%d fleets of %d trucks, %d years, seed %d, horizon %d weeks, while open %s; %.0f s, load %.1f%n",
                result.scenario(),
                result.words(),
                result.fleets(),
                result.trucks(),
                result.years(),
                result.seed(),
                WEEKS,
                OPEN,
                seconds,
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
        System.out.printf(
                Locale.ROOT,
                "%-30s %8s %24s %7s %8s %6s %6s %7s %7s %7s %9s%n",
                "a fleet",
                "per 1000",
                "against best fixed",
                "closed",
                "failures",
                "visits",
                "tests",
                "(alone)",
                "renewed",
                "hours",
                "km wasted");
        for (PolicyResult each : result.policies()) {
            System.out.printf(
                    Locale.ROOT,
                    "%-30s %8.1f %+7.1f [%+6.1f, %+6.1f] %6.0f%% %8.1f %6.0f %6.0f %7.0f %7.0f %7.0f %9.0f%n",
                    each.policy(),
                    each.costPer1000Km(),
                    each.difference(),
                    each.low(),
                    each.high(),
                    100 * result.shareClosed(each.policy()),
                    each.roadFailures(),
                    each.plannedVisits(),
                    each.tests(),
                    each.testsAlone(),
                    each.replaced(),
                    each.hours(),
                    each.thrownAwayKm());
        }
        kinds(result);
    }

    private static void kinds(ReplayResult result) {
        System.out.printf(Locale.ROOT, "%-30s", "per 1,000 km by kind");
        for (CostKind kind : CostKind.values()) {
            System.out.printf(Locale.ROOT, " %13s", kind.words());
        }
        System.out.println();
        for (PolicyResult each : result.policies()) {
            System.out.printf(Locale.ROOT, "%-30s", each.policy());
            for (CostKind kind : CostKind.values()) {
                System.out.printf(Locale.ROOT, " %13.2f", each.costKinds().getOrDefault(kind, 0.0));
            }
            System.out.println();
        }
        result.policies().stream()
                .filter(each -> !each.settings().isEmpty())
                .forEach(each -> System.out.println("  " + each.policy() + ": " + each.settings()));
    }
}
