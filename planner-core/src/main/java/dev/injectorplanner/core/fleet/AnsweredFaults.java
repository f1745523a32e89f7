package dev.injectorplanner.core.fleet;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Faults that a recorded repair has answered: those of an injector's circuit, seen up to the day on which its harness or
 * connector was repaired, or on which a diagnosis looked for their code and found nothing. They were the wiring's, not the injector's, and count against it no more. Common practice: where a
 * code is electrical, harness and connector come before the injector.
 */
public final class AnsweredFaults {
    private static final Pattern CYLINDERS = Pattern.compile("cylinders?\\s+((?:\\d{1,2}[\\s,;/&]*(?:and\\s+)?)+)");

    private final List<Repair> repairs;
    private final List<Repair> inVain;

    /** @param repairs of one truck */
    public AnsweredFaults(List<Repair> repairs) {
        this.repairs = repairs.stream().filter(RepairWork::isOfCircuit).toList();
        this.inVain = repairs.stream().filter(Repair::foundNothing).toList();
    }

    /** @param seenOn day of the fault at the truck's depot */
    public boolean covers(Fault fault, LocalDate seenOn) {
        Integer cylinder = fault.cylinder();
        return cylinder != null
                && fault.code().electrical()
                && (repairs.stream().anyMatch(repair -> !seenOn.isAfter(repair.doneOn()) && isOf(cylinder, repair))
                        || inVain.stream()
                                .anyMatch(
                                        repair -> !seenOn.isAfter(repair.doneOn()) && repair.lookedFor(fault.code())));
    }

    /** A repair of the injectors' wiring that names no cylinder is of all; other wiring is of none. */
    private static boolean isOf(int cylinder, Repair repair) {
        Set<Integer> named = cylinders(repair);
        return named.contains(cylinder)
                || named.isEmpty() && repair.what().toLowerCase(Locale.ROOT).contains("injector");
    }

    /** Those that the work names: one that a remark compares it with was not repaired. */
    private static Set<Integer> cylinders(Repair repair) {
        Set<Integer> cylinders = new HashSet<>();
        Matcher found = CYLINDERS.matcher(repair.what().toLowerCase(Locale.ROOT));
        while (found.find()) {
            for (String number : found.group(1).split("\\D+")) {
                if (!number.isEmpty()) {
                    cylinders.add(Integer.valueOf(number));
                }
            }
        }
        return cylinders;
    }
}
