package dev.injectorplanner.app.jobs.quartz;

import dev.injectorplanner.app.jobs.JobKind;
import dev.injectorplanner.app.jobs.JobSetting;
import dev.injectorplanner.app.jobs.RunKey;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.quartz.JobBuilder;
import org.quartz.JobDetail;
import org.quartz.JobKey;
import org.quartz.ObjectAlreadyExistsException;
import org.quartz.Scheduler;
import org.quartz.SchedulerException;
import org.quartz.SimpleScheduleBuilder;
import org.quartz.Trigger;
import org.quartz.TriggerBuilder;
import org.quartz.TriggerKey;
import org.quartz.impl.matchers.GroupMatcher;

/** What Quartz keeps: a job for each kind and depot, a trigger for its times, one more for each run started out of turn. */
final class Triggers {
    private static final String TIMES = "times";
    private static final String ONCE = "once";
    private static final String FLEET = "all";

    private final Scheduler scheduler;

    Triggers(Scheduler scheduler) {
        this.scheduler = scheduler;
    }

    /** Makes triggers agree with the settings; those of depots that are gone go too. */
    void follow(List<JobSetting> settings) throws SchedulerException {
        Map<TriggerKey, JobSetting> wanted = new HashMap<>();
        for (JobSetting setting : settings) {
            if (setting.enabled()) {
                wanted.put(new TriggerKey(name(setting.kind(), setting.depot()), TIMES), setting);
            }
        }
        for (TriggerKey there : scheduler.getTriggerKeys(GroupMatcher.triggerGroupEquals(TIMES))) {
            if (!wanted.containsKey(there)) {
                scheduler.unscheduleJob(there);
            }
        }
        for (Map.Entry<TriggerKey, JobSetting> entry : wanted.entrySet()) {
            follow(entry.getKey(), entry.getValue());
        }
    }

    private void follow(TriggerKey key, JobSetting setting) throws SchedulerException {
        if (scheduler.getTrigger(key) instanceof LocalTimesTrigger there) {
            if (there.times().toString().equals(setting.times().toString())) {
                return;
            }
            LocalTimesTrigger changed = LocalTimesTrigger.of(setting.times());
            changed.setKey(key);
            changed.setJobKey(there.getJobKey());
            scheduler.rescheduleJob(key, changed);
            return;
        }
        LocalTimesTrigger fresh = LocalTimesTrigger.of(setting.times());
        fresh.setKey(key);
        fresh.setJobKey(addJob(setting.kind(), setting.depot()));
        scheduleUnlessThere(fresh);
    }

    /** Fires a run once, as soon as there is room; a second call for the same attempt changes nothing. */
    void once(RunKey key, int attempt, boolean byHand) throws SchedulerException {
        scheduleUnlessThere(TriggerBuilder.newTrigger()
                .withIdentity(key.text() + "/" + attempt, ONCE)
                .forJob(addJob(key.kind(), key.depot()))
                .usingJobData(FrameJob.DUE, key.due().toString())
                .usingJobData(FrameJob.BY_HAND, String.valueOf(byHand))
                .withSchedule(SimpleScheduleBuilder.simpleSchedule().withMisfireHandlingInstructionIgnoreMisfires())
                .build());
    }

    void upkeepEvery(int seconds) throws SchedulerException {
        JobDetail job = JobBuilder.newJob(UpkeepJob.class)
                .withIdentity("upkeep")
                .storeDurably()
                .build();
        scheduler.addJob(job, true);
        Trigger trigger = TriggerBuilder.newTrigger()
                .withIdentity("upkeep")
                .forJob(job)
                .withSchedule(SimpleScheduleBuilder.repeatSecondlyForever(seconds)
                        .withMisfireHandlingInstructionNextWithRemainingCount())
                .build();
        scheduleUnlessThere(trigger);
    }

    private JobKey addJob(JobKind kind, String depot) throws SchedulerException {
        JobKey key = new JobKey(name(kind, depot));
        if (!scheduler.checkExists(key)) {
            JobDetail job = JobBuilder.newJob(FrameJob.class)
                    .withIdentity(key)
                    .storeDurably()
                    .requestRecovery()
                    .usingJobData(FrameJob.KIND, kind.name())
                    .usingJobData(FrameJob.DEPOT, depot)
                    .build();
            scheduler.addJob(job, true);
        }
        return key;
    }

    /** Another node may have been quicker. */
    private void scheduleUnlessThere(Trigger trigger) throws SchedulerException {
        try {
            if (!scheduler.checkExists(trigger.getKey())) {
                scheduler.scheduleJob(trigger);
            }
        } catch (ObjectAlreadyExistsException e) {
            // it is there: that is all that was wanted
        }
    }

    private static String name(JobKind kind, String depot) {
        return kind.option() + "/" + (depot.isEmpty() ? FLEET : "depot/" + depot);
    }
}
