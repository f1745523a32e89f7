package dev.injectorplanner.core.fleet;

import java.util.List;

/**
 * What the workshops say of themselves: shifts, repairs beside the planned work, ways between depots,
 * cores and claims that were sent. Rows are kept in the order of their keys.
 *
 * @param shifts table shifts
 * @param repairs table repairs
 * @param transfers table transfers
 * @param returns table returns
 */
public record ShopRecords(
        List<DepotShift> shifts, List<Repair> repairs, List<Transfer> transfers, List<UnitReturn> returns) {
    /** No rows in any of the tables. */
    public static final ShopRecords NONE = new ShopRecords(List.of(), List.of(), List.of(), List.of());

    public ShopRecords {
        shifts = shifts.stream().sorted(FleetOrder.SHIFTS).toList();
        repairs = repairs.stream().sorted(FleetOrder.REPAIRS).toList();
        transfers = transfers.stream().sorted(FleetOrder.TRANSFERS).toList();
        returns = returns.stream().sorted(FleetOrder.RETURNS).toList();
    }

    /** Before anything was sent back. */
    public ShopRecords(List<DepotShift> shifts, List<Repair> repairs, List<Transfer> transfers) {
        this(shifts, repairs, transfers, List.of());
    }
}
