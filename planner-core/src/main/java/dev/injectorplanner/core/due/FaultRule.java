package dev.injectorplanner.core.due;

import dev.injectorplanner.core.due.TruckCheck.Dated;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.InjectorAge;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Faults of one cylinder within a window, since its injector went in. An ECU counts a code's occurrences on and on: what counts
 * of reports is how often a code was seen or how far its counter rose, whichever is more, never the sum of both. The rise
 * starts at the last report before the window, or at 0 where the injector went in since; a counter that falls was cleared.
 * Episodes hold their own rise, and count as that.
 */
final class FaultRule {
    private FaultRule() {}

    static void apply(TruckCheck truck, InjectorAge age) {
        truck.rule(RuleKind.FAULTS).ifPresent(rule -> faults(truck, age, rule));
    }

    private static void faults(TruckCheck truck, InjectorAge age, DueRule rule) {
        Integer cylinder = age.cylinder();
        Map<String, Integer> before = new TreeMap<>();
        Map<String, Tally> codes = new TreeMap<>();
        LocalDate reached = null;
        for (Dated<Fault> fault : truck.faults) {
            if (!cylinder.equals(fault.row().cylinder()) || !fault.day().isAfter(age.fittedOn())) {
                continue;
            }
            String code = fault.row().code().text();
            if (truck.within(fault.day(), rule.window())) {
                codes.computeIfAbsent(code, none -> new Tally(before.get(code))).add(fault.row());
                if (reached == null && occurrences(codes) >= rule.limit()) {
                    reached = fault.day();
                }
            } else if (!fault.row().isEpisode()) {
                before.put(code, fault.row().count());
            }
        }
        if (reached != null) {
            truck.due(
                    age.cylinder(),
                    DueKind.FAULTS,
                    null,
                    DueAction.REPLACE,
                    Figures.count(occurrences(codes), "fault", "faults") + " of the cylinder in the last "
                            + rule.window() + " days (" + String.join(", ", codes.keySet()) + ")",
                    Figures.whole(rule.limit()) + " in " + rule.window() + " days",
                    rule.source(),
                    reached);
        }
    }

    private static long occurrences(Map<String, Tally> codes) {
        return codes.values().stream().mapToLong(Tally::occurrences).sum();
    }

    /** One code within the window. */
    private static final class Tally {
        private long reports;
        private long rise;
        private long episodes;
        private int counter;

        /** @param counter its counter before the window, or null where it was not reported then */
        Tally(@Nullable Integer counter) {
            this.counter = counter == null ? 0 : counter;
        }

        void add(Fault fault) {
            if (fault.isEpisode()) {
                episodes += fault.count();
                return;
            }
            reports++;
            rise += fault.count() < counter ? fault.count() : fault.count() - counter;
            counter = fault.count();
        }

        long occurrences() {
            return Math.max(reports, rise) + episodes;
        }
    }
}
