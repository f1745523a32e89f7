package dev.injectorplanner.app.web.api;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.ApiToken;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.plans.KeptPlan;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.app.web.frame.Fleets;
import dev.injectorplanner.app.web.frame.PlansInForce;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.ClassPathResource;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.json.JsonMapper;

/** What other programs ask and send. */
@RestController
class ApiPage {
    private static final JsonMapper JSON = new JsonMapper();

    private final RowIntake intake;
    private final RowPages pages;
    private final KeyedAnswers answers;
    private final PlansInForce plans;
    private final AuditTrail audit;
    private final Fleets fleets;
    private final SiteSettings settings;

    ApiPage(Application application, PlansInForce plans, AuditTrail audit, Fleets fleets) {
        this.intake = new RowIntake(application.intake(), application.store());
        this.pages = new RowPages(application.store().dataSource());
        this.answers = new KeyedAnswers(application.store().dataSource());
        this.plans = plans;
        this.audit = audit;
        this.fleets = fleets;
        this.settings = application.settings();
    }

    @GetMapping(path = "/api/v1/openapi.json", produces = MediaType.APPLICATION_JSON_VALUE)
    String description() throws IOException {
        return new ClassPathResource("api/openapi.json").getContentAsString(StandardCharsets.UTF_8);
    }

    @GetMapping(path = "/api/v1/readings", produces = MediaType.APPLICATION_JSON_VALUE)
    Map<String, Object> readings(
            Authentication known,
            @RequestParam("truck") String truck,
            @RequestParam(name = "cursor", required = false) @Nullable String cursor,
            @RequestParam(name = "limit", required = false) @Nullable String limit,
            @RequestParam(name = "units", required = false) @Nullable String units) {
        return pages.readings(
                truck, ApiRequest.token(known).depot(), Cursor.of(cursor, limit), AnswerUnits.of(units, settings));
    }

    @PostMapping(path = "/api/v1/readings", produces = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<String> addReadings(
            Authentication known,
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key,
            HttpServletRequest request)
            throws IOException {
        return add(Tables.READINGS, ApiRequest.token(known), key, request);
    }

    @GetMapping(path = "/api/v1/faults", produces = MediaType.APPLICATION_JSON_VALUE)
    Map<String, Object> faults(
            Authentication known,
            @RequestParam("truck") String truck,
            @RequestParam(name = "cursor", required = false) @Nullable String cursor,
            @RequestParam(name = "limit", required = false) @Nullable String limit,
            @RequestParam(name = "units", required = false) @Nullable String units) {
        return pages.faults(
                truck, ApiRequest.token(known).depot(), Cursor.of(cursor, limit), AnswerUnits.of(units, settings));
    }

    @PostMapping(path = "/api/v1/faults", produces = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<String> addFaults(
            Authentication known,
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key,
            HttpServletRequest request)
            throws IOException {
        return add(Tables.FAULTS, ApiRequest.token(known), key, request);
    }

    @GetMapping(path = "/api/v1/plan", produces = MediaType.APPLICATION_JSON_VALUE)
    Map<String, Object> plan(
            Authentication known,
            @RequestParam("depot") String depot,
            @RequestParam(name = "cursor", required = false) @Nullable String cursor,
            @RequestParam(name = "limit", required = false) @Nullable String limit,
            @RequestParam(name = "units", required = false) @Nullable String units) {
        String only = ApiRequest.token(known).depot();
        KeptPlan kept =
                only != null && !only.equals(depot) ? null : plans.find(depot).orElse(null);
        if (kept == null) {
            throw new ApiRefusal(
                    404,
                    "No such plan",
                    "Depot \"" + depot
                            + "\" has no plan in force, or this token does not cover it. Fix: check the name.",
                    List.of());
        }
        return PlanAnswer.of(depot, kept, Cursor.of(cursor, limit), AnswerUnits.of(units, settings));
    }

    private ResponseEntity<String> add(Table<?> table, ApiToken token, @Nullable String key, HttpServletRequest request)
            throws IOException {
        String body = ApiRequest.body(request);
        KeyedAnswers.Answer answer = answers.once(token.id(), key, table.name() + "\n" + body, () -> {
            Map<String, Object> counts = intake.take(table, body, token.depot());
            String json = JSON.writeValueAsString(counts);
            audit.record(token.who(), "send " + table.name(), table.name(), "", json);
            fleets.changed();
            return new KeyedAnswers.Answer(200, json);
        });
        return ResponseEntity.status(answer.status())
                .contentType(MediaType.APPLICATION_JSON)
                .body(answer.body());
    }
}
