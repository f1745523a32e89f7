package dev.injectorplanner.app.wiring;

import dev.injectorplanner.core.check.InvalidValueException;
import java.io.IOException;
import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Signing in through an OpenID Connect provider. Who signs in there still has to be a person here.
 *
 * @param issuer the provider, as it names itself; https, or plain http on this machine
 * @param clientId what the provider calls this program
 * @param secret what the provider knows this program by, or null where it has none (PKCE guards either)
 * @param name the provider's name on the button
 * @param match the claim that holds the name a person signs in with here
 */
public record ProviderSettings(
        URI issuer, String clientId, @Nullable String secret, String name, Match match) {
    /** The environment's name of the secret. */
    public static final String SECRET = "PLANNER_OIDC_CLIENT_SECRET";

    private static final int LONGEST_NAME = 60;

    /** Which claim names the person. */
    public enum Match {
        /** The address, which the provider must have verified. */
        EMAIL,
        PREFERRED_USERNAME;

        /** The claim's name. */
        public String claim() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Names of the settings, in words that a file may use. */
    public enum Name {
        ISSUER("oidc.issuer", "none", "address of an OpenID Connect provider for sign-in"),
        CLIENT("oidc.client-id", "none", "client ID of this program at the provider"),
        SECRET_FILE("oidc.client-secret-file", "none", "file with the client secret, unless it is in the environment"),
        BUTTON("oidc.name", "provider host name", "provider name shown on the button"),
        MATCH("oidc.match", "email", "claim used as the user name here: email (verified) or preferred_username");

        private final String key;
        private final String otherwise;
        private final String words;

        Name(String key, String otherwise, String words) {
            this.key = key;
            this.otherwise = otherwise;
            this.words = words;
        }

        public String key() {
            return key;
        }

        /** The default, as a person would write it. */
        public String otherwise() {
            return otherwise;
        }

        /** What it is. */
        public String words() {
            return words;
        }
    }

    public ProviderSettings {
        boolean safe =
                "https".equals(issuer.getScheme()) || "http".equals(issuer.getScheme()) && isLoopback(issuer.getHost());
        if (issuer.getHost() == null || !safe || issuer.getQuery() != null || issuer.getFragment() != null) {
            throw new InvalidValueException(
                    Name.ISSUER.key,
                    issuer,
                    "is not an https address",
                    "write the issuer as published by the provider");
        }
        if (clientId.isBlank()) {
            throw new InvalidValueException(Name.CLIENT.key, clientId, "is missing", "enter the client ID");
        }
        if (name.isBlank() || name.length() > LONGEST_NAME) {
            throw new InvalidValueException(
                    Name.BUTTON.key, name, "is empty or too long", "keep it to " + LONGEST_NAME + " characters");
        }
    }

    /** Every name a file may use. */
    public static Set<String> names() {
        return Arrays.stream(Name.values()).map(Name::key).collect(Collectors.toCollection(TreeSet::new));
    }

    /**
     * Empty where no provider is set.
     *
     * @throws InvalidValueException where a setting is missing or makes no sense
     */
    public static Optional<ProviderSettings> find(Settings settings, Map<String, String> environment) {
        Optional<String> issuer = settings.find(Name.ISSUER.key);
        if (issuer.isEmpty()) {
            names().stream()
                    .filter(name -> settings.find(name).isPresent())
                    .findFirst()
                    .ifPresent(name -> {
                        throw new InvalidValueException(
                                name,
                                settings.find(name).orElse(""),
                                "is set without " + Name.ISSUER.key,
                                "set both, or none");
                    });
            return Optional.empty();
        }
        URI address = uri(issuer.get());
        return Optional.of(new ProviderSettings(
                address,
                settings.find(Name.CLIENT.key).orElse(""),
                secret(settings, environment),
                settings.find(Name.BUTTON.key).orElse(String.valueOf(address.getHost())),
                match(settings.find(Name.MATCH.key).orElse(Name.MATCH.otherwise))));
    }

    private static URI uri(String text) {
        try {
            return URI.create(text);
        } catch (IllegalArgumentException e) {
            throw new InvalidValueException(
                    Name.ISSUER.key, text, "is not an address", "write the issuer as published by the provider");
        }
    }

    private static Match match(String text) {
        return Arrays.stream(Match.values())
                .filter(match -> match.claim().equals(text))
                .findFirst()
                .orElseThrow(() -> new InvalidValueException(
                        Name.MATCH.key, text, "is not known", "choose email or preferred_username"));
    }

    private static @Nullable String secret(Settings settings, Map<String, String> environment) {
        String there = environment.get(SECRET);
        Optional<String> file = settings.find(Name.SECRET_FILE.key);
        if (there != null && !there.isBlank() || file.isEmpty()) {
            return there == null || there.isBlank() ? null : there.strip();
        }
        try {
            String secret = Files.readString(Path.of(file.get()), StandardCharsets.UTF_8)
                    .strip();
            if (!secret.isEmpty()) {
                return secret;
            }
        } catch (IOException | IllegalArgumentException e) {
            // said below
        }
        throw new InvalidValueException(
                Name.SECRET_FILE.key,
                file.get(),
                "cannot be read, or is empty",
                "name a text file containing only the secret");
    }

    /** Whether the provider is on this machine, as in a trial: it may then speak without TLS. */
    public boolean isHere() {
        return isLoopback(issuer.getHost());
    }

    private static boolean isLoopback(@Nullable String host) {
        if (host == null || !host.matches("localhost|127\\.[0-9.]+|\\[[0-9a-fA-F:.]+]")) {
            return false; // no look-up of names: another's answer must not decide
        }
        try {
            return InetAddress.getByName(host).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }

    /** For logs and the audit trail: without the secret. */
    @Override
    public String toString() {
        return issuer + ", client " + clientId + (secret == null ? " without a secret" : "") + ", matched by "
                + match.claim() + ", called " + name;
    }
}
