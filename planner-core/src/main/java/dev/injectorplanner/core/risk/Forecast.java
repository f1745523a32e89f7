package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.condition.Condition;
import dev.injectorplanner.core.history.LifeBook;
import dev.injectorplanner.core.history.PartLife;

/** Chance of failing within weeks, for one injector: its life model, condition and its truck's usage. */
final class Forecast {
    private static final double EARLY_WEEKS = 4;
    private static final double SIGN_WEEKS = 12;

    private final LifeBook lives;
    private final PartLife model;
    private final Condition condition;
    private final UsageAhead usage;

    Forecast(LifeBook lives, PartLife model, Condition condition, UsageAhead usage) {
        this.lives = lives;
        this.model = model;
        this.condition = condition;
        this.usage = usage;
    }

    /** Chance that a unit alive at {@code age} fails within {@code weeks}, above 0. */
    double chance(double age, double weeks) {
        double early = Math.min(1, EARLY_WEEKS / weeks);
        double signed = Math.min(1, SIGN_WEEKS / weeks);
        return usage.mean(weeks, use -> {
            double first = lives.failure(model, age, use * early, condition.early());
            double second = failure(age, use * early, use * signed, condition.middle());
            double third = failure(age, use * signed, use, condition.late());
            double within12 = first + second - first * second;
            return within12 + third - within12 * third;
        });
    }

    private double failure(double age, double from, double to, double multiplier) {
        return to > from ? lives.failure(model, age + from, to - from, multiplier) : 0;
    }
}
