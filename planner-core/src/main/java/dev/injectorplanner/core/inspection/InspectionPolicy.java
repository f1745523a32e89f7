package dev.injectorplanner.core.inspection;

import org.jspecify.annotations.Nullable;

/**
 * The cheapest distance between tests.
 *
 * @param interval in the unit of the ages; null where testing never pays
 * @param costRate cost per unit of age with it (or without tests)
 * @param costRateWithoutTests cost per unit of age when every defect runs its course
 * @param failureShare share of defects that fail in service before a test finds them
 */
public record InspectionPolicy(
        @Nullable Double interval, double costRate, double costRateWithoutTests, double failureShare) {}
