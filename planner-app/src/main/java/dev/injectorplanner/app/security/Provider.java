package dev.injectorplanner.app.security;

import dev.injectorplanner.app.wiring.ProviderSettings;
import java.io.IOException;
import java.io.InputStream;
import java.net.HttpURLConnection;
import java.net.URI;
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

    private static final int PATIENCE_MILLIS = 5_000;
    private static final int MOST_BYTES = 1 << 18;

    private final ProviderSettings settings;
    private volatile @Nullable ClientRegistration found;

    Provider(ProviderSettings settings) {
        this.settings = settings;
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
        if (there == null) {
            there = registration(description());
            found = there;
        }
        return there;
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
                    "the provider calls itself " + description.get("issuer") + ", not " + settings.issuer());
        }
        for (String endpoint : new String[] {"authorization_endpoint", "token_endpoint", "jwks_uri"}) {
            String address = String.valueOf(description.get(endpoint));
            if (!settings.isHere() && !address.startsWith("https://")) {
                throw new ProviderDownException("its " + endpoint + " is no https address: " + address);
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
            throw new ProviderDownException("the provider's description lacks something", e);
        }
    }
}
