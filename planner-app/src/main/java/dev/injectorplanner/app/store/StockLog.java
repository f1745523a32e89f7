package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.StockLine;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Writes a movement for each stock line that changes, in the change's own transaction: no way around it. */
final class StockLog {
    private final List<Moved> moved = new ArrayList<>();

    private record Moved(StockLine after, double pieces) {}

    /** Notes a line that is about to be written. */
    void note(@Nullable Object before, Object after) {
        if (after instanceof StockLine now) {
            double pieces = now.onHand() - (before instanceof StockLine line ? line.onHand() : 0);
            if (pieces != 0) {
                moved.add(new Moved(now, pieces));
            }
        }
    }

    boolean any() {
        return !moved.isEmpty();
    }

    Boolean write(Connection connection, StockCause cause) throws SQLException {
        long id = 0;
        for (int i = 0; i < moved.size(); i++) {
            id = i % StoreSql.IDS == 0 ? StoreSql.nextIds(connection, "stock_movement_seq") : id + 1;
            Moved each = moved.get(i);
            StoreSql.update(
                    connection,
                    "insert into stock_movement (id, depot, part, pieces, on_hand, kind, document, why, moved_at, moved_by)"
                            + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                    id,
                    each.after().depot(),
                    each.after().part(),
                    each.pieces(),
                    each.after().onHand(),
                    cause.kind().name(),
                    cause.document(),
                    cause.why(),
                    cause.at(),
                    cause.by());
        }
        return true;
    }
}
