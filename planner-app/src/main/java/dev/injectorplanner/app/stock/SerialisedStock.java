package dev.injectorplanner.app.stock;

import dev.injectorplanner.app.entry.EntryProblems;
import dev.injectorplanner.app.entry.KnownFleet;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.stock.GoodsIn.Unit;
import dev.injectorplanner.app.store.StockCause;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.Part;
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

/** Injectors in stock at a depot, each with serial and calibration code: received, or removed from stock. */
public final class SerialisedStock {
    private final Store store;

    public SerialisedStock(Store store) {
        this.store = store;
    }

    /** Stock of a depot, by part and day of arrival. */
    public List<StockInjector> list(String depot) {
        return store.inJointTransaction((connection, writer) -> StockInjectorRows.ofDepot(connection, depot));
    }

    /** What is allocated to a truck, by cylinder. */
    public Map<Integer, StockInjector> kitOf(String truck) {
        return store.inJointTransaction((connection, writer) -> {
            Map<Integer, StockInjector> kit = new HashMap<>();
            for (StockInjector each : StockInjectorRows.boundTo(connection, truck)) {
                Integer cylinder = each.cylinder();
                if (cylinder != null) {
                    kit.put(cylinder, each);
                }
            }
            return kit;
        });
    }

    /**
     * Receives injectors: all of them, or none. Stock of their part goes up.
     *
     * @return how many
     * @throws RefusedEntryException with all that is wrong; fields are {@code u0.serial}, {@code u0.code}, ...
     */
    public int receive(GoodsIn box, Instant at, String by) {
        return store.inJointTransaction((connection, writer) -> {
            StockInjectorRows.takeTurn(connection);
            return receive(connection, writer, box, at, by);
        });
    }

    /** The same under the key of a request: sent twice, they are received once. */
    public int receive(String key, GoodsIn box, Instant at, String by) {
        return Integer.parseInt(FormKeys.once(
                store, key, at, by, (connection, writer) -> String.valueOf(receive(connection, writer, box, at, by))));
    }

    private static int receive(Connection connection, StoreWriter writer, GoodsIn box, Instant at, String by)
            throws SQLException {
        GoodsIn clean = checked(box, connection, writer);
        if (clean.counted()) {
            requireCounted(clean, connection, writer);
        } else {
            against(clean, writer, at);
        }
        long id = StoreSql.nextIds(connection, "shelf_injector_seq");
        for (Unit unit : clean.units()) {
            StockInjectorRows.insert(connection, id++, unit, clean, at, by);
        }
        if (!clean.counted()) {
            String order = clean.order();
            writer.because(new StockCause(
                    StockCause.Kind.RECEIVED,
                    order == null ? "" : order,
                    order == null ? "without an order" : "",
                    at,
                    by));
            new OnHandStock(writer, clean.depot())
                    .add(clean.part(), clean.units().size());
        }
        StockNotes.received(connection, at, by, clean);
        return clean.units().size();
    }

    private static GoodsIn checked(GoodsIn box, Connection connection, StoreWriter writer) throws SQLException {
        KnownFleet known = new KnownFleet(writer);
        known.depot(box.depot());
        Part part = known.injectorPart(box.part());
        requireSome(box);
        EntryProblems problems = new EntryProblems();
        SerialLookup whereabouts = new SerialLookup(connection, box.depot());
        List<Unit> clean = new ArrayList<>();
        Set<String> serials = new HashSet<>();
        Set<String> codes = new HashSet<>();
        for (int i = 0; i < box.units().size(); i++) {
            String field = "u" + i + ".";
            String where = "Injector " + (i + 1) + ", ";
            Unit typed = box.units().get(i);
            Unit unit = new Unit(SerialCodes.serial(typed.serial()), SerialCodes.code(part, typed.code()));
            SerialCodes.check(part, unit.serial(), unit.code(), where, field, problems);
            if (!unit.serial().isEmpty() && !serials.add(unit.serial())) {
                problems.add(
                        field + "serial",
                        where + "serial \"" + unit.serial() + "\": is a duplicate in this entry",
                        "scan each injector once");
            }
            if (!unit.code().isEmpty() && !codes.add(unit.code())) {
                problems.add(
                        field + "code",
                        where + "code \"" + unit.code()
                                + "\": is a duplicate in this entry; no two injectors share a code",
                        "read both injectors again");
            }
            whereabouts.checkNew(unit.serial(), unit.code(), where, field, problems);
            clean.add(unit);
        }
        problems.throwIfAny();
        return new GoodsIn(box.depot(), box.part(), box.origin(), clean, box.order(), box.counted());
    }

