package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.history.LifeBook;
import dev.injectorplanner.core.history.PartLife;

/** Chance of failing within weeks, for one injector: its life model, age, multiplier and its truck's usage. */
final class Forecast {
    /** A sign speaks for so many weeks; after them a unit counts as any of its age. */
    static final double SIGN_WEEKS = 12;

    private final LifeBook lives;
    private final PartLife model;
    private final double multiplier;
    private final UsageAhead usage;

    Forecast(LifeBook lives, PartLife model, double multiplier, UsageAhead usage) {
        this.lives = lives;
        this.model = model;
        this.multiplier = multiplier;
        this.usage = usage;
    }

    /** Chance that a unit alive at {@code age} fails within {@code weeks}. */
    double chance(double age, double weeks) {
        double signed = Math.min(1, SIGN_WEEKS / weeks);
        return usage.mean(weeks, use -> {
            double first = use * signed;
            double early = lives.failure(model, age, first, multiplier);
            if (signed == 1) {
                return early;
            }
            double late = lives.failure(model, age + first, use - first, 1);
            return early + late - early * late;
        });
    }
}
