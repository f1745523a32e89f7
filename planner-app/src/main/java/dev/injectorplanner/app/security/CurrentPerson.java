package dev.injectorplanner.app.security;

import dev.injectorplanner.app.people.Account;
import dev.injectorplanner.app.people.People;
import dev.injectorplanner.app.people.Viewer;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import java.time.InstantSource;
import java.util.Optional;
import java.util.Set;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Reads the person of a session again at every request: what an administrator changes holds at once, and who was disabled,
 * or has another password since, is signed out. Who must change the password does that first.
 */
final class CurrentPerson extends OncePerRequestFilter {
    private static final Set<String> WITH_OLD_PASSWORD =
            Set.of(SignInPage.PASSWORD, SignInPage.SIGN_IN, SignInPage.SIGN_OUT, "/planner.css", "/icon.svg");

    private final People people;
    private final InstantSource clock;

    CurrentPerson(People people, InstantSource clock) {
        this.people = people;
        this.clock = clock;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Authentication session = SecurityContextHolder.getContext().getAuthentication();
        if (session == null || !(session.getPrincipal() instanceof SignedIn signedIn)) {
            chain.doFilter(request, response);
            return;
        }
        Optional<Account> account =
                people.find(signedIn.id()).filter(found -> signedIn.isStill(found, clock.instant()));
        if (account.isEmpty()) {
            end(request);
            response.sendRedirect(SignInPage.SIGN_IN + "?ended");
            return;
        }
        if (account.get().mustChange()
                && !signedIn.byProvider()
                && !WITH_OLD_PASSWORD.contains(request.getServletPath())) {
            response.sendRedirect(SignInPage.PASSWORD);
            return;
        }
        SecurityContextHolder.setContext(
                new SecurityContextImpl(known(account.get().viewer())));
        chain.doFilter(request, response);
    }

    private static void end(HttpServletRequest request) {
        SecurityContextHolder.clearContext();
        HttpSession session = request.getSession(false);
        if (session != null) {
            session.invalidate();
        }
    }

    private static Authentication known(Viewer viewer) {
        return UsernamePasswordAuthenticationToken.authenticated(
                viewer,
                null,
                viewer.roles().stream()
                        .map(role -> new SimpleGrantedAuthority(role.name()))
                        .toList());
    }
}
