package dev.injectorplanner.core.fleet;

import java.util.List;

/**
 * What the workshop says of itself: its shifts, and repairs beside the planned work. Rows are kept in the order of their keys.
 *
 * @param shifts table shifts
 * @param repairs table repairs
 */
public record ShopRecords(List<DepotShift> shifts, List<Repair> repairs) {
    /** No rows in any of the tables. */
    public static final ShopRecords NONE = new ShopRecords(List.of(), List.of());

    public ShopRecords {
        shifts = shifts.stream().sorted(FleetOrder.SHIFTS).toList();
        repairs = repairs.stream().sorted(FleetOrder.REPAIRS).toList();
    }
}
