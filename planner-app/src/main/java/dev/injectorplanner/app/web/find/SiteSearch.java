package dev.injectorplanner.app.web.find;

import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.web.office.Address;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/**
 * Finds trucks, injectors, parts and orders by a piece of what is written on them. Blanks and dashes in a serial or code do not
 * count, since labels print codes in groups. Whoever has one depot finds what is there.
 */
public final class SiteSearch {
    /** Hits of a kind at most. */
    static final int MOST = 25;

    private final StoreSql sql;

    public SiteSearch(DataSource source) {
        this.sql = new StoreSql(source);
    }

    /**
     * Something found.
     *
     * @param name what it is called
     * @param about what it is, in words
     * @param link its page
     * @param exact whether all of its name was asked for
     */
    public record Hit(String name, String about, String link, boolean exact) {}

    /** What is asked for, as the statements take it. */
    private record Asked(
            String whole,
            String like,
            String tightLike,
            @Nullable String depot) {
        static Asked of(String piece, @Nullable String depot) {
            String lower = piece.strip().toLowerCase(Locale.ROOT);
            return new Asked(lower, like(lower), like(lower.replaceAll("[\\s-]", "")), depot);
        }

        private static String like(String text) {
            return "%" + text.replace("!", "!!").replace("%", "!%").replace("_", "!_") + "%";
        }

        boolean isExact(@Nullable String name) {
            return name != null && name.toLowerCase(Locale.ROOT).equals(whole);
        }
    }

    /** Trucks by name or VIN. */
    List<Hit> trucks(String piece, @Nullable String depot) {
        Asked asked = Asked.of(piece, depot);
        return sql.list(
                "select truck, coalesce(vin_if_known, '') as vin, depot, family from truck where (? = '' or depot = ?)"
                        + " and (lower(truck) like ? escape '!' or lower(vin_if_known) like ? escape '!') order by truck"
                        + limited(),
                row -> new Hit(
                        row.getString("truck"),
                        row.getString("depot") + ", " + row.getString("family")
                                + (row.getString("vin").isEmpty() ? "" : ", VIN " + row.getString("vin")),
                        Address.truck(row.getString("truck")),
                        asked.isExact(row.getString("truck")) || asked.isExact(row.getString("vin"))),
                text(depot),
                text(depot),
                asked.like(),
                asked.like());
    }

    /** Injectors by serial or calibration code, where they are and where they were. */
    List<Hit> fitted(String piece, @Nullable String depot) {
        Asked asked = Asked.of(piece, depot);
        return sql.list(
                "select i.truck, i.cylinder, i.part, i.serial, i.calibration_code, i.fitted_on, i.removed_on, t.depot"
                        + " from injector i join truck t on t.truck = i.truck where (? = '' or t.depot = ?)"
                        + " and (replace(replace(lower(i.serial), '-', ''), ' ', '') like ? escape '!'"
                        + " or replace(replace(lower(i.calibration_code), '-', ''), ' ', '') like ? escape '!')"
                        + " order by i.removed_key desc, i.truck, i.cylinder" + limited(),
                row -> fitted(row, asked),
                text(depot),
                text(depot),
                asked.tightLike(),
                asked.tightLike());
    }

    private static Hit fitted(ResultSet row, Asked asked) throws SQLException {
        String serial = row.getString("serial");
        java.sql.Date removed = row.getDate("removed_on");
        return new Hit(
                serial == null ? "without a serial" : serial,
                row.getString("part") + ", code " + orNone(row.getString("calibration_code")) + ": truck "
                        + row.getString("truck") + ", cylinder " + row.getInt("cylinder") + ", "
                        + (removed == null ? "fitted now" : "removed on " + removed) + ", " + row.getString("depot"),
                Address.truck(row.getString("truck")),
                asked.isExact(serial) || asked.isExact(row.getString("calibration_code")));
    }

    /** Injectors in stock by serial or calibration code. */
    List<Hit> inStock(String piece, @Nullable String depot) {
        Asked asked = Asked.of(piece, depot);
        return sql.list(
                "select depot, part, serial, calibration_code, truck, cylinder from shelf_injector where there = 1"
                        + " and (? = '' or depot = ?)"
                        + " and (replace(replace(lower(serial), '-', ''), ' ', '') like ? escape '!'"
                        + " or replace(replace(lower(calibration_code), '-', ''), ' ', '') like ? escape '!')"
                        + " order by serial" + limited(),
                row -> new Hit(
                        row.getString("serial"),
                        row.getString("part") + ", code " + orNone(row.getString("calibration_code")) + ": in stock at "
                                + row.getString("depot")
                                + (row.getString("truck") == null
                                        ? ""
                                        : ", in the kit of " + row.getString("truck") + ", cylinder "
                                                + row.getInt("cylinder")),
                        "/store?depot=" + Address.escaped(row.getString("depot")),
                        asked.isExact(row.getString("serial")) || asked.isExact(row.getString("calibration_code"))),
                text(depot),
                text(depot),
                asked.tightLike(),
                asked.tightLike());
    }

    /** Parts by number, description or supplier. */
    List<Hit> parts(String piece) {
        Asked asked = Asked.of(piece, null);
        return sql.list(
                "select part, description, supplier from part where lower(part) like ? escape '!'"
                        + " or lower(description) like ? escape '!' or lower(supplier) like ? escape '!' order by part"
                        + limited(),
                row -> new Hit(
                        row.getString("part"),
                        row.getString("description") + ", " + row.getString("supplier"),
                        "/stock/part?part=" + Address.escaped(row.getString("part")),
                        asked.isExact(row.getString("part"))),
                asked.like(),
                asked.like(),
                asked.like());
    }

    /** Orders by number. */
    List<Hit> orders(String piece, @Nullable String depot) {
        Asked asked = Asked.of(piece, depot);
        return sql.list(
                "select purchase_order, min(due_on) as due_on, count(*) as n, sum(case when received_on is null then 1"
                        + " else 0 end) as open_lines from purchase_line where (? = '' or depot = ?)"
                        + " and lower(purchase_order) like ? escape '!' group by purchase_order order by 1 desc"
                        + limited(),
                row -> new Hit(
                        row.getString("purchase_order"),
                        row.getInt("n")
                                + (row.getInt("n") == 1 ? " line, " : " lines, ")
                                + (row.getInt("open_lines") == 0
                                        ? "all received"
                                        : row.getInt("open_lines") + " open, first due " + row.getDate("due_on")),
                        "/orders/" + Address.escaped(row.getString("purchase_order")),
                        asked.isExact(row.getString("purchase_order"))),
                text(depot),
                text(depot),
                asked.like());
    }

    private static String limited() {
        return " fetch first " + MOST + " rows only";
    }

    /** Empty for every depot, since a database cannot tell the type of a bare null. */
    private static String text(@Nullable String depot) {
        return depot == null ? "" : depot;
    }

    private static String orNone(@Nullable String code) {
        return code == null || code.isEmpty() ? "not recorded" : code;
    }
}
