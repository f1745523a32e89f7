package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.closeout.CloseOut;
import dev.injectorplanner.app.closeout.CloseOutEntry;
import dev.injectorplanner.app.entry.EntryProblem;
import dev.injectorplanner.app.stock.StockInjector;
import dev.injectorplanner.core.due.TestRules;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.parts.StandardParts;
import dev.injectorplanner.core.units.SiteUnits;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads a close-out from its form. What cannot be read as a number or a day is reported at its field. */
final class EntryReader {
    private final TruckInBay at;
    private final FormState typed;
    private final @Nullable CloseOut kept;

    EntryReader(TruckInBay at, FormState typed) {
        this(at, typed, null);
    }

    /** @param kept the close-out that the form corrects, or null */
    EntryReader(TruckInBay at, FormState typed, @Nullable CloseOut kept) {
        this.at = at;
        this.typed = typed;
        this.kept = kept;
    }

    CloseOutEntry read() {
        return new CloseOutEntry(
                typed.text("formKey"),
                at.truck().truck(),
                typed.text("week").isEmpty() ? null : typed.text("week"),
                day("doneOn", "day"),
                number("labourHours", "hours worked"),
                odometerKm(),
                number("engineHours", "engine hours"),
                typed.has("meterReplaced", "yes"),
                extras(),
                typed.all("task"),
                day("recheckOn", "recheck"),
                cylinders(),
                used(),
                tests(),
                hour(),
                job());
    }

    private @Nullable Long job() {
        String text = typed.text("job");
        return text.matches("\\d{1,18}") ? Long.valueOf(text) : null;
    }

    private @Nullable LocalTime hour() {
        String text = typed.text("finishedAt").strip();
        try {
            return text.isEmpty() ? null : LocalTime.parse(text);
        } catch (DateTimeParseException e) {
            typed.wrong(new EntryProblem(
                    "finishedAt", "hour finished \"" + text + "\": is not a time. Fix: write it as 14:30."));
            return null;
        }
    }

    private List<CloseOutEntry.Cylinder> cylinders() {
        List<CloseOutEntry.Cylinder> cylinders = new ArrayList<>();
        for (int cylinder : at.family().allCylinders()) {
            String field = "c" + cylinder + ".";
            String fate = typed.text(field + "fate");
            if (fate.equals("fitted") || fate.equals("left")) {
                cylinders.add(cylinder(cylinder, field, fate.equals("fitted")));
            }
        }
        return cylinders;
    }

    private CloseOutEntry.Cylinder cylinder(int cylinder, String field, boolean fitted) {
        String serial = typed.text(field + "serial");
        String code = typed.text(field + "code");
        StockInjector picked = at.kit().get(cylinder);
        if (picked != null && typed.has(field + "asPicked", "yes") && serial.isBlank() && code.isBlank()) {
            serial = picked.serial();
            code = picked.code();
        }
        return new CloseOutEntry.Cylinder(
                cylinder,
                fitted,
                constant(Found.class, typed.text(field + "found")),
                serial,
                code,
                constant(Origin.class, typed.text(field + "origin")),
                typed.has(field + "programmed", "yes") || typed.has(field + "coded", "yes"),
                typed.text(field + "readBack"),
                typed.has(field + "compared", "yes") || typed.has(field + "coded", "yes"),
                typed.text(field + "reason"),
                typed.text(field + "failedFirst"));
    }

    /**
     * What was typed; a line that stands as it was filled in follows the cylinders and services really done.
     */
    private List<CloseOutEntry.Used> used() {
        List<CloseOutEntry.Used> used = new ArrayList<>();
        Map<String, Double> standard = StandardParts.of(at.fleet(), at.family()).pieces(fitted(), typed.all("task"));
        for (String part : typed.all("usedPart")) {
            String field = "used." + part;
            boolean filledIn =
                    typed.given("auto." + part) && typed.text(field).strip().equals(typed.text("auto." + part));
            Double pieces = filledIn ? standard.getOrDefault(part, 0.0) : number(field, "pieces of " + part);
            if (pieces != null && pieces != 0) {
                used.add(new CloseOutEntry.Used(part, pieces));
            }
        }
        return used;
    }

