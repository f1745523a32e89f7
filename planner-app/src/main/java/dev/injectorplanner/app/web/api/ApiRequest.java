package dev.injectorplanner.app.web.api;

import dev.injectorplanner.app.people.ApiToken;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.springframework.security.core.Authentication;

/** What a request of the API brings along. */
final class ApiRequest {
    private static final int MOST_BYTES = 1 << 20;

    private ApiRequest() {}

    static ApiToken token(Authentication known) {
        if (known.getPrincipal() instanceof ApiToken token) {
            return token;
        }
        throw new IllegalStateException("the API was reached without a token");
    }

    /** @throws ApiRefusal where it is too large */
    static String body(HttpServletRequest request) throws IOException {
        byte[] bytes = request.getInputStream().readNBytes(MOST_BYTES + 1);
        if (bytes.length > MOST_BYTES) {
            throw new ApiRefusal(
                    413, "The request is too large", "More than 1 MiB. Fix: send it in several requests.", List.of());
        }
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
