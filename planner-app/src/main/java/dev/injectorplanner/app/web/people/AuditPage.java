package dev.injectorplanner.app.web.people;

import dev.injectorplanner.app.people.AuditEntry;
import dev.injectorplanner.app.people.AuditTrail;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.Writer;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The audit trail, newest first, and all of it as CSV. */
@Controller
class AuditPage {
    private static final int MOST = 200;

    private final AuditTrail audit;

    AuditPage(AuditTrail audit) {
        this.audit = audit;
    }

    @GetMapping("/settings/audit")
    String page(@RequestParam(name = "before", defaultValue = "") String before, Model model) {
        long from = before.matches("\\d{1,18}") ? Long.parseLong(before) : Long.MAX_VALUE;
        List<AuditEntry> entries = audit.list(from, MOST);
        model.addAttribute("entries", entries);
        model.addAttribute(
                "older",
                entries.size() < MOST
                        ? ""
                        : String.valueOf(entries.get(MOST - 1).id()));
        return "audit";
    }

    @GetMapping("/settings/audit.csv")
    void csv(HttpServletResponse response) throws IOException {
        response.setContentType("text/csv;charset=UTF-8");
        response.setHeader("Content-Disposition", "attachment; filename=\"audit-trail.csv\"");
        Writer out = response.getWriter();
        out.write("id,at,who,what,subject,before,after\r\n");
        audit.each(entry -> write(out, line(entry)));
        out.flush();
    }

    private static void write(Writer out, String line) {
        try {
            out.write(line);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static String line(AuditEntry entry) {
        return Stream.of(
                        String.valueOf(entry.id()),
                        entry.at().truncatedTo(ChronoUnit.MILLIS).toString(),
                        entry.who(),
                        entry.what(),
                        entry.subject(),
                        entry.before(),
                        entry.after())
                .map(AuditPage::cell)
                .collect(Collectors.joining(",", "", "\r\n"));
    }

    /** As RFC 4180 quotes; a text that a spreadsheet would take for a formula gets an apostrophe before it. */
    static String cell(String text) {
        String safe = !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
        return "\"" + safe.replace("\"", "\"\"") + "\"";
    }
}
