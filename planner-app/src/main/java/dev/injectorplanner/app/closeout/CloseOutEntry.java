package dev.injectorplanner.app.closeout;

import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.TestKind;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What a mechanic enters when a visit is over.
 *
 * @param formKey names the form: what is entered under a key is kept once
 * @param truck the truck
 * @param week ISO week of the planned visit, or null where it came in unplanned
 * @param doneOn the day, or null where it was left empty
 * @param labourHours hours worked, or null where left empty
 * @param odometerKm odometer, km, or null
 * @param engineHours engine hours, or null
 * @param meterReplaced whether a meter was replaced since its last reading
 * @param extras what else was done or seen; its lines become one
 * @param tasks scheduled services done along
 * @param recheckOn day to look at faults and leaks again, or null
 * @param cylinders what was done a cylinder
 * @param used parts used besides the injectors
 * @param tests test results
 * @param finishedAt the hour it was finished, in the depot's time, or null: now, or noon of an earlier day
 * @param job number of the unplanned job that it closes, or null where it names none
 */
public record CloseOutEntry(
        String formKey,
        String truck,
        @Nullable String week,
        @Nullable LocalDate doneOn,
        @Nullable Double labourHours,
        @Nullable Double odometerKm,
        @Nullable Double engineHours,
        boolean meterReplaced,
        String extras,
        List<String> tasks,
        @Nullable LocalDate recheckOn,
        List<Cylinder> cylinders,
        List<Used> used,
        List<Test> tests,
        @Nullable LocalTime finishedAt,
        @Nullable Long job) {
    /** One that names no unplanned job. */
    public CloseOutEntry(
            String formKey,
            String truck,
            @Nullable String week,
            @Nullable LocalDate doneOn,
            @Nullable Double labourHours,
            @Nullable Double odometerKm,
            @Nullable Double engineHours,
            boolean meterReplaced,
            String extras,
            List<String> tasks,
            @Nullable LocalDate recheckOn,
            List<Cylinder> cylinders,
            List<Used> used,
            List<Test> tests,
            @Nullable LocalTime finishedAt) {
        this(
                formKey,
                truck,
                week,
                doneOn,
                labourHours,
                odometerKm,
                engineHours,
                meterReplaced,
                extras,
                tasks,
                recheckOn,
                cylinders,
                used,
                tests,
                finishedAt,
                null);
    }

    public CloseOutEntry {
        extras = extras.lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .collect(Collectors.joining(" / "));
        tasks = List.copyOf(tasks);
        cylinders = List.copyOf(cylinders);
        used = List.copyOf(used);
        tests = List.copyOf(tests);
    }

    /**
     * A cylinder of the visit.
     *
     * @param cylinder its number
     * @param fitted whether an injector was fitted; if not, {@code reason} says why
     * @param found what the old one was found to be, or null where left empty
     * @param serial serial of the new one, or a whole label as scanned
     * @param code its calibration code, or a whole label as scanned
     * @param origin new or reman; null: as it was taken in, or, where it was not, as its part's deposit says
     * @param programmed whether the code was entered in the engine controller under this cylinder
     * @param readBack the code as read back from the controller, empty where it was compared by eye
     * @param compared whether it was read back and compared by eye: the same
     * @param reason why nothing was fitted
     * @param failedFirst serial of a new injector that was fitted before and failed at once, or empty
     */
    public record Cylinder(
            int cylinder,
            boolean fitted,
            @Nullable Found found,
            String serial,
            String code,
            @Nullable Origin origin,
            boolean programmed,
            String readBack,
            boolean compared,
            String reason,
            String failedFirst) {
        /** Where the first one fitted works. */
        public Cylinder(
                int cylinder,
                boolean fitted,
                @Nullable Found found,
                String serial,
                String code,
                @Nullable Origin origin,
                boolean programmed,
                String readBack,
                boolean compared,
                String reason) {
            this(cylinder, fitted, found, serial, code, origin, programmed, readBack, compared, reason, "");
        }
    }

    /** Pieces of a part that were used. */
    public record Used(String part, double pieces) {}

    /** A test result of a cylinder. */
    public record Test(int cylinder, TestKind test, double value, String unit, String engineState) {}
}
