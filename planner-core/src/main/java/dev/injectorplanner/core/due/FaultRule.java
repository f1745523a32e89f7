package dev.injectorplanner.core.due;

import dev.injectorplanner.core.due.TruckCheck.Dated;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.core.fleet.Occurrences;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.InjectorAge;
import java.time.LocalDate;
import java.util.stream.Collectors;

/**
 * Faults of one cylinder within a window, since its injector went in, counted as {@link Occurrences} does. Faults of its circuit
 * and others are counted apart: a circuit that faults as often as the limit asks for a look at harness and connector first, not
 * for an injector. Common practice: an open or shorted circuit is the wiring more often than the coil.
 */
final class FaultRule {
    private FaultRule() {}

    static void apply(TruckCheck truck, InjectorAge age) {
        truck.rule(RuleKind.FAULTS).ifPresent(rule -> {
            faults(truck, age, rule, false);
            faults(truck, age, rule, true);
        });
    }

    private static void faults(TruckCheck truck, InjectorAge age, DueRule rule, boolean circuit) {
        Integer cylinder = age.cylinder();
        Occurrences seen = new Occurrences();
        LocalDate reached = null;
        for (Dated<Fault> fault : truck.faults) {
            if (!cylinder.equals(fault.row().cylinder()) || fault.row().code().electrical() != circuit) {
                continue;
            }
            boolean counts = fault.day().isAfter(age.fittedOn()) && !truck.isAnswered(fault);
            if (counts && truck.within(fault.lastDay(), rule.window())) {
                seen.add(fault.row());
                if (reached == null && seen.total() >= rule.limit()) {
                    reached = fault.lastDay();
                }
            } else {
                seen.before(fault.row());
            }
        }
        if (reached != null) {
            String what = circuit
                    ? Figures.count(seen.total(), "circuit fault", "circuit faults")
                    : Figures.count(seen.total(), "fault", "faults");
            truck.due(
                    age.cylinder(),
                    DueKind.FAULTS,
                    null,
                    circuit ? DueAction.INSPECT : DueAction.REPLACE,
                    what + " of the cylinder in the last " + rule.window() + " days ("
                            + seen.codes().stream().map(FaultRule::inWords).collect(Collectors.joining("; ")) + ")"
                            + (circuit ? "; harness and connector before the injector" : ""),
                    Figures.whole(rule.limit()) + " in " + rule.window() + " days",
                    rule.source(),
                    reached);
        }
    }

    /** {@code SPN 653 FMI 5, current below normal or open circuit}: the cylinder is said already. */
    private static String inWords(String code) {
        return code + ", " + new FaultCode(code).meaning().withoutCylinder();
    }
}
