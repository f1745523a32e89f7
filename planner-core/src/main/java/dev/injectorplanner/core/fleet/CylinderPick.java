package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Cylinders as a work order names them: some by number, a bank, or all.
 *
 * @param cylinders numbers as the engine maker counts, ascending, none twice; empty where a bank or all are meant
 * @param bank name of a bank, or its number from 1 in the order of the family; empty where cylinders or all are meant
 * @param number how many all are, as the work order says ({@code all 6}); 0 where it does not say
 */
public record CylinderPick(List<Integer> cylinders, String bank, int number) {
    /** All cylinders of the engine. */
    public static final CylinderPick ALL = new CylinderPick(List.of(), "");

    public CylinderPick {
        cylinders = cylinders.stream().distinct().sorted().toList();
        cylinders.forEach(each -> Require.within("cylinders", each, 1, EngineFamily.MOST_CYLINDERS));
        bank = bank.strip().toLowerCase(Locale.ROOT);
        Require.within("cylinders", number, 0, 99);
        if (!bank.isEmpty() && !cylinders.isEmpty()) {
            throw new InvalidValueException(
                    "cylinders", cylinders, "names cylinders and a bank", "name one of the two");
        }
    }

    /** Where nobody says how many all are. */
    public CylinderPick(List<Integer> cylinders, String bank) {
        this(cylinders, bank, 0);
    }

    /** All cylinders, with their number as the work order says it. */
    public static CylinderPick all(int number) {
        return new CylinderPick(List.of(), "", number);
    }

    /**
     * The cylinders of an engine that are meant.
     *
     * @throws InvalidValueException if the family has no such bank or cylinder, or another number of cylinders
     */
    public List<Integer> of(EngineFamily family) {
        if (number > 0 && number != family.cylinders()) {
            throw new InvalidValueException(
                    "cylinders",
                    this,
                    "family " + family.family() + " has " + family.cylinders() + " cylinders",
                    "name the cylinders that got new injectors, or correct the truck's family");
        }
        if (!bank.isEmpty()) {
            return bankOf(family)
                    .map(found -> found.cylinders().stream().sorted().toList())
                    .orElseThrow(() -> new InvalidValueException(
                            "cylinders",
                            this,
                            "family " + family.family() + " has no such bank",
                            "name one of "
                                    + String.join(
                                            ", ",
                                            family.banks().stream()
                                                    .map(Bank::name)
                                                    .toList())
                                    + ", or the cylinders"));
        }
        for (int cylinder : cylinders) {
            if (cylinder > family.cylinders()) {
                throw new InvalidValueException(
                        "cylinders",
                        cylinder,
                        "family " + family.family() + " has " + family.cylinders() + " cylinders",
                        "enter 1 to " + family.cylinders());
            }
        }
        return cylinders.isEmpty()
                ? family.banks().stream()
                        .flatMap(each -> each.cylinders().stream())
                        .sorted()
                        .toList()
                : cylinders;
    }

    private Optional<Bank> bankOf(EngineFamily family) {
        if (bank.matches("[0-9]")) {
            int number = Integer.parseInt(bank);
            return number >= 1 && number <= family.banks().size()
                    ? Optional.of(family.banks().get(number - 1))
                    : Optional.empty();
        }
        return family.banks().stream()
                .filter(each -> each.name().toLowerCase(Locale.ROOT).equals(bank))
                .findFirst();
    }

    /** {@code 1 3 5}, {@code left bank}, {@code all}. */
    @Override
    public String toString() {
        if (!bank.isEmpty()) {
            return bank.matches("[0-9]") ? "bank " + bank : bank + " bank";
        }
        return cylinders.isEmpty()
                ? number == 0 ? "all" : "all " + number
                : String.join(" ", cylinders.stream().map(String::valueOf).toList());
    }
}
