package dev.injectorplanner.app.web.jobs;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.jobs.JobKind;
import dev.injectorplanner.app.jobs.RunKey;
import dev.injectorplanner.app.jobs.quartz.QuartzJobs;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.wiring.JobParts;
import dev.injectorplanner.core.check.InvalidValueException;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** What ran, what will run, and running it now. */
@Controller
public class JobsPage {
    private final Application application;
    private final JobParts jobs;
    private final QuartzJobs quartz;
    private final AuditTrail audit;
    private final SiteClock clock;

    JobsPage(Application application, JobParts jobs, QuartzJobs quartz, AuditTrail audit, SiteClock clock) {
        this.application = application;
        this.jobs = jobs;
        this.quartz = quartz;
        this.audit = audit;
        this.clock = clock;
    }

    @GetMapping("/jobs")
    String page(@ModelAttribute("viewer") Viewer viewer, Model model) throws IOException {
        model.addAttribute("view", new JobsFiller(jobs, viewer).of(clock.now().truncatedTo(ChronoUnit.SECONDS)));
        model.addAttribute("often", TimesInWords.choices());
        Path store = application.store().findFolder().orElse(null);
        if (viewer.is(Role.ADMINISTRATOR) && store != null) {
            model.addAttribute("restore", RestoreView.of(store, jobs.settings().backupFolderOf(store)));
        }
        if (viewer.is(Role.ADMINISTRATOR)) {
            application.store().findTools().ifPresent(tools -> model.addAttribute("tools", tools));
        }
        return "jobs";
    }

    @PostMapping("/jobs/run")
    ResponseEntity<Void> run(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam("kind") String kind,
            @RequestParam("depot") String depot,
            @RequestParam("due") @Nullable String due) {
        JobKind job = JobKind.of(kind);
        if (!JobsFiller.maySee(viewer, depot)) {
            throw new InvalidValueException(
                    "depot",
                    depot,
                    "is not a depot you can see",
                    "choose " + viewer.depot() + ", or ask someone with access to all depots");
        }
        jobs.times().checkDepot(job, depot);
        Instant moment = moment(due);
        quartz.runNow(new RunKey(job, depot, moment));
        audit.record(viewer.name(), "run a job by hand", job.option() + " " + depot, "", "due " + moment);
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create("/jobs"))
                .build();
    }

    /** Changes when a job runs, in words; the jobs follow within a minute. */
    @PostMapping("/jobs/times")
    ResponseEntity<Void> times(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam("kind") String kind,
            @RequestParam("depot") String depot,
            @RequestParam("often") String often,
            @RequestParam(name = "at", defaultValue = "") String at) {
        JobKind job = JobKind.of(kind);
        if (!JobsFiller.maySee(viewer, depot)) {
            throw new InvalidValueException(
                    "depot", depot, "is not a depot you can see", "ask someone with access to all depots");
        }
        String after;
        if (often.equals("default")) {
            jobs.times().reset(job, depot);
            after = "as by default";
        } else if (often.equals("off")) {
            jobs.times().set(job, depot, job.defaultTimes(), false);
            after = "by hand only";
        } else {
            after = TimesInWords.line(often, at);
            jobs.times().set(job, depot, after, true);
        }
        audit.record(viewer.name(), "set a job's times", job.option() + " " + depot, "", after);
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create("/jobs"))
                .build();
    }

    private Instant moment(@Nullable String due) {
        Instant now = clock.now();
        try {
            Instant asked = due == null || due.isEmpty() ? now : Instant.parse(due);
            if (!asked.isAfter(now)) {
                return asked;
            }
        } catch (DateTimeParseException e) {
            // said below
        }
        throw new InvalidValueException(
                "due", due == null ? "" : due, "is not a due time that has passed", "reload the page");
    }
}
