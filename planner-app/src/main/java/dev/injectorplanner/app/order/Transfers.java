package dev.injectorplanner.app.order;

import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.stock.FormKeys;
import dev.injectorplanner.app.stock.OnHandStock;
import dev.injectorplanner.app.stock.Series;
import dev.injectorplanner.app.store.StockCause;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.PurchaseLine;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Parts sent from one depot to another. What is on its way is an open order line of the depot that takes; it is received
 * like any other.
 */
public final class Transfers {
    private final Store store;

    public Transfers(Store store) {
        this.store = store;
    }

    /**
     * Sends parts: stock of the giving depot goes down now.
     *
     * @param pieces by part
     * @param arrives the day they are to be there
     * @return the transfer's number
     * @throws RefusedEntryException where the giving depot has fewer
     */
    public String send(
            String key, String from, String to, Map<String, Double> pieces, LocalDate arrives, Instant at, String by) {
        return FormKeys.once(store, key, at, by, (connection, writer) -> {
            if (from.equals(to) || pieces.isEmpty()) {
                throw RefusedEntryException.of(
                        "transfer", "a transfer needs parts and two depots", "open the page again");
            }
            String number = Series.TRANSFER.next(connection);
            writer.because(new StockCause(StockCause.Kind.SENT, number, "to " + to, at, by));
            List<PurchaseLine> lines = new ArrayList<>();
            for (Map.Entry<String, Double> each : new TreeMap<>(pieces).entrySet()) {
                double taken = new OnHandStock(writer, from).take(each.getKey(), each.getValue());
                if (taken < each.getValue()) {
                    throw RefusedEntryException.of(
                            "transfer",
                            from + " has " + Require.plain(taken) + " of " + Require.plain(each.getValue()) + " "
                                    + each.getKey() + " in stock",
                            "replan, and accept the transfer that the new plan proposes");
                }
                lines.add(new PurchaseLine(number, each.getKey(), to, each.getValue(), arrives, null));
            }
            writer.merge(PurchaseLine.class, lines, true);
            StoreSql.update(
                    connection, "insert into transfer_sent (order_number, from_depot) values (?, ?)", number, from);
            OrderBooks.note(
                    connection,
                    at,
                    by,
                    "send a transfer",
                    number,
                    number + ", " + from + " to " + to,
                    "",
                    lines.stream().map(PurchaseOrders::words).collect(Collectors.joining("; ")));
            return number;
        });
    }

    /** What has not come of a cancelled transfer lies in its own depot again. */
    static void takeBack(Connection connection, StoreWriter writer, PurchaseLine line) throws SQLException {
        List<String> from = StoreSql.list(
                connection,
                "select from_depot from transfer_sent where order_number = ?",
                row -> row.getString("from_depot"),
                line.order());
        if (!from.isEmpty()) {
            new OnHandStock(writer, from.get(0)).add(line.part(), line.openQuantity());
        }
    }
}
