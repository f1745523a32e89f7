package dev.injectorplanner.app.web;

import dev.injectorplanner.app.store.StoreFailures;
import dev.injectorplanner.app.web.guard.Trouble;
import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Map;
import java.util.Optional;
import org.springframework.boot.webmvc.autoconfigure.error.ErrorViewResolver;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.web.servlet.ModelAndView;

/** What a person sees where a page is missing or broken; never what the program threw. */
@Order(Ordered.HIGHEST_PRECEDENCE)
class ErrorPage implements ErrorViewResolver {
    @Override
    public ModelAndView resolveErrorView(HttpServletRequest request, HttpStatus status, Map<String, Object> model) {
        boolean oldForm = "old form".equals(request.getAttribute(RequestDispatcher.ERROR_MESSAGE));
        return switch (status) {
            case NOT_FOUND -> page(status, "Page not found", "Fix: go back to the first page.");
            case FORBIDDEN ->
                oldForm
                        ? page(
                                status,
                                "This form has expired",
                                "It was opened before you signed in, or was open for too long; nothing was changed. Fix: go"
                                        + " back, reload the page, and send it again.")
                        : page(
                                status,
                                "You cannot do this",
                                "Your role does not allow it; nothing was changed. Fix: ask the administrator for the role.");
            case BAD_REQUEST ->
                page(
                        status,
                        "The request could not be read",
                        "Something is missing or cannot be read; nothing was changed. Fix: go back, reload the page,"
                                + " and send it again.");
            case CONTENT_TOO_LARGE ->
                page(
                        status,
                        "Too large",
                        "At most 64 MB of files can be sent at a time; nothing was changed. Fix: send fewer files,"
                                + " or split the file.");
            default -> broken(request, status);
        };
    }

    private static ModelAndView broken(HttpServletRequest request, HttpStatus status) {
        Optional<Trouble> trouble = Trouble.findOn(request);
        String reference =
                trouble.map(known -> " Reference: " + known.reference() + ".").orElse("");
        StoreFailures.Cause cause = trouble.map(Trouble::cause).orElse(null);
        if (cause != null) {
            return page(status, "This cannot be done now", cause.sentence() + reference);
        }
        return page(
                status,
                "Something went wrong",
                "The program's log shows what went wrong. Fix: try again; if it keeps failing, tell the administrator."
                        + reference);
    }

    private static ModelAndView page(HttpStatus status, String title, String sentence) {
        return new ModelAndView("problem", Map.of("title", title, "sentence", sentence), status);
    }
}
