package dev.injectorplanner.core.risk;

/**
 * How many injectors of a part will fail in service at a depot within some weeks if nothing is replaced: the mean, and a band
 * that nine in ten such forecasts should hold. The band knows chance, and how well the records tell the life.
 *
 * @param depot the depot
 * @param part part number
 * @param weeks weeks from the day of the plan
 * @param injectors fitted injectors counted
 * @param mean expected number
 * @param low 5 % of forecasts stay below it
 * @param high 5 % of forecasts go beyond it
 */
public record FailureBand(String depot, String part, int weeks, int injectors, double mean, int low, int high) {}
