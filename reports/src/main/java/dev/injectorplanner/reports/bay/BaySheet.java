package dev.injectorplanner.reports.bay;

import dev.injectorplanner.core.visit.Visit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything a mechanic needs for one visit, ready to be shown: on paper or on a phone.
 *
 * @param truck the truck
 * @param depot where
 * @param family its engine
 * @param week the ISO week
 * @param day day and hour of its start, or the week where days are not laid yet
 * @param bay its bay, or null
 * @param work what is done, in short: {@code cylinders 2 4}
 * @param labourHours labour, in hours
 * @param drawing the engine from above as SVG, or null where no cylinder is done
 * @param seen what was seen: the evidence
 * @param along tasks done along
 * @param steps access steps in order of taking off
 * @param cylinders cylinders to do, front to rear
 * @param kit parts to pick
 * @param coolant what to drain, pour and collect, in words; empty where none comes out
 */
public record BaySheet(
        String truck,
        String depot,
        String family,
        String week,
        String day,
        @Nullable Integer bay,
        String work,
        String labourHours,
        @Nullable String drawing,
        List<String> seen,
        List<String> along,
        List<Step> steps,
        List<CylinderWork> cylinders,
        List<Pick> kit,
        List<String> coolant) {
    public BaySheet {
        seen = List.copyOf(seen);
        along = List.copyOf(along);
        steps = List.copyOf(steps);
        cylinders = List.copyOf(cylinders);
        kit = List.copyOf(kit);
        coolant = List.copyOf(coolant);
    }

    /**
     * An access step.
     *
     * @param number place in the order, from 1
     * @param step its name
     * @param hours labour, off and on again
     * @param cylinders cylinders of this visit it serves
     * @param cautions what to mind
     */
    public record Step(int number, String step, String hours, String cylinders, String cautions) {}

    /**
     * A cylinder to do.
     *
     * @param cylinder its number
     * @param bank its bank
     * @param out what comes out, in words
     * @param part the injector part to fit
     * @param bound the injector meant for it, or null where none is bound yet
     */
    public record CylinderWork(
            int cylinder,
            String bank,
            String out,
            String part,
            @Nullable CodedInjector bound) {}

    /**
     * A part to pick.
     *
     * @param part its number
     * @param description its name
     * @param pieces how many
     * @param remark that some of it may break and goes back unused, or empty
     */
    public record Pick(String part, String description, String pieces, String remark) {}

    /** Steps in order of refitting. */
    public List<Step> stepsBack() {
        List<Step> back = new java.util.ArrayList<>(steps);
        java.util.Collections.reverse(back);
        return back;
    }

    /** Cautions before the work. */
    public List<String> cautions() {
        return Cautions.BEFORE;
    }

    /** Checks at its end. */
    public List<String> end() {
        return Cautions.end(!cylinders.isEmpty(), along.contains(Visit.DIAGNOSIS));
    }
}
