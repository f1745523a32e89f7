package dev.injectorplanner.app.security;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.apache.tomcat.util.http.fileupload.InvalidFileNameException;
import org.springframework.web.filter.OncePerRequestFilter;

/** A form whose file has a name with a zero in it is the sender's fault: 400, not a fault of the program. */
final class UnreadableForms extends OncePerRequestFilter {
    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        try {
            chain.doFilter(request, response);
        } catch (InvalidFileNameException e) {
            response.sendError(HttpServletResponse.SC_BAD_REQUEST, "a file's name");
        }
    }
}
