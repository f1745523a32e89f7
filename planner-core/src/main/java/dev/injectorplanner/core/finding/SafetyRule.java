package dev.injectorplanner.core.finding;

import dev.injectorplanner.core.finding.TruckCase.Dated;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.InjectorAge;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.LinkedList;
import java.util.List;
import java.util.Set;

/**
 * A fuel leak or a fault of the fuel pressure that is active: seen within the window, and no injector of the truck fitted on
 * a later day. Earlier sightings belong to it as long as no gap between two is as long as the window. Fitting ends with a leak check and cleared faults, so that it counts as the cure; a sighting on the day of
 * fitting itself counts as after it, which is the cautious side. Due so many days after the first sighting since then.
 */
final class SafetyRule {
    private SafetyRule() {}

    static void apply(TruckCase truck, List<InjectorAge> ages, SafetyLimit limit) {
        LocalDate cured = LocalDate.MIN;
        for (InjectorAge age : ages) {
            cured = age.fittedOn().isAfter(cured) ? age.fittedOn() : cured;
        }
        List<Dated<Fault>> active = active(truck, cured, limit.windowDays());
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

    /** Oldest first; the day on which it is due stays where it is while it is seen again and again. */
    private static List<Dated<Fault>> active(TruckCase truck, LocalDate since, int windowDays) {
        LinkedList<Dated<Fault>> active = new LinkedList<>();
        LocalDate next = truck.today;
        for (int i = truck.faults.size() - 1; i >= 0; i--) {
            Dated<Fault> fault = truck.faults.get(i);
            LocalDate day = fault.day();
            if (day.isAfter(truck.today) || SafetyCodes.find(fault.row().code()).isEmpty()) {
                continue;
            }
            if (day.isBefore(since) || !day.isAfter(next.minusDays(windowDays))) {
                break;
            }
            active.addFirst(fault);
            next = day;
        }
        return active;
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
