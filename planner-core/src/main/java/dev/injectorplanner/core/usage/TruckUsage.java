package dev.injectorplanner.core.usage;

/**
 * Usage of one truck.
 *
 * @param truck the truck
 * @param odometer km
 * @param engineHours engine hours
 */
public record TruckUsage(String truck, MeterUsage odometer, MeterUsage engineHours) {}
