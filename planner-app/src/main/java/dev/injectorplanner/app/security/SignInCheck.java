package dev.injectorplanner.app.security;

import dev.injectorplanner.app.people.Account;
import dev.injectorplanner.app.people.People;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.authentication.WebAuthenticationDetails;

/** Name and password against the people there are. Why a try failed is not said: name, password and state look alike. */
final class SignInCheck implements AuthenticationProvider {
    /** How long a person stays signed in at most. */
    static final Duration AT_MOST = Duration.ofHours(12);

    private final People people;
    private final SignInThrottle throttle;
    private final InstantSource clock;

    SignInCheck(People people, SignInThrottle throttle, InstantSource clock) {
        this.people = people;
        this.throttle = throttle;
        this.clock = clock;
    }

    @Override
    public Authentication authenticate(Authentication asked) {
        String name = asked.getName().strip();
        String key = name.toLowerCase(Locale.ROOT);
        String address = asked.getDetails() instanceof WebAuthenticationDetails details
                ? String.valueOf(details.getRemoteAddress())
                : "unknown";
        Duration wait = throttle.take(key, address);
        if (!wait.isZero()) {
            throw new TooManyTriesException(wait);
        }
        Account account = people.findBySignIn(name, String.valueOf(asked.getCredentials()))
                .orElseThrow(() -> new BadCredentialsException("name and password do not match"));
        throttle.right(key, address);
        SignedIn signedIn = SignedIn.of(account, clock.instant().plus(AT_MOST));
        return UsernamePasswordAuthenticationToken.authenticated(signedIn, null, List.of());
    }

    @Override
    public boolean supports(Class<?> type) {
        return UsernamePasswordAuthenticationToken.class.isAssignableFrom(type);
    }
}
