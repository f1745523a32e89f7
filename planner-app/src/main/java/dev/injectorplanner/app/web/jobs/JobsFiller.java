package dev.injectorplanner.app.web.jobs;

import dev.injectorplanner.app.jobs.JobKind;
import dev.injectorplanner.app.jobs.JobRun;
import dev.injectorplanner.app.jobs.JobSetting;
import dev.injectorplanner.app.jobs.RunOutcome;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.wiring.JobParts;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Fills the page of jobs; every time stands in the zone of its depot. */
final class JobsFiller {
    private static final int MOST = 100;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm zzz", Locale.ENGLISH);

    private final JobParts jobs;
    private final Viewer viewer;

    JobsFiller(JobParts jobs, Viewer viewer) {
        this.jobs = jobs;
        this.viewer = viewer;
    }

    /** Who has a depot sees its jobs alone: those of the fleet tell of every depot. */
    static boolean maySee(Viewer viewer, String depot) {
        return viewer.depot() == null || viewer.sees(depot);
    }

    JobsView of(Instant now) {
        Map<String, ZoneId> zones = jobs.zones().zones();
        List<JobRun> runs = jobs.frame().runs().listNewest(MOST).stream()
                .filter(run -> maySee(viewer, run.key().depot()))
                .toList();
        Set<JobKind> missing = EnumSet.allOf(JobKind.class);
        missing.removeAll(jobs.frame().registry().kinds());
        return new JobsView(
                runs.stream()
                        .filter(run -> run.outcome() == RunOutcome.GIVEN_UP)
                        .count(),
                MOST,
                runs.stream()
                        .map(run -> run(run, zones.getOrDefault(run.key().depot(), ZoneOffset.UTC)))
                        .toList(),
                jobs.times().list(jobs.frame().registry().kinds()).stream()
                        .filter(setting -> maySee(viewer, setting.depot()))
                        .map(setting -> time(setting, now))
                        .toList(),
                missing.stream().map(JobKind::words).toList(),
                now);
    }

    private static JobsView.Run run(JobRun run, ZoneId zone) {
        return new JobsView.Run(
                run.key().kind().words() + (run.byHand() ? ", by hand" : ""),
                run.key().findDepot().orElse("all"),
                said(run.key().due(), zone),
                mark(run.outcome()),
                run.outcome().words() + (run.nextTry() == null ? "" : " after " + said(run.nextTry(), zone)),
                run.attempt(),
                took(run),
                run.passedOver() == 0 ? run.counts() : run.counts() + " (covers " + run.passedOver() + " missed runs)",
                run.error() == null ? "" : run.error());
    }

    private static String mark(RunOutcome outcome) {
        return switch (outcome) {
            case RUNNING -> "move";
            case DONE -> "done";
            case FAILED -> "wait";
            case GIVEN_UP -> "no";
            case TOO_LATE -> "gone";
        };
    }

    private static String took(JobRun run) {
        Instant ended = run.ended();
        return ended == null || run.attempt() == 0
                ? ""
                : String.valueOf(run.started().until(ended, ChronoUnit.SECONDS));
    }

    private static JobsView.Time time(JobSetting setting, Instant now) {
        return new JobsView.Time(
                setting.kind().option(),
                setting.kind().words(),
                setting.depot(),
                setting.enabled() ? TimesInWords.of(setting.times().line()) : "by hand only",
                TimesInWords.at(setting.times().line()),
                setting.times() + (setting.bySite() ? "" : ", planner default"),
                setting.enabled()
                        ? said(setting.times().nextAfter(now), setting.times().zone())
                        : "by hand only");
    }

    private static String said(Instant at, ZoneId zone) {
        return TIME.format(at.atZone(zone));
    }
}
