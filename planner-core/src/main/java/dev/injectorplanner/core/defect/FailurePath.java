package dev.injectorplanner.core.defect;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.life.PredictiveLife;

/**
 * What comes of leaving one injector in: by each moment it has failed, its defect has shown and it was taken out for that, or it
 * is still in. Steps through the two states with constant rates within a step, exactly; averaged over what is not known of
 * its life.
 */
public final class FailurePath {
    private final DefectModel model;
    private final PredictiveLife life;
    private final double showsPerUse;
    private final double[] sound;
    private final double[] defective;
    private final double[] failedBy;
    private double age;
    private double failed;
    private double taken;
    private double alive = 1;
    private double defect;
    private double aliveUse;

    /**
     * @param life of its part and origin
     * @param age age today, in the unit of the part's clock
     * @param chanceDefective chance that it has a defect today, 0..1
     * @param showsPerUse rate at which a defect shows and the injector is taken out for it, per unit of the clock; 0 where
     *     nobody looks
     */
    public FailurePath(DefectModel model, PredictiveLife life, double age, double chanceDefective, double showsPerUse) {
        this.model = model;
        this.life = life;
        this.showsPerUse = Require.notNegative("rate at which defects show", showsPerUse);
        this.age = Require.notNegative("age", age);
        this.sound = new double[life.size()];
        this.defective = new double[life.size()];
        this.failedBy = new double[life.size()];
        this.defect = Require.within("chance of a defect", chanceDefective, 0, 1);
        for (int pair = 0; pair < sound.length; pair++) {
            sound[pair] = 1 - chanceDefective;
            defective[pair] = chanceDefective;
        }
    }

    /** Goes on by some use, zero or more, in the unit of the clock. */
    public void goOn(double use) {
        if (use <= 0) {
            return;
        }
        double middle = age + 0.5 * use;
        double fails = use / model.meanDelay();
        double leaves = fails + showsPerUse * use;
        double keeps = Math.exp(-leaves);
        double before = alive;
        alive = 0;
        defect = 0;
        for (int pair = 0; pair < sound.length; pair++) {
            double turns = model.arrivals(life, pair, middle) * use;
            double suddenly = model.sudden(life, pair, middle) * use;
            double out = turns + suddenly;
            double stays = Math.exp(-out);
            double left = -sound[pair] * Math.expm1(-out);
            double turned = out > 0 ? left * turns / out : 0;
            double apart = leaves - out;
            double newly = Math.abs(apart) < 1e-9
                    ? sound[pair] * turns * keeps
                    : sound[pair] * turns * (stays - keeps) / apart;
            double still = defective[pair] * keeps + newly;
            double gone = Math.max(0, defective[pair] + turned - still);
            double weight = life.weight(pair);
            double fell = left - turned + gone * fails / leaves;
            failedBy[pair] += fell;
            failed += weight * fell;
            taken += weight * gone * (1 - fails / leaves);
            sound[pair] *= stays;
            defective[pair] = still;
            alive += weight * (sound[pair] + still);
            defect += weight * still;
        }
        age += use;
        aliveUse += use * mean(before, alive);
    }

    /** Logarithmic mean: exact for what falls at a constant rate. */
    private static double mean(double from, double to) {
        return from - to < 1e-6 * from || to <= 0 ? 0.5 * (from + to) : (from - to) / Math.log(from / to);
    }

    /** Chance that it has failed by now. */
    public double failed() {
        return Math.min(1, failed);
    }

    /** The same if its life were that of one pair of shape and scale. */
    public double failed(int pair) {
        return Math.min(1, Math.max(0, failedBy[pair]));
    }

    /** Chance that its defect has shown by now and it was taken out for that. */
    public double takenOut() {
        return taken;
    }

    /** Chance that it is still in. */
    public double alive() {
        return alive;
    }

    /** Use had so far, on average: the integral of {@link #alive()}. */
    public double aliveUse() {
        return aliveUse;
    }

    /** Chance that it has a defect, given that it is still in. */
    public double chanceDefective() {
        return alive > 0 ? Math.min(1, defect / alive) : 1;
    }

    /** Its age if it is still in. */
    public double age() {
        return age;
    }
}
