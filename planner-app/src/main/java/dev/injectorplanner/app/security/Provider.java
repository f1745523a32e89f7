package dev.injectorplanner.app.security;

import dev.injectorplanner.app.wiring.ProviderSettings;
import java.io.IOException;
import java.io.InputStream;
import java.net.HttpURLConnection;
import java.net.URI;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.security.oauth2.client.registration.ClientRegistration;
import org.springframework.security.oauth2.client.registration.ClientRegistration.ClientSettings;
import org.springframework.security.oauth2.client.registration.ClientRegistrationRepository;
import org.springframework.security.oauth2.client.registration.ClientRegistrations;
import org.springframework.security.oauth2.core.ClientAuthenticationMethod;
import tools.jackson.core.JacksonException;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/**
 * The provider as it describes itself (OpenID Connect Discovery 1.0, section 4), asked for when somebody first signs in
 * through it: pages start without it, and a try that fails is made again the next time.
 */
final class Provider implements ClientRegistrationRepository {
    /** Its part of the addresses. */
    static final String ID = "provider";

    /** Asked only where the provider has it. */
    private static final String PERSON = "userinfo_endpoint";

    private static final List<String> ENDPOINTS =
            List.of("authorization_endpoint", "token_endpoint", "jwks_uri", PERSON);

    private static final int PATIENCE_MILLIS = 5_000;
    private static final Duration PAUSE = Duration.ofSeconds(10);
    private static final int MOST_BYTES = 1 << 18;

    private final ProviderSettings settings;
    private final Duration pause;
    private volatile @Nullable ClientRegistration found;
    private @Nullable ProviderDownException failed;
    private long failedAt;

    Provider(ProviderSettings settings) {
        this(settings, PAUSE);
    }

    /** @param pause how long a failure is answered again without asking */
    Provider(ProviderSettings settings, Duration pause) {
        this.settings = settings;
        this.pause = pause;
    }

    /** @throws ProviderDownException where it cannot be reached, or says something else than its settings */
    @Override
    public @Nullable ClientRegistration findByRegistrationId(String id) {
        if (!ID.equals(id)) {
            return null;
        }
        ClientRegistration there = found;
        return there != null ? there : discovered();
    }

    private synchronized ClientRegistration discovered() {
        ClientRegistration there = found;
        if (there != null) {
            return there;
        }
        ProviderDownException lately = failed;
        if (lately != null && System.nanoTime() - failedAt < pause.toNanos()) {
            throw lately; // whoever asks now is a safety item for it one after the other
        }
        try {
            there = registration(description());
            found = there;
            return there;
        } catch (ProviderDownException e) {
            failed = e;
            failedAt = System.nanoTime();
            throw e;
        }
    }

    private Map<String, Object> description() {
        URI address =
                URI.create(settings.issuer().toString().replaceFirst("/$", "") + "/.well-known/openid-configuration");
        try {
            HttpURLConnection connection = (HttpURLConnection) address.toURL().openConnection();
            connection.setInstanceFollowRedirects(false);
            connection.setConnectTimeout(PATIENCE_MILLIS);
            connection.setReadTimeout(PATIENCE_MILLIS);
            if (connection.getResponseCode() != HttpURLConnection.HTTP_OK) {
                throw new ProviderDownException(address + " answers " + connection.getResponseCode());
            }
            try (InputStream body = connection.getInputStream()) {
                return new JsonMapper().readValue(body.readNBytes(MOST_BYTES), new TypeReference<>() {});
            }
        } catch (IOException | JacksonException e) {
            throw new ProviderDownException(address + " cannot be read", e);
        }
    }

    private ClientRegistration registration(Map<String, Object> description) {
        if (!settings.issuer().toString().equals(description.get("issuer"))) {
            throw new ProviderDownException(
                    "the provider identifies itself as " + description.get("issuer") + ", not " + settings.issuer());
        }
        for (String endpoint : ENDPOINTS) {
            String address = String.valueOf(description.get(endpoint));
            boolean asked = !endpoint.equals(PERSON) || description.containsKey(endpoint);
            if (asked && !settings.isHere() && !address.startsWith("https://")) {
                throw new ProviderDownException("its " + endpoint + " is not an https address: " + address);
            }
        }
        try {
            ClientRegistration.Builder builder = ClientRegistrations.fromOidcConfiguration(description)
                    .registrationId(ID)
                    .clientId(settings.clientId())
                    .clientName(settings.name())
                    .redirectUri("{baseUrl}" + ProviderSignIn.BACK)
                    .scope("openid", settings.match() == ProviderSettings.Match.EMAIL ? "email" : "profile")
                    .clientSettings(
                            ClientSettings.builder().requireProofKey(true).build());
            String secret = settings.secret();
            return secret == null
                    ? builder.clientAuthenticationMethod(ClientAuthenticationMethod.NONE)
                            .build()
                    : builder.clientSecret(secret).build();
        } catch (IllegalArgumentException e) {
            throw new ProviderDownException("the provider's description is incomplete", e);
        }
    }
}