    /** Pieces on hand that have no serial yet must cover those that get one. */
    private static void requireCounted(GoodsIn box, Connection connection, StoreWriter writer) throws SQLException {
        long have = StockInjectorRows.ofDepot(connection, box.depot()).stream()
                .filter(row -> row.part().equals(box.part()))
                .count();
        double onHand = new OnHandStock(writer, box.depot()).onHand(box.part());
        if (onHand - have < box.units().size()) {
            throw RefusedEntryException.of(
                    "part",
                    box.part() + ": " + Require.plain(onHand) + " on hand, " + have + " with serials, so "
                            + Require.plain(Math.max(0, onHand - have)) + " can still get one",
                    "receive the others without that tick, or correct the stock by a stocktake");
        }
    }

    /** The order line they came with: fewer pieces of it are open. */
    private static void against(GoodsIn box, StoreWriter writer, Instant at) {
        String order = box.order();
        if (order != null) {
            OpenOrders orders = new OpenOrders(writer);
            LocalDate day = LocalDate.ofInstant(
                    at, new KnownFleet(writer).depot(box.depot()).timeZone());
            orders.receive(
                    orders.line(order, box.part(), box.depot()), box.units().size(), day);
        }
    }

    private static void requireSome(GoodsIn box) {
        if (box.units().isEmpty()) {
            throw RefusedEntryException.of("u0.serial", "serial: is empty", "scan or type at least one injector");
        }
        if (box.units().size() > StoreSql.IDS) {
            throw RefusedEntryException.of(
                    "u0.serial", "more than " + StoreSql.IDS, "split the delivery and receive it in parts");
        }
    }

    /**
     * Removes an injector from stock that was not fitted: missing, or received by mistake. Stock goes down.
     *
     * @param why the reason, not empty
     * @return what it was
     * @throws RefusedEntryException where it is not in that stock, or is allocated to a cylinder
     */
    public StockInjector takeOff(String depot, long id, String why, Instant at, String by) {
        return store.inJointTransaction((connection, writer) -> {
            StockInjectorRows.takeTurn(connection);
            if (why.isBlank()) {
                throw RefusedEntryException.of("why", "reason: is empty", "enter why it leaves the stock");
            }
            StockInjector there = there(connection, depot, id);
            requireFree(there);
            StockInjectorRows.gone(connection, id, at, by, 0);
            writer.because(new StockCause(StockCause.Kind.REMOVED, "serial " + there.serial(), why.strip(), at, by));
            new OnHandStock(writer, depot).take(there.part(), 1);
            StockNotes.tookOff(connection, at, by, there);
            return there;
        });
    }

    private static void requireFree(StockInjector there) {
        if (there.truck() != null) {
            throw RefusedEntryException.of(
                    "shelf",
                    "serial \"" + there.serial() + "\": is allocated to "
                            + there.place().orElseThrow(),
                    "release it from that kit first");
        }
    }

    /**
     * Pieces that go back to their supplier leave the stock, those with serials by their serials.
     *
     * @throws RefusedEntryException where fewer are there, or serials do not add up
     */
    public static void sendBack(
            Connection connection,
            StoreWriter writer,
            String depot,
            String part,
            double pieces,
            List<String> serials,
            Instant at,
            String by)
            throws SQLException {
        List<String> read = serials.stream().map(SerialCodes::serial).toList();
        if (read.stream().distinct().count() < read.size()) {
            throw RefusedEntryException.of("serials", "a serial is entered twice", "enter each injector once");
        }
        List<StockInjector> shelf = StockInjectorRows.ofDepot(connection, depot).stream()
                .filter(row -> row.part().equals(part))
                .toList();
        OnHandStock stock = new OnHandStock(writer, depot);
        double without = stock.onHand(part) - shelf.size();
        if (pieces - serials.size() > Math.max(0, without) + 1e-9 || serials.size() > pieces + 1e-9) {
            throw RefusedEntryException.of(
                    "serials",
                    part + ": " + Require.plain(pieces) + " pieces and " + serials.size() + " serials, but only "
                            + Require.plain(Math.max(0, without)) + " in stock are without a serial",
                    "enter the serial of each injector that goes back");
        }
        for (String serial : read) {
            StockInjector there = shelf.stream()
                    .filter(row -> row.serial().equals(serial))
                    .findFirst()
                    .orElseThrow(() -> RefusedEntryException.of(
                            "serials",
                            "serial \"" + serial + "\": is not among the " + part + " in stock at " + depot,
                            "read it on the injector again"));
            requireFree(there);
            StockInjectorRows.gone(connection, there.id(), at, by, 0);
        }
        stock.take(part, pieces);
    }

    static StockInjector there(Connection connection, String depot, long id) throws SQLException {
        return StockInjectorRows.find(connection, id)
                .filter(row -> row.depot().equals(depot))
                .orElseThrow(() -> RefusedEntryException.of(
                        "shelf",
                        "that injector is no longer in stock at " + depot,
                        "look at the stock again and choose another"));
    }
}
