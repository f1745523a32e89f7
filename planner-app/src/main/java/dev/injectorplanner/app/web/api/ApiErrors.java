package dev.injectorplanner.app.web.api;

import dev.injectorplanner.app.security.ProblemDetails;
import dev.injectorplanner.app.store.StoreFailures;
import java.util.Map;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.MissingServletRequestParameterException;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;

/** What the API answers when something is wrong; never what the program threw. */
@RestControllerAdvice(assignableTypes = {ApiPage.class, CloseOutApi.class, LogApi.class, ShopApi.class})
class ApiErrors {
    private static final Logger LOG = LoggerFactory.getLogger(ApiErrors.class);

    @ExceptionHandler(ApiRefusal.class)
    ResponseEntity<Map<String, Object>> refused(ApiRefusal refusal) {
        Map<String, Object> problem = ProblemDetails.of(refusal.status(), refusal.title(), refusal.detail());
        if (!refusal.problems().isEmpty()) {
            problem.put("problems", refusal.problems());
        }
        return answer(refusal.status(), problem);
    }

    @ExceptionHandler(MissingServletRequestParameterException.class)
    ResponseEntity<Map<String, Object>> missing(MissingServletRequestParameterException e) {
        String detail = "Parameter " + e.getParameterName() + " is missing. Fix: add it to the address.";
        return answer(400, ProblemDetails.of(400, "The request cannot be read", detail));
    }

    @ExceptionHandler(RuntimeException.class)
    ResponseEntity<Map<String, Object>> broken(RuntimeException e) {
        Optional<StoreFailures.Cause> cause = StoreFailures.findCause(e);
        if (cause.isPresent()) {
            Map<String, Object> problem = ProblemDetails.of(
                    503, "The store cannot be used now", cause.get().sentence());
            LOG.warn("API problem {}", problem.get("reference"), e);
            return answer(503, problem);
        }
        Map<String, Object> problem = ProblemDetails.of(
                500,
                "Something went wrong",
                "The program's log shows what went wrong, under this reference. Fix: send it again with the"
                        + " same Idempotency-Key; if it keeps failing, tell the administrator.");
        LOG.error("API problem {}", problem.get("reference"), e);
        return answer(500, problem);
    }

    private static ResponseEntity<Map<String, Object>> answer(int status, Map<String, Object> problem) {
        return ResponseEntity.status(status)
                .contentType(MediaType.parseMediaType(ProblemDetails.TYPE))
                .body(problem);
    }
}
