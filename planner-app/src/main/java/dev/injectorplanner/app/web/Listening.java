package dev.injectorplanner.app.web;

import dev.injectorplanner.core.check.InvalidValueException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.List;

/**
 * Where the pages listen and how they are reached.
 *
 * @param address the address to listen on
 * @param port 0: any free one
 * @param behindTls whether a proxy in front speaks TLS with the browsers and says so in forwarded headers
 */
public record Listening(InetAddress address, int port, boolean behindTls) {
    private static final int MOST_PORT = 65_535;

    /** @throws InvalidValueException where there is no such address or port */
    public static Listening on(String address, int port, boolean behindTls) {
        if (port < 0 || port > MOST_PORT) {
            throw new InvalidValueException(
                    "--port", port, "is not a port number", "choose one from 1 to " + MOST_PORT);
        }
        try {
            return new Listening(InetAddress.getByName(address), port, behindTls);
        } catch (UnknownHostException e) {
            throw new InvalidValueException(
                    "--address", address, "is not an address", "use 127.0.0.1, or an address of this machine");
        }
    }

    /** This machine alone. */
    public static Listening here(int port) {
        return new Listening(InetAddress.getLoopbackAddress(), port, false);
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
                        "--server.forward-headers-strategy=" + (behindTls ? "native" : "none"),
                        "--server.servlet.session.cookie.secure=" + !isPlain())
                .toArray(String[]::new);
    }
}
