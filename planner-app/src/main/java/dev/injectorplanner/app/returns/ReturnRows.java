package dev.injectorplanner.app.returns;

import dev.injectorplanner.core.fleet.UnitReturn;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;

/** Reads rows of what was sent. */
final class ReturnRows {
    private ReturnRows() {}

    static UnitReturn read(ResultSet row) throws SQLException {
        return new UnitReturn(
                UnitReturn.What.valueOf(row.getString("what")),
                row.getString("truck"),
                row.getInt("cylinder"),
                row.getObject("fitted_on", LocalDate.class),
                row.getInt("fitting"),
                row.getString("document"),
                row.getObject("sent_on", LocalDate.class),
                row.getString("sent_by"),
                row.getBigDecimal("amount"),
                row.getObject("settled_on", LocalDate.class),
                row.getString("settled_by"),
                row.getBigDecimal("credit"),
                row.getString("reason"));
    }
}
