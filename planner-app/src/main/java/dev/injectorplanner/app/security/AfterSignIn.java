package dev.injectorplanner.app.security;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Duration;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.authentication.SavedRequestAwareAuthenticationSuccessHandler;

/** Where a try to sign in leads: to the page that was asked for, or back to the form. */
final class AfterSignIn extends SavedRequestAwareAuthenticationSuccessHandler {
    private static final Duration UNUSED = Duration.ofHours(1);

    /** A session ends after an hour without use; where the person says so, only after a working day. */
    @Override
    public void onAuthenticationSuccess(
            HttpServletRequest request, HttpServletResponse response, Authentication signedIn)
            throws ServletException, IOException {
        Duration unused = request.getParameter("stay") == null ? UNUSED : SignInCheck.AT_MOST;
        request.getSession().setMaxInactiveInterval((int) unused.toSeconds());
        super.onAuthenticationSuccess(request, response, signedIn);
    }

    static void failed(HttpServletRequest request, HttpServletResponse response, AuthenticationException e)
            throws IOException {
        response.sendRedirect(
                e instanceof TooManyTriesException many
                        ? SignInPage.SIGN_IN + "?wait="
                                + Math.max(1, many.pause().toSeconds())
                        : SignInPage.SIGN_IN + "?wrong");
    }
}
