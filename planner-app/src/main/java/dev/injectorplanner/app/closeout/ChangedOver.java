package dev.injectorplanner.app.closeout;

import dev.injectorplanner.app.entry.RefusedEntryException;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** A close-out once more, with the injectors of two cylinders changed over. */
final class ChangedOver {
    private ChangedOver() {}

    static CloseOutEntry of(CloseOut kept, int first, int second) {
        CloseOut.Done one = fitted(kept, first);
        CloseOut.Done other = fitted(kept, second);
        Set<String> injectors = kept.cylinders().stream()
                .filter(CloseOut.Done::fitted)
                .map(CloseOut.Done::part)
                .collect(Collectors.toSet());
        List<CloseOutEntry.Cylinder> cylinders = kept.cylinders().stream()
                .map(done -> done.cylinder() == first
                        ? entry(done, other)
                        : done.cylinder() == second ? entry(done, one) : entry(done, done))
                .toList();
        return new CloseOutEntry(
                key(kept, first, second),
                kept.truck(),
                kept.week(),
                kept.doneOn(),
                kept.labourHours(),
                kept.odometerKm(),
                kept.engineHours(),
                kept.meterReplaced(),
                kept.extras(),
                kept.tasks(),
                kept.recheckOn(),
                cylinders,
                kept.used().stream()
                        .filter(taken -> !injectors.contains(taken.part()))
                        .map(taken -> new CloseOutEntry.Used(taken.part(), taken.used()))
                        .toList(),
                kept.tests(),
                null);
    }

    /** One key for a version and its pair: pressed twice, it is done once. */
    private static String key(CloseOut kept, int first, int second) {
        return "swap " + kept.id() + " " + Math.min(first, second) + " " + Math.max(first, second);
    }

    private static CloseOut.Done fitted(CloseOut kept, int cylinder) {
        return kept.cylinders().stream()
                .filter(done -> done.cylinder() == cylinder && done.fitted())
                .findFirst()
                .orElseThrow(() -> RefusedEntryException.of(
                        "swap",
                        "cylinder " + cylinder + ": no injector was fitted in this job",
                        "choose two cylinders that got one"));
    }

    /** What was found of the old one stays with the cylinder; the new one is the other's. */
    private static CloseOutEntry.Cylinder entry(CloseOut.Done done, CloseOut.Done from) {
        String serial = from.serial();
        String code = from.code();
        String failedFirst = done.failedFirst();
        return new CloseOutEntry.Cylinder(
                done.cylinder(),
                done.fitted(),
                done.found(),
                serial == null ? "" : serial,
                code == null ? "" : code,
                from.origin(),
                from.programmed(),
                "",
                from.readBack() != CloseOut.ReadBack.NONE,
                done.reason(),
                failedFirst == null ? "" : failedFirst);
    }
}
