package dev.injectorplanner.app.web.guard;

import dev.injectorplanner.app.security.ProblemDetails;
import dev.injectorplanner.app.store.StoreFailures.Cause;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.SocketTimeoutException;
import java.sql.SQLException;
import java.util.Map;
import java.util.Set;
import org.apache.catalina.connector.ClientAbortException;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.multipart.MultipartException;

/**
 * The outermost filter: whatever a request ends in, its sender gets a page with a reference, and the log one line under it. A
 * store that is away is told at once, without waiting for it.
 */
final class TroubleFilter extends OncePerRequestFilter {
    private static final Set<String> WITHOUT_STORE = Set.of("/actuator/health", "/error");
    /** Forms that are too large or cannot be read: the server has its own answer, and the page for it. */
    private static final int SERVERS_OWN = -1;

    private static final String RETRY_SECONDS = "10";
    private static final Logger LOG = LoggerFactory.getLogger(TroubleFilter.class);

    private final StoreWatch watch;

    TroubleFilter(StoreWatch watch) {
        this.watch = watch;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String path = request.getRequestURI();
        if (!watch.isUp() && !WITHOUT_STORE.contains(path) && !StaticFiles.contain(path)) {
            answer(request, response, Trouble.of(Cause.AWAY));
            return;
        }
        String query = request.getQueryString();
        if (query != null && query.contains("%00")) {
            response.sendError(HttpServletResponse.SC_BAD_REQUEST);
            return;
        }
        try {
            chain.doFilter(request, response);
        } catch (IOException | ServletException | RuntimeException e) {
            int fault = sendersFault(e);
            if (fault == SERVERS_OWN) {
                throw e;
            }
            if (fault > 0) {
                LOG.debug("{} {} did not come whole", request.getMethod(), request.getRequestURI(), e);
                if (!response.isCommitted()) {
                    response.sendError(fault);
                }
                return;
            }
            Trouble trouble = Trouble.of(e);
            log(request, trouble, e);
            if (response.isCommitted()) {
                throw e; // half a page: the connection has to break, or it would look whole
            }
            answer(request, response, trouble);
        }
    }

    /** The status where the request did not come whole, in time, or in a form that can be read; else 0. */
    private static int sendersFault(Throwable thrown) {
        for (Throwable t = thrown; t != null; t = t.getCause()) {
            if (t instanceof SocketTimeoutException) {
                return HttpServletResponse.SC_REQUEST_TIMEOUT;
            } else if (t instanceof ClientAbortException) {
                return HttpServletResponse.SC_BAD_REQUEST;
            }
        }
        for (Throwable t = thrown; t != null; t = t.getCause()) {
            if (t instanceof InvalidParameterException) {
                return SERVERS_OWN;
            } else if (t instanceof MultipartException || isZeroInText(t)) {
                return HttpServletResponse.SC_BAD_REQUEST;
            }
        }
        return 0;
    }

    /** A character with the number 0, which one of the databases takes in no text. */
    private static boolean isZeroInText(Throwable t) {
        return t instanceof SQLException sql && "22021".equals(sql.getSQLState());
    }

    private static void log(HttpServletRequest request, Trouble trouble, Exception e) {
        LOG.error("Problem {}: {} {}", trouble.reference(), request.getMethod(), request.getRequestURI(), e);
    }

    private static void answer(HttpServletRequest request, HttpServletResponse response, Trouble trouble)
            throws IOException {
        int status = trouble.cause() == null ? 500 : 503;
        if (trouble.cause() != null) {
            response.setHeader("Retry-After", RETRY_SECONDS);
        }
        if (request.getRequestURI().startsWith("/api/")) {
            ProblemDetails.write(response, problem(status, trouble));
            return;
        }
        trouble.putOn(request);
        response.sendError(status);
    }

    private static Map<String, Object> problem(int status, Trouble trouble) {
        Cause cause = trouble.cause();
        Map<String, Object> problem = ProblemDetails.of(
                status,
                cause == null ? "Something went wrong" : "The store cannot be used now",
                cause == null ? "The log shows what went wrong, under this reference." : cause.sentence());
        problem.put("reference", trouble.reference());
        return problem;
    }
}
