package dev.injectorplanner.app.jobs.task;

import dev.injectorplanner.app.digest.Digests;
import dev.injectorplanner.app.jobs.JobContext;
import dev.injectorplanner.app.jobs.JobTask;
import dev.injectorplanner.app.jobs.TaskResult;
import dev.injectorplanner.app.mail.MailSending;
import dev.injectorplanner.app.mail.MailSending.SendCounts;
import java.util.LinkedHashMap;
import java.util.Map;

/** Sends what waits in the outbox, and tells the administrator of jobs that failed for good. */
public final class MailOut implements JobTask {
    private final Digests digests;
    private final MailSending sending;

    public MailOut(Digests digests, MailSending sending) {
        this.digests = digests;
        this.sending = sending;
    }

    @Override
    public TaskResult run(JobContext context) {
        digests.jobsFailed(context.key().due());
        SendCounts sent = sending.sendDue();
        Map<String, Long> counts = new LinkedHashMap<>();
        counts.put("sent", (long) sent.sent());
        counts.put("waiting", (long) sent.waiting());
        counts.put("refused", (long) sent.refused());
        return TaskResult.counted(counts);
    }
}
