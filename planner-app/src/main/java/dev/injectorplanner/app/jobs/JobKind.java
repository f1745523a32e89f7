package dev.injectorplanner.app.jobs;

import dev.injectorplanner.core.check.InvalidValueException;
import java.time.Duration;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * The jobs there are, with the times they run at unless the site says otherwise (planner defaults), and for how long after
 * its time a run that was missed is still worth catching up. Of several missed times only the latest is caught up.
 */
public enum JobKind {
    NIGHTLY_PLAN("nightly plan", Scope.DEPOT, "30 2 * * *", Duration.ofHours(20), "replaced by the next night"),
    SWEEP(
            "sweep of new readings and faults",
            Scope.FLEET,
            "*/15 * * * *",
            Duration.ZERO,
            "the next sweep covers the same data"),
    LIVE_PLAN(
            "replan after changes",
            Scope.FLEET,
            "* * * * *",
            Duration.ZERO,
            "the next minute sees the same changes; nothing is recorded while there are none"),
    WORK_LIST("weekly work list", Scope.DEPOT, "0 12 * * 5", Duration.ofDays(4), "useful until the week has begun"),
    ORDER_LIST("order list", Scope.DEPOT, "0 6 * * 1,4", Duration.ofDays(2), "useful until the next list"),
    DEADLINES(
            "core and warranty deadlines", Scope.DEPOT, "0 7 * * *", Duration.ofDays(1), "deadlines cannot be skipped"),
    DROP_FOLDER("drop folder", Scope.FLEET, "*/5 * * * *", Duration.ZERO, "files wait for the next run"),
    LIFE_REFIT("life refit", Scope.FLEET, "0 3 * * 0", Duration.ofDays(6), "useful until the next refit"),
    CALIBRATION(
            "calibration of the planning figures",
            Scope.FLEET,
            "30 0 * * 0",
            Duration.ofDays(6),
            "useful until the next calibration"),
    BACKUP("backup", Scope.FLEET, "0 4 * * *", Duration.ofDays(1), "better late than never"),
    MAIL_OUT("mail out", Scope.FLEET, "*/5 * * * *", Duration.ZERO, "mails wait for the next run");

    /** Whether a job runs for each depot, or once for all. */
    public enum Scope {
        DEPOT,
        FLEET
    }

    private final String words;
    private final Scope scope;
    private final String defaultTimes;
    private final Duration catchUp;
    private final String why;

    JobKind(String words, Scope scope, String defaultTimes, Duration catchUp, String why) {
        this.words = words;
        this.scope = scope;
        this.defaultTimes = defaultTimes;
        this.catchUp = catchUp;
        this.why = why;
    }

    /** What people call it. */
    public String words() {
        return words;
    }

    public Scope scope() {
        return scope;
    }

    /** A crontab line, in the depot's zone. */
    public String defaultTimes() {
        return defaultTimes;
    }

    /** How late a missed run may still start; zero where it is left to the next one. */
    public Duration catchUp() {
        return catchUp;
    }

    /** Why the catch-up is as long as it is. */
    public String why() {
        return why;
    }

    /** The name used on the command line, such as {@code nightly-plan}. */
    public String option() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** @throws InvalidValueException naming the jobs there are */
    public static JobKind of(String option) {
        return Arrays.stream(values())
                .filter(kind -> kind.option().equals(option.strip().toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new InvalidValueException(
                        "job",
                        option,
                        "is not a job",
                        "choose from "
                                + Arrays.stream(values()).map(JobKind::option).collect(Collectors.joining(", "))));
    }
}
