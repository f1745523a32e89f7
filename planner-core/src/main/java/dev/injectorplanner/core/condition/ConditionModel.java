package dev.injectorplanner.core.condition;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Turns signs into multipliers on the hazard. The life model stands for the average injector, with and without signs; so
 * the product of an injector's ratios is divided by the mean product over all injector-time on record (weighed by the hazard
 * there), and one without any sign stands below 1. How the hazard runs on from there, for those with a sign and those
 * without, is told by what was seen over what was expected. All of it belongs to the unit in service; the long-run cost of a
 * new one never sees it.
 */
public final class ConditionModel {
    /** Source of a ratio fitted to the fleet's records by proportional hazards. */
    public static final String FITTED = "fitted to the fleet's records";

    /** Source of a ratio that holds until the records are enough. */
    public static final String DEFAULT = "planner default";

    /** No product of ratios goes beyond this. */
    static final double MOST = 200;

    private final List<SignEffect> effects;
    private final double mean;
    private final Profile shown;
    private final Profile silent;

    /**
     * @param shown course of the hazard after a clear sign
     * @param silent course of the hazard without one
     */
    ConditionModel(List<SignEffect> effects, double mean, Profile shown, Profile silent) {
        this.effects = List.copyOf(effects);
        this.mean = mean;
        this.shown = shown;
        this.silent = silent;
    }

    /** The planner's default ratios, with every injector's time counted as without sign. */
    public static ConditionModel defaults() {
        return new ConditionModel(defaultEffects(), 1, Profile.FLAT, Profile.FLAT);
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

    /** Whether signs clearly show a defect: faults on several days, or a test over its limit. */
    static boolean shows(Set<Sign> signs) {
        return signs.contains(Sign.FAULTS) || signs.contains(Sign.TEST);
    }

    /** The condition that signs make. */
    public Condition of(Set<Sign> signs) {
        String words = signs.isEmpty()
                ? "no warning sign"
                : EnumSet.copyOf(signs).stream().map(Sign::words).collect(Collectors.joining(", "));
        Set<Sign> counting = Sign.counting(signs);
        boolean fitted = effects.stream()
                .filter(effect -> counting.isEmpty() || counting.contains(effect.sign()))
                .anyMatch(effect -> effect.source().equals(FITTED));
        boolean defaults = effects.stream()
                .anyMatch(effect ->
                        counting.contains(effect.sign()) && effect.source().equals(DEFAULT));
        Profile profile = shows(signs) ? shown : silent;
        double multiplier = ratio(effects, signs) / mean;
        return new Condition(
                words,
                multiplier * profile.whole(),
                fitted && !defaults ? FITTED : DEFAULT,
                multiplier * profile.early(),
                multiplier * profile.middle(),
                profile.late());
    }
}
