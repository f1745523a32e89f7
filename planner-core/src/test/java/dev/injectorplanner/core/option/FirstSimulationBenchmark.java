package dev.injectorplanner.core.option;

import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.Bank;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.life.WeibullLife;
import dev.injectorplanner.core.replace.AgeReplacement;
import dev.injectorplanner.core.replace.AgeReplacementPolicy;
import dev.injectorplanner.core.replace.DeferralCost;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * One-truck decisions simulated over years, four policies, no limit on hours and no condition data: eight cylinders, shape
 * 2.6, scale 260,000 km, 1,500 km a week, 530 a cylinder, shared access 1,460 + 210 a bank + 140 if a rear cylinder, road failure
 * 4,200 more. An earlier simulation of the same rules (numpy) came to 224 for running to failure, 105.4 for the best
 * fixed full-set interval, 94.0 for the best pair of age thresholds, 93.4 for the rules with a shared access share of 320
 * (94.0 at 252, 95.3 at 180), all in cost per 1,000 km, on 40 trucks of one seed. On 400 trucks it came to 222.1, 106.0,
 * 96.6 (thresholds 120,000 and 60,000 km) and 96.2 (share 320): forty trucks leave some 1.3 of chance in each figure.
 */
@Tag("benchmark")
class FirstSimulationBenchmark {
    private static final int CYLINDERS = 8;
    private static final double KM_A_WEEK = 1_500;
    private static final double OWN = 530;
    private static final double ROAD = 4_200;
    private static final int HORIZON = 26;
    private static final int AGES = 900;
    private static final int TRUCKS = Integer.getInteger("planner.simulation.trucks", 400);
    private static final int YEARS = 40;
    private static final int WARM_UP_YEARS = 8;
    private static final Rates RATES = new Rates(140, 0, 900, 0, 8);
    private static final WeibullLife LIFE = new WeibullLife(2.6, 260_000);

    private final CylinderSets sets = new CylinderSets(engine(), steps());

    /** Which cylinders are done now, given ages in weeks and which have failed; 0 for none. */
    private interface Policy {
        int sets(int[] ages, int failed);
    }

    @Test
    void cost_per_thousand_km() {
        System.out.printf(
                Locale.ROOT, "%nFirst simulation, %d trucks, %d counted years%n", TRUCKS, YEARS - WARM_UP_YEARS);
        System.out.printf(Locale.ROOT, "%-44s %10s %16s %8s%n", "policy", "per 1000 km", "failures/1e6 km", "seconds");
        print("run to failure (222.1)", (ages, failed) -> failed);
        int interval = 120_000;
        print(
                "fixed full-set interval 120,000 km (106.0)",
                (ages, failed) -> failed != 0 ? failed : oldest(ages) >= interval ? (1 << CYLINDERS) - 1 : 0);
        for (int[] pair : new int[][] {
            {120_000, 60_000}, {150_000, 60_000}, {150_000, 80_000}, {180_000, 60_000}, {180_000, 80_000}
        }) {
            print(
                    "thresholds " + pair[0] + ", " + pair[1]
                            + (pair[1] == 60_000 && pair[0] == 120_000 ? " (96.6)" : ""),
                    (ages, failed) -> failed != 0 || oldest(ages) >= pair[0] ? failed | olderThan(ages, pair[1]) : 0);
        }
        for (double share : new double[] {180, 252, 320}) {
            print("deferral costs, share " + (int) share + (share == 320 ? " (96.2)" : ""), rules(share));
        }
    }

    private void print(String name, Policy policy) {
        long start = System.nanoTime();
        double[] result = simulate(policy);
        System.out.printf(
                Locale.ROOT,
                "%-44s %10.1f %16.2f %8.1f%n",
                name,
                result[0],
                result[1],
                (System.nanoTime() - start) / 1e9);
    }

