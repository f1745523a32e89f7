package dev.injectorplanner.app.closeout;

import dev.injectorplanner.app.closeout.CloseOut.ReadBack;
import dev.injectorplanner.app.closeout.CloseOutEntry.Cylinder;
import dev.injectorplanner.app.closeout.NewInjector.FailedFirst;
import dev.injectorplanner.app.entry.EntryProblems;
import dev.injectorplanner.app.entry.KnownFleet;
import dev.injectorplanner.app.stock.SerialCodes;
import dev.injectorplanner.app.stock.SerialLookup;
import dev.injectorplanner.app.stock.SerialLookup.InEngine;
import dev.injectorplanner.app.stock.StockInjector;
import dev.injectorplanner.app.stock.StockInjectorRows;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.Truck;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Checks what was entered for each cylinder against the shelf, the engines of the fleet, and the other cylinders. */
final class CylinderCheck {
    private final Connection connection;
    private final KnownFleet known;
    private final Truck truck;
    private final EngineFamily family;
    private final List<FittedInjector> injectors;
    private final LocalDate doneOn;
    private final Set<Integer> renewed;
    private final EntryProblems problems;
    private final Map<String, Integer> serials = new HashMap<>();
    private final Map<String, Integer> codes = new HashMap<>();

    /** @param renewed cylinders of this entry that get an injector: what was in them is free */
    CylinderCheck(
            Connection connection,
            KnownFleet known,
            Truck truck,
            List<FittedInjector> injectors,
            LocalDate doneOn,
            Set<Integer> renewed,
            EntryProblems problems) {
        this.connection = connection;
        this.known = known;
        this.truck = truck;
        this.family = known.familyOf(truck);
        this.injectors = injectors;
        this.doneOn = doneOn;
        this.renewed = renewed;
        this.problems = problems;
    }

    /** The new injector of a cylinder; null where something is wrong with it, which is then among the problems. */
    @Nullable
    NewInjector check(Cylinder entry) throws SQLException {
        int before = problems.list().size();
        String field = "c" + entry.cylinder() + ".";
        String where = "Cylinder " + entry.cylinder() + ", ";
        LabelOrTyped typed = LabelOrTyped.of(truck.truck(), entry, where, problems);
        String serial = SerialCodes.serial(typed.serial());
        StockInjector shelf = serial.isEmpty()
                ? null
                : StockInjectorRows.findThere(connection, "serial", serial).orElse(null);
        Part part = part(shelf);
        String code = SerialCodes.code(part, typed.code());
        if (typed.usable()) {
            SerialCodes.check(part, serial, code, where, field, problems);
        }
        onShelf(entry.cylinder(), shelf, code, where, field + "serial", field + "code");
        whereElse(entry.cylinder(), serial, code, where, field);
        twice(entry.cylinder(), serial, code, where, field);
        Found found = entry.found();
        if (found == null) {
            problems.add(field + "found", where + "found: is empty", "choose failed, worn, healthy or unknown");
        }
        ReadBack readBack = code.isEmpty() ? ReadBack.NONE : confirmed(entry, part, code, where, field);
        Optional<FittedInjector> old = old(entry.cylinder(), where, field);
        FailedFirst failedFirst = failedFirst(entry, serial, where, field);
        if (problems.list().size() > before || found == null) {
            return null;
        }
        return new NewInjector(
                entry.cylinder(),
                found,
                old.orElse(null),
                part,
                serial,
                code,
                origin(entry, shelf, part),
                readBack,
                shelf,
                nextFitting(entry.cylinder()) + (failedFirst == null ? 0 : 1),
                failedFirst);
    }

    /** One that was fitted first and failed at once: known by its serial, in stock or never received. */
    private @Nullable FailedFirst failedFirst(Cylinder entry, String fitted, String where, String field)
            throws SQLException {
        String serial = SerialCodes.serial(entry.failedFirst());
        if (serial.isEmpty()) {
            return null;
        }
        String what = where + "failed at once, serial \"" + serial + "\": ";
        StockInjector shelf =
                StockInjectorRows.findThere(connection, "serial", serial).orElse(null);
        Integer other = serials.putIfAbsent(serial, entry.cylinder());
        if (serial.equals(fitted)) {
            problems.add(
                    field + "failedFirst", what + "is the serial of the one that works", "read both injectors again");
        } else if (other != null) {
            problems.add(
                    field + "failedFirst",
                    what + "is already entered under cylinder " + other,
                    "read both injectors again");
        }
        onShelf(entry.cylinder(), shelf, "", where + "failed at once, ", field + "failedFirst", field + "code");
        for (InEngine there : new SerialLookup(connection, truck.depot()).fittedWithSerial(serial)) {
            problems.add(field + "failedFirst", what + there.words(), "read it on the injector again");
        }
        problems.guarded(field + "failedFirst", () -> Require.name("serial", serial));
        return new FailedFirst(serial, shelf);
    }

    private int nextFitting(int cylinder) {
        return 1
                + injectors.stream()
                        .filter(each ->
                                each.cylinder() == cylinder && each.fittedOn().equals(doneOn))
                        .mapToInt(FittedInjector::fitting)
                        .max()
                        .orElse(0);
    }

    private Part part(@Nullable StockInjector shelf) {
        return shelf == null
                ? known.injectorPart(family.injectorPart())
                : known.findPart(shelf.part()).orElseThrow();
    }

    private static Origin origin(Cylinder entry, @Nullable StockInjector shelf, Part part) {
        Origin told = entry.origin();
        if (shelf != null) {
            return shelf.origin();
        }
        return told != null ? told : part.coreDeposit().signum() > 0 ? Origin.REMAN : Origin.NEW;
    }

