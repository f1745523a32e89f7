package dev.injectorplanner.app.web;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Map;
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
                                "It was made before you signed in, or stood open for too long; nothing was changed."
                                        + " Fix: go back, reload the page, and send it again.")
                        : page(
                                status,
                                "You cannot do this",
                                "Your role does not go there, or may not change it; nothing was changed. Fix: ask the"
                                        + " administrator, who can give you the role.");
            case BAD_REQUEST ->
                page(
                        status,
                        "The request could not be read",
                        "Something is missing or cannot be read; nothing was changed. Fix: go back, load"
                                + " the page anew, and send it again.");
            case CONTENT_TOO_LARGE ->
                page(
                        status,
                        "Too large",
                        "More was sent than this program takes at a time: 64 MB of files; nothing was changed. Fix: send"
                                + " fewer files, or split the file.");
            default ->
                page(
                        status,
                        "Something went wrong",
                        "The program's log says what went wrong. Fix: try again; if it stays so, tell the"
                                + " administrator.");
        };
    }

    private static ModelAndView page(HttpStatus status, String title, String sentence) {
        return new ModelAndView("problem", Map.of("title", title, "sentence", sentence), status);
    }
}
