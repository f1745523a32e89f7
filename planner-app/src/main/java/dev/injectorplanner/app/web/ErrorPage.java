package dev.injectorplanner.app.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.web.servlet.View;

/** What a person sees where a page is missing or broken; never what the program threw. */
@Configuration(proxyBeanMethods = false)
class ErrorPage {
    @Bean("error")
    View error() {
        return new Plain();
    }

    private static final class Plain implements View {
        @Override
        public String getContentType() {
            return MediaType.TEXT_HTML_VALUE;
        }

        @Override
        public void render(@Nullable Map<String, ?> model, HttpServletRequest request, HttpServletResponse response)
                throws IOException {
            response.setContentType("text/html;charset=UTF-8");
            String page = page(model == null ? "" : String.valueOf(model.get("status")));
            response.getOutputStream().write(page.getBytes(StandardCharsets.UTF_8));
        }
    }

    private static String page(String status) {
        return status.equals(String.valueOf(HttpStatus.NOT_FOUND.value()))
                ? new Html("There is no such page").say("Mend: go to /jobs.").whole()
                : new Html("That did not work")
                        .say(
                                "The program's log says what went wrong. Mend: try again; if it stays so, tell the administrator.")
                        .whole();
    }
}
