package dev.injectorplanner.app.web.guard;

import jakarta.servlet.ServletException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;
import org.apache.tomcat.util.http.MimeHeaders;

/**
 * Leaves of the forwarded headers only what a trusted proxy wrote: the address nearest to us that is not a proxy's. Each hop
 * appends who called it, so everything to the left of that is what a caller said of himself.
 */
final class TrustedHops extends ValveBase {
    static final String FOR = "X-Forwarded-For";
    private static final List<String> SAID_BY_PROXIES =
            List.of(FOR, "X-Forwarded-Proto", "X-Forwarded-Host", "X-Forwarded-Port", "Forwarded");

    private final Set<String> proxies;

    /** @param proxies their addresses; empty: whoever reaches the port is the one proxy */
    TrustedHops(Set<String> proxies) {
        super(true);
        this.proxies = Set.copyOf(proxies);
    }

    @Override
    public void invoke(Request request, Response response) throws IOException, ServletException {
        MimeHeaders headers = request.getCoyoteRequest().getMimeHeaders();
        String peer = String.valueOf(request.getPeerAddr());
        if (!proxies.isEmpty() && !proxies.contains(peer)) {
            SAID_BY_PROXIES.forEach(headers::removeHeader);
        } else {
            String caller = caller(Collections.list(request.getHeaders(FOR)));
            headers.removeHeader(FOR);
            if (!caller.isEmpty()) {
                headers.addValue(FOR).setString(caller);
            }
        }
        getNext().invoke(request, response);
    }

    /** The nearest address that no trusted proxy has; the farthest where all are proxies; empty where none is named. */
    String caller(List<String> headers) {
        List<String> hops = new ArrayList<>();
        headers.forEach(header -> {
            for (String hop : header.split(",", -1)) {
                hops.add(hop.strip());
            }
        });
        String caller = "";
        for (int i = hops.size() - 1; i >= 0; i--) {
            caller = hops.get(i);
            if (!proxies.contains(caller)) {
                return caller;
            }
        }
        return caller;
    }
}
