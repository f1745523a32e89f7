package dev.injectorplanner.core.allocation;

import dev.injectorplanner.core.check.Require;

/**
 * What shipments cost and take.
 *
 * @param expressDays days from order to receipt by express
 * @param expressCost of one express shipment of one supplier, beyond the parts
 * @param transferDays days of a transfer between depots without a row of their own
 * @param transferCost cost of one
 */
public record ShipmentRules(int expressDays, double expressCost, int transferDays, double transferCost) {
    public ShipmentRules {
        Require.within("expedite_days", expressDays, 0, 60);
        Require.notNegative("expedite_price", expressCost);
        Require.within("transfer_days", transferDays, 0, 60);
        Require.notNegative("transfer_cost", transferCost);
    }
}
