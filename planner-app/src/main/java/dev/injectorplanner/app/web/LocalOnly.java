package dev.injectorplanner.app.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Set;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Stands in for sign-in on the loopback address: answers only under this machine's own name, so that no page of another
 * site reaches in under a borrowed name, and takes changes only from its own pages.
 */
final class LocalOnly extends OncePerRequestFilter {
    private static final Set<String> NAMES = Set.of("localhost", "127.0.0.1", "[::1]");
    private static final Set<String> READING = Set.of("GET", "HEAD");

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        response.setHeader(
                "Content-Security-Policy",
                "default-src 'none'; style-src 'self'; script-src 'self'; connect-src 'self'; form-action 'self'; frame-ancestors 'none'; base-uri 'none'");
        response.setHeader("X-Content-Type-Options", "nosniff");
        response.setHeader("Referrer-Policy", "same-origin");
        response.setHeader("Cache-Control", "no-store");
        if (isOurs(request)) {
            chain.doFilter(request, response);
        } else {
            response.setStatus(HttpServletResponse.SC_FORBIDDEN);
            response.setContentType("text/plain;charset=UTF-8");
            response.getWriter().println("Refused: ask from this machine, through the pages themselves.");
        }
    }

    private static boolean isOurs(HttpServletRequest request) {
        String host = String.valueOf(request.getHeader("Host"));
        if (!NAMES.contains(host.replaceFirst(":\\d+$", ""))) {
            return false;
        }
        if (READING.contains(request.getMethod())) {
            return true;
        }
        String origin = request.getHeader("Origin");
        String site = request.getHeader("Sec-Fetch-Site");
        return (origin == null || origin.equals("http://" + host)) && (site == null || site.equals("same-origin"));
    }
}
