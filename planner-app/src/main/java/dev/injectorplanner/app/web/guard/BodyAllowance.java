package dev.injectorplanner.app.web.guard;

import java.io.IOException;
import java.net.SocketTimeoutException;
import java.util.function.LongSupplier;
import org.apache.coyote.InputBuffer;
import org.apache.tomcat.util.net.ApplicationBufferHandler;

/**
 * Reads a request's body within the time that its bytes are worth, so that one that trickles in does not hold a thread for
 * ever: some seconds to begin with, and more with every kilobyte that came.
 */
final class BodyAllowance implements InputBuffer {
    /** To begin with; a phone at the edge of its network needs some seconds for a form. */
    static final long FIRST_NANOS = 15_000_000_000L;

    /** Slowest pace that is waited for, in bytes a second. */
    static final long BYTES_A_SECOND = 4_096;

    /** Twice the largest upload: what is too large is read this far, so that its sender hears why it was refused. */
    static final long MOST_BYTES = 128L << 20;

    private static final long SECOND_NANOS = 1_000_000_000L;

    private final InputBuffer body;
    private final LongSupplier nanos;
    private final long begun;
    private long bytes;
    private boolean ended;

    BodyAllowance(InputBuffer body, LongSupplier nanos) {
        this.body = body;
        this.nanos = nanos;
        this.begun = nanos.getAsLong();
    }

    @Override
    public int doRead(ApplicationBufferHandler handler) throws IOException {
        requireTime();
        int read = body.doRead(handler);
        if (read < 0) {
            ended = true;
        } else {
            bytes += read;
            if (bytes > MOST_BYTES) {
                throw new SocketTimeoutException("more than " + MOST_BYTES + " bytes");
            }
            requireTime();
        }
        return read;
    }

    private void requireTime() throws SocketTimeoutException {
        long allowed = FIRST_NANOS + bytes / BYTES_A_SECOND * SECOND_NANOS;
        if (nanos.getAsLong() - begun > allowed) {
            throw new SocketTimeoutException(bytes + " bytes in " + (nanos.getAsLong() - begun) / SECOND_NANOS + " s");
        }
    }

    /** Whether the body was read to its end. */
    boolean isEnded() {
        return ended;
    }

    @Override
    public int available() {
        return body.available();
    }
}
