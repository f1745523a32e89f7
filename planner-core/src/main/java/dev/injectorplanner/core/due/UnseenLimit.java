package dev.injectorplanner.core.due;

/**
 * How likely a road failure from an undetected defect may become before a truck is tested.
 *
 * @param chance between 0 and 1
 * @param source whose limit it is: {@link DueRule#SITE} or {@link DueRule#DEFAULT}
 */
public record UnseenLimit(double chance, String source) {
    /** No limit: tests come where they pay. The planner's default. */
    public static final double OFF = 1;

    public UnseenLimit {
        if (!(chance > 0 && chance <= 1)) {
            throw new IllegalArgumentException("unseen failure limit must be above 0 and at most 1: " + chance);
        }
    }

    /** The site's limit; 1 for none. */
    public static UnseenLimit of(double chance) {
        return new UnseenLimit(chance, chance == OFF ? DueRule.DEFAULT : DueRule.SITE);
    }

    /** Whether there is a limit. */
    public boolean isOn() {
        return chance < OFF;
    }
}
