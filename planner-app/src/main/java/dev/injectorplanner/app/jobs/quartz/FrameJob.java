package dev.injectorplanner.app.jobs.quartz;

import dev.injectorplanner.app.jobs.DueRun;
import dev.injectorplanner.app.jobs.JobKind;
import dev.injectorplanner.app.jobs.JobRunner;
import dev.injectorplanner.app.jobs.RunKey;
import java.time.Instant;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobDataMap;
import org.quartz.JobExecutionContext;
import org.quartz.Scheduler;

/** Hands what Quartz fires to the frame. One job and depot never runs twice at a time, on any node. */
@DisallowConcurrentExecution
final class FrameJob implements Job {
    static final String KIND = "kind";
    static final String DEPOT = "depot";
    static final String DUE = "due";
    static final String BY_HAND = "byHand";

    private final JobRunner frame;

    FrameJob(JobRunner frame) {
        this.frame = frame;
    }

    @Override
    public void execute(JobExecutionContext fired) {
        JobDataMap data = fired.getMergedJobDataMap();
        JobKind kind = JobKind.valueOf(data.getString(KIND));
        String depot = data.getString(DEPOT);
        if (data.containsKey(DUE)) {
            RunKey key = new RunKey(kind, depot, Instant.parse(data.getString(DUE)));
            frame.run(key, Boolean.parseBoolean(data.getString(BY_HAND)), 0);
        } else if (fired.isRecovering()) {
            String original = data.getString(Scheduler.FAILED_JOB_ORIGINAL_TRIGGER_SCHEDULED_FIRETIME_IN_MILLISECONDS);
            frame.run(new RunKey(kind, depot, Instant.ofEpochMilli(Long.parseLong(original))), false, 0);
        } else if (fired.getTrigger() instanceof LocalTimesTrigger trigger) {
            Instant scheduled = fired.getScheduledFireTime().toInstant();
            DueRun due = DueRun.of(kind, trigger.times(), scheduled, Instant.now());
            RunKey key = new RunKey(kind, depot, due.due());
            if (due.tooLate()) {
                frame.tooLate(key, due.passedOver());
            } else {
                frame.run(key, false, due.passedOver());
            }
        }
    }
}
