package dev.injectorplanner.app.security;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tools.jackson.databind.json.JsonMapper;

/** What a program is told when something is wrong: problem details as in RFC 9457, with a number to ask for. */
public final class ProblemDetails {
    /** The media type. */
    public static final String TYPE = "application/problem+json";

    private static final Logger LOG = LoggerFactory.getLogger(ProblemDetails.class);
    private static final JsonMapper JSON = new JsonMapper();
    private static final int REFERENCE = 8;

    private ProblemDetails() {}

    /**
     * A problem, noted in the log under its number.
     *
     * @param status HTTP status
     * @param title what kind of problem
     * @param detail what is wrong here, and how to fix it
     */
    public static Map<String, Object> of(int status, String title, String detail) {
        String reference = UUID.randomUUID().toString().substring(0, REFERENCE);
        LOG.info("API problem {}: {} {}", reference, status, title);
        Map<String, Object> problem = new LinkedHashMap<>();
        problem.put("type", "about:blank");
        problem.put("title", title);
        problem.put("status", status);
        problem.put("detail", detail);
        problem.put("reference", reference);
        return problem;
    }

    /** Answers with a problem. */
    public static void write(HttpServletResponse response, Map<String, Object> problem) throws IOException {
        response.setStatus(problem.get("status") instanceof Integer status ? status : 500);
        response.setContentType(TYPE);
        response.getOutputStream().write(JSON.writeValueAsBytes(problem));
    }
}
