package dev.injectorplanner.app.returns;

import dev.injectorplanner.app.entry.EntryProblems;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.people.Who;
import dev.injectorplanner.app.stock.FormKeys;
import dev.injectorplanner.app.stock.Series;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.UnitReturn;
import dev.injectorplanner.core.fleet.UnitReturn.What;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Cores and warranty claims on their way: several cores go with one return note, each claim has a number, the supplier's
 * answer is recorded unit by unit. Each change is one transaction with its note of who and when, and counts once.
 */
public final class Returns {

    private final Store store;

    public Returns(Store store) {
        this.store = store;
    }

    /**
     * Ships old units to their supplier.
     *
     * @param units the reman units for which they are owed; at least one, all of one supplier
     * @return the return note's number
     * @throws RefusedEntryException with all that is wrong
     */
    public String ship(String key, List<Unit> units, LocalDate day, Instant at, String by) {
        return FormKeys.once(store, key, at, by, (connection, writer) -> {
            EntryProblems problems = new EntryProblems();
            if (units.isEmpty()) {
                problems.add("unit", "no core is chosen", "tick at least one");
            }
            List<UnitReturn> rows = new ArrayList<>();
            Set<String> suppliers = new HashSet<>();
            String number = Series.RETURN_NOTE.next(connection);
            for (Unit unit : units.stream().distinct().toList()) {
                try {
                    FittedInjector fitted = fitted(writer, unit);
                    Part part = part(writer, fitted);
                    requireOwed(unit, fitted, part);
                    requireNew(writer, What.CORE, unit);
                    suppliers.add(part.supplier());
                    rows.add(sent(What.CORE, unit, number, day, by, part.coreDeposit()));
                } catch (InvalidValueException e) {
                    problems.add("unit", unit + ": " + e.reason(), e.fix());
                }
            }
            if (suppliers.size() > 1) {
                problems.add(
                        "unit",
                        "cores of " + suppliers.stream().sorted().collect(Collectors.joining(" and "))
                                + " on one return note",
                        "ship each supplier's cores by themselves");
            }
            problems.throwIfAny();
            writer.merge(UnitReturn.class, rows, true);
            note(connection, at, by, "ship cores", number + ", " + String.join("", suppliers), "", words(rows));
            return number;
        });
    }

    /**
     * Sends a warranty claim.
     *
     * @param amount what is claimed
     * @return the claim's number
     */
    public String claim(String key, Unit unit, BigDecimal amount, LocalDate day, Instant at, String by) {
        return FormKeys.once(store, key, at, by, (connection, writer) -> {
            try {
                FittedInjector fitted = fitted(writer, unit);
                if (fitted.found() != Found.FAILED) {
                    throw new InvalidValueException(
                            "unit", unit, "was not found failed", "claim what failed within its warranty");
                }
                requireNew(writer, What.CLAIM, unit);
                String number = Series.CLAIM.next(connection);
                List<UnitReturn> rows = List.of(sent(What.CLAIM, unit, number, day, by, amount));
                writer.merge(UnitReturn.class, rows, true);
                note(connection, at, by, "send a claim", number + ", " + unit, "", words(rows));
                return number;
            } catch (InvalidValueException e) {
                throw RefusedEntryException.of("unit", unit + ": " + e.reason(), e.fix());
            }
        });
    }

    /**
     * Records the supplier's answer for one unit.
     *
     * @param credit what it credited, 0 where it refused
     * @param reason why, not empty where it refused
     * @return the document that it went with
     */
    public String settle(
            String key, What what, Unit unit, LocalDate day, BigDecimal credit, String reason, Instant at, String by) {
        return FormKeys.once(store, key, at, by, (connection, writer) -> {
            UnitReturn there = open(writer, what, unit);
            try {
                UnitReturn now = there.settled(day, Who.shortened(by), credit, reason.strip());
                writer.merge(UnitReturn.class, List.of(now), true);
                note(
                        connection,
                        at,
                        by,
                        credit.signum() == 0 ? "note that it was refused" : "note a credit",
                        there.document() + ", " + unit,
                        "sent on " + there.sentOn() + ", asked for "
                                + there.amount().toPlainString(),
                        credit.toPlainString() + (reason.isBlank() ? "" : ", " + reason.strip()));
            } catch (InvalidValueException e) {
                throw RefusedEntryException.of(e.field(), e.field() + ": " + e.reason(), e.fix());
            }
            return there.document();
        });
    }

