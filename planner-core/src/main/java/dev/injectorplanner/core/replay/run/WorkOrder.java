package dev.injectorplanner.core.replay.run;

/**
 * Work that a policy asks for in the week that begins.
 *
 * @param truck place of the truck in the fleet
 * @param cylinders cylinders to replace, bit 0 for the first
 * @param test whether the injectors are tested
 */
public record WorkOrder(int truck, int cylinders, boolean test) {}
