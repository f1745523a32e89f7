package dev.injectorplanner.app.web.api;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.intake.Intake;
import dev.injectorplanner.app.intake.LogClaim;
import dev.injectorplanner.app.intake.TableCount;
import dev.injectorplanner.app.people.ApiToken;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.web.frame.Fleets;
import dev.injectorplanner.imports.Complaint;
import dev.injectorplanner.imports.Remark;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Vehicle logs that another program sends, as they are: faults become episodes, meters readings. */
@RestController
class LogApi {
    static final long MOST_BYTES = 64L << 20;

    private static final int BUFFER = 1 << 16;
    private static final int LONGEST_NAME = 100;

    private final Intake intake;
    private final AuditTrail audit;
    private final Fleets fleets;

    LogApi(Application application, AuditTrail audit, Fleets fleets) {
        this.intake = application.intake();
        this.audit = audit;
        this.fleets = fleets;
    }

    @PostMapping(path = "/api/v1/logs", produces = MediaType.APPLICATION_JSON_VALUE)
    Map<String, Object> add(
            Authentication known,
            @RequestParam("name") String name,
            @RequestParam(name = "truck", required = false) @Nullable String truck,
            HttpServletRequest request)
            throws IOException {
        ApiToken token = ApiRequest.token(known);
        Path folder = Files.createTempDirectory("planner-log");
        try {
            Path file = folder.resolve(safe(name));
            copy(request.getInputStream(), file);
            FileReport report = intake.loadLog(file, new LogClaim(truck, token.depot()));
            if (report.refusal() != null) {
                throw new ApiRefusal(422, "The log was refused", report.refusal(), List.of());
            }
            Map<String, Object> answer = answer(report);
            audit.record(token.who(), "send a vehicle log", safe(name), "", String.valueOf(answer.get("tables")));
            fleets.changed();
            return answer;
        } finally {
            clear(folder);
        }
    }

    /** The last part of a path, of harmless characters: nothing in it leads out of the folder. */
    private static String safe(String given) {
        String last = given.substring(Math.max(given.lastIndexOf('/'), given.lastIndexOf('\\')) + 1);
        String safe = last.replaceAll("[^\\p{L}\\p{N} ._-]+", "-")
                .replaceFirst("^[. ]+", "")
                .strip();
        String shorter = safe.length() > LONGEST_NAME ? safe.substring(0, LONGEST_NAME) : safe;
        return shorter.isEmpty() ? "vehicle.log" : shorter;
    }

    private static void copy(InputStream in, Path file) throws IOException {
        byte[] buffer = new byte[BUFFER];
        long bytes = 0;
        try (OutputStream out = Files.newOutputStream(file)) {
            for (int got = in.read(buffer); got >= 0; got = in.read(buffer)) {
                bytes += got;
                if (bytes > MOST_BYTES) {
                    throw new ApiRefusal(
                            413,
                            "The log is too large",
                            "More than 64 MiB. Fix: send it in several parts; a fault that goes on stays one.",
                            List.of());
                }
                out.write(buffer, 0, got);
            }
        }
    }

    private static Map<String, Object> answer(FileReport report) {
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("tables", report.tables().stream().map(LogApi::count).toList());
        answer.put(
                "problems",
                report.complaints().stream().map(Complaint::toString).toList());
        answer.put("remarks", report.remarks().stream().map(Remark::text).toList());
        return answer;
    }

    private static Map<String, Object> count(TableCount table) {
        Map<String, Object> count = new LinkedHashMap<>();
        count.put("table", table.table());
        count.put("read", table.read());
        count.put("added", table.added());
        count.put("changed", table.changed());
        count.put("unchanged", table.unchanged());
        count.put("refused", table.refused());
        return count;
    }

    private static void clear(Path folder) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.toList();
        }
        for (Path file : files) {
            Files.deleteIfExists(file);
        }
        Files.deleteIfExists(folder);
    }
}
