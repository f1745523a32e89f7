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
            case NOT_FOUND -> page(status, "There is no such page", "Mend: go back to the first page.");
            case FORBIDDEN ->
                oldForm
                        ? page(
                                status,
                                "That form is no longer good",
                                "It was made before you signed in, or stood open for too long; nothing was changed."
                                        + " Mend: go back, load the page anew, and send it again.")
                        : page(
                                status,
                                "That is not for you",
                                "Your role does not go there, or may not change it; nothing was changed. Mend: ask the"
                                        + " administrator, who can give you the role.");
            case BAD_REQUEST ->
                page(
                        status,
                        "That could not be understood",
                        "Something in what was sent is missing or cannot be read; nothing was changed. Mend: go back, load"
                                + " the page anew, and send it again.");
            case CONTENT_TOO_LARGE ->
                page(
                        status,
                        "That is too large",
                        "More was sent than this program takes at a time: 64 MB of files; nothing was changed. Mend: send"
                                + " fewer files, or split the file.");
            default -> broken(request, status);
        };
    }

    private static ModelAndView broken(HttpServletRequest request, HttpStatus status) {
        Optional<Trouble> trouble = Trouble.findOn(request);
        String reference =
                trouble.map(known -> " Reference: " + known.reference() + ".").orElse("");
        StoreFailures.Cause cause = trouble.map(Trouble::cause).orElse(null);
        if (cause != null) {
            return page(status, "That cannot be done now", cause.sentence() + reference);
        }
        return page(
                status,
                "That did not work",
                "The program's log says what went wrong. Fix: try again; if it stays so, tell the administrator."
                        + reference);
    }

    private static ModelAndView page(HttpStatus status, String title, String sentence) {
        return new ModelAndView("problem", Map.of("title", title, "sentence", sentence), status);
    }
}
