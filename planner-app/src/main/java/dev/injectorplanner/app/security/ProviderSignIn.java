package dev.injectorplanner.app.security;

import dev.injectorplanner.app.people.People;
import dev.injectorplanner.app.wiring.ProviderSettings;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.InstantSource;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.config.ObjectPostProcessor;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.security.oauth2.client.web.OAuth2AuthorizationRequestRedirectFilter;
import org.springframework.security.oauth2.core.OAuth2AuthenticationException;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;

/**
 * Signing in through a provider: authorization code with PKCE (RFC 7636), state and nonce. What the provider sent is looked
 * at once; the session remembers the person here, as after signing in with a password, and no token of the provider.
 */
final class ProviderSignIn {
    /** Where it begins. */
    static final String START = SignInPage.SIGN_IN + "/" + Provider.ID;

    /** Where the provider sends people back to. */
    static final String BACK = START + "/back";

    /** The session's note of why a try failed, for the form. */
    static final String WHY = ProviderSignIn.class.getName() + ".why";

    private static final Logger LOG = LoggerFactory.getLogger(ProviderSignIn.class);

    private final ProviderSettings settings;
    private final HttpSessionSecurityContextRepository sessions = new HttpSessionSecurityContextRepository();
    private final AfterSignIn after = new AfterSignIn();

    private ProviderSignIn(ProviderSettings settings) {
        this.settings = settings;
    }

    static void set(HttpSecurity http, ProviderSettings settings, People people, InstantSource clock) throws Exception {
        ProviderSignIn signIn = new ProviderSignIn(settings);
        http.oauth2Login(login -> login.clientRegistrationRepository(new Provider(settings))
                .authorizedClientRepository(new NoTokensKept())
                .loginPage(SignInPage.SIGN_IN)
                .authorizationEndpoint(start -> start.baseUri(SignInPage.SIGN_IN))
                .redirectionEndpoint(back -> back.baseUri(BACK))
                .tokenEndpoint(token -> token.accessTokenResponseClient(TimeoutClient.make()))
                .userInfoEndpoint(users -> users.oidcUserService(new ProviderUsers(settings, people, clock)))
                .successHandler(signIn::succeeded)
                .failureHandler(signIn::failed)
                .addObjectPostProcessor(new ObjectPostProcessor<OAuth2AuthorizationRequestRedirectFilter>() {
                    @Override
                    public <O extends OAuth2AuthorizationRequestRedirectFilter> O postProcess(O filter) {
                        filter.setAuthenticationFailureHandler(signIn::failed);
                        return filter;
                    }
                }));
    }

    private void succeeded(HttpServletRequest request, HttpServletResponse response, Authentication known)
            throws IOException, ServletException {
        if (!(known.getPrincipal() instanceof ProviderUser user)) {
            throw new IllegalStateException("signed in with an unknown name");
        }
        Authentication person = UsernamePasswordAuthenticationToken.authenticated(user.signedIn(), null, List.of());
        SecurityContext context = new SecurityContextImpl(person);
        SecurityContextHolder.setContext(context);
        sessions.saveContext(context, request, response);
        after.onAuthenticationSuccess(request, response, person);
    }

    private void failed(HttpServletRequest request, HttpServletResponse response, AuthenticationException e)
            throws IOException {
        request.getSession().setAttribute(WHY, sentence(e));
        response.sendRedirect(SignInPage.SIGN_IN + "?provider");
    }

    private String sentence(AuthenticationException e) {
        if (e instanceof OAuth2AuthenticationException refused
                && refused.getError().getErrorCode().equals(ProviderUsers.REFUSED)) {
            return String.valueOf(refused.getError().getDescription());
        }
        LOG.warn("Sign-in through {} failed: {}", settings.issuer(), cause(e));
        return isDown(e)
                ? settings.name() + " cannot be reached. Fix: try again later, or sign in with name and password."
                : "Signing in through " + settings.name()
                        + " did not work. Fix: try again; if it keeps failing, tell the administrator, whose log shows why.";
    }

    private static boolean isDown(AuthenticationException e) {
        return e instanceof ProviderDownException || e.getCause() instanceof ProviderDownException;
    }

    /** The kind of error and the messages below it; what the provider sent is not written down. */
    private static String cause(AuthenticationException e) {
        String kind = e instanceof OAuth2AuthenticationException error
                ? error.getError().getErrorCode()
                : e.getClass().getSimpleName();
        Throwable below = e;
        while (below.getCause() != null) {
            below = below.getCause();
        }
        return (kind + ": " + below.getMessage()).replaceAll("\\p{Cntrl}+", " ");
    }
}
