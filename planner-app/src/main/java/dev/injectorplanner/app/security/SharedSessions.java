package dev.injectorplanner.app.security;

import dev.injectorplanner.app.store.Store;
import jakarta.servlet.FilterChain;
import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Duration;
import java.util.Objects;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.convert.support.GenericConversionService;
import org.springframework.core.serializer.support.DeserializingConverter;
import org.springframework.core.serializer.support.SerializationFailedException;
import org.springframework.core.serializer.support.SerializingConverter;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.session.jdbc.JdbcIndexedSessionRepository;
import org.springframework.session.web.http.CookieHttpSessionIdResolver;
import org.springframework.session.web.http.DefaultCookieSerializer;
import org.springframework.session.web.http.SessionRepositoryFilter;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.TransactionSystemException;
import org.springframework.transaction.support.TransactionTemplate;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Keeps sessions in a database that several nodes share: who signed in at one is known to all, and stays so when a node is lost.
 * An embedded store has one node, whose own memory will do.
 */
final class SharedSessions extends OncePerRequestFilter {
    private static final Logger LOG = LoggerFactory.getLogger(SharedSessions.class);
    private static final Duration BEFORE_SIGNING_IN = Duration.ofMinutes(15);
    private static final String EVERY_TEN_MINUTES = "0 */10 * * * *";

    private final @Nullable JdbcIndexedSessionRepository sessions;
    private final @Nullable SessionRepositoryFilter<?> filter;

    /** @param tlsOnly whether browsers may send the session by TLS alone */
    SharedSessions(Store store, boolean tlsOnly) {
        sessions = store.isShared() ? repository(store.dataSource()) : null;
        filter = sessions == null ? null : filter(sessions, tlsOnly);
    }

    private static JdbcIndexedSessionRepository repository(DataSource pool) {
        TransactionTemplate apart = new TransactionTemplate(new JdbcTransactionManager(pool));
        apart.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
        JdbcIndexedSessionRepository made = new JdbcIndexedSessionRepository(new JdbcTemplate(pool), apart);
        made.setTableName("page_session");
        made.setDefaultMaxInactiveInterval(BEFORE_SIGNING_IN);
        made.setCleanupCron(EVERY_TEN_MINUTES);
        made.setConversionService(conversions());
        made.afterPropertiesSet();
        return made;
    }

    /** What an earlier release wrote and this one cannot read counts as nothing: the person signs in again. */
    @SuppressWarnings("NullAway") // a converter may answer null, which its lambda cannot say
    private static GenericConversionService conversions() {
        DeserializingConverter read = new DeserializingConverter(SharedSessions.class.getClassLoader());
        GenericConversionService conversions = new GenericConversionService();
        conversions.addConverter(Object.class, byte[].class, new SerializingConverter());
        conversions.addConverter(byte[].class, Object.class, bytes -> {
            try {
                return read.convert(bytes);
            } catch (SerializationFailedException e) {
                LOG.info(
                        "A session of another release is not taken over: {}",
                        e.getMostSpecificCause().getMessage());
                return null;
            }
        });
        return conversions;
    }

    boolean areShared() {
        return sessions != null;
    }

    private static SessionRepositoryFilter<?> filter(JdbcIndexedSessionRepository sessions, boolean tlsOnly) {
        DefaultCookieSerializer cookie = new DefaultCookieSerializer();
        cookie.setCookieName(SecurityParts.COOKIE);
        cookie.setCookiePath("/");
        cookie.setUseHttpOnlyCookie(true);
        cookie.setSameSite("Lax");
        cookie.setUseSecureCookie(tlsOnly);
        CookieHttpSessionIdResolver byCookie = new CookieHttpSessionIdResolver();
        byCookie.setCookieSerializer(cookie);
        SessionRepositoryFilter<?> made = new SessionRepositoryFilter<>(sessions);
        made.setHttpSessionIdResolver(byCookie);
        return made;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        try {
            Objects.requireNonNull(filter).doFilter(request, response, chain);
        } catch (TransactionSystemException e) { // the rollback failed too: what came before it says why
            throw e.getApplicationException() instanceof RuntimeException first ? first : e;
        }
    }

    /** Health, and the page that says the database does not answer, must not ask it for a session. */
    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        Object status = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
        return filter == null
                || request.getServletPath().startsWith("/actuator/")
                || Integer.valueOf(HttpServletResponse.SC_SERVICE_UNAVAILABLE).equals(status);
    }

    @Override
    protected boolean shouldNotFilterErrorDispatch() {
        return false;
    }

    @Override
    protected boolean shouldNotFilterAsyncDispatch() {
        return false;
    }

    @Override
    public void destroy() {
        super.destroy();
        if (sessions != null) {
            sessions.destroy();
        }
    }
}
