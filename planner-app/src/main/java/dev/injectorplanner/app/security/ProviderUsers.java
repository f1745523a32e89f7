package dev.injectorplanner.app.security;

import dev.injectorplanner.app.people.Account;
import dev.injectorplanner.app.people.People;
import dev.injectorplanner.app.wiring.ProviderSettings;
import dev.injectorplanner.app.wiring.ProviderSettings.Match;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.client.SimpleClientHttpRequestFactory;
import org.springframework.security.oauth2.client.http.OAuth2ErrorResponseErrorHandler;
import org.springframework.security.oauth2.client.oidc.userinfo.OidcUserRequest;
import org.springframework.security.oauth2.client.oidc.userinfo.OidcUserService;
import org.springframework.security.oauth2.client.userinfo.DefaultOAuth2UserService;
import org.springframework.security.oauth2.client.userinfo.OAuth2UserService;
import org.springframework.security.oauth2.core.OAuth2AuthenticationException;
import org.springframework.security.oauth2.core.OAuth2Error;
import org.springframework.security.oauth2.core.oidc.user.OidcUser;
import org.springframework.web.client.RestTemplate;

/**
 * Whom the provider vouches for, checked against the people here. Nobody is added by signing in, and roles and depot are
 * those that the administrator gave.
 */
final class ProviderUsers implements OAuth2UserService<OidcUserRequest, OidcUser> {
    /** The kind of error whose description is a sentence for the person. */
    static final String REFUSED = "refused_person";

    private static final Duration PATIENCE = Duration.ofSeconds(5);

    private final ProviderSettings settings;
    private final People people;
    private final InstantSource clock;
    private final OidcUserService asking = new OidcUserService();

    ProviderUsers(ProviderSettings settings, People people, InstantSource clock) {
        this.settings = settings;
        this.people = people;
        this.clock = clock;
        SimpleClientHttpRequestFactory patient = new SimpleClientHttpRequestFactory();
        patient.setConnectTimeout(PATIENCE);
        patient.setReadTimeout(PATIENCE);
        RestTemplate client = new RestTemplate(patient);
        client.setErrorHandler(new OAuth2ErrorResponseErrorHandler());
        DefaultOAuth2UserService information = new DefaultOAuth2UserService();
        information.setRestOperations(client);
        asking.setOauth2UserService(information);
    }

    @Override
    public OidcUser loadUser(OidcUserRequest request) {
        Map<String, Object> claims = request.getIdToken().getClaims();
        boolean verified = settings.match() != Match.EMAIL || claims.get("email_verified") != null;
        if (claims.get(settings.match().claim()) == null || !verified) {
            claims = asking.loadUser(request).getClaims(); // some say it only when asked for the person's information
        }
        Account account = account(claims);
        people.cameIn(account);
        SignedIn signedIn = SignedIn.through(account, clock.instant().plus(SignInCheck.AT_MOST));
        return new ProviderUser(request.getIdToken(), signedIn);
    }

    private Account account(Map<String, Object> claims) {
        String name = text(claims.get(settings.match().claim()));
        if (name == null) {
            throw refused(settings.name() + " did not send your "
                    + settings.match().claim() + ". Fix: ask the administrator to enable it at the provider.");
        }
        if (settings.match() == Match.EMAIL && !"true".equals(String.valueOf(claims.get("email_verified")))) {
            throw refused(settings.name() + " has not verified the address " + name
                    + ". Fix: verify it there, then sign in again.");
        }
        Account account = people.find(name)
                .orElseThrow(
                        () -> refused(
                                settings.name() + " knows you as " + name
                                        + ", and there is no user with that name here. Fix: ask the administrator to add you under it."));
        if (account.disabled()) {
            throw refused(name + " is disabled here. Fix: ask the administrator.");
        }
        return account;
    }

    private static @Nullable String text(@Nullable Object claim) {
        return claim instanceof String text && !text.isBlank() ? text.strip() : null;
    }

    private static OAuth2AuthenticationException refused(String sentence) {
        return new OAuth2AuthenticationException(new OAuth2Error(REFUSED, sentence, null));
    }
}
