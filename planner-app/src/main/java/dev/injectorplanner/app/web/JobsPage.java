package dev.injectorplanner.app.web;

import dev.injectorplanner.app.jobs.JobKind;
import dev.injectorplanner.app.jobs.JobRun;
import dev.injectorplanner.app.jobs.JobSetting;
import dev.injectorplanner.app.jobs.RunKey;
import dev.injectorplanner.app.jobs.RunOutcome;
import dev.injectorplanner.app.jobs.quartz.QuartzJobs;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.wiring.JobParts;
import dev.injectorplanner.core.check.InvalidValueException;
import java.net.URI;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** What ran, what will run, and running it now. */
@RestController
class JobsPage {
    private static final int MOST = 100;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm zzz", Locale.ENGLISH);

    private final JobParts jobs;
    private final QuartzJobs quartz;
    private final AuditTrail audit;

    JobsPage(JobParts jobs, QuartzJobs quartz, AuditTrail audit) {
        this.jobs = jobs;
        this.quartz = quartz;
        this.audit = audit;
    }

    @GetMapping(path = "/jobs", produces = MediaType.TEXT_HTML_VALUE)
    String page(@ModelAttribute("viewer") Viewer viewer, CsrfToken csrf) {
        Map<String, ZoneId> zones = jobs.zones().zones();
        List<JobRun> runs = jobs.frame().runs().listNewest(MOST).stream()
                .filter(run -> maySee(viewer, run.key().depot()))
                .toList();
        Html page = new Html("Jobs");
        long givenUp = runs.stream()
                .filter(run -> run.outcome() == RunOutcome.GIVEN_UP)
                .count();
        page.say(
                givenUp == 0
                        ? "No run was given up: nothing waits for a person here."
                        : givenUp + " of the newest " + runs.size()
                                + " runs failed and were given up: see what is wrong below, mend it, and run the job now.");
        history(page, runs, zones);
        times(page, viewer, Instant.now().truncatedTo(ChronoUnit.SECONDS), csrf);
        return page.whole();
    }

    /** Who has a depot sees its jobs alone: those of the fleet tell of every depot. */
    private static boolean maySee(Viewer viewer, String depot) {
        return viewer.depot() == null || viewer.sees(depot);
    }

    private static void history(Html page, List<JobRun> runs, Map<String, ZoneId> zones) {
        page.section("A", "What ran");
        page.head(
                "The newest " + MOST + " runs, by due time",
                "Job",
                "Depot",
                "Due",
                "Outcome",
                "Attempt",
                "Seconds",
                "Did",
                "Went wrong");
        for (JobRun run : runs) {
            ZoneId zone = zones.getOrDefault(run.key().depot(), ZoneOffset.UTC);
            page.row(
                    List.of(
                            run.key().kind().words() + (run.byHand() ? ", by hand" : ""),
                            run.key().findDepot().orElse("all"),
                            time(run.key().due(), zone),
                            run.outcome().words() + after(run, zone),
                            String.valueOf(run.attempt()),
                            seconds(run),
                            did(run),
                            run.error() == null ? "" : run.error()),
                    "");
        }
        page.endTable();
    }

    private static String after(JobRun run, ZoneId zone) {
        return run.nextTry() == null ? "" : " after " + time(run.nextTry(), zone);
    }

    private static String seconds(JobRun run) {
        Instant ended = run.ended();
        return ended == null || run.attempt() == 0
                ? ""
                : String.valueOf(run.started().until(ended, ChronoUnit.SECONDS));
    }

    private static String did(JobRun run) {
        return run.passedOver() == 0
                ? run.counts()
                : run.counts() + " (stands for " + run.passedOver() + " missed before it)";
    }

    private void times(Html page, Viewer viewer, Instant now, CsrfToken csrf) {
        page.section("B", "What will run");
        page.head("Jobs and their next time", "Job", "Depot", "Times", "Next", "Now");
        for (JobSetting setting : jobs.times().list(jobs.frame().registry().kinds())) {
            if (!maySee(viewer, setting.depot())) {
                continue;
            }
            page.row(
                    List.of(
                            setting.kind().words(),
                            setting.depot().isEmpty() ? "all" : setting.depot(),
                            setting.times() + (setting.bySite() ? "" : ", planner default"),
                            setting.enabled()
                                    ? time(
                                            setting.times().nextAfter(now),
                                            setting.times().zone())
                                    : "by hand only"),
                    button(setting, now, csrf));
        }
        page.endTable();
        Set<JobKind> missing = EnumSet.allOf(JobKind.class);
        missing.removeAll(jobs.frame().registry().kinds());
        missing.forEach(kind -> page.say("Not set up here: " + kind.words() + "."));
    }

    /** The time the page was made is the run's due time: a button pressed twice is one run. */
    private static String button(JobSetting setting, Instant now, CsrfToken csrf) {
        return "<form method=\"post\" action=\"/jobs/run\">"
                + hidden(csrf.getParameterName(), csrf.getToken())
                + hidden("kind", setting.kind().option())
                + hidden("depot", setting.depot())
                + hidden("due", now.toString())
                + "<button>Run now<span class=\"unseen\">: "
                + Html.escaped(setting.kind().words() + " " + setting.depot()) + "</span></button></form>";
    }

    private static String hidden(String name, String value) {
        return "<input type=\"hidden\" name=\"" + name + "\" value=\"" + Html.escaped(value) + "\">";
    }

    private static String time(Instant at, ZoneId zone) {
        return TIME.format(at.atZone(zone));
    }

    @PostMapping("/jobs/run")
    ResponseEntity<Void> run(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam("kind") String kind,
            @RequestParam("depot") String depot,
            @RequestParam("due") @Nullable String due) {
        JobKind job = JobKind.of(kind);
        if (!maySee(viewer, depot)) {
            throw new InvalidValueException(
                    "depot",
                    depot,
                    "is none that you see",
                    "choose " + viewer.depot() + ", or ask somebody who sees all");
        }
        jobs.times().checkDepot(job, depot);
        Instant moment = moment(due);
        quartz.runNow(new RunKey(job, depot, moment));
        audit.record(viewer.name(), "run a job by hand", job.option() + " " + depot, "", "due " + moment);
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create("/jobs"))
                .build();
    }

    private static Instant moment(@Nullable String due) {
        Instant now = Instant.now();
        try {
            Instant asked = due == null || due.isEmpty() ? now : Instant.parse(due);
            if (!asked.isAfter(now)) {
                return asked;
            }
        } catch (DateTimeParseException e) {
            // said below
        }
        throw new InvalidValueException(
                "due", due == null ? "" : due, "is no moment that has come", "open the page anew");
    }

    @ExceptionHandler(InvalidValueException.class)
    ResponseEntity<String> refused(InvalidValueException e) {
        return ResponseEntity.badRequest()
                .contentType(new MediaType(MediaType.TEXT_HTML, java.nio.charset.StandardCharsets.UTF_8))
                .body(new Html("Refused").say(String.valueOf(e.getMessage())).whole());
    }
}
