package dev.injectorplanner.app.jobs.quartz;

import dev.injectorplanner.app.jobs.time.LocalTimes;
import java.time.Instant;
import java.util.Date;
import org.jspecify.annotations.Nullable;
import org.quartz.Calendar;
import org.quartz.ScheduleBuilder;
import org.quartz.Trigger;
import org.quartz.impl.triggers.AbstractTrigger;
import org.quartz.spi.MutableTrigger;

/**
 * Fires at {@link LocalTimes}. Never a misfire for Quartz: it fires late, with the time it was due at, and then goes on
 * with the first time after now; what a late firing is worth is decided where the run begins.
 */
public final class LocalTimesTrigger extends AbstractTrigger<LocalTimesTrigger> {
    private static final long serialVersionUID = 1L;

    private transient @Nullable LocalTimes times;
    private @Nullable Date start;
    private @Nullable Date next;
    private @Nullable Date previous;

    LocalTimesTrigger() {
        setMisfireInstruction(Trigger.MISFIRE_INSTRUCTION_IGNORE_MISFIRE_POLICY);
    }

    static LocalTimesTrigger of(LocalTimes times) {
        LocalTimesTrigger trigger = new LocalTimesTrigger();
        trigger.times = times;
        return trigger;
    }

    LocalTimes times() {
        LocalTimes set = times;
        if (set == null) {
            throw new IllegalStateException("trigger " + getKey() + " has no times");
        }
        return set;
    }

    /** After a firing: the first due time after the fired one that is not past already. */
    void firedAt(Instant now) {
        Date fired = next;
        previous = fired;
        Instant after = fired == null || fired.toInstant().isBefore(now) ? now : fired.toInstant();
        next = Date.from(times().nextAfter(after));
    }

    @Override
    public void triggered(@Nullable Calendar calendar) {
        firedAt(Instant.now());
    }

    @Override
    public Date computeFirstFireTime(@Nullable Calendar calendar) {
        Date first = Date.from(times().nextAfter(getStartTime().toInstant().minusMillis(1)));
        next = first;
        return first;
    }

    @Override
    public boolean mayFireAgain() {
        return next != null;
    }

    @Override
    public Date getStartTime() {
        Date set = start;
        return set == null ? new Date() : set;
    }

    @Override
    public void setStartTime(Date startTime) {
        start = startTime;
    }

    @Override
    public void setEndTime(@Nullable Date endTime) {
        if (endTime != null) {
            throw new IllegalArgumentException("local times have no end, not even " + endTime);
        }
    }

    @Override
    public @Nullable Date getEndTime() {
        return null;
    }

    @Override
    public @Nullable Date getNextFireTime() {
        return next;
    }

    @Override
    public void setNextFireTime(@Nullable Date nextFireTime) {
        next = nextFireTime;
    }

    @Override
    public @Nullable Date getPreviousFireTime() {
        return previous;
    }

    @Override
    public void setPreviousFireTime(@Nullable Date previousFireTime) {
        previous = previousFireTime;
    }

    @Override
    public Date getFireTimeAfter(@Nullable Date afterTime) {
        return Date.from(times().nextAfter(afterTime == null ? Instant.now() : afterTime.toInstant()));
    }

    @Override
    public @Nullable Date getFinalFireTime() {
        return null;
    }

    @Override
    protected boolean validateMisfireInstruction(int instruction) {
        return instruction == Trigger.MISFIRE_INSTRUCTION_IGNORE_MISFIRE_POLICY;
    }

    @Override
    public void updateAfterMisfire(@Nullable Calendar calendar) {
        // stays due: see above
    }

    @Override
    public void updateWithNewCalendar(@Nullable Calendar calendar, long misfireThreshold) {
        // no Quartz calendars are used
    }

    @Override
    public ScheduleBuilder<LocalTimesTrigger> getScheduleBuilder() {
        LocalTimes set = times();
        return new ScheduleBuilder<>() {
            @Override
            protected MutableTrigger build() {
                return LocalTimesTrigger.of(set);
            }
        };
    }
}
