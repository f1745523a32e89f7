package dev.injectorplanner.app.web.guard;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * A few pages are made at a time, the others wait in the order in which they came: all at once they would only be later, and
 * health with them. Who has waited too long is told so.
 */
final class PageTurns extends OncePerRequestFilter {
    private static final int A_PROCESSOR = 2;
    private static final int LONGEST_WAIT_SECONDS = 20;

    /** With those who send a body, still fewer than the server's 200 threads: health finds one. */
    private static final int MOST_WAITING = 100;

    private static final String HEALTH = "/actuator/health";

    private final Semaphore turns =
            new Semaphore(A_PROCESSOR * Runtime.getRuntime().availableProcessors(), true);

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        String method = request.getMethod(); // what changes something may take long and must not hold up readers
        String path = request.getRequestURI();
        return !(method.equals("GET") || method.equals("HEAD"))
                || path.equals(HEALTH)
                || StaticFiles.contain(path)
                || path.endsWith(".xlsx") // made beside the pages; the request only waits
                || path.endsWith(".pdf");
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        boolean mine = false;
        try {
            mine = turns.getQueueLength() < MOST_WAITING && turns.tryAcquire(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS);
            if (mine) {
                chain.doFilter(request, response);
            } else {
                response.setHeader("Retry-After", String.valueOf(LONGEST_WAIT_SECONDS));
                response.sendError(HttpServletResponse.SC_SERVICE_UNAVAILABLE);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            response.sendError(HttpServletResponse.SC_SERVICE_UNAVAILABLE);
        } finally {
            if (mine) {
                turns.release();
            }
        }
    }
}
