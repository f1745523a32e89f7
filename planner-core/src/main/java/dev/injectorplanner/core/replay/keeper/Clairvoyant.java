package dev.injectorplanner.core.replay.keeper;

import dev.injectorplanner.core.replay.run.Keeper;
import dev.injectorplanner.core.replay.run.OracleView;
import dev.injectorplanner.core.replay.run.WorkOrder;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Knows when each injector fails: replaces it shortly before, takes along those that would fail soon after, and leaves what
 * outlives its truck or the replay. Not the best that could be, but no policy without second sight comes near it.
 */
public final class Clairvoyant implements Keeper {
    private final int leadDays;
    private final int alongDays;

    /**
     * @param leadDays how long before a failure a truck is asked in
     * @param alongDays days within which what fails goes along
     */
    public Clairvoyant(int leadDays, int alongDays) {
        this.leadDays = leadDays;
        this.alongDays = alongDays;
    }

    @Override
    public List<WorkOrder> decide(OracleView fleet, int monday) {
        List<WorkOrder> orders = new ArrayList<>();
        for (int truck = 0; truck < fleet.trucks(); truck++) {
            if (fleet.inService(truck, monday) && failing(fleet, truck, monday + leadDays) != 0) {
                orders.add(new WorkOrder(truck, failing(fleet, truck, monday + alongDays), false));
            }
        }
        orders.sort(Comparator.comparingInt(order -> firstFailure(fleet, order.truck())));
        return orders;
    }

    private static int firstFailure(OracleView fleet, int truck) {
        int first = Integer.MAX_VALUE;
        for (int cylinder = 0; cylinder < fleet.cylinders(truck); cylinder++) {
            first = Math.min(first, fleet.failDay(truck, cylinder));
        }
        return first;
    }

    private static int failing(OracleView fleet, int truck, int before) {
        int last = Math.min(before, fleet.lastDay(truck));
        int mask = 0;
        for (int cylinder = 0; cylinder < fleet.cylinders(truck); cylinder++) {
            mask |= fleet.failDay(truck, cylinder) < last ? 1 << cylinder : 0;
        }
        return mask;
    }

    @Override
    public int whileOpen(OracleView fleet, int truck, int day, int failed) {
        return failed | failing(fleet, truck, day + alongDays);
    }
}
