package dev.injectorplanner.app.web.guard;

import jakarta.servlet.ServletException;
import java.io.IOException;
import java.nio.ByteBuffer;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;
import org.apache.coyote.ActionCode;
import org.apache.coyote.InputBuffer;
import org.apache.tomcat.util.net.ApplicationBufferHandler;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Holds requests with a body to a pace and a number, before anything reads them: a form is read before it is known who sends
 * it, and a body that does not come holds a thread of the server.
 */
final class SlowSenders extends ValveBase {
    /** Of the server's 200 threads. */
    private static final int MOST = 80;

    /** A proxy that hands bodies on whole, or a whole office behind one address, stays far below it. */
    private static final int MOST_OF_AN_ADDRESS = 20;

    private static final Logger LOG = LoggerFactory.getLogger(SlowSenders.class);

    private final BodySlots slots = new BodySlots(MOST, MOST_OF_AN_ADDRESS);

    SlowSenders() {
        super(true);
    }

    @Override
    public void invoke(Request request, Response response) throws IOException, ServletException {
        if (!hasBody(request)) {
            getNext().invoke(request, response);
            return;
        }
        String address = String.valueOf(request.getRemoteAddr());
        if (!slots.take(address)) {
            LOG.info("{} sends too much at a time: refused", address);
            request.getCoyoteRequest().action(ActionCode.DISABLE_SWALLOW_INPUT, null);
            refuse(response);
            return;
        }
        try {
            within(request, response);
        } finally {
            slots.giveBack(address);
        }
    }

    /** Here no page of the program can be made yet. */
    private static void refuse(Response response) throws IOException {
        response.setStatus(503);
        response.setHeader("Retry-After", "10");
        response.setContentType("text/html;charset=utf-8");
        response.getWriter()
                .write(
                        "<!DOCTYPE html><html lang=\"en\"><title>Too many uploads at a time</title><h1>Too many uploads at a time</h1><p>Too"
                                + " many forms or files are being sent from your address. Nothing was changed. Fix: wait ten"
                                + " seconds, then send it again.</p></html>");
        response.finishResponse();
    }

    private static boolean hasBody(Request request) {
        return request.getContentLengthLong() > 0 || request.getHeader("Transfer-Encoding") != null;
    }

    private void within(Request request, Response response) throws IOException, ServletException {
        org.apache.coyote.Request raw = request.getCoyoteRequest();
        InputBuffer body = raw.getInputBuffer();
        BodyAllowance allowance = new BodyAllowance(body, System::nanoTime);
        raw.setInputBuffer(allowance);
        try {
            getNext().invoke(request, response);
            if (!request.isAsync()) {
                readToEnd(raw, allowance);
            }
        } finally {
            raw.setInputBuffer(body); // the object serves the connection's next request
        }
    }

    /** What nobody asked for is read too, so that the sender hears the answer; at the same pace, or the line is cut. */
    private static void readToEnd(org.apache.coyote.Request raw, BodyAllowance allowance) {
        try {
            Ignored ignored = new Ignored();
            while (!allowance.isEnded() && allowance.doRead(ignored) >= 0) {
                ignored.forget();
            }
        } catch (IOException e) {
            LOG.debug("A body did not come to its end", e);
            raw.action(ActionCode.DISABLE_SWALLOW_INPUT, null);
        }
    }

    private static final class Ignored implements ApplicationBufferHandler {
        private ByteBuffer buffer = ByteBuffer.allocate(0);

        void forget() {
            buffer = ByteBuffer.allocate(0);
        }

        @Override
        public void setByteBuffer(ByteBuffer buffer) {
            this.buffer = buffer;
        }

        @Override
        public ByteBuffer getByteBuffer() {
            return buffer;
        }

        @Override
        public void expand(int size) {
            // the buffer is the connection's own and never grown
        }
    }
}
