package dev.injectorplanner.core.life;

import java.util.ArrayList;
import java.util.List;

/**
 * Proportional hazards in counting-process form. Source: Cox (1972); counting process and robust errors as in Andersen
 * and Gill (1982) and Lin and Wei (1989); ties by Efron (1977); worked through in Therneau and Grambsch (2000), Modeling
 * Survival Data.
 */
public final class ProportionalHazards {
    private static final int MOST_STEPS = 60;
    private static final double NO_SPREAD = 1e-10;

    private ProportionalHazards() {}

    /**
     * Fits the effects of all covariates together.
     *
     * @throws NoEstimateException if there is no failure or covariate, a covariate is constant or a combination of
     *     others, or the failures separate perfectly along one, so that its effect has no finite estimate
     */
    public static EffectsFit fit(EffectRecords records) {
        refuseEmpty(records);
        CoxDesign design = new CoxDesign(records);
        double[] beta = new double[design.width];
        CoxSweep here = sweep(design, beta);
        double logLikelihoodNull = here.logLikelihood;
        for (int step = 0; step < MOST_STEPS; step++) {
            Cholesky information = decomposed(design, here, step == 0);
            double[] move = information.solve(here.score);
            double gain = 0;
            double factor = 1;
            CoxSweep there = here;
            double[] next = beta;
            for (int halved = 0; halved < 30; halved++) {
                next = moved(beta, move, factor);
                there = sweep(design, next);
                gain = there.logLikelihood - here.logLikelihood;
                if (gain >= -1e-9 * (1 + Math.abs(here.logLikelihood))) {
                    break;
                }
                factor *= 0.5;
            }
            beta = next;
            here = there;
            if (size(move) < 1e-7) {
                return new CoxResult(design, beta, here, decomposed(design, here, false)).fit(logLikelihoodNull);
            }
            refuseSeparated(design, move, gain);
        }
        throw separated(design, beta);
    }

    private static CoxSweep sweep(CoxDesign design, double[] beta) {
        return new CoxSweep(design, beta).run((time, ties, fraction, total, mean) -> {});
    }

    private static double[] moved(double[] beta, double[] move, double factor) {
        double[] next = new double[beta.length];
        for (int j = 0; j < next.length; j++) {
            next[j] = beta[j] + factor * move[j];
        }
        return next;
    }

    private static double size(double[] move) {
        double most = 0;
        for (double part : move) {
            most = Math.max(most, Math.abs(part));
        }
        return most;
    }

    private static void refuseEmpty(EffectRecords records) {
        if (records.names().isEmpty()) {
            throw new NoEstimateException("There is no covariate", "add a column with a number in every row");
        }
        long failures = 0;
        for (int i = 0; i < records.size(); i++) {
            failures += records.isEvent(i) ? 1 : 0;
        }
        if (failures == 0) {
            throw new NoEstimateException(
                    "There is no failure among the " + records.size() + " rows, so no effect can be seen",
                    "add rows that end with a failure");
        }
    }

    private static Cholesky decomposed(CoxDesign design, CoxSweep sweep, boolean atStart) {
        Cholesky cholesky = new Cholesky(sweep.information);
        int failed = atStart ? firstWithout(sweep, cholesky.failedAt()) : cholesky.failedAt();
        if (failed < 0) {
            return cholesky;
        }
        String name = design.records.names().get(failed);
        if (!atStart) {
            throw separatedOn(name);
        }
        List<String> before = new ArrayList<>(design.records.names().subList(0, failed));
        throw new NoEstimateException(
                before.isEmpty()
                        ? "Covariate " + name + " does not differ between the units at risk when a failure happens"
                        : "Covariate " + name + " says nothing that " + String.join(", ", before)
                                + " do not already say: it is a combination of them, or does not differ between the"
                                + " units at risk when a failure happens",
                "leave one of these columns out");
    }

    /** The first covariate without any spread among the units at risk, if it comes before {@code failed}. */
    private static int firstWithout(CoxSweep sweep, int failed) {
        int until = failed < 0 ? sweep.information.length : failed;
        for (int j = 0; j < until; j++) {
            if (!(sweep.information[j][j] > NO_SPREAD * sweep.failures)) {
                return j;
            }
        }
        return failed;
    }

    /** Where the likelihood has stopped growing but a coefficient still runs, there is no maximum. */
    private static void refuseSeparated(CoxDesign design, double[] move, double gain) {
        if (Math.abs(gain) > 1e-6) {
            return;
        }
        for (int j = 0; j < move.length; j++) {
            if (Math.abs(move[j]) * design.ranges[j] > 0.5) {
                throw separatedOn(design.records.names().get(j));
            }
        }
    }

    private static NoEstimateException separated(CoxDesign design, double[] beta) {
        int worst = 0;
        for (int j = 1; j < beta.length; j++) {
            if (Math.abs(beta[j]) * design.ranges[j] > Math.abs(beta[worst]) * design.ranges[worst]) {
                worst = j;
            }
        }
        return separatedOn(design.records.names().get(worst));
    }

    private static NoEstimateException separatedOn(String name) {
        return new NoEstimateException(
                "The failures separate perfectly along covariate " + name
                        + ": the larger its effect is taken, the better it fits, so it has no finite estimate",
                "leave the column out, or add records in which it does not decide everything");
    }
}
