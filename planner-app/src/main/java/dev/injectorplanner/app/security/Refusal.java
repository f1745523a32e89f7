package dev.injectorplanner.app.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.csrf.CsrfException;

/** A person may not do that, or the form was not one of this session's. */
final class Refusal implements AccessDeniedHandler {
    @Override
    public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException refused)
            throws IOException {
        if (refused instanceof CsrfException && request.getServletPath().equals(SignInPage.SIGN_IN)) {
            response.sendRedirect(SignInPage.SIGN_IN + "?old"); // the form stood open for too long
            return;
        }
        response.sendError(
                HttpServletResponse.SC_FORBIDDEN, refused instanceof CsrfException ? "old form" : "not this person");
    }
}