    private List<Integer> fitted() {
        return at.family().allCylinders().stream()
                .filter(cylinder -> typed.text("c" + cylinder + ".fate").equals("fitted"))
                .toList();
    }

    private List<CloseOutEntry.Test> tests() {
        List<CloseOutEntry.Test> tests = new ArrayList<>();
        for (TestKind kind : TestKind.values()) {
            for (int cylinder : at.family().allCylinders()) {
                Double value = number("t" + cylinder + "." + kind, "test of cylinder " + cylinder);
                if (value != null) {
                    tests.add(new CloseOutEntry.Test(cylinder, kind, value, unit(kind), typed.text("engineState")));
                }
            }
        }
        return tests;
    }

    private static String unit(TestKind kind) {
        return switch (kind) {
            case BALANCE -> TestRules.BALANCE_UNIT;
            case RETURN_FLOW -> TestRules.RETURN_FLOW_UNIT;
            case CONTRIBUTION -> "%";
        };
    }

    /** Extras, with the coolant's freezing point as it was read. */
    private String extras() {
        String read = typed.text("freezing").strip();
        if (read.isEmpty()) {
            return typed.text("extras");
        }
        SiteUnits units = CloseOutForm.unitsOf(typed, at.units());
        Double point = number("freezing", "freezing point");
        return typed.text("extras")
                + (point == null ? "" : "\nCoolant: freezing point read " + read + " " + units.temperatureUnit());
    }

    /** In the unit that the form named when it was made; one that was not touched stays as it is kept. */
    private @Nullable Double odometerKm() {
        SiteUnits units = CloseOutForm.unitsOf(typed, at.units());
        if (kept != null && typed.text("odometer").strip().equals(CloseOutForm.odometer(kept, units))) {
            return kept.odometerKm();
        }
        Double read = number("odometer", "odometer");
        return read == null ? null : Double.valueOf(units.toKm(read));
    }

    private @Nullable Double number(String field, String words) {
        String text = typed.text(field).strip().replace('\u2212', '-');
        if (text.startsWith("+")) {
            text = text.substring(1);
        }
        if (text.isEmpty()) {
            return null;
        }
        if (text.matches("-?[1-9]\\d{0,2},\\d{3}")) {
            typed.wrong(new EntryProblem(field, words + " \"" + text + "\": " + twoWays(text)));
            return null;
        }
        if (text.matches("-?\\d{1,3}([ \u00a0]\\d{3})+([.,]\\d+)?|-?\\d+([.,]\\d+)?")) {
            return Double.valueOf(text.replaceAll("[ \u00a0]", "").replace(',', '.'));
        }
        typed.wrong(
                new EntryProblem(field, words + " \"" + text + "\": is not a number. Fix: write it as 412600 or 6.5."));
        return null;
    }

    private static String twoWays(String text) {
        return "its comma can be read in two ways. Fix: write " + text.replace(",", "") + " or "
                + text.replace(',', '.') + ".";
    }

    private @Nullable LocalDate day(String field, String words) {
        String text = typed.text(field).strip();
        try {
            return text.isEmpty() ? null : LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            typed.wrong(
                    new EntryProblem(field, words + " \"" + text + "\": is not a date. Fix: write it as 2026-03-02."));
            return null;
        }
    }

    private static <E extends Enum<E>> @Nullable E constant(Class<E> type, String name) {
        return Optional.of(name)
                .filter(text -> List.of(type.getEnumConstants()).stream()
                        .anyMatch(each -> each.name().equals(text)))
                .map(text -> Enum.valueOf(type, text))
                .orElse(null);
    }
}
