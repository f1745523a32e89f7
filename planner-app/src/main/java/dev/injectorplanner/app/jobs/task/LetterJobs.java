package dev.injectorplanner.app.jobs.task;

import dev.injectorplanner.app.digest.Digests;
import dev.injectorplanner.app.jobs.JobContext;
import dev.injectorplanner.app.jobs.JobTask;
import dev.injectorplanner.app.jobs.TaskResult;
import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.app.planning.VisitConfirmation;
import dev.injectorplanner.core.calendar.IsoWeek;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Jobs that put letters of the plan in force into the outbox. The same run twice makes no second letter. */
public final class LetterJobs {
    private final CurrentPlans inForce;
    private final Digests digests;
    private final VisitConfirmation confirmation;

    public LetterJobs(CurrentPlans inForce, Digests digests, VisitConfirmation confirmation) {
        this.inForce = inForce;
        this.digests = digests;
        this.confirmation = confirmation;
    }

    /** Next week's work list; with it its visits are confirmed, and move only for cause from then on. */
    public JobTask workList() {
        return context -> {
            String depot = context.key().depot();
            IsoWeek week = IsoWeek.of(context.day()).plus(1);
            Optional<Planned> planned = inForce.find(depot);
            Map<String, Long> counts = new LinkedHashMap<>();
            if (planned.isPresent()) {
                // First, so that no list of visits goes out that may still move freely.
                var confirmed = confirmation.confirm(
                        planned.get().plan(), depot, week, context.key().due(), "work list");
                counts.put("mails", (long) digests.workList(
                        planned.get(), depot, week, context.key().due()));
                counts.put("visits confirmed", (long) confirmed.added());
            }
            return TaskResult.counted(counts);
        };
    }

    /** What to order. */
    public JobTask orderList() {
        return context -> mails(
                context,
                planned -> digests.orderList(
                        planned, context.key().depot(), context.key().due()));
    }

    /** Cores to send back, claims to make. */
    public JobTask deadlines() {
        return context -> mails(
                context,
                planned -> digests.deadlines(
                        planned, context.key().depot(), context.key().due()));
    }

    private interface Letter {
        int of(Planned planned);
    }

    private TaskResult mails(JobContext context, Letter letter) {
        int mails = inForce.find(context.key().depot()).map(letter::of).orElse(0);
        return TaskResult.counted(Map.of("mails", (long) mails));
    }
}
