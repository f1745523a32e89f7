package dev.injectorplanner.core.replay.calibrate;

import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.plan.PlanningFigures;
import dev.injectorplanner.core.replay.Comparison;
import dev.injectorplanner.core.replay.Fleets;
import dev.injectorplanner.core.replay.PairedGain;
import dev.injectorplanner.core.replay.PolicyResult;
import dev.injectorplanner.core.replay.ReplayResult;
import dev.injectorplanner.core.replay.ReplayWatch;
import dev.injectorplanner.core.replay.keeper.AgesAndSigns;
import dev.injectorplanner.core.replay.keeper.PlannerKeeper;
import dev.injectorplanner.core.replay.keeper.RuleFigures;
import dev.injectorplanner.core.replay.keeper.RuleSearch;
import dev.injectorplanner.core.replay.run.FleetRun;
import dev.injectorplanner.core.replay.run.Ledger;
import dev.injectorplanner.core.replay.scenario.FamilyTruth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Chooses the planning figures by replay: one figure after another, each step kept only where its paired gain is more than its
 * standard error. What is found is then played on fresh fleets, beside the figures before and the simple rules, and is chosen
 * only where it gains more than two standard errors there, since the best of many tries looks better than it is.
 *
 * <p>After its weeks under each policy every fleet is kept for two more years by one rule, the best ages and signs of the
 * search, and those years count as well: otherwise whoever renews little would look cheap on the last day.
 */
public final class Calibration {
    private static final List<String> RULES = List.of(
            ReplayResult.RUN_TO_FAILURE, ReplayResult.FIXED_INTERVAL, ReplayResult.THRESHOLDS, ReplayResult.SIGNS);

    private static final int AFTER_WEEKS = 104;

    /** Standard errors that a step must gain for the search to go on from it, and that what it found must gain on fresh fleets. */
    private static final double TO_GO_ON = 1;

    private static final double TO_BELIEVE = 2;

    private final CalibrationRequest request;
    private final Planner planner;
    private final ReplayWatch watch;
    private final List<List<RuleFigures>> rules = new ArrayList<>();
    private final List<FigureTrial> trials = new ArrayList<>();
    private int played;

    private Calibration(CalibrationRequest request, Planner planner, ReplayWatch watch) {
        this.request = request;
        this.planner = planner;
        this.watch = watch;
    }

    /** Figures with what each fleet came to under them. */
    private record Tried(PlanningFigures figures, List<Ledger> fleets) {}

    /**
     * Chooses.
     *
     * @param planner used for every plan; one that may be used from several threads at once
     * @param watch told of progress, asked whether to stop
     */
    public static CalibrationResult run(CalibrationRequest request, Planner planner, ReplayWatch watch) {
        return new Calibration(request, planner, watch).run();
    }