    private double[] simulate(Policy policy) {
        double cost = 0;
        long failures = 0;
        long weeks = 0;
        for (int truck = 0; truck < TRUCKS; truck++) {
            SplittableRandom random = new SplittableRandom(1_000 + truck);
            int[] ages = random.ints(CYLINDERS, 0, 150).toArray();
            for (int week = 0; week < YEARS * 52; week++) {
                int failed = 0;
                for (int c = 0; c < CYLINDERS; c++) {
                    double chance = LIFE.conditionalFailure(ages[c] * KM_A_WEEK, KM_A_WEEK);
                    failed |= random.nextDouble() < chance ? 1 << c : 0;
                    ages[c] = Math.min(ages[c] + 1, AGES - 1);
                }
                int done = policy.sets(ages, failed);
                if (week >= WARM_UP_YEARS * 52) {
                    weeks++;
                    failures += Integer.bitCount(failed);
                    cost += done == 0 ? 0 : sets.sharedCost(done, RATES) + Integer.bitCount(done) * OWN;
                    cost += Integer.bitCount(failed) * ROAD;
                }
                for (int c = 0; c < CYLINDERS; c++) {
                    ages[c] = (done & 1 << c) != 0 ? 0 : ages[c];
                }
            }
        }
        double km = weeks * KM_A_WEEK;
        return new double[] {cost / km * 1_000, failures / km * 1e6};
    }

    /** The planner's own rules: the open engine's question after a failure, else the best set of the horizon if due now. */
    private Policy rules(double share) {
        AgeReplacementPolicy best = AgeReplacement.best(LIFE, OWN + share, OWN + share + ROAD);
        DeferralCost deferral = new DeferralCost(LIFE, 1, OWN + share, OWN + share + ROAD, best.costRate());
        double[][] costs = new double[AGES][];
        double[] later = new double[AGES];
        for (int age = 0; age < AGES; age++) {
            double km = age * KM_A_WEEK;
            costs[age] = deferral.costs(
                    km,
                    IntStream.range(0, HORIZON)
                            .mapToDouble(week -> km + week * KM_A_WEEK)
                            .toArray());
            later[age] = deferral.bestMoment(km, km + HORIZON * KM_A_WEEK).cost();
        }
        return (ages, failed) -> {
            List<CylinderPrice> prices = IntStream.range(0, CYLINDERS)
                    .filter(c -> (failed & 1 << c) == 0)
                    .mapToObj(c -> new CylinderPrice(c + 1, costs[ages[c]], later[ages[c]], share, new double[HORIZON]))
                    .toList();
            if (failed != 0) {
                UnplannedVisit visit = new UnplannedVisit(engine(), steps(), RATES, prices);
                return CylinderSets.maskOf(visit.choices(CylinderSets.cylindersOf(failed), List.of())
                        .get(0)
                        .cylinders());
            }
            OptionPricer pricer = new OptionPricer(sets, RATES, prices, List.of(), HORIZON);
            PricedVisit now = pricer.best(0);
            if (now.cost() >= 0) {
                return 0;
            }
            boolean best0 = IntStream.range(1, HORIZON)
                    .noneMatch(week -> pricer.best(week).cost() < now.cost());
            return best0 ? now.set() : 0;
        };
    }

    private static double oldest(int[] ages) {
        return Arrays.stream(ages).max().orElse(0) * KM_A_WEEK;
    }

    private static int olderThan(int[] ages, double km) {
        return IntStream.range(0, CYLINDERS)
                .filter(c -> ages[c] * KM_A_WEEK >= km)
                .map(c -> 1 << c)
                .sum();
    }

    private static EngineFamily engine() {
        return new EngineFamily(
                "V8",
                CYLINDERS,
                List.of(new Bank("left", List.of(1, 2, 3, 4)), new Bank("right", List.of(5, 6, 7, 8))),
                List.of(1, 2, 3, 4, 5, 6, 7, 8),
                0,
                50,
                50,
                "INJ",
                new BigDecimal(ROAD));
    }

    private static List<AccessStep> steps() {
        return List.of(
                new AccessStep("V8", "covers", 1, 4, List.of(), 0, ""),
                new AccessStep("V8", "left", 2, 1.5, List.of(1, 2, 3, 4), 0, ""),
                new AccessStep("V8", "right", 3, 1.5, List.of(5, 6, 7, 8), 0, ""),
                new AccessStep("V8", "rear", 4, 1, List.of(4, 8), 0, ""));
    }
}
