package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Engines that share cylinders, banks, access steps and injector part.
 *
 * @param family its name in the tables
 * @param cylinders how many, 1 to 16
 * @param banks which cylinders lie in which bank, front to rear; together every cylinder once
 * @param firingOrder every cylinder once, in the order in which they fire
 * @param cylinderHours own labour of one cylinder once it is reached, hours
 * @param coolantLitres what the cooling system holds, litres
 * @param glycolPercent ethylene glycol the site runs, percent by volume
 * @param injectorPart part number of the injector
 * @param roadFailureCost what a failure in service costs beyond the planned work: tow, roadside, lost load, damage
 */
public record EngineFamily(
        String family,
        int cylinders,
        List<Bank> banks,
        List<Integer> firingOrder,
        double cylinderHours,
        double coolantLitres,
        double glycolPercent,
        String injectorPart,
        BigDecimal roadFailureCost) {
    /** The most cylinders an engine here may have. */
    public static final int MOST_CYLINDERS = 16;

    public EngineFamily {
        family = Require.name("family", family);
        Require.within("cylinders", cylinders, 1, MOST_CYLINDERS);
        banks = List.copyOf(banks);
        firingOrder = List.copyOf(firingOrder);
        everyCylinderOnce(
                "banks",
                banks.stream().flatMap(bank -> bank.cylinders().stream()).toList(),
                cylinders);
        everyCylinderOnce("firing_order", firingOrder, cylinders);
        Require.within("cylinder_hours", cylinderHours, 0, 100);
        Require.within("coolant", coolantLitres, 0, 500);
        Require.within("glycol_percent", glycolPercent, 0, 100);
        injectorPart = Require.name("injector_part", injectorPart);
        roadFailureCost = Require.money("road_failure_cost", roadFailureCost);
    }

    private static void everyCylinderOnce(String field, List<Integer> listed, int cylinders) {
        List<Integer> all = IntStream.rangeClosed(1, cylinders).boxed().toList();
        if (!listed.stream().sorted().toList().equals(all)) {
            throw new InvalidValueException(
                    field, listed, "must list each cylinder 1 to " + cylinders + " once", "list every cylinder once");
        }
    }

    /** All cylinder numbers, ascending. */
    public List<Integer> allCylinders() {
        return IntStream.rangeClosed(1, cylinders).boxed().toList();
    }

    /** The bank that holds a cylinder. */
    public Bank bankOf(int cylinder) {
        return banks.stream()
                .filter(bank -> bank.cylinders().contains(cylinder))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(family + " has no cylinder " + cylinder));
    }
}
