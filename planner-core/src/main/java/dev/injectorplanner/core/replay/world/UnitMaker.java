package dev.injectorplanner.core.replay.world;

import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.replay.scenario.FamilyTruth;
import dev.injectorplanner.core.replay.scenario.LifeComponent;
import dev.injectorplanner.core.replay.scenario.SignTruth;
import dev.injectorplanner.core.truth.Draws;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Draws injectors: how long they live, when their defect begins, what it shows, what their failure costs. */
final class UnitMaker {
    private static final double HEAVY_DAMAGE_CHANCE = 0.1;
    private static final double HEAVY_DAMAGE = 2.8;
    private static final double PLAIN_FAILURE = 0.8;
    private static final double LEAST_DELAY_SHARE = 0.25;
    private static final int MOST_FAULTS = 40;

    private final FamilyTruth truth;
    private final SignTruth signs;

    UnitMaker(FamilyTruth truth, SignTruth signs) {
        this.truth = truth;
        this.signs = signs;
    }

    /**
     * A unit that has already reached an age.
     *
     * @param origin null to draw it
     * @param reachedKm age that it has survived, 0 for a fresh one
     * @param multiplier on its hazard from that age on, above 0; 1 for none
     */
    TrueUnit make(Draws draws, @Nullable Origin origin, double reachedKm, double multiplier) {
        double originDraw = draws.uniform();
        Origin made = origin != null ? origin : originDraw < truth.remanShare() ? Origin.REMAN : Origin.NEW;
        double factor = made == Origin.REMAN ? truth.remanLife() : 1;
        LifeComponent component = component(draws.uniform(), reachedKm / factor);
        double reached = Math.pow(reachedKm / factor / component.scaleKm(), component.shape());
        double spent = reached - StrictMath.log(1 - draws.uniform()) / multiplier;
        double life = factor * component.scaleKm() * StrictMath.pow(spent, 1 / component.shape());
        boolean sudden = draws.uniform() < component.suddenShare();
        // a gamma delay of shape 2: never quite 0, never far beyond its mean
        double spread = 0.5 * component.delayKm();
        double delay = draws.exponential(spread) + draws.exponential(spread);
        double roadFactor = draws.uniform() < HEAVY_DAMAGE_CHANCE ? HEAVY_DAMAGE : PLAIN_FAILURE;
        double least = LEAST_DELAY_SHARE * component.delayKm();
        double defect = sudden ? life : Math.max(0, life - Math.max(least, delay));
        return new TrueUnit(made, life, defect, faults(draws, defect, life), roadFactor);
    }

    /** The component of a unit that has reached an age: weights times survival, by Bayes. */
    private LifeComponent component(double draw, double reachedKm) {
        List<LifeComponent> lives = truth.lives();
        double[] weights = new double[lives.size()];
        for (int i = 0; i < weights.length; i++) {
            LifeComponent life = lives.get(i);
            weights[i] = life.weight() * Math.exp(-Math.pow(reachedKm / life.scaleKm(), life.shape()));
        }
        double at = draw * Arrays.stream(weights).sum();
        for (int i = 0; i < weights.length; i++) {
            at -= weights[i];
            if (at < 0) {
                return lives.get(i);
            }
        }
        return lives.get(lives.size() - 1);
    }

    private double[] faults(Draws draws, double from, double until) {
        double[] faults = new double[MOST_FAULTS];
        int count = 0;
        double at = from;
        while (count < MOST_FAULTS) {
            at += draws.exponential(signs.kmBetweenFaults());
            if (at >= until) {
                break;
            }
            faults[count++] = at;
        }
        return Arrays.copyOf(faults, count);
    }
}
