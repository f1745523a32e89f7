package dev.injectorplanner.reports.results;

/**
 * Forecasts of 12 weeks between two chances, held against what happened. Chances are 0..1.
 *
 * @param low from this chance
 * @param high below this one
 * @param count forecasts
 * @param expected failures expected
 * @param failures failures that happened
 * @param least lower end of the 90 % interval of the share that failed
 * @param most its upper end
 * @param holds whether the mean forecast lies inside
 */
public record ForecastLine(
        double low, double high, int count, double expected, int failures, double least, double most, boolean holds) {}
