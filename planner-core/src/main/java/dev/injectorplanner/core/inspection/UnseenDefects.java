package dev.injectorplanner.core.inspection;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.numeric.AdaptiveQuadrature;
import dev.injectorplanner.core.numeric.Search;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Chance that a defect nobody has seen fails on the road after a truck's last test, and how far the truck may run before
 * that chance passes a limit. Counted from the last test, so that the answer does not move as the truck runs. Defects
 * that arose since then count in full; those from before earlier tests with the chance that every test since missed
 * them.
 */
public final class UnseenDefects {
    private static final double RELATIVE_ERROR = 1e-7;
    private static final double FIRST_GUESS = 1 / 64.0;
    private static final double STRIDE = 4;
    private static final double LOG_TOLERANCE = 1e-6;
    private static final double NEGLIGIBLE = 1e-7;

    private final DelayTimeModel model;

    public UnseenDefects(DelayTimeModel model) {
        this.model = model;
    }

    /**
     * Chance of at least one failure on the road from an undetected defect within {@code sinceTest} of the last test.
     *
     * @param injectors of one truck, all running the same distance
     * @param sinceTest distance (or hours) since the last test, zero or more
     */
    public double failureChance(List<TestedInjector> injectors, double sinceTest) {
        Require.notNegative("distance since the last test", sinceTest);
        return -Math.expm1(-expectedFailures(injectors, sinceTest));
    }

    /**
     * How far after the last test the chance reaches {@code limit}; empty if not within {@code longest}. To about a
     * hundred-thousandth of itself.
     *
     * @param limit a chance between 0 and 1
     */
    public OptionalDouble findDistanceToLimit(List<TestedInjector> injectors, double limit, double longest) {
        if (!(limit > 0 && limit < 1)) {
            throw new IllegalArgumentException("limit must be a chance between 0 and 1, such as 0.02: " + limit);
        }
        double allowed = -Math.log1p(-limit);
        double high = longest * FIRST_GUESS;
        while (high < longest && expectedFailures(injectors, high) < allowed) {
            high *= STRIDE;
        }
        high = Math.min(high, longest);
        if (!(expectedFailures(injectors, high) >= allowed)) {
            return OptionalDouble.empty();
        }
        double low = high / STRIDE;
        while (expectedFailures(injectors, low) >= allowed) {
            high = low;
            low /= STRIDE;
        }
        // nearly a straight line in logarithms
        double log = Search.root(
                at -> Math.log(Math.max(Double.MIN_NORMAL, expectedFailures(injectors, Math.exp(at))) / allowed),
                Math.log(low),
                Math.log(high),
                LOG_TOLERANCE);
        return OptionalDouble.of(Math.exp(log));
    }

    private double expectedFailures(List<TestedInjector> injectors, double sinceTest) {
        double sum = since(injectors, sinceTest);
        if (model.sensitivity() < 1) {
            for (TestedInjector injector : injectors) {
                sum += missed(injector, sinceTest);
            }
        }
        return sum;
    }

    /** Defects from before the last test that it and perhaps others missed, and that fail after it. */
    private double missed(TestedInjector injector, double sinceTest) {
        List<Double> tests = injector.testAges();
        double sum = 0;
        double missed = 1 - model.sensitivity();
        for (int i = tests.size() - 1; i >= 0 && missed > NEGLIGIBLE; i--) {
            double from = i == 0 ? 0 : tests.get(i - 1);
            sum += missed * before(injector, from, tests.get(i), sinceTest);
            missed *= 1 - model.sensitivity();
        }
        return sum;
    }

    /** Defects that arose after the last test, of all injectors together, and fail within {@code sinceTest} of it. */
    private double since(List<TestedInjector> injectors, double sinceTest) {
        Delay delay = model.delay();
        double full = Math.max(0, sinceTest - delay.longest());
        double certain = AdaptiveQuadrature.integrate(w -> defects(injectors, w), 0, full, RELATIVE_ERROR);
        return certain
                + AdaptiveQuadrature.integrate(
                        w -> defects(injectors, w) * delay.chanceWithin(sinceTest - w),
                        full,
                        sinceTest,
                        RELATIVE_ERROR);
    }

    private static double defects(List<TestedInjector> injectors, double sinceTest) {
        double sum = 0;
        for (TestedInjector injector : injectors) {
            sum += injector.defects().at(injector.lastTestAge() + sinceTest);
        }
        return sum;
    }

    /** Defects that arose between two ages before the last test and fail after it. */
    private double before(TestedInjector injector, double from, double to, double sinceTest) {
        Delay delay = model.delay();
        double tested = injector.lastTestAge();
        double start = Math.max(from, tested - delay.longest());
        if (start >= to) {
            return 0;
        }
        return AdaptiveQuadrature.integrate(
                age -> injector.defects().at(age)
                        * (delay.chanceWithin(tested + sinceTest - age) - delay.chanceWithin(tested - age)),
                start,
                to,
                RELATIVE_ERROR);
    }
}
