package dev.injectorplanner.app.security;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Arrays;
import org.apache.tomcat.util.http.fileupload.InvalidFileNameException;
import org.springframework.web.filter.OncePerRequestFilter;

/** A form whose file has a name with a zero in it is the sender's fault: 400, not a fault of the program. */
final class UnreadableForms extends OncePerRequestFilter {
    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (hasZero(request)) {
            response.sendError(HttpServletResponse.SC_BAD_REQUEST, "a character with the number 0");
            return;
        }
        try {
            chain.doFilter(request, response);
        } catch (InvalidFileNameException e) {
            response.sendError(HttpServletResponse.SC_BAD_REQUEST, "a file's name");
        }
    }

    private static boolean hasZero(HttpServletRequest request) {
        String type = request.getContentType();
        return type != null
                && type.startsWith("application/x-www-form-urlencoded")
                && request.getParameterMap().values().stream()
                        .flatMap(Arrays::stream)
                        .anyMatch(value -> value.indexOf(0) >= 0);
    }
}
