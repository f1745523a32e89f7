package dev.injectorplanner.core.replay;

import dev.injectorplanner.core.replay.run.CostKind;
import dev.injectorplanner.core.replay.run.Ledger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.distribution.continuous.TDistribution;

/** Holds policies against one of them, fleet by fleet: each fleet had the same draws under both. */
public final class Comparison {
    private static final double UPPER = 0.975;

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
        Ledger all = new Ledger();
        double[] differences = new double[fleets];
        for (int f = 0; f < fleets; f++) {
            all.add(played.fleets().get(f));
            differences[f] = rate(played.fleets().get(f)) - rate(base.fleets().get(f));
        }
        double mean = mean(differences);
        double half = halfWidth(differences, mean);
        Map<CostKind, Double> kinds = new TreeMap<>();
        for (CostKind kind : CostKind.values()) {
            kinds.put(kind, 1_000 * all.cost(kind) / all.km);
        }
        int early = all.replaced - all.roadFailures;
        return new PolicyResult(
                played.policy(),
                played.settings(),
                rate(all),
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

    private static double rate(Ledger ledger) {
        return 1_000 * ledger.cost() / ledger.km;
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    /** Half of Student's 95 % interval of a mean; 0 for a single fleet, of which nothing can be said. */
    private static double halfWidth(double[] values, double mean) {
        int n = values.length;
        if (n < 2) {
            return 0;
        }
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        double error = Math.sqrt(squares / (n - 1) / n);
        return error * new TDistribution(n - 1.0).inverseCumulativeProbability(UPPER);
    }
}
