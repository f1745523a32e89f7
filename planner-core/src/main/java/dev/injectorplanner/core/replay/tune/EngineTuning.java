package dev.injectorplanner.core.replay.tune;

import dev.injectorplanner.core.plan.EngineFigures;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.replay.Comparison;
import dev.injectorplanner.core.replay.Fleets;
import dev.injectorplanner.core.replay.PolicyResult;
import dev.injectorplanner.core.replay.ReplayResult;
import dev.injectorplanner.core.replay.ReplayWatch;
import dev.injectorplanner.core.replay.keeper.AgesAndSigns;
import dev.injectorplanner.core.replay.keeper.PlannerKeeper;
import dev.injectorplanner.core.replay.keeper.RuleFigures;
import dev.injectorplanner.core.replay.keeper.RuleSearch;
import dev.injectorplanner.core.replay.run.FleetRun;
import dev.injectorplanner.core.replay.run.Keeper;
import dev.injectorplanner.core.replay.run.Ledger;
import dev.injectorplanner.core.replay.scenario.FamilyTruth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Chooses the engine's free figures by replay: one figure after another, each step kept only where its paired gain is more than
 * its standard error. What is found is then played on fresh fleets, beside the figures before and the simple rules, and is
 * chosen only where it is cheaper there too, since the best of many tries looks better than it is.
 *
 * <p>After its weeks under each policy every fleet is kept for two more years by one rule, the best ages and signs of the
 * search, and those years count as well: otherwise whoever renews little would look cheap on the last day.
 */
public final class EngineTuning {
    private static final List<String> RULES = List.of(
            ReplayResult.RUN_TO_FAILURE, ReplayResult.FIXED_INTERVAL, ReplayResult.THRESHOLDS, ReplayResult.SIGNS);

    private static final int AFTER_WEEKS = 104;

    private final TuningRequest request;
    private final Planner planner;
    private final ReplayWatch watch;
    private final List<List<RuleFigures>> rules = new ArrayList<>();
    private final List<FigureTrial> trials = new ArrayList<>();
    private int played;

    private EngineTuning(TuningRequest request, Planner planner, ReplayWatch watch) {
        this.request = request;
        this.planner = planner;
        this.watch = watch;
    }

    /** Figures with what each fleet came to under them. */
    private record Tried(EngineFigures figures, List<Ledger> fleets) {}

    /**
     * Chooses.
     *
     * @param planner used for every plan; one that may be used from several threads at once
     * @param watch told of progress, asked whether to stop
     */
    public static TuningResult run(TuningRequest request, Planner planner, ReplayWatch watch) {
        return new EngineTuning(request, planner, watch).run();
    }

    private TuningResult run() {
        EngineFigures before = request.policy().figures();
        EngineFigures found = before;
        try (Fleets search = fleets(2 * request.seed())) {
            findRules(search);
            Optional<Tried> start = play(search, before);
            if (start.isPresent()) {
                found = search(search, start.get()).figures();
            }
        }
        if (watch.stopped()) {
            return result(true, found, before, List.of());
        }
        try (Fleets fresh = fleets(2 * request.seed() + 1)) {
            List<PolicyResult> confirmed = confirm(fresh, before, found);
            boolean stopped = confirmed.isEmpty();
            boolean better = !stopped && confirmed.get(confirmed.size() - 1).difference() < 0;
            return result(stopped, found, better ? found : before, confirmed);
        }
    }

    private TuningResult result(
            boolean stopped, EngineFigures found, EngineFigures chosen, List<PolicyResult> policies) {
        return new TuningResult(
                request.scenario().words(),
                request.scenario().trucks(),
                request.fleets(),
                request.weeks(),
                request.seed(),
                stopped,
                request.policy().figures(),
                found,
                chosen,
                trials,
                policies);
    }

    private Fleets fleets(long seed) {
        return new Fleets(request.truths(), request.fleets(), request.weeks() + AFTER_WEEKS, seed, request.threads());
    }

    /** One figure after another; a figure that gains by a step takes one more in the same direction. */
    private Tried search(Fleets fleets, Tried start) {
        Tried best = start;
        for (EngineFigure step : EngineFigure.values()) {
            if (request.held().contains(step)) {
                continue;
            }
            for (EngineFigure.Direction way : EngineFigure.Direction.values()) {
                Tried before = best;
                best = walk(fleets, best, step, way);
                if (best != before) {
                    break; // what gained one way loses the other way
                }
            }
        }
        return best;
    }

