package dev.injectorplanner.app.jobs.quartz;

import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;

/** Every few seconds, on one of the nodes: waiting runs are started again, triggers follow the settings. */
@DisallowConcurrentExecution
final class UpkeepJob implements Job {
    private final Runnable work;

    UpkeepJob(Runnable work) {
        this.work = work;
    }

    @Override
    public void execute(JobExecutionContext fired) {
        work.run();
    }
}
