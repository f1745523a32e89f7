package dev.injectorplanner.app.web.find;

import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.web.office.Address;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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

    /** What is asked for. */
    private record Asked(String whole) {
        static Asked of(String piece) {
            return new Asked(piece.strip().toLowerCase(Locale.ROOT));
        }

        boolean isExact(@Nullable String name) {
            return name != null && name.toLowerCase(Locale.ROOT).equals(whole);
        }

        /** The piece anywhere in a value, for a statement that escapes by an exclamation mark. */
        String like(boolean tight) {
            String piece = tight ? whole.replaceAll("[\\s-]", "") : whole;
            return "%" + piece.replace("!", "!!").replace("%", "!%").replace("_", "!_") + "%";
        }
    }

    /**
     * A kind of thing that can be found.
     *
     * @param select what of it, up to its conditions
     * @param depot column of its depot, or null where it is everywhere
     * @param matched columns in which the piece is looked for
     * @param tight whether blanks and dashes in them do not count
     * @param tail grouping and order
     */
    private record Kind(String select, @Nullable String depot, List<String> matched, boolean tight, String tail) {
        String statement() {
            String pieces = matched.stream()
                    .map(column -> (tight
                                    ? "replace(replace(lower(" + column + "), '-', ''), ' ', '')"
                                    : "lower(" + column + ")")
                            + " like ? escape '!'")
                    .collect(Collectors.joining(" or ", "(", ")"));
            String here = depot == null ? "" : "(? = '' or " + depot + " = ?) and ";
            return select + here + pieces + tail + " fetch first " + MOST + " rows only";
        }

        /** Empty for every depot, since a database cannot tell the type of a bare null. */
        Object[] values(Asked asked, @Nullable String only) {
            Stream<Object> here =
                    depot == null ? Stream.of() : Stream.of(only == null ? "" : only, only == null ? "" : only);
            return Stream.concat(here, matched.stream().map(column -> asked.like(tight)))
                    .toArray();
        }
    }

    private static final Kind TRUCKS = new Kind(
            "select truck, coalesce(vin_if_known, '') as vin, depot, family from truck where ",
            "depot",
            List.of("truck", "vin_if_known"),
            false,
            " order by truck");

    private static final Kind FITTED = new Kind(
            "select i.truck, i.cylinder, i.part, i.serial, i.calibration_code, i.fitted_on, i.removed_on, t.depot"
                    + " from injector i join truck t on t.truck = i.truck where ",
            "t.depot",
            List.of("i.serial", "i.calibration_code"),
            true,
            " order by i.removed_key desc, i.truck, i.cylinder");

    private static final Kind IN_STOCK = new Kind(
            "select depot, part, serial, calibration_code, truck, cylinder from shelf_injector where there = 1 and ",
            "depot",
            List.of("serial", "calibration_code"),
            true,
            " order by serial");

    private static final Kind PARTS = new Kind(
            "select part, description, supplier from part where ",
            null,
            List.of("part", "description", "supplier"),
            false,
            " order by part");

    private static final Kind ORDERS = new Kind(
            "select purchase_order, min(due_on) as due_on, count(*) as n, sum(case when received_on is null then 1 else 0 end)"
                    + " as open_lines from purchase_line where ",
            "depot",
            List.of("purchase_order"),
            false,
            " group by purchase_order order by 1 desc");

    private interface Reads {
        Hit of(ResultSet row, Asked asked) throws SQLException;
    }

    private List<Hit> find(Kind kind, String piece, @Nullable String depot, Reads reads) {
        Asked asked = Asked.of(piece);
        return sql.list(kind.statement(), row -> reads.of(row, asked), kind.values(asked, depot));
    }

    /** Trucks by name or VIN. */
    List<Hit> trucks(String piece, @Nullable String depot) {
        return find(TRUCKS, piece, depot, SiteSearch::truck);
    }

    private static Hit truck(ResultSet row, Asked asked) throws SQLException {
        String truck = row.getString("truck");
        String vin = row.getString("vin");
        return new Hit(
                truck,
                row.getString("depot") + ", " + row.getString("family") + (vin.isEmpty() ? "" : ", VIN " + vin),
                Address.truck(truck),
                asked.isExact(truck) || asked.isExact(vin));
    }

    /** Injectors by serial or calibration code, where they are and where they were. */
    List<Hit> fitted(String piece, @Nullable String depot) {
        return find(FITTED, piece, depot, SiteSearch::fitted);
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
        return find(IN_STOCK, piece, depot, SiteSearch::inStock);
    }

    private static Hit inStock(ResultSet row, Asked asked) throws SQLException {
        String truck = row.getString("truck");
        return new Hit(
                row.getString("serial"),
                row.getString("part") + ", code " + orNone(row.getString("calibration_code")) + ": in stock at "
                        + row.getString("depot")
                        + (truck == null ? "" : ", in the kit of " + truck + ", cylinder " + row.getInt("cylinder")),
                "/store?depot=" + Address.escaped(row.getString("depot")),
                asked.isExact(row.getString("serial")) || asked.isExact(row.getString("calibration_code")));
    }

    /** Parts by number, description or supplier. */
    List<Hit> parts(String piece) {
        return find(PARTS, piece, null, SiteSearch::part);
    }

    private static Hit part(ResultSet row, Asked asked) throws SQLException {
        String part = row.getString("part");
        return new Hit(
                part,
                row.getString("description") + ", " + row.getString("supplier"),
                "/stock/part?part=" + Address.escaped(part),
                asked.isExact(part));
    }

    /** Orders by number. */
    List<Hit> orders(String piece, @Nullable String depot) {
        return find(ORDERS, piece, depot, SiteSearch::order);
    }

    private static Hit order(ResultSet row, Asked asked) throws SQLException {
        String order = row.getString("purchase_order");
        int lines = row.getInt("n");
        int open = row.getInt("open_lines");
        return new Hit(
                order,
                lines
                        + (lines == 1 ? " line, " : " lines, ")
                        + (open == 0 ? "all received" : open + " open, first due " + row.getDate("due_on")),
                "/orders/" + Address.escaped(order),
                asked.isExact(order));
    }

    private static String orNone(@Nullable String code) {
        return code == null || code.isEmpty() ? "not recorded" : code;
    }
}
