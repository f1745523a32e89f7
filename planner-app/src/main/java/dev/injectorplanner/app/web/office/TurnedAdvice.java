package dev.injectorplanner.app.web.office;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.util.UriComponentsBuilder;
import org.springframework.web.util.UriUtils;

/**
 * Puts into the model of every page which of its lists was turned. It reads the address alone: what a form sends never gets into
 * an address, and a body that was refused for its size must not be read again for the page that says so.
 */
@ControllerAdvice
public class TurnedAdvice {
    @ModelAttribute("turned")
    Turned turned(HttpServletRequest request) {
        String path = request.getRequestURI().substring(request.getContextPath().length());
        return Turned.of(path, asked(request.getQueryString()));
    }

    private static Map<String, String[]> asked(@Nullable String query) {
        Map<String, String[]> asked = new LinkedHashMap<>();
        if (query != null) {
            UriComponentsBuilder.newInstance()
                    .query(query)
                    .build()
                    .getQueryParams()
                    .forEach((name, values) -> asked.put(
                            decoded(name),
                            values.stream().map(TurnedAdvice::decoded).toArray(String[]::new)));
        }
        return asked;
    }

    /** As a form writes it, a blank as a plus; what is written wrong stays as it is. */
    private static String decoded(@Nullable String text) {
        if (text == null) {
            return "";
        }
        try {
            return UriUtils.decode(text.replace('+', ' '), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException e) {
            return text;
        }
    }
}
