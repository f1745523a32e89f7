package dev.injectorplanner.app.stock;

import dev.injectorplanner.app.people.AuditTrail;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;

/** What happens to stock with serials, for the audit trail, in the change's own transaction. */
final class StockNotes {
    private StockNotes() {}

    static void received(Connection connection, Instant at, String by, GoodsIn box) throws SQLException {
        String units = box.units().stream()
                .map(unit -> "serial " + unit.serial() + (unit.code().isEmpty() ? "" : ", code " + unit.code()))
                .collect(Collectors.joining("; "));
        AuditTrail.write(
                connection,
                at,
                by,
                "receive injectors",
                box.depot() + ", part " + box.part() + (box.order() == null ? "" : ", order " + box.order()),
                "",
                units);
    }

    static void tookOff(Connection connection, Instant at, String by, StockInjector injector) throws SQLException {
        AuditTrail.write(
                connection,
                at,
                by,
                "remove an injector from stock",
                "serial " + injector.serial(),
                "in stock at " + injector.depot(),
                "gone");
    }

    static void bound(Connection connection, Instant at, String by, String truck, List<String> bound)
            throws SQLException {
        AuditTrail.write(connection, at, by, "allocate a kit", "truck " + truck, "", String.join("; ", bound));
    }

    static void released(Connection connection, Instant at, String by, StockInjector injector) throws SQLException {
        AuditTrail.write(
                connection,
                at,
                by,
                "release an injector from a kit",
                "serial " + injector.serial(),
                injector.place().map(place -> "allocated to " + place).orElse("free"),
                "free");
    }

    /** {@code cylinder 3: serial R1}. */
    static String bound(int cylinder, StockInjector injector) {
        return "cylinder " + cylinder + ": serial " + injector.serial();
    }
}
