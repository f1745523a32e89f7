package dev.injectorplanner.core.due;

import dev.injectorplanner.core.due.TruckCheck.Dated;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.Repair;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.InjectorAge;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A fuel leak or a fault of the fuel pressure that is open: reported, and neither repaired nor looked for in vain since.
 * Silence does not close it. What closes it: a recorded repair of the fuel system or a recorded "no fault found", each with a
 * name, on the day of the last report or later; or an injector fitted on a later day, since fitting ends with a leak check and
 * cleared faults (a report on the day of fitting itself counts as after it, which is the cautious side). Each code is a due
 * item of its own, so that one who knows of a small leak is still told of a large one. Due this many days after the first
 * report of the newest run of reports, a gap as long as the window ending a run.
 */
final class SafetyRule {
    private SafetyRule() {}

    static void apply(TruckCheck truck, List<InjectorAge> ages, SafetyLimit limit) {
        LocalDate fitted = LocalDate.MIN;
        for (InjectorAge age : ages) {
            boolean later = age.fittingKnown() && age.fittedOn().isAfter(fitted);
            fitted = later ? age.fittedOn() : fitted;
        }
        Map<String, List<LocalDate>> open = open(truck, fitted);
        for (Map.Entry<String, List<LocalDate>> each : open.entrySet()) {
            List<LocalDate> days = each.getValue();
            LocalDate first = firstOfRun(days, limit.windowDays());
            truck.mustNotWait(
                    each.getKey(),
                    evidence(each.getKey(), days.get(0), days.get(days.size() - 1)),
                    "safety: in the bay within " + Figures.count(limit.days(), "day", "days") + " of the first report",
                    limit.source(),
                    first.plusDays(limit.days()));
        }
    }

    /** Days of the open reports by code, oldest first. */
    private static Map<String, List<LocalDate>> open(TruckCheck truck, LocalDate fitted) {
        Map<String, List<LocalDate>> open = new TreeMap<>();
        for (Dated<Fault> fault : truck.faults) {
            String code = fault.row().code().text();
            if (SafetyCodes.find(fault.row().code()).isEmpty()) {
                continue;
            }
            LocalDate closed = closedOn(truck, code, fitted);
            if (!fault.day().isAfter(truck.today) && !fault.lastDay().isBefore(closed)) {
                List<LocalDate> days = open.computeIfAbsent(code, none -> new ArrayList<>());
                days.add(fault.day().isBefore(closed) ? closed : fault.day());
                if (fault.lastDay().isAfter(days.get(days.size() - 1))) {
                    days.add(fault.lastDay());
                }
            }
        }
        return open;
    }

    /** The first day on which a report of a code counts as open. */
    private static LocalDate closedOn(TruckCheck truck, String code, LocalDate fitted) {
        LocalDate from = fitted;
        for (Repair repair : truck.index.repairsOf(truck.truck.truck())) {
            LocalDate after = repair.doneOn().plusDays(1);
            if (!repair.doneOn().isAfter(truck.today) && after.isAfter(from) && SafetyRepairs.closes(repair, code)) {
                from = after;
            }
        }
        return from;
    }

    private static LocalDate firstOfRun(List<LocalDate> days, int windowDays) {
        int at = days.size() - 1;
        while (at > 0 && days.get(at - 1).isAfter(days.get(at).minusDays(windowDays))) {
            at--;
        }
        return days.get(at);
    }

    private static String evidence(String code, LocalDate first, LocalDate last) {
        String when = first.equals(last) ? " reported on " + first : " reported from " + first + " to " + last;
        return SafetyCodes.words(code) + " (" + code + ")" + when + ", no repair recorded since";
    }
}
