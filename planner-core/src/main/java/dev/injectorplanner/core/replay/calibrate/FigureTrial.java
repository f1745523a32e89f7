package dev.injectorplanner.core.replay.calibrate;

import dev.injectorplanner.core.plan.PlanningFigures;

/**
 * Figures that were tried.
 *
 * @param figures the figures
 * @param costPer1000Km cost per 1,000 km driven over the fleets of the search, in the site's currency
 * @param difference the same above that of the figures that were the best so far, mean over fleets, paired
 * @param error its standard error
 * @param kept whether the search went on from these
 */
public record FigureTrial(
        PlanningFigures figures, double costPer1000Km, double difference, double error, boolean kept) {}
