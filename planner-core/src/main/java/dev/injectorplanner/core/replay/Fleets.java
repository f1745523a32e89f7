package dev.injectorplanner.core.replay;

import dev.injectorplanner.core.replay.keeper.AgesAndSigns;
import dev.injectorplanner.core.replay.keeper.RuleFigures;
import dev.injectorplanner.core.replay.keeper.RuleSearch;
import dev.injectorplanner.core.replay.run.FleetRun;
import dev.injectorplanner.core.replay.run.Keeper;
import dev.injectorplanner.core.replay.run.Ledger;
import dev.injectorplanner.core.replay.scenario.FamilyTruth;
import dev.injectorplanner.core.replay.scenario.Scenario;
import dev.injectorplanner.core.replay.world.World;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntFunction;
import java.util.function.LongFunction;
import java.util.function.Supplier;

/** The fleets of a replay on the day planning begins, and threads to play them with. */
public final class Fleets implements AutoCloseable {
    private static final int RECORDED_WEEKS = 104;
    private static final double PRACTICE_SPREAD = 0.5;

    private final ExecutorService threads;
    private final List<FleetRun> starts;

    /** The fleets of a replay, all of one scenario. */
    Fleets(ReplayRequest request) {
        this(seed -> request.scenario(), request.fleets(), request.weeks(), request.seed(), request.threads());
    }

    /**
     * Plays each fleet up to the first day of planning under the shop's practice, its last two years on record.
     *
     * @param truths the truth of a fleet by its seed
     * @param fleets how many
     * @param weeks weeks of planning that follow
     * @param seed the same gives the same fleets
     * @param threads fleets played at once
     */
    public Fleets(LongFunction<Scenario> truths, int fleets, int weeks, long seed, int threads) {
        this.threads = Executors.newFixedThreadPool(threads);
        starts = forEach(fleets, fleet -> start(truths, seed * 1_000_003 + fleet, weeks));
    }

    private static FleetRun start(LongFunction<Scenario> truths, long seed, int weeks) {
        Scenario scenario = truths.apply(seed);
        World world = World.of(scenario, seed, weeks);
        FleetRun run = new FleetRun(world);
        Keeper practice = practice(scenario);
        run.playUntil(world.begin() - 7 * RECORDED_WEEKS, practice);
        run.beginRecords(seed);
        run.playUntil(world.begin(), practice);
        return run;
    }

    /** What an ordinary shop does: the set at a fixed age, failures as they come, a test now and then. */
    private static Keeper practice(Scenario scenario) {
        List<RuleFigures> figures = new ArrayList<>();
        for (FamilyTruth family : scenario.families()) {
            figures.add(new RuleFigures(
                    family.practiceKm(),
                    PRACTICE_SPREAD * family.practiceKm(),
                    RuleFigures.NEVER,
                    0,
                    60,
                    scenario.shop().testEveryKm(),
                    true));
        }
        return new AgesAndSigns(figures);
    }

    /** The fleets on the day planning begins; play copies of them. */
    public List<FleetRun> starts() {
        return starts;
    }

    /** Plays every fleet to its end under a policy: ledgers by fleet, then by family. */
    public List<List<Ledger>> play(Supplier<Keeper> keepers) {
        return forEach(starts.size(), fleet -> {
            FleetRun run = starts.get(fleet).copy(false);
            run.playUntil(run.end(), keepers.get());
            return run.ledgers();
        });
    }

    /** The best simple rules on these fleets, each family for itself; of a search that is stopped the best so far. */
    public RuleSearch.Found findRules(ReplayWatch watch) {
        int families = starts.get(0).ledgers().size();
        AtomicInteger steps = new AtomicInteger();
        return new RuleSearch(families, figures -> {
                    double[] cost = new double[families];
                    if (watch.stopped()) {
                        return cost; // the rest of a search that nobody waits for is not played
                    }
                    watch.progress("search of rules", steps.incrementAndGet(), 0);
                    for (List<Ledger> fleet : play(() -> new AgesAndSigns(figures))) {
                        for (int family = 0; family < families; family++) {
                            cost[family] += fleet.get(family).cost();
                        }
                    }
                    return cost;
                })
                .find();
    }

    /**
     * Plays every fleet under the planner; empty for those that were stopped.
     *
     * @param name what progress is told of
     * @param weeks of planning, from the first day on
     * @param after keeps the fleet from then to its end
     */
    public List<Optional<Ledger>> plan(
            Supplier<Keeper> planners, String name, int weeks, Supplier<Keeper> after, ReplayWatch watch) {
        AtomicInteger played = new AtomicInteger();
        int all = starts.size() * weeks;
        return forEach(starts.size(), fleet -> {
            FleetRun run = starts.get(fleet).copy(true);
            Keeper planner = planners.get();
            int end = run.today() + 7 * weeks;
            while (run.today() < end) {
                if (watch.stopped()) {
                    return Optional.empty();
                }
                run.playWeek(planner);
                watch.progress(name, played.incrementAndGet(), all);
            }
            run.playUntil(run.end(), after.get());
            return Optional.of(run.total());
        });
    }

    /** Something for each fleet, in their order. */
    public <R> List<R> forEach(int count, IntFunction<R> work) {
        List<Future<R>> futures = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int fleet = i;
            futures.add(threads.submit(() -> work.apply(fleet)));
        }
        List<R> results = new ArrayList<>();
        for (Future<R> future : futures) {
            results.add(finished(future));
        }
        return results;
    }

    private static <R> R finished(Future<R> future) {
        try {
            return future.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while a fleet was played", e);
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException cause
                    ? cause
                    : new IllegalStateException("a fleet could not be played", e);
        }
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }
}
