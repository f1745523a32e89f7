package dev.injectorplanner.core.due;

import dev.injectorplanner.core.due.TruckCheck.Dated;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.InjectorAge;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Faults of one cylinder within a window, since its injector went in. A controller counts a code's occurrences on and
 * on, so a code counts as often as it was seen or as its highest count says, whichever is more, never as the sum of both.
 */
final class FaultRule {
    private FaultRule() {}

    static void apply(TruckCheck truck, InjectorAge age) {
        truck.rule(RuleKind.FAULTS).ifPresent(rule -> faults(truck, age, rule));
    }

    private static void faults(TruckCheck truck, InjectorAge age, DueRule rule) {
        Integer cylinder = age.cylinder();
        List<Dated<Fault>> seen = truck.faults.stream()
                .filter(fault -> cylinder.equals(fault.row().cylinder()))
                .filter(fault -> truck.within(fault.day(), rule.window()))
                .filter(fault -> !fault.day().isBefore(age.fittedOn()))
                .toList();
        Map<String, Integer> rows = new TreeMap<>();
        Map<String, Integer> highest = new TreeMap<>();
        LocalDate reached = null;
        for (Dated<Fault> fault : seen) {
            rows.merge(fault.row().code().text(), 1, Integer::sum);
            highest.merge(fault.row().code().text(), fault.row().count(), Math::max);
            if (reached == null && occurrences(rows, highest) >= rule.limit()) {
                reached = fault.day();
            }
        }
        if (reached != null) {
            truck.due(
                    age.cylinder(),
                    DueKind.FAULTS,
                    null,
                    DueAction.REPLACE,
                    Figures.count(occurrences(rows, highest), "fault", "faults") + " of the cylinder in the last "
                            + rule.window() + " days (" + String.join(", ", rows.keySet()) + ")",
                    Figures.whole(rule.limit()) + " in " + rule.window() + " days",
                    rule.source(),
                    reached);
        }
    }

    private static long occurrences(Map<String, Integer> rows, Map<String, Integer> highest) {
        long sum = 0;
        for (Map.Entry<String, Integer> code : rows.entrySet()) {
            sum += Math.max(code.getValue(), highest.getOrDefault(code.getKey(), 0));
        }
        return sum;
    }
}
