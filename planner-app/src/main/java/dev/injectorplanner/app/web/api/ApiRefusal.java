package dev.injectorplanner.app.web.api;

import java.util.List;
import java.util.Map;

/** A request that is refused: with which HTTP status, why and how to fix it, and where several things are wrong, each. */
public final class ApiRefusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int status;
    private final String title;
    private final transient List<Map<String, Object>> problems;

    /**
     * @param status HTTP status
     * @param title what kind of refusal, the same for each of its kind
     * @param detail what is wrong here, and how to fix it
     * @param problems row by row, or empty
     */
    public ApiRefusal(int status, String title, String detail, List<Map<String, Object>> problems) {
        super(detail);
        this.status = status;
        this.title = title;
        this.problems = List.copyOf(problems);
    }

    static ApiRefusal badRequest(String detail) {
        return new ApiRefusal(400, "The request cannot be read", detail, List.of());
    }

    public int status() {
        return status;
    }

    public String title() {
        return title;
    }

    public String detail() {
        return String.valueOf(getMessage());
    }

    public List<Map<String, Object>> problems() {
        return problems;
    }
}
