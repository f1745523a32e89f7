package dev.injectorplanner.app.web;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
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
            String status = model == null ? "" : String.valueOf(model.get("status"));
            String page = page(status, String.valueOf(request.getAttribute(RequestDispatcher.ERROR_MESSAGE)));
            response.getOutputStream().write(page.getBytes(StandardCharsets.UTF_8));
        }
    }

    private static String page(String status, String error) {
        return switch (status) {
            case "404" ->
                new Html("There is no such page")
                        .say("Mend: go back to the first page.")
                        .whole();
            case "403" ->
                error.equals("old form")
                        ? new Html("That form is no longer good")
                                .say(
                                        "It was made before you signed in, or stood open for too long; nothing was changed."
                                                + " Mend: go back, load the page anew, and send it again.")
                                .whole()
                        : new Html("That is not for you")
                                .say(
                                        "Your role does not go there, or may not change it; nothing was changed. Mend: ask the"
                                                + " administrator, who can give you the role.")
                                .whole();
            case "400" ->
                new Html("That could not be understood")
                        .say(
                                "Something in what was sent is missing or cannot be read; nothing was changed. Mend: go back,"
                                        + " load the page anew, and send it again.")
                        .whole();
            case "413" ->
                new Html("That is too large")
                        .say(
                                "More was sent than this program takes at a time: 64 MB of files; nothing was changed. Mend:"
                                        + " send fewer files, or split the file.")
                        .whole();
            default ->
                new Html("That did not work")
                        .say("The program's log says what went wrong. Mend: try again; if it stays so, tell the"
                                + " administrator.")
                        .whole();
        };
    }
}
