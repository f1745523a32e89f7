package dev.injectorplanner.app.command;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.encoder.PatternLayoutEncoder;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.Appender;
import ch.qos.logback.core.ConsoleAppender;
import java.util.Arrays;
import org.slf4j.LoggerFactory;

/** A command answers a person: what its parts have to say stands on standard error as a sentence, without time and class. */
final class PlainLog {
    private PlainLog() {}

    static void of(String... args) {
        boolean serves = Arrays.asList(args).contains("serve");
        if (serves || !(LoggerFactory.getILoggerFactory() instanceof LoggerContext context)) {
            return;
        }
        Appender<ILoggingEvent> appender =
                context.getLogger(Logger.ROOT_LOGGER_NAME).getAppender("ERR");
        if (appender instanceof ConsoleAppender<ILoggingEvent> console
                && console.getEncoder() instanceof PatternLayoutEncoder encoder) {
            encoder.stop();
            encoder.setPattern("%msg%n");
            encoder.start();
        }
    }
}
