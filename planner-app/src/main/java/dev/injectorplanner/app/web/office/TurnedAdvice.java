package dev.injectorplanner.app.web.office;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Puts into the model of every page which of its lists was turned. */
@ControllerAdvice
public class TurnedAdvice {
    @ModelAttribute("turned")
    Turned turned(HttpServletRequest request) {
        return Turned.of(
                request.getRequestURI().substring(request.getContextPath().length()), request.getParameterMap());
    }
}
