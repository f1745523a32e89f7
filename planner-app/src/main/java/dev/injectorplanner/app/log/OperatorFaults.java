package dev.injectorplanner.app.log;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.classic.spi.IThrowableProxy;
import ch.qos.logback.classic.spi.ThrowableProxy;
import ch.qos.logback.core.filter.Filter;
import ch.qos.logback.core.spi.FilterReply;
import dev.injectorplanner.app.store.StoreFailures;
import dev.injectorplanner.app.store.StoreFailures.Cause;
import java.util.EnumMap;
import java.util.Map;

/**
 * A database that is away or a full disk makes every part of the program fail in its own words, at length. The log says each
 * cause once a minute, in a line that tells an operator what to do, and leaves out the traces.
 */
public final class OperatorFaults extends Filter<ILoggingEvent> {
    private static final long EVERY_MILLIS = 60_000;

    private final Map<Cause, Long> said = new EnumMap<>(Cause.class);

    @Override
    public FilterReply decide(ILoggingEvent event) {
        IThrowableProxy thrown = event.getThrowableProxy();
        if (!(thrown instanceof ThrowableProxy proxy)) {
            return FilterReply.NEUTRAL;
        }
        return StoreFailures.findCause(proxy.getThrowable())
                .map(cause -> instead(event, cause))
                .orElse(FilterReply.NEUTRAL);
    }

    private FilterReply instead(ILoggingEvent event, Cause cause) {
        if (isDue(cause, event.getTimeStamp()) && getContext() instanceof LoggerContext context) {
            Logger own = context.getLogger(OperatorFaults.class);
            own.error("{} (seen first by {})", cause.logLine(), event.getLoggerName());
        }
        return FilterReply.DENY;
    }

    private synchronized boolean isDue(Cause cause, long now) {
        Long last = said.get(cause);
        if (last != null && now - last < EVERY_MILLIS) {
            return false;
        }
        said.put(cause, now);
        return true;
    }
}