    private Tried walk(Fleets fleets, Tried from, EngineFigure step, EngineFigure.Direction way) {
        Tried best = from;
        for (int steps = 0; steps < step.most() && !watch.stopped(); steps++) {
            Optional<EngineFigures> next = step.next(best.figures(), way);
            Optional<Tried> tried = next.flatMap(figures -> play(fleets, figures));
            if (tried.isEmpty()) {
                return best;
            }
            PairedGain gain = PairedGain.of(tried.get().fleets(), best.fleets());
            boolean kept = gain.isSure();
            trials.add(new FigureTrial(
                    tried.get().figures(), cost(tried.get().fleets()), gain.difference(), gain.error(), kept));
            if (!kept) {
                return best;
            }
            best = tried.get();
        }
        return best;
    }

    private static double cost(List<Ledger> fleets) {
        Ledger all = new Ledger();
        fleets.forEach(all::add);
        return 1_000 * all.cost() / all.km;
    }

    /** Every fleet under figures; empty where it was stopped. */
    private Optional<Tried> play(Fleets fleets, EngineFigures figures) {
        PlannerKeeper.Use use = PlannerKeeper.Use.standard(request.policy().withFigures(figures));
        int number = ++played;
        AtomicInteger weeks = new AtomicInteger();
        int all = request.fleets() * request.weeks();
        List<Optional<Ledger>> ledgers = fleets.forEach(request.fleets(), fleet -> {
            FleetRun run = fleets.starts().get(fleet).copy(true);
            Keeper keeper = new PlannerKeeper(planner, use);
            int end = run.today() + 7 * request.weeks();
            while (run.today() < end) {
                if (watch.stopped()) {
                    return Optional.<Ledger>empty();
                }
                run.playWeek(keeper);
                watch.progress("figures, try " + number, weeks.incrementAndGet(), all);
            }
            run.playUntil(run.end(), new AgesAndSigns(signs()));
            return Optional.of(run.total());
        });
        return ledgers.stream().allMatch(Optional::isPresent)
                ? Optional.of(new Tried(
                        figures, ledgers.stream().flatMap(Optional::stream).toList()))
                : Optional.empty();
    }

    /** Run to failure, interval, thresholds, and ages and signs that are best on the fleets of the search, by family. */
    private void findRules(Fleets fleets) {
        AtomicInteger steps = new AtomicInteger();
        int families = request.scenario().families().size();
        RuleSearch.Found found = new RuleSearch(families, figures -> {
                    double[] cost = new double[families];
                    if (watch.stopped()) {
                        return cost; // the rest of a search that nobody waits for is not played
                    }
                    watch.progress("search of rules", steps.incrementAndGet(), 0);
                    for (List<Ledger> fleet : fleets.play(() -> new AgesAndSigns(figures))) {
                        for (int family = 0; family < families; family++) {
                            cost[family] += fleet.get(family).cost();
                        }
                    }
                    return cost;
                })
                .find();
        rules.add(Collections.nCopies(families, RuleFigures.runToFailure()));
        rules.add(found.interval());
        rules.add(found.thresholds());
        rules.add(found.signs());
    }

    private List<RuleFigures> signs() {
        return rules.get(rules.size() - 1);
    }

    /** On fresh fleets: the rules, the figures before, the figures found. */
    private List<PolicyResult> confirm(Fleets fleets, EngineFigures before, EngineFigures found) {
        List<Comparison.Played> all = new ArrayList<>();
        List<String> families =
                request.scenario().families().stream().map(FamilyTruth::family).toList();
        for (int i = 0; i < rules.size(); i++) {
            List<RuleFigures> figures = rules.get(i);
            all.add(new Comparison.Played(RULES.get(i), RuleFigures.words(families, figures), totals(fleets, figures)));
        }
        Optional<Tried> was = play(fleets, before);
        Optional<Tried> is = found.equals(before) ? was : play(fleets, found);
        if (was.isEmpty() || is.isEmpty()) {
            return List.of();
        }
        Comparison.Played base = new Comparison.Played(
                TuningResult.BEFORE, before.words(), was.get().fleets());
        all.add(base);
        all.add(new Comparison.Played(
                TuningResult.FOUND, found.words(), is.get().fleets()));
        return Comparison.of(all, base);
    }

    private List<Ledger> totals(Fleets fleets, List<RuleFigures> figures) {
        return fleets.forEach(request.fleets(), fleet -> {
            FleetRun run = fleets.starts().get(fleet).copy(false);
            run.playUntil(run.today() + 7 * request.weeks(), new AgesAndSigns(figures));
            run.playUntil(run.end(), new AgesAndSigns(signs()));
            return run.total();
        });
    }
}
