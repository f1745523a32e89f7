package dev.injectorplanner.app.web;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.HttpStatus;
import org.springframework.web.servlet.View;

/** What a person sees where a page is missing or broken; never what the program threw. */
@Configuration(proxyBeanMethods = false)
class ErrorPage {
    @Bean("error")
    View error() {
        return (model, request, response) -> {
            response.setContentType("text/html;charset=UTF-8");
            response.getOutputStream()
                    .write(page(model == null ? Map.of() : model).getBytes(StandardCharsets.UTF_8));
        };
    }

    private static String page(Map<String, ?> model) {
        return String.valueOf(HttpStatus.NOT_FOUND.value()).equals(String.valueOf(model.get("status")))
                ? new Html("There is no such page").say("Mend: go to /jobs.").whole()
                : new Html("That did not work")
                        .say(
                                "The program's log says what went wrong. Mend: try again; if it stays so, tell the administrator.")
                        .whole();
    }
}
