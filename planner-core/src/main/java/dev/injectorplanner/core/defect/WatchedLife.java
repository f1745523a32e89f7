package dev.injectorplanner.core.defect;

import dev.injectorplanner.core.condition.SignTrack;
import dev.injectorplanner.core.history.LifeEnd;
import dev.injectorplanner.core.life.PredictiveLife;

/**
 * One life with what it showed.
 *
 * @param life model of its part and origin
 * @param firstAge age where observation began, 0 for from new
 * @param perWeek mean use a week
 * @param lastWeek the share of the last week that it was still in, above 0 to 1
 * @param end how it ended
 * @param track what it showed, one week for each week of observation
 */
record WatchedLife(
        PredictiveLife life, double firstAge, double perWeek, double lastWeek, LifeEnd end, SignTrack track) {
    boolean failed() {
        return end == LifeEnd.FAILED;
    }
}
