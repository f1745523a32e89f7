package dev.injectorplanner.core.replace;

import org.jspecify.annotations.Nullable;

/**
 * The cheapest age at which to replace a unit that has not failed.
 *
 * @param age in the unit of the life; null where replacing on age never pays
 * @param costRate long-run cost per unit of age at that age (or of running to failure)
 * @param costRateRunToFailure long-run cost per unit of age when replacing at failure only
 */
public record AgeReplacementPolicy(@Nullable Double age, double costRate, double costRateRunToFailure) {}
