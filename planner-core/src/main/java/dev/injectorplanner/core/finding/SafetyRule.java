package dev.injectorplanner.core.finding;

import dev.injectorplanner.core.finding.TruckCase.Dated;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.InjectorAge;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A fuel leak or a fault of the fuel pressure that is active: seen within the window, and no injector of the truck fitted on
 * a later day. Fitting ends with a leak check and cleared faults, so that it counts as the cure; a sighting on the day of
 * fitting itself counts as after it, which is the cautious side. Due so many days after the first sighting since then.
 */
final class SafetyRule {
    private SafetyRule() {}

    static void apply(TruckCase truck, List<InjectorAge> ages, SafetyLimit limit) {
        LocalDate cured = LocalDate.MIN;
        for (InjectorAge age : ages) {
            cured = age.fittedOn().isAfter(cured) ? age.fittedOn() : cured;
        }
        LocalDate since = cured;
        List<Dated<Fault>> active = truck.faults.stream()
                .filter(fault -> SafetyCodes.find(fault.row().code()).isPresent())
                .filter(fault -> truck.within(fault.day(), limit.windowDays()))
                .filter(fault -> !fault.day().isBefore(since))
                .toList();
        if (!active.isEmpty()) {
            truck.due(
                    null,
                    FindingKind.SAFETY,
                    null,
                    Action.INSPECT,
                    evidence(active),
                    "must not wait: in the bay within " + Figures.count(limit.days(), "day", "days")
                            + " of the first sighting",
                    limit.source(),
                    active.get(0).day().plusDays(limit.days()));
        }
    }

    private static String evidence(List<Dated<Fault>> active) {
        Set<String> words = new LinkedHashSet<>();
        for (Dated<Fault> fault : active) {
            String code = fault.row().code().text();
            words.add(SafetyCodes.find(fault.row().code()).orElse(code) + " (" + code + ")");
        }
        LocalDate first = active.get(0).day();
        LocalDate last = active.get(active.size() - 1).day();
        String when = first.equals(last) ? " seen on " + first : " seen from " + first + " to " + last;
        return String.join(", ", words) + when + ", no injector fitted since";
    }
}
