package dev.injectorplanner.core.replay.run;

import java.util.List;

/** A policy: who decides what is done to the fleet. One fleet has one keeper, which may remember. */
public interface Keeper {
    /**
     * The week's work, most pressing first. What finds no hours, bays or parts falls away and has to be asked for again.
     *
     * @param monday the day the week begins; nothing of it is known yet
     */
    List<WorkOrder> decide(OracleView fleet, int monday);

    /**
     * A truck is in the bay with failed injectors: all cylinders to be replaced while it is open.
     *
     * @param failed cylinders that failed, bit 0 for the first; always done
     */
    int whileOpen(OracleView fleet, int truck, int day, int failed);

    /** Parts that the keeper orders itself this week, beside the shelf's own level: asked after {@link #decide}. */
    default List<PartOrder> orders() {
        return List.of();
    }

    /** Whether it reads {@link FleetView#snapshot}. */
    default boolean readsRecords() {
        return false;
    }

    /**
     * Parts asked for.
     *
     * @param depot where to
     * @param part part number
     * @param quantity pieces
     */
    record PartOrder(String depot, String part, int quantity) {}
}
