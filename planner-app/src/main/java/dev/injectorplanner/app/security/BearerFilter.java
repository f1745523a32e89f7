package dev.injectorplanner.app.security;

import dev.injectorplanner.app.people.ApiToken;
import dev.injectorplanner.app.people.ApiTokens;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.web.filter.OncePerRequestFilter;

/** Knows a program by its token, and slows down what asks too often (RFC 6585, 429). */
final class BearerFilter extends OncePerRequestFilter {
    private static final String SCHEME = "Bearer ";
    private static final int IN_A_MINUTE = 600;

    private final ApiTokens tokens;
    private final Map<Long, Bucket> used = new ConcurrentHashMap<>();

    BearerFilter(ApiTokens tokens) {
        this.tokens = tokens;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Optional<ApiToken> token = findToken(request);
        if (token.isPresent()) {
            ConsumptionProbe probe =
                    used.computeIfAbsent(token.get().id(), id -> bucket()).tryConsumeAndReturnRemaining(1);
            if (!probe.isConsumed()) {
                long seconds = Duration.ofNanos(probe.getNanosToWaitForRefill()).toSeconds() + 1;
                response.setHeader("Retry-After", String.valueOf(seconds));
                ProblemDetails.write(
                        response,
                        ProblemDetails.of(
                                429,
                                "Too many requests",
                                "More than " + IN_A_MINUTE + " requests within a minute. Fix: wait " + seconds
                                        + " seconds, and send more rows per request."));
                return;
            }
            SecurityContextHolder.setContext(new SecurityContextImpl(known(token.get())));
        }
        chain.doFilter(request, response);
    }

    private Optional<ApiToken> findToken(HttpServletRequest request) {
        String header = request.getHeader("Authorization");
        return header != null && header.regionMatches(true, 0, SCHEME, 0, SCHEME.length())
                ? tokens.findOpen(header.substring(SCHEME.length()).strip())
                : Optional.empty();
    }

    private static UsernamePasswordAuthenticationToken known(ApiToken token) {
        return UsernamePasswordAuthenticationToken.authenticated(
                token,
                null,
                token.scopes().stream()
                        .map(scope -> new SimpleGrantedAuthority(scope.text()))
                        .toList());
    }

    private static Bucket bucket() {
        return Bucket.builder()
                .addLimit(limit -> limit.capacity(IN_A_MINUTE).refillGreedy(IN_A_MINUTE, Duration.ofMinutes(1)))
                .build();
    }
}
