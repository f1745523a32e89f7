package dev.injectorplanner.app.web.week;

import dev.injectorplanner.app.jobs.JobKind;
import dev.injectorplanner.app.jobs.JobRun;
import dev.injectorplanner.app.jobs.RunOutcome;
import dev.injectorplanner.app.jobs.task.LivePlan;
import dev.injectorplanner.app.people.AuditEntry;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.wiring.JobParts;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.stereotype.Component;

/** Whether the plan that a page shows is being made again, or has been; the page itself stays as its reader left it. */
@Component
public class LiveState {
    private static final Set<JobKind> PLANNING = EnumSet.of(JobKind.LIVE_PLAN, JobKind.NIGHTLY_PLAN);
    private static final int LOOKED_AT = 20;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm");

    private final JobParts jobs;
    private final AuditTrail audit;

    LiveState(JobParts jobs, AuditTrail audit) {
        this.jobs = jobs;
        this.audit = audit;
    }

    /**
     * What a page says of it.
     *
     * @param shown number of the newest plan that the page shows; a look later asks with it
     * @param words what there is to say, or empty
     * @param link what the link to the page as it is now is called, or empty
     */
    public record Strip(long shown, String words, String link) {}

    /** The strip of a page that has just been made. */
    public Strip of(Viewer viewer, ChosenDepots chosen) {
        return of(viewer, chosen, newest(chosen).map(plan -> plan.kept().id()).orElse(0L));
    }

    /** The strip of a page that was made when {@code shown} was the newest plan. */
    Strip of(Viewer viewer, ChosenDepots chosen, long shown) {
        Optional<DepotPlan> newer = newest(chosen).filter(plan -> plan.kept().id() > shown);
        if (newer.isPresent()) {
            DepotPlan plan = newer.get();
            String at = TIME.format(plan.kept().keptAt().atZone(plan.site().timeZone()));
            return new Strip(
                    shown, "New plan of " + at + " is ready" + why(plan.kept().id()) + ".", "Show it");
        }
        List<JobRun> runs = jobs.frame().runs().listNewest(LOOKED_AT).stream()
                .filter(run -> PLANNING.contains(run.key().kind()) && concerns(run, viewer, chosen))
                .toList();
        Optional<JobRun> running =
                runs.stream().filter(run -> run.outcome() == RunOutcome.RUNNING).findFirst();
        if (running.isPresent()) {
            String far = running.get().counts();
            return new Strip(shown, "Replanning" + (far.isEmpty() ? "" : ": " + far) + ".", "Look again");
        }
        return runs.stream()
                .filter(run -> run.key().kind() == JobKind.LIVE_PLAN)
                .findFirst()
                .filter(run -> run.outcome() == RunOutcome.FAILED || run.outcome() == RunOutcome.GIVEN_UP)
                .map(run -> new Strip(
                        shown,
                        run.outcome() == RunOutcome.FAILED
                                ? "Replanning failed and will be tried again. This plan stays in force."
                                : "Replanning failed. This plan stays in force; Jobs says what went wrong.",
                        ""))
                .orElse(new Strip(shown, "", ""));
    }

    private static Optional<DepotPlan> newest(ChosenDepots chosen) {
        return chosen.plans().stream()
                .max(Comparator.comparingLong(plan -> plan.kept().id()));
    }

    /** A run of the whole fleet names trucks of any depot in its progress: nothing of it for who sees one. */
    private static boolean concerns(JobRun run, Viewer viewer, ChosenDepots chosen) {
        String depot = run.key().findDepot().orElse("");
        return depot.isEmpty()
                ? viewer.depot() == null
                : viewer.depot() == null
                        ? chosen.depot() == null || chosen.depot().equals(depot)
                        : viewer.sees(depot);
    }

    private String why(long plan) {
        return audit.findNewest("make a plan")
                .filter(entry -> entry.after().startsWith("plan " + plan + " "))
                .map(AuditEntry::who)
                .filter(who -> who.startsWith(LivePlan.AFTER))
                .map(who -> ", made after " + who.substring(LivePlan.AFTER.length()))
                .orElse("");
    }
}
