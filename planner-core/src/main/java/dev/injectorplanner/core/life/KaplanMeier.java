package dev.injectorplanner.core.life;

import java.util.List;

/**
 * Survival without a formula: the product-limit curve. Source: Kaplan and Meier (1958); standard errors by Greenwood
 * (1926); delayed entry with the units at risk at age t being those with entry &lt; t &lt;= exit (Klein and Moeschberger
 * 2003, section 4.6).
 *
 * @param points one for each different exit age, ascending
 */
public record KaplanMeier(List<Point> points) {
    public KaplanMeier {
        points = List.copyOf(points);
    }

    /**
     * One step of the curve.
     *
     * @param age exit age
     * @param atRisk units under observation and alive just before this age
     * @param events units that failed at this age
     * @param suspensions units last seen alive at this age
     * @param survival share surviving beyond this age
     * @param stdErr Greenwood standard error of the survival; NaN once the survival is 0
     */
    public record Point(double age, long atRisk, long events, long suspensions, double survival, double stdErr) {}

    /** The curve of the records; empty for no records. */
    public static KaplanMeier of(LifeRecords records) {
        return new KaplanMeier(KaplanMeierWalk.points(records));
    }

    /** Share surviving beyond {@code age}: the last step at or before it, 1 before the first. */
    public double survival(double age) {
        int low = 0;
        int high = points.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (points.get(middle).age() <= age) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low == 0 ? 1 : points.get(low - 1).survival();
    }
}
