package dev.injectorplanner.core.fault;

/** What a fault code speaks of. */
public enum FaultSubject {
    /** The injector of a cylinder, its circuit or its balance. */
    INJECTOR,
    /** Combustion of a cylinder, or of several. */
    MISFIRE,
    /** Pressure in the common rail. */
    RAIL_PRESSURE,
    /** Pressure of the fuel that comes to the high-pressure pump. */
    SUPPLY_PRESSURE,
    FUEL_LEAK,
    WATER_IN_FUEL,
    /** Something else that the standard or this table names. */
    OTHER,
    /** A number that the standards leave to the maker, or that this table does not know: kept as it is. */
    UNTRANSLATED;

    /** Whether it touches the fuel of all cylinders, so that it speaks against every injector of the engine. */
    public boolean ofWholeFuelSystem() {
        return this == RAIL_PRESSURE || this == SUPPLY_PRESSURE || this == FUEL_LEAK || this == WATER_IN_FUEL;
    }
}
