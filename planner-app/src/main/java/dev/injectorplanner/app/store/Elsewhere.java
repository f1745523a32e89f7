package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.fleet.Transfer;
import java.util.List;

/**
 * What lies at the other depots, and how it comes here.
 *
 * @param depots their names
 * @param stock their stock
 * @param ways table transfers, to the depot asked for
 */
public record Elsewhere(List<String> depots, List<StockLine> stock, List<Transfer> ways) {
    public Elsewhere {
        depots = List.copyOf(depots);
        stock = List.copyOf(stock);
        ways = List.copyOf(ways);
    }
}