    private CalibrationResult run() {
        PlanningFigures before = request.policy().figures();
        PlanningFigures found = before;
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
            Optional<CalibrationResult> confirmed = confirm(fresh, before, found);
            return confirmed.isPresent() ? confirmed.get() : result(true, found, before, List.of());
        }
    }

    private CalibrationResult result(
            boolean stopped, PlanningFigures found, PlanningFigures chosen, List<PolicyResult> policies) {
        return new CalibrationResult(
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

    /** One figure after another, by steps; where no step gains, once by a leap and on from there. */
    private Tried search(Fleets fleets, Tried start) {
        Tried best = start;
        for (PlanningFigure figure : PlanningFigure.values()) {
            if (!request.held().contains(figure)) {
                Tried stepped = byStep(fleets, best, figure);
                best = stepped.equals(best) ? byLeap(fleets, best, figure) : stepped;
            }
        }
        return best;
    }

    private Tried byStep(Fleets fleets, Tried from, PlanningFigure figure) {
        for (PlanningFigure.Direction way : PlanningFigure.Direction.values()) {
            Tried walked = from;
            for (int steps = 0; steps < figure.most(); steps++) {
                Tried next = better(fleets, walked, figure.next(walked.figures(), way));
                if (next.equals(walked)) {
                    break;
                }
                walked = next;
            }
            if (!walked.equals(from)) {
                return walked; // what gained one way loses the other way
            }
        }
        return from;
    }

    private Tried byLeap(Fleets fleets, Tried from, PlanningFigure figure) {
        for (PlanningFigure.Direction way : PlanningFigure.Direction.values()) {
            Tried leapt = better(fleets, from, figure.leap(from.figures(), way));
            if (!leapt.equals(from)) {
                return byStep(fleets, leapt, figure);
            }
        }
        return from;
    }

    /** What is surely cheaper, of the best so far and what is tried; the best so far where nothing is, or it was stopped. */
    private Tried better(Fleets fleets, Tried best, Optional<PlanningFigures> next) {
        Optional<Tried> tried = watch.stopped() ? Optional.empty() : next.flatMap(figures -> play(fleets, figures));
        if (tried.isEmpty()) {
            return best;
        }
        PairedGain gain = PairedGain.of(tried.get().fleets(), best.fleets());
        boolean kept = gain.isSure(TO_GO_ON);
        trials.add(new FigureTrial(
                tried.get().figures(),
                Ledger.sum(tried.get().fleets()).costPer1000Km(),
                gain.difference(),
                gain.error(),
                kept));
        return kept ? tried.get() : best;
    }

    /** Every fleet under figures; empty where it was stopped. */
    private Optional<Tried> play(Fleets fleets, PlanningFigures figures) {
        PlannerKeeper.Use use = PlannerKeeper.Use.standard(request.policy().withFigures(figures));
        List<Optional<Ledger>> ledgers = fleets.plan(
                () -> new PlannerKeeper(planner, use),
                "figures, try " + ++played,
                request.weeks(),
                () -> new AgesAndSigns(signs()),
                watch);
        return ledgers.stream().allMatch(Optional::isPresent)
                ? Optional.of(new Tried(
                        figures, ledgers.stream().flatMap(Optional::stream).toList()))
                : Optional.empty();
    }

    /** Run to failure, interval, thresholds, and ages and signs that are best on the fleets of the search, by family. */
    private void findRules(Fleets fleets) {
        RuleSearch.Found found = fleets.findRules(watch);
        rules.add(Collections.nCopies(found.interval().size(), RuleFigures.runToFailure()));
        rules.add(found.interval());
        rules.add(found.thresholds());
        rules.add(found.signs());
    }

    private List<RuleFigures> signs() {
        return rules.get(rules.size() - 1);
    }

    /** On fresh fleets: the rules, the figures before, the figures found; empty where it was stopped. */
    private Optional<CalibrationResult> confirm(Fleets fleets, PlanningFigures before, PlanningFigures found) {
        Optional<Tried> was = play(fleets, before);
        Optional<Tried> is = found.equals(before) ? was : play(fleets, found);
        if (was.isEmpty() || is.isEmpty()) {
            return Optional.empty();
        }
        List<Comparison.Played> all = new ArrayList<>();
        List<String> families =
                request.scenario().families().stream().map(FamilyTruth::family).toList();
        for (int i = 0; i < rules.size(); i++) {
            List<RuleFigures> figures = rules.get(i);
            all.add(new Comparison.Played(RULES.get(i), RuleFigures.words(families, figures), totals(fleets, figures)));
        }
        Comparison.Played base = new Comparison.Played(
                CalibrationResult.BEFORE, before.words(), was.get().fleets());
        all.add(base);
        all.add(new Comparison.Played(
                CalibrationResult.FOUND, found.words(), is.get().fleets()));
        boolean sure = PairedGain.of(is.get().fleets(), was.get().fleets()).isSure(TO_BELIEVE);
        return Optional.of(result(false, found, sure ? found : before, Comparison.of(all, base)));
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
