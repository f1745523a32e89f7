package dev.injectorplanner.core.generate;

import dev.injectorplanner.core.fleet.FleetSnapshot;

/** A made-up fleet: its tables, and the truth behind them. */
public record GeneratedFleet(FleetSnapshot snapshot, FleetTruth truth) {}
