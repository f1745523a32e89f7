package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.stock.StockInjector;
import dev.injectorplanner.reports.bay.CylinderLabel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Injectors of a truck's kit that went into each other's cylinder. */
final class Swaps {
    private Swaps() {}

    /**
     * Two cylinders to change over.
     *
     * @param first where the other's injector was entered
     * @param second whose injector that is
     */
    public record Pair(int first, int second, String words) {}

    /** Cylinders where the injector picked for another cylinder of the same truck was entered. */
    static List<Pair> of(TruckInBay at, FormState typed) {
        List<Pair> pairs = new ArrayList<>();
        for (int cylinder : at.family().allCylinders()) {
            Integer other = entered(at, typed, cylinder).orElse(cylinder);
            StockInjector here = at.kit().get(cylinder);
            StockInjector there = at.kit().get(other);
            if (other != cylinder && here != null && there != null) {
                pairs.add(new Pair(
                        cylinder,
                        other,
                        "Is " + there.serial() + " really in cylinder " + cylinder + ", and " + here.serial()
                                + " in cylinder " + other + "?"));
            }
        }
        return pairs;
    }

    /** The cylinder whose injector was entered under this one. */
    private static Optional<Integer> entered(TruckInBay at, FormState typed, int cylinder) {
        for (String field : List.of("serial", "code")) {
            String text = typed.text("c" + cylinder + "." + field).strip();
            String serial =
                    CylinderLabel.read(text).map(CylinderLabel.Scanned::serial).orElse(text);
            for (Map.Entry<Integer, StockInjector> each : at.kit().entrySet()) {
                if (!serial.isEmpty() && each.getValue().serial().equalsIgnoreCase(serial)) {
                    return Optional.of(each.getKey());
                }
            }
        }
        return Optional.empty();
    }

    /** The form after a change over: each cylinder has what lies in it, and both codes are to be entered again. */
    static void change(TruckInBay after, FormState typed, int first, int second) {
        for (int cylinder : new int[] {first, second}) {
            String field = "c" + cylinder + ".";
            StockInjector now = after.kit().get(cylinder);
            if (now != null) {
                typed.set(field + "serial", now.serial());
                typed.set(field + "code", now.code());
            }
            for (String tick : List.of("coded", "programmed", "compared", "asPicked", "readBack")) {
                typed.clear(field + tick);
            }
        }
    }
}
