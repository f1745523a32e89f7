package dev.injectorplanner.app.web.api;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.ApiToken;
import dev.injectorplanner.app.web.frame.Fleets;
import dev.injectorplanner.app.web.frame.SiteClock;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.json.JsonMapper;

/** Visits that another program closes out, and the record of those that are over. */
@RestController
class CloseOutApi {
    private static final JsonMapper JSON = new JsonMapper();
    private static final int CREATED = 201;

    private final CloseOutIntake intake;
    private final KeyedAnswers answers;
    private final Fleets fleets;

    CloseOutApi(Application application, SiteClock clock, Fleets fleets) {
        this.intake = new CloseOutIntake(application.store(), clock.source());
        this.answers = new KeyedAnswers(application.store().dataSource());
        this.fleets = fleets;
    }

    @GetMapping(path = "/api/v1/close-outs", produces = MediaType.APPLICATION_JSON_VALUE)
    Map<String, Object> closeOuts(
            Authentication known,
            @RequestParam("truck") String truck,
            @RequestParam(name = "cursor", required = false) @Nullable String cursor,
            @RequestParam(name = "limit", required = false) @Nullable String limit) {
        return intake.page(truck, ApiRequest.token(known).depot(), Cursor.of(cursor, limit));
    }

    @PostMapping(path = "/api/v1/close-outs", produces = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<String> close(
            Authentication known,
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key,
            HttpServletRequest request)
            throws IOException {
        if (key == null) {
            throw new ApiRefusal(
                    400,
                    "The request cannot be read",
                    "Idempotency-Key is missing. Fix: send a UUID with each close-out, and the same one when you send it"
                            + " again: it is then saved only once.",
                    List.of());
        }
        ApiToken token = ApiRequest.token(known);
        String body = ApiRequest.body(request);
        KeyedAnswers.Answer answer = answers.once(token.id(), key, "close-outs\n" + body, () -> {
            Map<String, Object> kept = intake.take(body, token, key);
            String json = JSON.writeValueAsString(kept);
            fleets.changed();
            return new KeyedAnswers.Answer(CREATED, json);
        });
        return ResponseEntity.status(answer.status())
                .contentType(MediaType.APPLICATION_JSON)
                .body(answer.body());
    }
}
