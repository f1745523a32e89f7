package dev.injectorplanner.app.web.guard;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Collections;
import java.util.Enumeration;
import java.util.List;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.web.filter.OncePerRequestFilter;

/** Health answers in the one form it has, whatever form was asked for: a browser asks for HTML. */
final class HealthForAll extends OncePerRequestFilter {
    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return !request.getRequestURI().startsWith("/actuator/health");
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        chain.doFilter(new AskedForJson(request), response);
    }

    private static final class AskedForJson extends HttpServletRequestWrapper {
        AskedForJson(HttpServletRequest request) {
            super(request);
        }

        @Override
        public String getHeader(String name) {
            return HttpHeaders.ACCEPT.equalsIgnoreCase(name) ? MediaType.APPLICATION_JSON_VALUE : super.getHeader(name);
        }

        @Override
        public Enumeration<String> getHeaders(String name) {
            return HttpHeaders.ACCEPT.equalsIgnoreCase(name)
                    ? Collections.enumeration(List.of(MediaType.APPLICATION_JSON_VALUE))
                    : super.getHeaders(name);
        }
    }
}
