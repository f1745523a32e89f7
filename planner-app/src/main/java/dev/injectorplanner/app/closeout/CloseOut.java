package dev.injectorplanner.app.closeout;

import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A visit that was closed out, as it is kept.
 *
 * @param id its number
 * @param formKey the form it came with
 * @param truck the truck
 * @param depot its depot that day
 * @param week ISO week of the planned visit, or null
 * @param doneOn the day
 * @param version 1 for the first, one more with each correction
 * @param corrects number of the version that it corrects, or null
 * @param correctedBy number of the version that corrects it, or null while it holds
 * @param why why it was corrected, empty for the first
 * @param labourHours hours worked
 * @param odometerKm odometer, km, or null
 * @param engineHours engine hours, or null
 * @param meterReplaced whether a meter was replaced
 * @param extras what else was done or seen
 * @param tasks scheduled services done along
 * @param recheckOn day to look at faults and leaks again, or null
 * @param readAt moment of its reading and tests, or null where there is none
 * @param remarks what the store could not do as entered, in words
 * @param closedAt when its first version was entered
 * @param madeAt when this version was entered
 * @param madeBy by whom
 * @param cylinders what was done a cylinder
 * @param used parts used besides injectors
 * @param tests test results
 * @param finishedAt when the work was finished; the same for all versions unless a correction names another hour
 * @param voided when, by whom and why it was voided, or null
 */
public record CloseOut(
        long id,
        String formKey,
        String truck,
        String depot,
        @Nullable String week,
        LocalDate doneOn,
        int version,
        @Nullable Long corrects,
        @Nullable Long correctedBy,
        String why,
        double labourHours,
        @Nullable Double odometerKm,
        @Nullable Double engineHours,
        boolean meterReplaced,
        String extras,
        List<String> tasks,
        @Nullable LocalDate recheckOn,
        @Nullable Instant readAt,
        List<String> remarks,
        Instant closedAt,
        Instant madeAt,
        String madeBy,
        List<Done> cylinders,
        List<Taken> used,
        List<CloseOutEntry.Test> tests,
        Instant finishedAt,
        @Nullable Voided voided) {
    public CloseOut {
        tasks = List.copyOf(tasks);
        remarks = List.copyOf(remarks);
        cylinders = List.copyOf(cylinders);
        used = List.copyOf(used);
        tests = List.copyOf(tests);
    }

    /** How the code was read back from the engine controller. */
    public enum ReadBack {
        TYPED,
        COMPARED,
        NONE
    }

    /**
     * A cylinder of it.
     *
     * @param cylinder its number
     * @param fitted whether an injector was fitted
     * @param found what the old one was found to be, or null where nothing was fitted
     * @param oldSerial serial of the old one, or null
     * @param oldFittedOn day the old one had gone in, or null where none was recorded
     * @param part part of the new one, or null
     * @param serial its serial, or null
     * @param code its calibration code, or null
     * @param origin new or reman, or null
     * @param programmed whether the code was confirmed as entered in the controller
     * @param readBack how it was read back
     * @param reason why nothing was fitted, or empty
     * @param fitting order of the new one among those of that day
     * @param oldFitting order of the old one among those of its day
     * @param failedFirst serial of one that was fitted before it and failed at once, or null
     */
    public record Done(
            int cylinder,
            boolean fitted,
            @Nullable Found found,
            @Nullable String oldSerial,
            @Nullable LocalDate oldFittedOn,
            @Nullable String part,
            @Nullable String serial,
            @Nullable String code,
            @Nullable Origin origin,
            boolean programmed,
            ReadBack readBack,
            String reason,
            int fitting,
            int oldFitting,
            @Nullable String failedFirst) {}

    /** That a close-out means nothing any more. */
    public record Voided(Instant at, String by, String why) {}

    /** A part: pieces used, and how many of them the table of stock had. Injectors are among them. */
    public record Taken(String part, double used, double taken) {}

    /** Whether it holds: no later version corrects it, and it was not voided. */
    public boolean holds() {
        return correctedBy == null && voided == null;
    }

    /** Cylinders that got an injector. */
    public List<Integer> fitted() {
        return cylinders.stream().filter(Done::fitted).map(Done::cylinder).toList();
    }
}
