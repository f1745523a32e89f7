package dev.injectorplanner.reports.bay;

import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.visit.Visit;
import java.util.ArrayList;
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
 * @param seen the evidence, the strongest first, all of it
 * @param along tasks done along
 * @param steps access steps in order of taking off
 * @param cylinders cylinders to do, front to rear
 * @param kit parts to pick
 * @param coolant what to drain, pour and collect, in words; empty where none comes out
 * @param readings what an injector test reads of each cylinder; empty where none is planned
 * @param tested cylinders to read, front to rear
 * @param look where a diagnosis looks, in order; empty where none is asked for
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
        List<String> coolant,
        List<Reading> readings,
        List<Integer> tested,
        List<String> look) {
    public BaySheet {
        seen = List.copyOf(seen);
        along = List.copyOf(along);
        steps = List.copyOf(steps);
        cylinders = List.copyOf(cylinders);
        kit = List.copyOf(kit);
        coolant = List.copyOf(coolant);
        readings = List.copyOf(readings);
        tested = List.copyOf(tested);
        look = List.copyOf(look);
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

    /**
     * What a test reads of each cylinder.
     *
     * @param test its kind
     * @param name in words
     * @param unit in which it is read and its limit given
     * @param limit the limit in words, with where it comes from; "no limit" where there is none
     * @param most the limit, without a sign, or null where there is none
     */
    public record Reading(
            TestKind test,
            String name,
            String unit,
            String limit,
            @Nullable Double most) {}

    /**
     * A step of putting back.
     *
     * @param number place in the order, from 1
     * @param step what is done, in the words of putting back
     * @param note what to read or mind, or empty
     * @param refill whether coolant goes in: its freezing point is read
     */
    public record Refit(int number, String step, String note, boolean refill) {}

    /** Putting back: the access steps in reverse order, in the words of putting back. */
    public List<Refit> refit() {
        List<Refit> back = new ArrayList<>();
        boolean refilled = coolant.isEmpty();
        for (int at = steps.size() - 1; at >= 0; at--) {
            String step = steps.get(at).step();
            boolean refill = !refilled && RefitWords.drains(step);
            refilled |= refill;
            back.add(new Refit(back.size() + 1, RefitWords.of(step), refill ? refillNote() : "", refill));
        }
        return refilled ? back : withRefill(back);
    }

    /** No step of its own let the coolant out: it goes in when all is on, before the batteries are connected. */
    private List<Refit> withRefill(List<Refit> back) {
        List<Refit> all = new ArrayList<>();
        int last = back.size() - 1;
        boolean batteries = last >= 0 && back.get(last).step().equals(RefitWords.BATTERIES);
        for (Refit step : batteries ? back.subList(0, last) : back) {
            all.add(step);
        }
        all.add(new Refit(all.size() + 1, "Coolant refilled", refillNote(), true));
        if (batteries) {
            all.add(new Refit(all.size() + 1, RefitWords.BATTERIES, "", false));
        }
        return all;
    }

    private String refillNote() {
        return coolant.stream()
                        .filter(line -> line.startsWith("Put back"))
                        .findFirst()
                        .orElse("To the mark. ") + " Freezing point read.";
    }

    /** Cautions before the work. */
    public List<String> cautions() {
        return Cautions.BEFORE;
    }

    /** The work with the tasks done along; a sheet without cylinders is of its tasks already. */
    public String wholeWork() {
        return cylinders.isEmpty() || along.isEmpty() ? work : work + ", " + String.join(", ", along);
    }

    /** Whether injectors are tested and nothing is fitted. */
    public boolean testOnly() {
        return !readings.isEmpty() && cylinders.isEmpty();
    }

    /** Whether the cause of a safety fault is looked for. */
    public boolean diagnosis() {
        return along.contains(Visit.DIAGNOSIS);
    }

    /** Steps of an injector test, in order. */
    public List<String> testSteps() {
        return readings.isEmpty() ? List.of() : Cautions.TEST;
    }

    /** Checks at its end. */
    public List<String> end() {
        return Cautions.end(!cylinders.isEmpty(), diagnosis(), testOnly());
    }
}
