package dev.injectorplanner.app.stock;

import dev.injectorplanner.app.entry.EntryProblems;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.store.StockCause;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.StockLine;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Stock that was counted on foot, and put right: what was expected, what was there, why it differs, who counted. */
public final class Stocktakes {
    private final Store store;

    public Stocktakes(Store store) {
        this.store = store;
    }

    /**
     * A part that was counted.
     *
     * @param expected pieces on hand when the list was printed or opened
     * @param counted pieces that were there
     * @param reason why they differ; not empty where they do
     */
    public record Count(String part, double expected, double counted, String reason) {}

    /** A stocktake that was posted. */
    public record Posted(String number, LocalDate day, String by, List<Count> counts) {
        public Posted {
            counts = List.copyOf(counts);
        }
    }

    /**
     * Posts a stocktake: stock of what differs is set to what was counted.
     *
     * @return its number
     * @throws RefusedEntryException with all that is wrong; a part that moved since the list was opened is counted again
     */
    public String post(String key, String depot, List<Count> counts, LocalDate day, Instant at, String by) {
        return FormKeys.once(store, key, at, by, (connection, writer) -> {
            check(depot, counts, connection, writer);
            String number = Series.STOCKTAKE.next(connection);
            StoreSql.update(
                    connection,
                    "insert into stocktake (number, depot, counted_on, posted_at, posted_by) values (?, ?, ?, ?, ?)",
                    number,
                    depot,
                    day,
                    at,
                    by);
            List<String> differing = new ArrayList<>();
            for (Count count : counts) {
                line(connection, number, count);
                if (count.counted() != count.expected()) {
                    writer.because(new StockCause(
                            StockCause.Kind.COUNTED, number, count.reason().strip(), at, by));
                    writer.merge(StockLine.class, List.of(new StockLine(depot, count.part(), count.counted())), true);
                    differing.add(count.part() + ": " + Require.plain(count.expected()) + " expected, "
                            + Require.plain(count.counted()) + " counted, "
                            + count.reason().strip());
                }
            }
            AuditTrail.write(
                    connection,
                    at,
                    by,
                    "post a stocktake",
                    number + ", " + depot,
                    counts.size() + " parts counted",
                    differing.isEmpty() ? "no difference" : String.join("; ", differing));
            return number;
        });
    }

    private static void line(Connection connection, String number, Count count) throws SQLException {
        StoreSql.update(
                connection,
                "insert into stocktake_line (stocktake, part, expected, counted, reason) values (?, ?, ?, ?, ?)",
                number,
                count.part(),
                count.expected(),
                count.counted(),
                count.reason().strip());
    }

    private static void check(String depot, List<Count> counts, Connection connection, StoreWriter writer)
            throws SQLException {
        EntryProblems problems = new EntryProblems();
        if (counts.isEmpty()) {
            problems.add("counted", "nothing was counted", "enter at least one count");
        }
        Map<String, Double> there = new HashMap<>();
        writer.all(StockLine.class).stream()
                .filter(line -> line.depot().equals(depot))
                .forEach(line -> there.put(line.part(), line.onHand()));
        Set<String> parts = writer.all(Part.class).stream().map(Part::part).collect(Collectors.toSet());
        Map<String, Long> serials = StockInjectorRows.ofDepot(connection, depot).stream()
                .collect(Collectors.groupingBy(StockInjector::part, Collectors.counting()));
        Set<String> seen = new HashSet<>();
        for (Count count : counts) {
            String part = count.part();
            if (!parts.contains(part) || !seen.add(part)) {
                problems.add("counted", part + ": is not a part, or stands in the list twice", "open the list again");
            } else {
                check(count, there.getOrDefault(part, 0.0), serials.getOrDefault(part, 0L), problems);
            }
        }
        problems.throwIfAny();
    }

    private static void check(Count count, double now, long withSerial, EntryProblems problems) {
        String part = count.part();
        if (now != count.expected()) {
            problems.add(
                    "counted." + part,
                    part + ": " + Require.plain(now) + " are on hand now, " + Require.plain(count.expected())
                            + " were when the list was opened",
                    "count this part again");
        } else if (count.counted() != count.expected() && count.reason().isBlank()) {
            problems.add(
                    "reason." + part,
                    part + ": " + Require.plain(count.counted()) + " counted, " + Require.plain(count.expected())
                            + " expected, without a reason",
                    "enter why they differ");
        }
        problems.guarded("counted." + part, () -> Require.within(part + ", counted", count.counted(), 0, 1e7));
        if (count.counted() < withSerial) {
            problems.add(
                    "counted." + part,
                    part + ": " + withSerial + " are on record by their serials, " + Require.plain(count.counted())
                            + " were counted",
                    "remove the serials that are missing from the stock first");
        }
    }

    /** The last stocktakes of a depot, the newest first. */
    public List<Posted> list(String depot, int most) {
        return new StoreSql(store.dataSource()).inTransaction(connection -> {
            List<Posted> bare = StoreSql.list(
                    connection,
                    "select number, counted_on, posted_by from stocktake where depot = ? order by posted_at desc,"
                            + " number desc fetch first " + most + " rows only",
                    row -> new Posted(
                            row.getString("number"),
                            row.getObject("counted_on", LocalDate.class),
                            row.getString("posted_by"),
                            List.of()),
                    depot);
            List<Posted> whole = new ArrayList<>();
            for (Posted each : bare) {
                whole.add(new Posted(each.number(), each.day(), each.by(), counts(connection, each.number())));
            }
            return whole;
        });
    }

    private static List<Count> counts(Connection connection, String number) throws SQLException {
        return StoreSql.list(
                connection,
                "select part, expected, counted, reason from stocktake_line where stocktake = ? order by part",
                row -> new Count(
                        row.getString("part"),
                        row.getDouble("expected"),
                        row.getDouble("counted"),
                        row.getString("reason")),
                number);
    }
}