    /** Records that all open units of a return note were credited in full. */
    public void creditAll(String key, String document, LocalDate day, Instant at, String by) {
        FormKeys.once(store, key, at, by, (connection, writer) -> {
            List<UnitReturn> rows = openOf(connection, document).stream()
                    .map(row -> row.settled(day, Who.shortened(by), row.amount(), row.reason()))
                    .toList();
            writer.merge(UnitReturn.class, rows, true);
            BigDecimal sum = rows.stream().map(UnitReturn::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
            note(
                    connection,
                    at,
                    by,
                    "note a credit",
                    document,
                    rows.size() + " open",
                    "all credited in full, " + sum.toPlainString());
            return document;
        });
    }

    /** Takes a return note or a claim back that no answer came to: its units are owed as before. */
    public void takeBack(String key, String document, Instant at, String by) {
        FormKeys.once(store, key, at, by, (connection, writer) -> {
            List<UnitReturn> rows = openOf(connection, document);
            if (rows.size() < ofDocument(connection, document).size()) {
                throw RefusedEntryException.of(
                        "document",
                        document + ": the supplier has answered to some of it",
                        "record its answer to the others too");
            }
            StoreSql.update(connection, "delete from unit_return where document = ?", document);
            note(connection, at, by, "take back a shipment", document, words(rows), "owed as before");
            return document;
        });
    }

    private static void requireOwed(Unit unit, FittedInjector fitted, Part part) {
        if (fitted.origin() != Origin.REMAN || part.coreDeposit().signum() == 0) {
            throw new InvalidValueException(
                    "unit", unit, "has no core deposit", "choose a reman unit whose part has a deposit");
        }
    }

    private static UnitReturn sent(What what, Unit unit, String number, LocalDate day, String by, BigDecimal amount) {
        return new UnitReturn(
                what,
                unit.truck(),
                unit.cylinder(),
                unit.fittedOn(),
                unit.fitting(),
                number,
                day,
                Who.shortened(by),
                amount,
                null,
                null,
                null,
                "");
    }

    private static FittedInjector fitted(StoreWriter writer, Unit unit) {
        return writer.ofTrucks(FittedInjector.class, List.of(unit.truck())).stream()
                .filter(unit::is)
                .findFirst()
                .orElseThrow(() ->
                        new InvalidValueException("unit", unit, "is not on record", "open the cores and claims again"));
    }

    private static Part part(StoreWriter writer, FittedInjector fitted) {
        return writer.all(Part.class).stream()
                .filter(part -> part.part().equals(fitted.part()))
                .findFirst()
                .orElseThrow();
    }

    private static void requireNew(StoreWriter writer, What what, Unit unit) {
        for (UnitReturn row : writer.ofTrucks(UnitReturn.class, List.of(unit.truck()))) {
            if (unit.is(what, row)) {
                throw new InvalidValueException(
                        "unit", unit, "was sent on " + row.sentOn() + " with " + row.document(), "leave it out");
            }
        }
    }

    private static UnitReturn open(StoreWriter writer, What what, Unit unit) {
        UnitReturn there = writer.ofTrucks(UnitReturn.class, List.of(unit.truck())).stream()
                .filter(row -> unit.is(what, row))
                .findFirst()
                .orElseThrow(() ->
                        RefusedEntryException.of("unit", unit + ": was not sent", "open the cores and claims again"));
        if (there.settledOn() != null) {
            throw RefusedEntryException.of(
                    "unit", unit + ": was answered on " + there.settledOn(), "open the cores and claims again");
        }
        return there;
    }

    private static List<UnitReturn> openOf(Connection connection, String document) throws SQLException {
        List<UnitReturn> open = ofDocument(connection, document).stream()
                .filter(row -> row.settledOn() == null)
                .toList();
        if (open.isEmpty()) {
            throw RefusedEntryException.of(
                    "document", document + ": nothing of it is open", "open the cores and claims again");
        }
        return open;
    }

    private static List<UnitReturn> ofDocument(Connection connection, String document) throws SQLException {
        return StoreSql.list(
                connection,
                "select * from unit_return where document = ? order by truck, cylinder",
                ReturnRows::read,
                document);
    }

    /** All that was sent, the newest first. */
    public List<UnitReturn> list() {
        return new StoreSql(store.dataSource())
                .list(
                        "select * from unit_return order by sent_on desc, document desc, truck, cylinder",
                        ReturnRows::read);
    }

    private static void note(
            Connection connection, Instant at, String by, String what, String subject, String before, String after)
            throws SQLException {
        AuditTrail.write(connection, at, by, what, subject, before, after);
    }

    private static String words(List<UnitReturn> rows) {
        return rows.stream()
                .sorted(java.util.Comparator.comparing(UnitReturn::truck).thenComparing(UnitReturn::cylinder))
                .map(row -> "truck " + row.truck() + ", cylinder " + row.cylinder() + ": "
                        + row.amount().toPlainString())
                .collect(Collectors.joining("; "));
    }

    /** Rows by their document, in the order of the rows. */
    public static Map<String, List<UnitReturn>> byDocument(List<UnitReturn> rows) {
        return rows.stream()
                .collect(
                        Collectors.groupingBy(UnitReturn::document, java.util.LinkedHashMap::new, Collectors.toList()));
    }
}
