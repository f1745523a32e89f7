package dev.injectorplanner.app.web.guard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.SocketTimeoutException;
import java.util.concurrent.TimeUnit;
import org.apache.coyote.InputBuffer;
import org.apache.tomcat.util.net.ApplicationBufferHandler;
import org.junit.jupiter.api.Test;

/** By a clock of the test's own. */
class BodyAllowanceTest {
    private long now = 5;
    private long secondsARead;
    private int bytesARead;

    private final BodyAllowance allowance = new BodyAllowance(
            new InputBuffer() {
                @Override
                public int doRead(ApplicationBufferHandler handler) {
                    now += TimeUnit.SECONDS.toNanos(secondsARead);
                    return bytesARead;
                }

                @Override
                public int available() {
                    return 0;
                }
            },
            () -> now);

    @Test
    void a_byte_every_four_seconds_is_cut_off() throws Exception {
        secondsARead = 4;
        bytesARead = 1;
        read(3);
        assertThatThrownBy(() -> read(1))
                .isInstanceOf(SocketTimeoutException.class)
                .hasMessage("4 bytes in 16 s");
    }

    @Test
    void a_long_upload_at_a_fair_pace_goes_on() throws Exception {
        secondsARead = 1;
        bytesARead = 8_192;
        read(1_000);
        assertThat(allowance.isEnded()).isFalse();
        bytesARead = -1;
        read(1);
        assertThat(allowance.isEnded()).isTrue();
    }

    @Test
    void an_upload_below_the_pace_is_cut_off_when_its_seconds_are_used_up() throws Exception {
        secondsARead = 2;
        bytesARead = 4_096; // a second's worth in two
        read(15);
        assertThatThrownBy(() -> read(1)).isInstanceOf(SocketTimeoutException.class);
    }

    private void read(int times) throws IOException {
        for (int i = 0; i < times; i++) {
            allowance.doRead(null);
        }
    }
}
