package dev.injectorplanner.app.web;

import dev.injectorplanner.app.web.guard.GuardParts;
import dev.injectorplanner.core.check.InvalidValueException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Where the pages listen and how they are reached.
 *
 * @param address the address to listen on
 * @param port 0: any free one
 * @param proxies addresses of the proxies that are believed; empty: whoever reaches the port
 * @param behindTls whether a proxy in front speaks TLS with the browsers and says so in forwarded headers
 */
public record Listening(InetAddress address, int port, boolean behindTls, Set<String> proxies) {
    private static final int MOST_PORT = 65_535;

    public Listening {
        proxies = Set.copyOf(proxies);
    }

    /** @throws InvalidValueException where there is no such address or port */
    public static Listening on(String address, int port, boolean behindTls) {
        if (port < 0 || port > MOST_PORT) {
            throw new InvalidValueException(
                    "--port", port, "is not a port number", "choose one from 1 to " + MOST_PORT);
        }
        try {
            return new Listening(InetAddress.getByName(address), port, behindTls, Set.of());
        } catch (UnknownHostException e) {
            throw new InvalidValueException(
                    "--address", address, "is not an address", "use 127.0.0.1, or an address of this machine");
        }
    }

    /** This machine alone. */
    public static Listening here(int port) {
        return new Listening(InetAddress.getLoopbackAddress(), port, false, Set.of());
    }

    /**
     * The same behind proxies of which only these are believed.
     *
     * @throws InvalidValueException where one is no address
     */
    public Listening behind(Collection<String> addresses) {
        Set<String> known = new TreeSet<>();
        for (String proxy : addresses) {
            try {
                known.add(InetAddress.getByName(proxy.strip()).getHostAddress());
            } catch (UnknownHostException e) {
                throw new InvalidValueException(
                        "--proxy", proxy, "is not an address", "give the address of the proxy, for example 10.0.0.5");
            }
        }
        return new Listening(address, port, behindTls, known);
    }

    /** Whether only this machine reaches it. */
    public boolean isLocal() {
        return address.isLoopbackAddress();
    }

    /** Whether a browser may send the session's cookie over plain HTTP: on this machine without a proxy only. */
    boolean isPlain() {
        return isLocal() && !behindTls;
    }

    String[] arguments() {
        return List.of(
                        "--spring.config.location=classpath:/application.yaml",
                        "--server.address=" + address.getHostAddress(),
                        "--server.port=" + port,
                        "--" + GuardParts.PROXIES + "=" + String.join(",", proxies),
                        "--server.tomcat.remoteip.internal-proxies=.*", // TrustedHops leaves one address, the caller's
                        "--server.forward-headers-strategy=" + (behindTls ? "native" : "none"),
                        "--server.servlet.session.cookie.secure=" + !isPlain())
                .toArray(String[]::new);
    }
}