    private void onShelf(
            int cylinder,
            @Nullable StockInjector shelf,
            String code,
            String where,
            String serialField,
            String codeField) {
        if (shelf == null) {
            return;
        }
        String what = where + "serial \"" + shelf.serial() + "\": ";
        boolean here = shelf.depot().equals(truck.depot());
        if (here && shelf.truck() != null && !shelf.isFor(truck.truck(), cylinder)) {
            problems.add(
                    serialField,
                    what + "is allocated to " + shelf.place().orElseThrow(),
                    "fit the one labelled truck " + truck.truck() + ", cylinder " + cylinder
                            + ", or release it on the kits page");
        } else if (!here) {
            problems.add(
                    serialField,
                    what + "is in stock at another depot",
                    "read it on the injector again, or remove it from stock there and receive it at " + truck.depot());
        } else if (!shelf.part().equals(family.injectorPart())) {
            problems.add(
                    serialField,
                    what + "is a " + shelf.part() + ", but engines of family " + family.family() + " take "
                            + family.injectorPart(),
                    "fit an injector of that part");
        }
        if (here && !code.isEmpty() && !shelf.code().isEmpty() && !shelf.code().equals(code)) {
            problems.add(
                    codeField,
                    where + "code \"" + code + "\": serial " + shelf.serial() + " was received with code "
                            + shelf.code(),
                    "read both on the injector again; if it was received wrongly, remove it from stock and receive it again");
        }
    }

    private void whereElse(int cylinder, String serial, String code, String where, String field) throws SQLException {
        SerialLookup whereabouts = new SerialLookup(connection, truck.depot());
        Integer movedFrom = null;
        for (InEngine there : serial.isEmpty() ? List.<InEngine>of() : whereabouts.fittedWithSerial(serial)) {
            if (there.truck().equals(truck.truck()) && there.cylinder() == cylinder) {
                problems.add(
                        field + "serial",
                        where + "serial \"" + serial + "\": is the one that was in this cylinder",
                        "enter the new one; if the old one stays, choose not done");
            } else if (there.truck().equals(truck.truck()) && renewed.contains(there.cylinder())) {
                movedFrom = there.cylinder();
            } else {
                problems.add(
                        field + "serial",
                        where + "serial \"" + serial + "\": " + there.words(),
                        "read it on the injector again, or close that truck out first");
            }
        }
        for (InEngine there : code.isEmpty() ? List.<InEngine>of() : whereabouts.fittedWithCode(code)) {
            if (movedFrom == null
                    || there.cylinder() != movedFrom
                    || !there.truck().equals(truck.truck())) {
                problems.add(
                        field + "code",
                        where + "code \"" + code + "\": " + there.words() + "; no two injectors share a code",
                        "read it on the new injector again");
            }
        }
        Optional<StockInjector> other =
                code.isEmpty() ? Optional.empty() : StockInjectorRows.findThere(connection, "calibration_code", code);
        other.filter(there -> !there.serial().equals(serial))
                .ifPresent(there -> problems.add(
                        field + "code",
                        where + "code \"" + code + "\": " + whereabouts.onShelf(there),
                        "read serial and code on the injector again"));
    }

    private void twice(int cylinder, String serial, String code, String where, String field) {
        Integer same = serial.isEmpty() ? null : serials.putIfAbsent(serial, cylinder);
        if (same != null) {
            problems.add(
                    field + "serial",
                    where + "serial \"" + serial + "\": is already entered under cylinder " + same,
                    "read both injectors again");
        }
        Integer sameCode = code.isEmpty() ? null : codes.putIfAbsent(code, cylinder);
        if (sameCode != null) {
            problems.add(
                    field + "code",
                    where + "code \"" + code + "\": is already entered under cylinder " + sameCode,
                    "read both injectors again");
        }
    }

    private ReadBack confirmed(Cylinder entry, Part part, String code, String where, String field) {
        if (!entry.programmed()) {
            problems.add(
                    field + "programmed",
                    where + "the code is not confirmed as entered in the ECU",
                    "enter it under cylinder " + entry.cylinder() + " and tick it");
        }
        String back = SerialCodes.code(part, entry.readBack());
        if (back.isEmpty()) {
            if (!entry.compared()) {
                problems.add(
                        field + "readBack",
                        where + "the code was not read back",
                        "read it back from the ECU, then type it, or tick that it matches");
            }
            return ReadBack.COMPARED;
        }
        if (!back.equals(code)) {
            problems.add(
                    field + "readBack",
                    where + "read back \"" + back + "\": differs from the code \"" + code + "\"",
                    "enter the code in the ECU again under cylinder " + entry.cylinder() + ", and read it back");
        }
        return ReadBack.TYPED;
    }

    /** What is in the cylinder now; it, and all before it, must have gone in on that day or before. */
    private Optional<FittedInjector> old(int cylinder, String where, String field) {
        for (FittedInjector each : injectors) {
            boolean later = each.cylinder() == cylinder
                    && (each.fittedOn().isAfter(doneOn)
                            || each.removedOn() != null && each.removedOn().isAfter(doneOn));
            if (later) {
                problems.add(
                        field + "serial",
                        where + "an injector went in on " + each.fittedOn() // one of an unknown day is never later
                                + (each.removedOn() == null ? "" : " and came out on " + each.removedOn())
                                + ", after " + doneOn,
                        "correct the day, or correct that close-out");
                return Optional.empty();
            }
        }
        return injectors.stream()
                .filter(each -> each.cylinder() == cylinder && each.removedOn() == null)
                .findFirst();
    }
}
