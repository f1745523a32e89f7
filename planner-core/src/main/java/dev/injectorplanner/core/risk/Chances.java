package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.defect.DefectModel;
import dev.injectorplanner.core.defect.FailurePath;
import dev.injectorplanner.core.life.PredictiveLife;

/** Chances of one injector to fail within 4, 12 and 26 weeks if it is left in, at its truck's usual pace and its spread. */
final class Chances {
    private static final double[] WEEKS = {4, 12, 26};
    private static final double STEP_WEEKS = 4;
    private static final double TINY = 1e-12;

    private final DefectModel model;
    private final PredictiveLife life;
    private final double age;
    private final UsageAhead usage;

    Chances(DefectModel model, PredictiveLife life, double age, UsageAhead usage) {
        this.model = model;
        this.life = life;
        this.age = age;
        this.usage = usage;
    }

    /** Within 4, 12 and 26 weeks, each at least the one before. */
    double[] within(double defective) {
        double[] chances = new double[WEEKS.length];
        for (int i = 0; i < chances.length; i++) {
            double weeks = WEEKS[i];
            int steps = (int) Math.ceil(weeks / STEP_WEEKS);
            double chance = usage.mean(weeks, use -> {
                FailurePath path = new FailurePath(model, life, age, defective, 0);
                for (int step = 0; step < steps; step++) {
                    path.goOn(use / steps);
                }
                return path.failed();
            });
            chances[i] = Math.min(1, Math.max(i == 0 ? 0 : chances[i - 1], chance));
        }
        return chances;
    }

    /** How often it fails within 12 weeks against an injector of its age of which nothing is known; above 0. */
    double multiplier(double within12) {
        double average = life.conditionalFailure(age, Math.max(TINY, 12 * usage.perWeek()), 1);
        double ratio = Math.log1p(-Math.min(1 - TINY, within12)) / Math.log1p(-Math.min(1 - TINY, average));
        return Double.isFinite(ratio) && ratio > 0 ? ratio : 1;
    }
}
