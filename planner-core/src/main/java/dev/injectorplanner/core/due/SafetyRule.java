package dev.injectorplanner.core.due;

import dev.injectorplanner.core.due.TruckCheck.Dated;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.InjectorAge;
import java.time.LocalDate;
import java.util.LinkedList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A fuel leak or a fault of the fuel pressure that is active: seen within the window, and no injector of the truck fitted on
 * a later day. Each code is a due item of its own, so that one who knows of a small leak is still told of a large one. Earlier
 * sightings of a code belong to it as long as no gap between two is as long as the window. Fitting ends with a leak check
 * and cleared faults, so that it counts as the cure; a sighting on the day of fitting itself counts as after it, which is
 * the cautious side. Due this many days after the first sighting since then.
 */
final class SafetyRule {
    private SafetyRule() {}

    static void apply(TruckCheck truck, List<InjectorAge> ages, SafetyLimit limit) {
        LocalDate cured = LocalDate.MIN;
        for (InjectorAge age : ages) {
            cured = age.fittedOn().isAfter(cured) ? age.fittedOn() : cured;
        }
        for (Map.Entry<String, LinkedList<Dated<Fault>>> each :
                active(truck, cured, limit.windowDays()).entrySet()) {
            LocalDate first = each.getValue().getFirst().day();
            truck.mustNotWait(
                    each.getKey(),
                    evidence(each.getKey(), first, each.getValue().getLast().day()),
                    "safety: in the bay within " + Figures.count(limit.days(), "day", "days") + " of the first report",
                    limit.source(),
                    first.plusDays(limit.days()));
        }
    }

    /** By code, oldest first; the day on which it is due stays where it is while it is seen again and again. */
    private static Map<String, LinkedList<Dated<Fault>>> active(TruckCheck truck, LocalDate since, int windowDays) {
        Map<String, LinkedList<Dated<Fault>>> active = new TreeMap<>();
        for (int i = truck.faults.size() - 1; i >= 0; i--) {
            Dated<Fault> fault = truck.faults.get(i);
            LocalDate day = fault.day();
            String code = fault.row().code().text();
            if (day.isAfter(truck.today)
                    || day.isBefore(since)
                    || SafetyCodes.find(fault.row().code()).isEmpty()) {
                continue;
            }
            LinkedList<Dated<Fault>> later = active.get(code);
            LocalDate next = later == null ? truck.today : later.getFirst().day();
            if (day.isAfter(next.minusDays(windowDays))) {
                active.computeIfAbsent(code, none -> new LinkedList<>()).addFirst(fault);
            }
        }
        return active;
    }

    private static String evidence(String code, LocalDate first, LocalDate last) {
        String when = first.equals(last) ? " reported on " + first : " reported from " + first + " to " + last;
        return SafetyCodes.words(code) + " (" + code + ")" + when + ", no injector fitted since";
    }
}
