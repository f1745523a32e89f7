package dev.injectorplanner.app.log;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.turbo.TurboFilter;
import ch.qos.logback.core.spi.FilterReply;
import dev.injectorplanner.app.store.StoreFailures;
import dev.injectorplanner.app.store.StoreFailures.Cause;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.slf4j.Marker;

/**
 * A database that is away or a full disk makes every part of the program fail in its own words, at length. The log says each
 * cause once a minute, in a line that tells an operator what to do, and leaves out the traces.
 */
public final class OperatorFaults extends TurboFilter {
    private static final long EVERY_NANOS = 60_000_000_000L;

    private final Map<Cause, Long> said = new EnumMap<>(Cause.class);

    @Override
    public FilterReply decide(
            @Nullable Marker marker,
            Logger logger,
            Level level,
            @Nullable String format,
            Object @Nullable [] parameters,
            @Nullable Throwable thrown) {
        Throwable fault = thrown != null ? thrown : lastOf(parameters);
        if (fault == null || !level.isGreaterOrEqual(Level.WARN)) {
            return FilterReply.NEUTRAL;
        }
        return StoreFailures.findCause(fault)
                .map(cause -> instead(logger, cause))
                .orElse(FilterReply.NEUTRAL);
    }

    /** Where a message has places to fill, what was thrown is the last of what fills them. */
    private static @Nullable Throwable lastOf(Object @Nullable [] parameters) {
        return parameters != null
                        && parameters.length > 0
                        && parameters[parameters.length - 1] instanceof Throwable thrown
                ? thrown
                : null;
    }

    private FilterReply instead(Logger logger, Cause cause) {
        if (isDue(cause, System.nanoTime()) && getContext() instanceof LoggerContext context) {
            context.getLogger(OperatorFaults.class).error("{} (seen first by {})", cause.logLine(), logger.getName());
        }
        return FilterReply.DENY;
    }

    private synchronized boolean isDue(Cause cause, long now) {
        Long last = said.get(cause);
        if (last != null && now - last < EVERY_NANOS) {
            return false;
        }
        said.put(cause, now);
        return true;
    }
}
