package dev.injectorplanner.app.web.guard;

import dev.injectorplanner.app.store.StoreLane;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.web.filter.OncePerRequestFilter;

/** Pages that only show something read through the readers' connections, and wait for nobody who writes. */
final class ReadersFilter extends OncePerRequestFilter {
    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String method = request.getMethod();
        if (method.equals("GET") || method.equals("HEAD")) {
            StoreLane.<ServletException>reading(() -> chain.doFilter(request, response));
        } else {
            chain.doFilter(request, response);
        }
    }
}
