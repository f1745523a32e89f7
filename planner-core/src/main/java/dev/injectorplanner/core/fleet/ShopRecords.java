package dev.injectorplanner.core.fleet;

import java.util.List;

/**
 * What the workshops say of themselves: shifts, repairs beside the planned work, ways between depots, services done, what
 * their records are worth, cores and claims that were sent. Rows are kept in the order of their keys.
 *
 * @param shifts table shifts
 * @param repairs table repairs
 * @param transfers table transfers
 * @param tasksDone table task_done
 * @param failureAnswers table failure_answers
 * @param spares no table: pieces in stock that depots outside this snapshot can give away
 * @param returns table returns
 */
public record ShopRecords(
        List<DepotShift> shifts,
        List<Repair> repairs,
        List<Transfer> transfers,
        List<TaskDone> tasksDone,
        List<FailureAnswer> failureAnswers,
        List<StockLine> spares,
        List<UnitReturn> returns) {
    /** No rows in any of the tables. */
    public static final ShopRecords NONE = new ShopRecords(List.of(), List.of(), List.of());

    public ShopRecords {
        shifts = shifts.stream().sorted(FleetOrder.SHIFTS).toList();
        repairs = repairs.stream().sorted(FleetOrder.REPAIRS).toList();
        transfers = transfers.stream().sorted(FleetOrder.TRANSFERS).toList();
        tasksDone = tasksDone.stream().sorted(FleetOrder.TASKS_DONE).toList();
        failureAnswers =
                failureAnswers.stream().sorted(FleetOrder.FAILURE_ANSWERS).toList();
        spares = spares.stream().sorted(FleetOrder.STOCK).toList();
        returns = returns.stream().sorted(FleetOrder.RETURNS).toList();
    }

    /** Before anything was sent back. */
    public ShopRecords(
            List<DepotShift> shifts,
            List<Repair> repairs,
            List<Transfer> transfers,
            List<TaskDone> tasksDone,
            List<FailureAnswer> failureAnswers,
            List<StockLine> spares) {
        this(shifts, repairs, transfers, tasksDone, failureAnswers, spares, List.of());
    }

    /** All depots are in the snapshot. */
    public ShopRecords(
            List<DepotShift> shifts,
            List<Repair> repairs,
            List<Transfer> transfers,
            List<TaskDone> tasksDone,
            List<FailureAnswer> failureAnswers) {
        this(shifts, repairs, transfers, tasksDone, failureAnswers, List.of());
    }

    /** Without services done and without answers. */
    public ShopRecords(List<DepotShift> shifts, List<Repair> repairs, List<Transfer> transfers) {
        this(shifts, repairs, transfers, List.of(), List.of());
    }

    /** The same with other ways between depots. */
    ShopRecords withTransfers(List<Transfer> others) {
        return new ShopRecords(shifts, repairs, others, tasksDone, failureAnswers, spares, returns);
    }

    /** The same with what other depots can give, and the ways from them. */
    ShopRecords withSpares(List<StockLine> pieces, List<Transfer> ways) {
        return new ShopRecords(shifts, repairs, ways, tasksDone, failureAnswers, pieces, returns);
    }
}
