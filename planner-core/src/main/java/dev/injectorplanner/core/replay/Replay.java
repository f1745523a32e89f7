package dev.injectorplanner.core.replay;

import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.replay.keeper.AgesAndSigns;
import dev.injectorplanner.core.replay.keeper.Clairvoyant;
import dev.injectorplanner.core.replay.keeper.PlannerKeeper;
import dev.injectorplanner.core.replay.keeper.RuleFigures;
import dev.injectorplanner.core.replay.keeper.RuleSearch;
import dev.injectorplanner.core.replay.run.Keeper;
import dev.injectorplanner.core.replay.run.Ledger;
import dev.injectorplanner.core.replay.scenario.FamilyTruth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * Plays years of made-up fleets under several policies. Each fleet is played up to the same day under an ordinary shop's
 * practice, then once more for each policy, with the same lives, noise and delays: what differs is what was decided.
 */
public final class Replay {
    private static final int[] CLAIRVOYANT_LEAD_DAYS = {14, 21, 28, 42};
    private static final int[] CLAIRVOYANT_ALONG_DAYS = {14, 56, 112, 182, 364, 728};

    private final ReplayRequest request;
    private final Planner planner;
    private final ReplayWatch watch;

    private Replay(ReplayRequest request, Planner planner, ReplayWatch watch) {
        this.request = request;
        this.planner = planner;
        this.watch = watch;
    }

    /**
     * Replays.
     *
     * @param planner used for every plan; one that may be used from several threads at once
     * @param watch told of progress, asked whether to stop
     */
    public static ReplayResult run(ReplayRequest request, Planner planner, ReplayWatch watch) {
        return new Replay(request, planner, watch).run();
    }

    private ReplayResult run() {
        try (Fleets fleets = new Fleets(request)) {
            int families = request.scenario().families().size();
            RuleSearch.Found found = fleets.findRules(watch);
            if (watch.stopped()) {
                return result(List.of(), List.of());
            }
            List<Comparison.Played> played = new ArrayList<>();
            played.add(rule(
                    fleets, ReplayResult.RUN_TO_FAILURE, Collections.nCopies(families, RuleFigures.runToFailure())));
            played.add(rule(fleets, ReplayResult.FIXED_INTERVAL, found.interval()));
            played.add(rule(fleets, ReplayResult.THRESHOLDS, found.thresholds()));
            played.add(rule(fleets, ReplayResult.SIGNS, found.signs()));
            List<Integer> finished =
                    new ArrayList<>(IntStream.range(0, request.fleets()).boxed().toList());
            for (PlannerKeeper.Use use : request.planners()) {
                List<Optional<Ledger>> ledgers = plan(fleets, use);
                finished.removeIf(fleet -> ledgers.get(fleet).isEmpty());
                played.add(new Comparison.Played(
                        use.name(),
                        "",
                        ledgers.stream()
                                .map(ledger -> ledger.orElseGet(Ledger::new))
                                .toList()));
            }
            played.add(clairvoyant(fleets));
            return result(played, finished);
        }
    }

    private ReplayResult result(List<Comparison.Played> played, List<Integer> finished) {
        List<Comparison.Played> whole = played.stream()
                .map(each -> new Comparison.Played(
                        each.policy(),
                        each.settings(),
                        finished.stream().map(each.fleets()::get).toList()))
                .toList();
        return new ReplayResult(
                request.scenario().name(),
                request.scenario().words(),
                finished.size(),
                request.scenario().trucks(),
                request.years(),
                request.seed(),
                finished.size() < request.fleets(),
                finished.isEmpty() ? List.of() : Comparison.of(whole, whole.get(1)));
    }

    private Comparison.Played rule(Fleets fleets, String name, List<RuleFigures> figures) {
        return played(fleets, name, words(figures), () -> new AgesAndSigns(figures));
    }

    private String words(List<RuleFigures> figures) {
        return RuleFigures.words(
                request.scenario().families().stream().map(FamilyTruth::family).toList(), figures);
    }

    private static Comparison.Played played(Fleets fleets, String name, String words, Supplier<Keeper> keepers) {
        List<Ledger> totals = fleets.play(keepers).stream().map(Ledger::sum).toList();
        return new Comparison.Played(name, words, totals);
    }

    private Comparison.Played clairvoyant(Fleets fleets) {
        Comparison.Played best = null;
        for (int lead : CLAIRVOYANT_LEAD_DAYS) {
            for (int along : CLAIRVOYANT_ALONG_DAYS) {
                String words = lead + " days before a failure, along what fails within " + along + " days";
                Comparison.Played tried = played(
                        fleets, ReplayResult.CLAIRVOYANT, words, () -> new Clairvoyant(lead, Math.max(lead, along)));
                best = best == null || cost(tried) < cost(best) ? tried : best;
            }
        }
        return Objects.requireNonNull(best, "no clairvoyant was tried");
    }

    private static double cost(Comparison.Played played) {
        return Ledger.sum(played.fleets()).cost();
    }

    /** Each fleet under the planner; none for those that were stopped. */
    private List<Optional<Ledger>> plan(Fleets fleets, PlannerKeeper.Use use) {
        Supplier<Keeper> planners = () -> new PlannerKeeper(planner, use);
        return fleets.plan(planners, use.name(), request.weeks(), planners, watch);
    }
}
