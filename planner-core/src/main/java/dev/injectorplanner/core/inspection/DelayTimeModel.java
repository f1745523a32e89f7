package dev.injectorplanner.core.inspection;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.numeric.AdaptiveQuadrature;
import dev.injectorplanner.core.numeric.Search;
import java.util.function.DoubleUnaryOperator;

/**
 * Delay-time model: a defect arises, can be found by a test while it lasts, and fails if it is not. Source: Christer and
 * Waller (1984), Delay time models of industrial inspection maintenance problems, Journal of the Operational Research
 * Society 35:401-406, with their version for imperfect inspection. Defects arise independently (Poisson).
 *
 * @param delay from a defect's rise to its failure
 * @param sensitivity chance that a test finds a defect that is there, 0..1, each test again
 */
public record DelayTimeModel(Delay delay, double sensitivity) {
    private static final double RELATIVE_ERROR = 1e-10;
    private static final double NEGLIGIBLE = 1e-13;
    private static final int SCANNED = 160;

    public DelayTimeModel {
        Require.within("sensitivity", sensitivity, 0, 1);
    }

    /**
     * Chance that a defect fails in service rather than being found, when tests follow at {@code toTest}, then every
     * {@code interval}.
     *
     * @param toTest from the rise of the defect to the next test
     */
    public double failureChance(double toTest, double interval) {
        Require.notNegative("distance to the next test", toTest);
        Require.positive("interval", interval);
        double missed = 1 - sensitivity;
        if (missed == 1) {
            return delay.chanceWithin(Double.POSITIVE_INFINITY);
        }
        double before = delay.chanceWithin(toTest);
        double chance = before;
        double unseen = missed;
        for (double test = toTest + interval; unseen > NEGLIGIBLE; test += interval) {
            double now = delay.chanceWithin(test);
            chance += unseen * (now - before);
            if (now >= 1 - NEGLIGIBLE) {
                break;
            }
            before = now;
            unseen *= missed;
        }
        return chance;
    }

    /**
     * Expected number of defects arising between two tests that will fail in service.
     *
     * @param rate defects per unit of age by the distance since the last test, the same between all tests
     */
    public double expectedFailures(DefectRate rate, double interval) {
        Require.positive("interval", interval);
        return integral(u -> rate.at(u) * failureChance(interval - u, interval), interval);
    }

    /**
     * Cost per unit of age of testing every {@code interval}: [inspect + integral of rate x (failure b + planned (1 -
     * b))] / interval, where b is the chance that a defect arising then fails in service.
     */
    public double costRate(DefectRate rate, InspectionCosts costs, double interval) {
        double defects = integral(rate::at, interval);
        double failures = expectedFailures(rate, interval);
        return (costs.inspect() + costs.planned() * defects + (costs.failure() - costs.planned()) * failures)
                / interval;
    }

    /**
     * The cheapest interval up to {@code longest}. Without tests a defect that can fail does, at the cost of a failure.
     *
     * @param longest longest interval worth considering, above 0
     */
    public InspectionPolicy bestInterval(DefectRate rate, InspectionCosts costs, double longest) {
        Require.positive("longest interval", longest);
        double failing = delay.chanceWithin(Double.POSITIVE_INFINITY);
        double without = failing * costs.failure() * integral(rate::at, longest) / longest;
        double shortest = longest * 1e-4;
        double interval = Search.leastByRatio(distance -> costRate(rate, costs, distance), shortest, longest, SCANNED);
        double least = costRate(rate, costs, interval);
        if (!(least < without * (1 - 1e-9))) {
            return new InspectionPolicy(null, without, without, failing);
        }
        double share = expectedFailures(rate, interval) / integral(rate::at, interval);
        return new InspectionPolicy(interval, least, without, share);
    }

    /** Integral from 0 to {@code interval}, cut where a bounded delay makes a kink. */
    private double integral(DoubleUnaryOperator f, double interval) {
        double kink = interval - delay.longest();
        if (kink > 0 && kink < interval) {
            return AdaptiveQuadrature.integrate(f, 0, kink, RELATIVE_ERROR)
                    + AdaptiveQuadrature.integrate(f, kink, interval, RELATIVE_ERROR);
        }
        return AdaptiveQuadrature.integrate(f, 0, interval, RELATIVE_ERROR);
    }
}
