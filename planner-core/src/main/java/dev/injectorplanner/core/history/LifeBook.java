package dev.injectorplanner.core.history;

import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.life.PredictiveLife;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/**
 * The life model of every injector part and origin, learned from a fleet's history.
 *
 * <p>With {@link #ENOUGH_FAILURES} failures or more a group has its own maximum-likelihood fit. With fewer, a posterior:
 * its prior is the part's other origin where that has {@link #ENOUGH_FOR_PRIOR} failures (shape within a factor of 1.25,
 * scale within 1.35), else the planner's default. So a group without any failure of its own borrows from the other.
 *
 * <p>An injector taken out worn did not fail, yet it is no ordinary suspension: it came out because it was about to. To
 * count it as merely not seen to fail would make lives look longer, the more so the better a workshop finds defects. It
 * counts as a failure some distance after its removal: what was left of its delay. By the same token one taken out healthy
 * is known to be alive for as long after: it had no defect yet.
 */
public final class LifeBook {
    /** Failures (and worn) from which a group's own fit is used alone. */
    public static final int ENOUGH_FAILURES = 30;

    /** Failures (and worn) from which one origin may serve as the prior of the other. */
    public static final int ENOUGH_FOR_PRIOR = 5;

    private final Map<String, PartLife> lives = new LinkedHashMap<>();
    private final Map<String, PredictiveLife> predictive = new LinkedHashMap<>();

    private LifeBook() {}

    /**
     * Learns from a history.
     *
     * @param parts parts that must have a model, whether or not the history tells of them
     * @param remaining what an injector found worn would have run on
     */
    public static LifeBook of(LifeHistory history, List<String> parts, RemainingDelay remaining) {
        return of(parts, history.units(), remaining, unit -> 1);
    }

    /**
     * Learns from lives of which those found worn are only believed with a chance.
     *
     * @param worn chance that an injector taken out worn had a defect, 0 to 1
     */
    public static LifeBook of(
            LifeHistory history, List<String> parts, RemainingDelay remaining, ToDoubleFunction<UnitLife> worn) {
        return of(parts, history.units(), remaining, worn);
    }

    static LifeBook of(List<String> parts, List<UnitLife> units, RemainingDelay remaining) {
        return of(parts, units, remaining, unit -> 1);
    }

    private static LifeBook of(
            List<String> parts, List<UnitLife> units, RemainingDelay remaining, ToDoubleFunction<UnitLife> worn) {
        Map<String, List<UnitLife>> byPart = new TreeMap<>();
        new TreeSet<>(parts).forEach(part -> byPart.put(part, new ArrayList<>()));
        units.forEach(unit ->
                byPart.computeIfAbsent(unit.part(), part -> new ArrayList<>()).add(unit));
        LifeBook book = new LifeBook();
        byPart.forEach((part, own) -> new PartFit(part, own, remaining, worn).addTo(book));
        return book;
    }

    void add(PartLife life, PredictiveLife forecast) {
        String key = key(life.part(), life.origin());
        lives.put(key, life);
        predictive.put(key, forecast);
    }

    private static String key(String part, Origin origin) {
        return part + "\n" + origin;
    }

    /** All models, by part and origin. */
    public List<PartLife> lives() {
        return List.copyOf(lives.values());
    }

    /** @throws IllegalArgumentException for a part that the book was not made for */
    public PartLife of(String part, Origin origin) {
        PartLife life = lives.get(key(part, origin));
        if (life == null) {
            throw new IllegalArgumentException("no life model of part \"" + part + "\"");
        }
        return life;
    }

    /** Clock of a part, the same for both origins. */
    public Clock clockOf(String part) {
        return of(part, Origin.NEW).clock();
    }

    /** A model with what is not known of it: every forecast and every price is made with this. */
    public PredictiveLife predictive(PartLife model) {
        PredictiveLife life = predictive.get(key(model.part(), model.origin()));
        if (life == null) {
            throw new IllegalArgumentException("no life model of part \"" + model.part() + "\"");
        }
        return life;
    }

    /**
     * Chance that a unit alive at {@code age} fails within {@code next}, both in the unit of the model's clock, averaged over
     * what is not known of the model.
     *
     * @param multiplier on the hazard, for the unit's condition
     */
    public double failure(PartLife model, double age, double next, double multiplier) {
        return predictive(model).conditionalFailure(age, next, multiplier);
    }
}
