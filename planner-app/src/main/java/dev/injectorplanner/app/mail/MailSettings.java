package dev.injectorplanner.app.mail;

import dev.injectorplanner.core.check.InvalidValueException;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The server that takes mail.
 *
 * @param host its name
 * @param port 1 to 65535, usually 587
 * @param from the address that mails come from
 * @param startTls whether the connection must be encrypted; without it nothing is sent
 * @param user who signs in, or null where nobody does
 * @param password with {@code user}; comes from the environment only and is never printed
 */
public record MailSettings(
        String host,
        int port,
        String from,
        boolean startTls,
        @Nullable String user,
        @Nullable String password) {
    private static final int SUBMISSION = 587; // RFC 6409: port of message submission
    private static final int MOST = 65_535;

    public MailSettings {
        host = Addresses.line("host", host, 255);
        from = Addresses.plain("PLANNER_MAIL_FROM", from);
        if (port < 1 || port > MOST) {
            throw new InvalidValueException(
                    "PLANNER_MAIL_PORT", port, "is not a port number", "enter 1 to 65535, usually 587");
        }
        if (user != null && !startTls) {
            throw new InvalidValueException(
                    "PLANNER_MAIL_STARTTLS",
                    false,
                    "would send the password unencrypted",
                    "leave it true, or set no user");
        }
    }

    /** From PLANNER_MAIL_HOST, _PORT, _FROM, _STARTTLS, _USER and _PASSWORD; empty where no host is set. */
    public static Optional<MailSettings> find(Map<String, String> environment) {
        String host = environment.get("PLANNER_MAIL_HOST");
        if (host == null || host.isBlank()) {
            return Optional.empty();
        }
        String user = environment.get("PLANNER_MAIL_USER");
        return Optional.of(new MailSettings(
                host.strip(),
                port(environment.getOrDefault("PLANNER_MAIL_PORT", String.valueOf(SUBMISSION))),
                environment.getOrDefault("PLANNER_MAIL_FROM", ""),
                !environment
                        .getOrDefault("PLANNER_MAIL_STARTTLS", "true")
                        .strip()
                        .equalsIgnoreCase("false"),
                user == null || user.isBlank() ? null : user,
                environment.get("PLANNER_MAIL_PASSWORD")));
    }

    private static int port(String text) {
        try {
            return Integer.parseInt(text.strip());
        } catch (NumberFormatException e) {
            throw new InvalidValueException(
                    "PLANNER_MAIL_PORT", text, "is not a port number", "enter 1 to 65535, usually 587");
        }
    }

    @Override
    public String toString() {
        return host + ":" + port;
    }
}
