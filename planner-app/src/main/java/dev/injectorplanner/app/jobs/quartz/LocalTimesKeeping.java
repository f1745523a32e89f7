package dev.injectorplanner.app.jobs.quartz;

import dev.injectorplanner.app.jobs.time.LocalTimes;
import java.time.ZoneId;
import org.quartz.impl.jdbcjobstore.SimplePropertiesTriggerPersistenceDelegateSupport;
import org.quartz.impl.jdbcjobstore.SimplePropertiesTriggerProperties;
import org.quartz.spi.OperableTrigger;

/** Keeps {@link LocalTimesTrigger}s in Quartz's tables, as crontab line and zone. Made by Quartz, by name. */
public final class LocalTimesKeeping extends SimplePropertiesTriggerPersistenceDelegateSupport {
    @Override
    public boolean canHandleTriggerType(OperableTrigger trigger) {
        return trigger instanceof LocalTimesTrigger;
    }

    @Override
    public String getHandledTriggerTypeDiscriminator() {
        return "LOCAL";
    }

    @Override
    protected SimplePropertiesTriggerProperties getTriggerProperties(OperableTrigger trigger) {
        LocalTimes times = ((LocalTimesTrigger) trigger).times();
        SimplePropertiesTriggerProperties kept = new SimplePropertiesTriggerProperties();
        kept.setString1(times.line());
        kept.setString2(times.zone().getId());
        return kept;
    }

    @Override
    protected TriggerPropertyBundle getTriggerPropertyBundle(SimplePropertiesTriggerProperties kept) {
        LocalTimes times = LocalTimes.of(kept.getString1(), ZoneId.of(kept.getString2()));
        return new TriggerPropertyBundle(
                LocalTimesTrigger.of(times).getScheduleBuilder(), new String[0], new Object[0]);
    }
}
