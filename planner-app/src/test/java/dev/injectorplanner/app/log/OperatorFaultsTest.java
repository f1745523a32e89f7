package dev.injectorplanner.app.log;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.io.IOException;
import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class OperatorFaultsTest {
    private final LoggerContext context = new LoggerContext();
    private final ListAppender<ILoggingEvent> log = new ListAppender<>();
    private final Logger logger = context.getLogger("some.part");

    @BeforeEach
    void start() {
        OperatorFaults faults = new OperatorFaults();
        faults.setContext(context);
        faults.start();
        context.addTurboFilter(faults);
        log.start();
        context.getLogger("ROOT").addAppender(log);
    }

    private List<String> lines() {
        return log.list.stream().map(ILoggingEvent::getFormattedMessage).toList();
    }

    @Test
    void each_cause_is_one_line_without_a_trace_however_often_it_is_met() {
        Exception full = new IllegalStateException(new IOException("No space left on device"));
        logger.error("a load failed", full);
        logger.warn("job {} of {} failed", 3, 4, full);
        logger.error("cannot connect", new SQLException("refused", "08001"));
        assertThat(lines())
                .containsExactly(
                        "The disk is full. Fix: free space on the store's disk, then try again. (seen first by some.part)",
                        "The database does not answer. Fix: start the database, or try again once it is back. (seen first"
                                + " by some.part)");
        assertThat(log.list).allMatch(event -> event.getThrowableProxy() == null);
    }

    @Test
    void other_faults_keep_their_traces() {
        logger.error("a page failed", new IllegalStateException("null where a truck should be"));
        logger.warn("plain");
        assertThat(lines()).containsExactly("a page failed", "plain");
        assertThat(log.list.get(0).getThrowableProxy()).isNotNull();
    }
}
