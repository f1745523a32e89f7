package dev.injectorplanner.core.due;

/**
 * How likely a road failure from a defect nobody has seen may become before a truck is tested.
 *
 * @param chance between 0 and 1
 * @param source whose limit it is: {@link DueRule#SITE} or {@link DueRule#DEFAULT}
 */
public record UnseenLimit(double chance, String source) {
    /** The planner's default: 5 %, common practice of no source, about what a test each four months keeps. */
    public static final double STANDARD = 0.05;

    public UnseenLimit {
        if (!(chance > 0 && chance < 1)) {
            throw new IllegalArgumentException("unseen failure limit must be between 0 and 1: " + chance);
        }
    }

    /** The site's limit, or the planner's default where the site keeps that. */
    public static UnseenLimit of(double chance) {
        return new UnseenLimit(chance, chance == STANDARD ? DueRule.DEFAULT : DueRule.SITE);
    }
}
