package dev.injectorplanner.core.defect;

import dev.injectorplanner.core.history.LifeEnd;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Fits a defect model to lives by expectation and maximisation, with a prior that counts as a number of lives of its own. Source:
 * Dempster, Laird and Rubin (1977), Journal of the Royal Statistical Society B 39:1-38.
 */
final class DefectFit {
    private static final int MOST_ROUNDS = 15;
    private static final double SETTLED = 0.01;
    private static final double FAULT_WEEKS_SOUND = 200;
    private static final double FAULT_WEEKS_DEFECTIVE = 30;
    private static final double TESTS_SOUND = 20;
    private static final double TESTS_DEFECTIVE = 10;
    private static final double REMOVALS = 10;
    private static final double FAILURES = 4;

    private DefectFit() {}

    /**
     * Fits.
     *
     * @param prior what holds without lives, and counts as some
     */
    static DefectModel of(List<WatchedLife> lives, DefectModel prior) {
        DefectModel model = prior;
        long failures = lives.stream()
                .filter(life -> life.failed() || life.end() == LifeEnd.WORN)
                .count();
        if (failures == 0) {
            return prior; // what never failed tells nothing of how it fails
        }
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Tally tally = new Tally();
            ForwardBackward pass = new ForwardBackward(model);
            lives.forEach(life -> pass.add(life, tally));
            DefectModel next = maximised(tally, prior, failures);
            double change = Math.abs(Math.log(next.meanDelay() / model.meanDelay()))
                    + Math.abs(next.suddenShare() - model.suddenShare())
                    + Math.abs(Math.log(next.faultRatio() / model.faultRatio()));
            model = next;
            if (change < SETTLED) {
                break;
            }
        }
        return model;
    }

    private static DefectModel maximised(Tally tally, DefectModel prior, long failures) {
        double delay = (tally.defectiveUse + FAILURES * prior.meanDelay()) / (tally.failuresOfDefects + FAILURES);
        double sudden = (tally.sudden + FAILURES * prior.suddenShare()) / (tally.suddenExpected + FAILURES);
        double arrivals = (tally.arrivals + FAILURES * prior.arrivalFactor()) / (tally.arrivalsExpected + FAILURES);
        StateSigns sound = signs(tally, 0, prior.sound(), FAULT_WEEKS_SOUND, TESTS_SOUND, null);
        return new DefectModel(
                delay,
                Math.min(1, sudden),
                arrivals,
                sound,
                signs(tally, 1, prior.defective(), FAULT_WEEKS_DEFECTIVE, TESTS_DEFECTIVE, sound),
                failures);
    }

    /** @param sound what a sound injector shows, or null for its own: a defect never makes a rail or circuit fault rarer */
    private static StateSigns signs(
            Tally tally, int state, StateSigns prior, double weeks, double tests, @Nullable StateSigns sound) {
        double[] railPrior = {1 - prior.rail(), prior.rail()};
        double[] circuitPrior = {1 - prior.circuit(), prior.circuit()};
        double[] wornPrior = {1 - prior.worn(), prior.worn()};
        return new StateSigns(
                mixed(tally.faultDays[state], prior.faultDays(), weeks),
                Math.max(sound == null ? 0 : sound.circuit(), mixed(tally.circuit[state], circuitPrior, weeks)[1]),
                Math.max(sound == null ? 0 : sound.rail(), mixed(tally.rail[state], railPrior, weeks)[1]),
                mixed(tally.balance[state], prior.balance(), tests),
                mixed(tally.returnFlow[state], prior.returnFlow(), tests),
                mixed(tally.worn[state], wornPrior, REMOVALS)[1]);
    }

    /** Shares of the counts and of the prior's, which stand for {@code strength} cases. */
    private static double[] mixed(double[] counts, double[] prior, double strength) {
        double all = strength;
        for (double count : counts) {
            all += count;
        }
        double[] shares = new double[counts.length];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = (counts[i] + strength * prior[i]) / all;
        }
        return shares;
    }
}
