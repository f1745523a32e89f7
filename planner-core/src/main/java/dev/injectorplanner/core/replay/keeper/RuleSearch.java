package dev.injectorplanner.core.replay.keeper;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * Finds the cheapest figures of a rule in hindsight, on the very fleets that they are then judged on: each family for
 * itself, since one hardly touches the other. Grids and sweeps, so that the same fleets give the same figures.
 */
public final class RuleSearch {
    private static final double[] TRIGGERS_KM = {
        40_000,
        60_000,
        80_000,
        100_000,
        120_000,
        140_000,
        160_000,
        180_000,
        200_000,
        220_000,
        250_000,
        280_000,
        320_000,
        360_000,
        420_000,
        500_000,
        RuleFigures.NEVER
    };
    private static final double[] ALONG = {0, 0.15, 0.3, 0.45, 0.6, 0.75, 0.9, 1};
    private static final double[] ALONG_KM = {
        0, 20_000, 40_000, 60_000, 90_000, 120_000, 160_000, 200_000, 250_000, 300_000, RuleFigures.NEVER
    };
    private static final double[] TESTS_KM = {12_000, 20_000, 30_000, 45_000, 70_000};
    private static final int[] WINDOWS = {30, 60, 90};
    private static final int MOST_FAULT_DAYS = 5;
    private static final int ROUNDS = 2;

    /** What figures for each family cost, by family: all fleets together. */
    private final Function<List<RuleFigures>, double[]> cost;

    private final int families;

    /** @param cost total cost by family of figures by family */
    public RuleSearch(int families, Function<List<RuleFigures>, double[]> cost) {
        this.families = families;
        this.cost = cost;
    }

    /** Best of some figures for each family. */
    private final class Best {
        private final List<RuleFigures> figures;
        private final double[] least;

        Best(RuleFigures start) {
            figures = new ArrayList<>(Collections.nCopies(families, start));
            least = cost.apply(figures);
        }

        Best(Best other) {
            figures = new ArrayList<>(other.figures);
            least = other.least.clone();
        }

        void tryEach(List<UnaryOperator<RuleFigures>> changes) {
            List<RuleFigures> from = List.copyOf(figures);
            for (UnaryOperator<RuleFigures> change : changes) {
                List<RuleFigures> changed = from.stream().map(change).toList();
                double[] costs = cost.apply(changed);
                for (int family = 0; family < families; family++) {
                    if (costs[family] < least[family]) {
                        least[family] = costs[family];
                        figures.set(family, changed.get(family));
                    }
                }
            }
        }
    }

    /** Best of each kind of rule, by family. */
    public record Found(List<RuleFigures> interval, List<RuleFigures> thresholds, List<RuleFigures> signs) {}

    /** Searches the best fixed interval, from there the best two thresholds, from there the best ages and signs. */
    public Found find() {
        Best interval = new Best(RuleFigures.runToFailure());
        interval.tryEach(intervals());
        Best thresholds = new Best(interval);
        thresholds.tryEach(pairs());
        refineAges(thresholds);
        Best signs = new Best(thresholds);
        for (int round = 0; round < ROUNDS; round++) {
            signs.tryEach(faults());
            signs.tryEach(tests());
            refineAges(signs);
        }
        return new Found(List.copyOf(interval.figures), List.copyOf(thresholds.figures), List.copyOf(signs.figures));
    }

    /** A coarser search of ages and fault days, for where it is one step of many. */
    public List<RuleFigures> findBriefly() {
        Best best = new Best(RuleFigures.runToFailure());
        best.tryEach(pairs());
        best.tryEach(faults());
        best.tryEach(each(ALONG_KM, (figures, km) -> figures.withAlong(figures.alongKm(), km)));
        return List.copyOf(best.figures);
    }

    private static void refineAges(Best best) {
        best.tryEach(each(TRIGGERS_KM, (figures, km) -> figures.withTrigger(km)));
        best.tryEach(each(ALONG_KM, (figures, km) -> figures.withAlong(km, figures.failureAlongKm())));
        best.tryEach(each(ALONG_KM, (figures, km) -> figures.withAlong(figures.alongKm(), km)));
        best.tryEach(each(
                new double[] {0.85, 0.92, 1.08, 1.15}, (figures, by) -> figures.withTrigger(figures.triggerKm() * by)));
    }

    private interface Change {
        RuleFigures of(RuleFigures figures, double value);
    }

    private static List<UnaryOperator<RuleFigures>> each(double[] values, Change change) {
        List<UnaryOperator<RuleFigures>> changes = new ArrayList<>();
        for (double value : values) {
            changes.add(figures -> change.of(figures, value));
        }
        return changes;
    }

    private static List<UnaryOperator<RuleFigures>> intervals() {
        List<UnaryOperator<RuleFigures>> changes = new ArrayList<>();
        for (double km : TRIGGERS_KM) {
            for (double along : new double[] {RuleFigures.NEVER, 0.5 * km, 0}) {
                changes.add(figures -> RuleFigures.interval(km, along));
            }
        }
        return changes;
    }

    private static List<UnaryOperator<RuleFigures>> pairs() {
        List<UnaryOperator<RuleFigures>> changes = new ArrayList<>();
        for (double km : TRIGGERS_KM) {
            for (double share : ALONG) {
                double along = km == RuleFigures.NEVER ? RuleFigures.NEVER : share * km;
                changes.add(figures -> figures.withTrigger(km).withAlong(along, along));
            }
        }
        return changes;
    }

    private static List<UnaryOperator<RuleFigures>> faults() {
        List<UnaryOperator<RuleFigures>> changes = new ArrayList<>();
        changes.add(figures -> figures.withFaults(0, 60));
        for (int days = 1; days <= MOST_FAULT_DAYS; days++) {
            for (int window : WINDOWS) {
                int least = days;
                changes.add(figures -> figures.withFaults(least, window));
            }
        }
        return changes;
    }

    private static List<UnaryOperator<RuleFigures>> tests() {
        List<UnaryOperator<RuleFigures>> changes = new ArrayList<>();
        changes.add(figures -> figures.withTests(RuleFigures.NEVER, true));
        for (double km : TESTS_KM) {
            changes.add(figures -> figures.withTests(km, true));
            changes.add(figures -> figures.withTests(km, false));
        }
        return changes;
    }
}
