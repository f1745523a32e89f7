package dev.injectorplanner.core.replay.own;

import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.replay.scenario.FamilyTruth;
import dev.injectorplanner.core.replay.scenario.LifeComponent;
import dev.injectorplanner.core.replay.scenario.Scenario;
import dev.injectorplanner.core.truth.Draws;
import java.util.ArrayList;
import java.util.List;

/**
 * Learned lives with what is not known of them: a run of the outlook draws shape and scale around the learned ones, so that
 * bands are wide where failures on record are few. The spread is that of maximum likelihood in complete samples: relative
 * variance 0.6079 / r of the shape, 1.1087 / (r shape squared) of the scale, r failures (Cohen 1965, Technometrics 7:579-588;
 * Lawless 2003, section 5.2); censored ones have less spread in the shape's favour, so it is on the wide side.
 */
public final class UncertainLives {
    private static final double SHAPE_VARIANCE = 0.6079;
    private static final double SCALE_VARIANCE = 1.1087;

    /** What the prior behind a learned life is worth in failures. */
    private static final double PRIOR_FAILURES = 6;

    private static final long LIVES = 61;

    private final Scenario own;
    private final double[] failures;

    public UncertainLives(Scenario own, Plan plan) {
        this.own = own;
        failures = new double[own.families().size()];
        for (int i = 0; i < failures.length; i++) {
            String part = own.site().family(own.families().get(i).family()).injectorPart();
            failures[i] = plan.lives().stream()
                            .filter(life -> life.part().equals(part))
                            .mapToLong(UncertainLives::seen)
                            .sum()
                    + PRIOR_FAILURES;
        }
    }

    private static long seen(PartLife life) {
        return life.failures() + life.worn();
    }

    /** The scenario with lives drawn for one run. */
    public Scenario drawn(long seed) {
        List<FamilyTruth> families = new ArrayList<>();
        for (int i = 0; i < failures.length; i++) {
            FamilyTruth truth = own.families().get(i);
            Draws draws = Draws.keyed(seed, LIVES, i);
            LifeComponent life = truth.lives().get(0);
            double shapeError = Math.sqrt(SHAPE_VARIANCE / failures[i]);
            double shape = life.shape() * StrictMath.exp(draws.normal(0, shapeError));
            double scaleError = Math.sqrt(SCALE_VARIANCE / failures[i]) / life.shape();
            double scale = life.scaleKm() * StrictMath.exp(draws.normal(0, scaleError));
            families.add(truth.withLife(new LifeComponent(1, shape, scale, life.delayKm(), life.suddenShare())));
        }
        return new Scenario(own.name(), own.words(), own.trucks(), own.site(), families, own.signs(), own.shop());
    }
}
