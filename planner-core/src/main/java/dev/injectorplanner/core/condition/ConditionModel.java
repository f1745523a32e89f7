package dev.injectorplanner.core.condition;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Turns signs into a multiplier on the hazard. The life model stands for the average injector, with and without signs; so
 * the product of an injector's ratios is divided by the mean product over all injector-time on record (weighed by the hazard
 * there), and one without any sign stands a little below 1. Ratios belong to the unit in service; the long-run cost of a new
 * one never sees them.
 */
public final class ConditionModel {
    /** Source of a ratio fitted to the fleet's records by proportional hazards. */
    public static final String FITTED = "fitted to the fleet's records";

    /** Source of a ratio that holds until the records tell. */
    public static final String DEFAULT = "planner default";

    /** No product of ratios goes beyond this. */
    static final double MOST = 200;

    private final List<SignEffect> effects;
    private final double mean;

    ConditionModel(List<SignEffect> effects, double mean) {
        this.effects = List.copyOf(effects);
        this.mean = mean;
    }

    /** The planner's default ratios, with every injector's time counted as without sign. */
    public static ConditionModel defaults() {
        return new ConditionModel(defaultEffects(), 1);
    }

    static List<SignEffect> defaultEffects() {
        List<SignEffect> effects = new ArrayList<>();
        for (Sign sign : Sign.values()) {
            effects.add(new SignEffect(sign, sign.defaultRatio(), DEFAULT, 0));
        }
        return effects;
    }

    /** One a sign, in the order of the signs. */
    public List<SignEffect> effects() {
        return effects;
    }

    /** Mean ratio over all injector-time on record, the divisor of every multiplier. */
    public double meanRatio() {
        return mean;
    }

    /** Product of the ratios of the signs that count, at most 200; 1 for none. */
    static double ratio(List<SignEffect> effects, Set<Sign> signs) {
        Set<Sign> counting = Sign.counting(signs);
        double product = 1;
        for (SignEffect effect : effects) {
            product *= counting.contains(effect.sign()) ? effect.ratio() : 1;
        }
        return Math.min(MOST, product);
    }

    /** The condition that signs make. */
    public Condition of(Set<Sign> signs) {
        String words = signs.isEmpty()
                ? "no sign"
                : EnumSet.copyOf(signs).stream().map(Sign::words).collect(Collectors.joining(", "));
        Set<Sign> counting = Sign.counting(signs);
        boolean fitted = effects.stream()
                .filter(effect -> counting.isEmpty() || counting.contains(effect.sign()))
                .anyMatch(effect -> effect.source().equals(FITTED));
        boolean defaults = effects.stream()
                .anyMatch(effect ->
                        counting.contains(effect.sign()) && effect.source().equals(DEFAULT));
        return new Condition(words, ratio(effects, signs) / mean, fitted && !defaults ? FITTED : DEFAULT);
    }
}
