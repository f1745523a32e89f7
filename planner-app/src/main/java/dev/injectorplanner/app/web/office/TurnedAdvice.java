package dev.injectorplanner.app.web.office;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Map;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Puts into the model of every page which of its lists was turned; what a form sends never gets into an address. */
@ControllerAdvice
public class TurnedAdvice {
    @ModelAttribute("turned")
    Turned turned(HttpServletRequest request) {
        String path = request.getRequestURI().substring(request.getContextPath().length());
        return Turned.of(path, request.getMethod().equals("GET") ? request.getParameterMap() : Map.of());
    }
}
