package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.core.fleet.Bank;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FaultCode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** An engine seen from above, cylinder by cylinder, to press those that failed. */
final class EnginePick {
    private static final int RECENT_DAYS = 30;

    private EnginePick() {}

    /**
     * A cylinder.
     *
     * @param fitted what is in it, in words
     * @param faults its codes of the last 30 days in words, or "no faults"
     */
    public record Pick(int cylinder, String fitted, String faults) {}

    /** Rows front to rear, a cylinder of each bank in a row. */
    static List<List<Pick>> of(TruckInBay at) {
        List<Bank> banks = at.family().banks();
        List<List<Pick>> rows = new ArrayList<>();
        int longest =
                banks.stream().mapToInt(bank -> bank.cylinders().size()).max().orElse(0);
        for (int row = 0; row < longest; row++) {
            List<Pick> picks = new ArrayList<>();
            for (Bank bank : banks) {
                if (row < bank.cylinders().size()) {
                    picks.add(pick(at, bank.cylinders().get(row)));
                }
            }
            rows.add(picks);
        }
        return rows;
    }

    private static Pick pick(TruckInBay at, int cylinder) {
        return new Pick(
                cylinder,
                at.fittedIn(cylinder)
                        .map(row -> "in since " + row.fittedWords())
                        .orElse("no record"),
                faults(at, cylinder));
    }

    /** Circuit codes and others are told apart: the wiring is looked at before the injector. */
    private static String faults(TruckInBay at, int cylinder) {
        LocalDate since = at.today().minusDays(RECENT_DAYS);
        TreeSet<String> circuit = new TreeSet<>();
        TreeSet<String> other = new TreeSet<>();
        for (Fault fault : at.fleet().faultsOf(at.truck().truck())) {
            LocalDate day = fault.until().atZone(at.depot().timeZone()).toLocalDate();
            if (fault.cylinder() != null && fault.cylinder() == cylinder && day.isAfter(since)) {
                FaultCode code = fault.code();
                (code.electrical() ? circuit : other).add(code.meaning().withoutCylinder());
            }
        }
        String words = other.stream().collect(Collectors.joining("; "));
        String wiring = circuit.stream().collect(Collectors.joining("; "));
        if (wiring.isEmpty()) {
            return words.isEmpty() ? "no faults" : words;
        }
        return (words.isEmpty() ? "" : words + "; ") + "circuit: " + wiring;
    }
}
