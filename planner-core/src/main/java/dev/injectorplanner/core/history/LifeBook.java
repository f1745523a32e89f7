package dev.injectorplanner.core.history;

import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.life.PredictiveLife;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
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
    private final Map<String, PartLife> changed = new LinkedHashMap<>();
    private final Map<String, LifeChange> changes = new LinkedHashMap<>();
    private final Map<PartLife, PredictiveLife> predictive = new HashMap<>();
    private final Map<String, TruckWear> wear = new TreeMap<>();
    private final Map<WornLife, PredictiveLife> worn = new ConcurrentHashMap<>();

    private record WornLife(PartLife model, double wear) {}

    private LifeBook() {}

    /**
     * Learns from a history.
     *
     * @param parts parts that must have a model, whether or not the history tells of them
     * @param remaining what an injector found worn would have run on
     */
    public static LifeBook of(LifeHistory history, List<String> parts, RemainingDelay remaining) {
        return of(parts, history.units(), remaining, unit -> 1, List.of());
    }

    /**
     * Learns from lives of which those found worn are only believed with a chance.
     *
     * @param worn chance that an injector taken out worn had a defect, 0 to 1
     * @param changes injectors that fail sooner than those before them: their life is learned apart
     */
    public static LifeBook of(
            LifeHistory history,
            List<String> parts,
            RemainingDelay remaining,
            ToDoubleFunction<UnitLife> worn,
            List<LifeChange> changes) {
        return of(parts, history.units(), remaining, worn, changes);
    }

    /** Learns from given lives. */
    public static LifeBook of(List<String> parts, List<UnitLife> units, RemainingDelay remaining) {
        return of(parts, units, remaining, unit -> 1, List.of());
    }

    /** Learns from given lives, those of changes apart. */
    public static LifeBook of(
            List<String> parts, List<UnitLife> units, RemainingDelay remaining, List<LifeChange> changes) {
        return of(parts, units, remaining, unit -> 1, changes);
    }

    private static LifeBook of(
            List<String> parts,
            List<UnitLife> units,
            RemainingDelay remaining,
            ToDoubleFunction<UnitLife> worn,
            List<LifeChange> changes) {
        Map<String, List<UnitLife>> byPart = new TreeMap<>();
        new TreeSet<>(parts).forEach(part -> byPart.put(part, new ArrayList<>()));
        units.forEach(unit ->
                byPart.computeIfAbsent(unit.part(), part -> new ArrayList<>()).add(unit));
        LifeBook book = new LifeBook();
        changes.forEach(change -> book.changes.put(key(change.part(), change.origin()), change));
        byPart.forEach((part, own) -> {
            new PartFit(part, book.unitsOf(own, false), remaining, worn).addTo(book);
            List<UnitLife> apart = book.unitsOf(own, true);
            if (!apart.isEmpty()) {
                new PartFit(part, apart, remaining, worn).addChangedTo(book);
            }
        });
        return book;
    }

    private List<UnitLife> unitsOf(List<UnitLife> units, boolean ofChange) {
        return units.stream()
                .filter(unit -> covers(unit.part(), unit.origin(), unit.fittedOn()) == ofChange)
                .toList();
    }

    private boolean covers(String part, Origin origin, LocalDate fittedOn) {
        LifeChange change = changes.get(key(part, origin));
        return change != null && change.covers(fittedOn);
    }

    void add(PartLife life, PredictiveLife forecast, TruckWear ofTrucks) {
        wear.put(life.part(), ofTrucks);
        lives.put(key(life.part(), life.origin()), life);
        predictive.put(life, forecast);
    }

    void addChanged(PartLife life, PredictiveLife forecast) {
        changed.put(key(life.part(), life.origin()), life);
        predictive.put(life, forecast);
    }

    private static String key(String part, Origin origin) {
        return part + "\n" + origin;
    }

    /** Models of what is fitted now, by part and origin. */
    public List<PartLife> lives() {
        return lives.values().stream()
                .map(life -> of(life.part(), life.origin()))
                .toList();
    }

    /** Injectors that fail sooner than those before them, at most one group a part and origin. */
    public List<LifeChange> changes() {
        return List.copyOf(changes.values());
    }

    /** Model of what was fitted before a change, or outside it. */
    public PartLife before(LifeChange change) {
        return model(change.part(), change.origin());
    }

    /** Model of the injectors of a change. */
    public PartLife since(LifeChange change) {
        PartLife apart = changed.get(key(change.part(), change.origin()));
        return apart == null ? model(change.part(), change.origin()) : apart;
    }

    /**
     * Model of a unit that is fitted now; of unknown origin, that of the origin with the shorter life.
     *
     * @throws IllegalArgumentException for a part that the book was not made for
     */
    public PartLife of(String part, Origin origin) {
        LifeChange change = changes.get(key(part, origin));
        return change != null && change.goesOn() ? since(change) : model(part, origin);
    }

    /**
     * Model of a unit that was fitted on a day.
     *
     * @throws IllegalArgumentException for a part that the book was not made for
     */
    public PartLife of(String part, Origin origin, LocalDate fittedOn) {
        LifeChange change = changes.get(key(part, origin));
        return change != null && change.covers(fittedOn) ? since(change) : model(part, origin);
    }

    private PartLife model(String part, Origin origin) {
        if (origin == Origin.UNKNOWN) {
            PartLife fresh = model(part, Origin.NEW);
            PartLife reman = model(part, Origin.REMAN);
            return reman.life().meanLife() < fresh.life().meanLife() ? reman : fresh;
        }
        PartLife life = lives.get(key(part, origin));
        if (life == null) {
            throw new IllegalArgumentException("no life model of part \"" + part + "\"");
        }
        return life;
    }

    /** Clock of a part, the same for both origins. */
    public Clock clockOf(String part) {
        return model(part, Origin.NEW).clock();
    }

    /** A model with what is not known of it: every forecast and every price is made with this. */
    public PredictiveLife predictive(PartLife model) {
        PredictiveLife life = predictive.get(model);
        if (life == null) {
            throw new IllegalArgumentException("no life model of part \"" + model.part() + "\"");
        }
        return life;
    }

    /** The same in a truck that wears its injectors faster or slower than usual. */
    public PredictiveLife predictive(PartLife model, String truck) {
        double factor = wearOf(model.part()).of(truck);
        return factor == 1
                ? predictive(model)
                : worn.computeIfAbsent(
                        new WornLife(model, factor), key -> predictive(model).fasterBy(factor));
    }

    /** How trucks differ in wear of a part; not at all for a part that the book was not made for. */
    public TruckWear wearOf(String part) {
        return wear.getOrDefault(part, TruckWear.NONE);
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
