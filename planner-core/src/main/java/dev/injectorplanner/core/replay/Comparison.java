package dev.injectorplanner.core.replay;

import dev.injectorplanner.core.replay.run.CostKind;
import dev.injectorplanner.core.replay.run.Ledger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Holds policies against one of them, fleet by fleet: each fleet had the same draws under both. */
public final class Comparison {
    /** One policy's totals by fleet. */
    public record Played(String policy, String settings, List<Ledger> fleets) {}

    private Comparison() {}

    /** Each policy's figures, its differences to the one that is the base. */
    public static List<PolicyResult> of(List<Played> policies, Played base) {
        List<PolicyResult> results = new ArrayList<>();
        policies.forEach(played -> results.add(of(played, base)));
        return results;
    }

    private static PolicyResult of(Played played, Played base) {
        int fleets = played.fleets().size();
        Ledger all = Ledger.sum(played.fleets());
        PairedGain gain = PairedGain.of(played.fleets(), base.fleets());
        double mean = gain.difference();
        double half = gain.halfWidth();
        Map<CostKind, Double> kinds = new TreeMap<>();
        for (CostKind kind : CostKind.values()) {
            kinds.put(kind, 1_000 * all.cost(kind) / all.km);
        }
        int early = all.replaced - all.roadFailures;
        return new PolicyResult(
                played.policy(),
                played.settings(),
                all.costPer1000Km(),
                kinds,
                mean,
                mean - half,
                mean + half,
                (double) all.roadFailures / fleets,
                (double) all.plannedVisits / fleets,
                (double) all.tests / fleets,
                (double) all.testsAlone / fleets,
                (double) all.replaced / fleets,
                (double) all.caught / fleets,
                all.hours / fleets,
                all.coolantLitres / fleets,
                early > 0 ? all.thrownAwayKm / early : 0,
                all.km / 1_000 / fleets);
    }
}
