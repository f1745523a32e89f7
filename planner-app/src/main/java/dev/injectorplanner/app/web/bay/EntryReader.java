package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.closeout.CloseOutEntry;
import dev.injectorplanner.app.closeout.Problem;
import dev.injectorplanner.app.closeout.ShelfInjector;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.TestKind;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads a close-out from its form. What cannot be read as a number or a day is said at its field. */
final class EntryReader {
    private final AtBay at;
    private final Typed typed;

    EntryReader(AtBay at, Typed typed) {
        this.at = at;
        this.typed = typed;
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
                typed.text("extras"),
                typed.all("task"),
                day("recheckOn", "recheck"),
                cylinders(),
                used(),
                tests());
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
        ShelfInjector picked = at.kit().get(cylinder);
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
                typed.has(field + "programmed", "yes"),
                typed.text(field + "readBack"),
                typed.has(field + "compared", "yes"),
                typed.text(field + "reason"));
    }

    private List<CloseOutEntry.Used> used() {
        List<CloseOutEntry.Used> used = new ArrayList<>();
        for (String part : typed.all("usedPart")) {
            Double pieces = number("used." + part, "pieces of " + part);
            if (pieces != null && pieces != 0) {
                used.add(new CloseOutEntry.Used(part, pieces));
            }
        }
        return used;
    }

    private List<CloseOutEntry.Test> tests() {
        List<CloseOutEntry.Test> tests = new ArrayList<>();
        for (TestKind kind : List.of(TestKind.BALANCE, TestKind.RETURN_FLOW)) {
            for (int cylinder : at.family().allCylinders()) {
                Double value = number("t" + cylinder + "." + kind, "test of cylinder " + cylinder);
                if (value != null) {
                    tests.add(new CloseOutEntry.Test(
                            cylinder,
                            kind,
                            value,
                            kind == TestKind.BALANCE ? "mm3/stroke" : "ml/min",
                            typed.text("engineState")));
                }
            }
        }
        return tests;
    }

    /** In the unit that the form named when it was made, should the site have changed its units since. */
    private @Nullable Double odometerKm() {
        Double read = number("odometer", "odometer");
        return read == null
                ? null
                : Double.valueOf(CloseOutForm.unitsOf(typed, at.units()).toKm(read));
    }

    private @Nullable Double number(String field, String words) {
        String text = typed.text(field).strip();
        if (text.isEmpty()) {
            return null;
        }
        if (text.matches("-?\\d{1,3}([ \u00a0]\\d{3})+([.,]\\d+)?|-?\\d+([.,]\\d+)?")) {
            return Double.valueOf(text.replaceAll("[ \u00a0]", "").replace(',', '.'));
        }
        typed.wrong(
                new Problem(field, words + " \"" + text + "\": is no number. Mend: write it such as 412600 or 6.5."));
        return null;
    }

    private @Nullable LocalDate day(String field, String words) {
        String text = typed.text(field).strip();
        try {
            return text.isEmpty() ? null : LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            typed.wrong(new Problem(field, words + " \"" + text + "\": is no day. Mend: write it such as 2026-03-02."));
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
