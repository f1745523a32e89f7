package dev.injectorplanner.core.usage;

/**
 * Age of an injector whose day of fitting nobody knows. It is at least what the truck ran since the records began, and at
 * most what the truck ran at all. Between the two it is weighed by the chance that an injector of that age still works, by
 * the planner's default life: in a fleet that has replaced injectors as they failed for long, ages are found in proportion
 * to survival (Cox 1962, Renewal Theory, section 5.4, backward recurrence time of a stationary process).
 *
 * @param least the lower bound, km or engine hours
 * @param expected the mean of what it may be, at least {@code least}
 */
public record UnknownAge(double least, double expected) {
    /** Shape of the life that a part without records is taken to have: a planner default. */
    public static final double USUAL_SHAPE = 2.5;

    /** Its scale in km: a planner default. */
    public static final double USUAL_SCALE_KM = 400_000;

    /** Its scale in engine hours: a planner default. */
    public static final double USUAL_SCALE_HOURS = 8_000;

    private static final int PANELS = 200;

    /**
     * The age on one meter.
     *
     * @param meterNow what the truck ran in all, 0 or more
     * @param sinceRecords what it ran since the records began
     * @param scale scale of the usual life, in the meter's unit
     */
    static UnknownAge of(double meterNow, double sinceRecords, double scale) {
        double least = Math.max(0, Math.min(sinceRecords, meterNow));
        double width = (meterNow - least) / PANELS;
        double weights = 0;
        double sum = 0;
        for (int i = 0; i < PANELS && width > 0; i++) {
            double age = least + (i + 0.5) * width;
            double weight = Math.exp(Math.pow(least / scale, USUAL_SHAPE) - Math.pow(age / scale, USUAL_SHAPE));
            weights += weight;
            sum += weight * age;
        }
        return new UnknownAge(least, weights > 0 ? sum / weights : least);
    }
}
