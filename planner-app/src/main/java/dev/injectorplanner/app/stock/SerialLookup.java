package dev.injectorplanner.app.stock;

import dev.injectorplanner.app.entry.EntryProblems;
import dev.injectorplanner.app.store.StoreSql;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/**
 * Where a serial or a code is now: in which cylinder of which truck, or in which stock. Of other depots than the one that
 * asks no more is said than that it is there.
 */
public final class SerialLookup {
    private final Connection connection;
    private final String depot;

    public SerialLookup(Connection connection, String depot) {
        this.connection = connection;
        this.depot = depot;
    }

    /** An injector that is in an engine. */
    public record InEngine(String truck, int cylinder, String words) {}

    public List<InEngine> fittedWithSerial(String serial) throws SQLException {
        return fitted("serial", serial);
    }

    public List<InEngine> fittedWithCode(String code) throws SQLException {
        return fitted("calibration_code", code);
    }

    private List<InEngine> fitted(String column, String value) throws SQLException {
        return StoreSql.list(
                connection,
                "select i.truck, i.cylinder, i.fitted_on, t.depot from injector i join truck t on t.truck = i.truck"
                        + " where i.removed_on is null and i." + column + " = ? order by i.truck, i.cylinder",
                row -> new InEngine(
                        row.getString(1),
                        row.getInt(2),
                        depot.equals(row.getString(4))
                                ? "is fitted in truck " + row.getString(1) + ", cylinder " + row.getInt(2) + ", since "
                                        + row.getObject(3, java.time.LocalDate.class)
                                : "is fitted in a truck of another depot"),
                value);
    }

    /** Why a serial and a code cannot be received. */
    void checkNew(String serial, String code, String where, String field, EntryProblems problems) throws SQLException {
        List<String> serials = new ArrayList<>();
        fittedWithSerial(serial).forEach(there -> serials.add(there.words()));
        StockInjectorRows.findThere(connection, "serial", serial).ifPresent(there -> serials.add(onShelf(there)));
        if (!serials.isEmpty()) {
            problems.add(
                    field + "serial",
                    where + "serial \"" + serial + "\": " + serials.get(0),
                    "read it on the injector again, or correct the other one first");
        }
        List<String> codes = new ArrayList<>();
        if (!code.isEmpty()) {
            fittedWithCode(code).forEach(there -> codes.add(there.words()));
            StockInjectorRows.findThere(connection, "calibration_code", code)
                    .ifPresent(there -> codes.add(onShelf(there)));
        }
        if (!codes.isEmpty()) {
            problems.add(
                    field + "code",
                    where + "code \"" + code + "\": " + codes.get(0) + "; no two injectors share a code",
                    "read it on the injector again, or correct the other one first");
        }
    }

    public String onShelf(StockInjector there) {
        if (!depot.equals(there.depot())) {
            return "is already in stock at another depot";
        }
        return "is in stock at " + there.depot() + " already (serial " + there.serial() + ", "
                + there.place().map(place -> "allocated to " + place).orElse("free") + ")";
    }
}
