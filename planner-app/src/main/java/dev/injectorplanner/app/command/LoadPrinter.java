package dev.injectorplanner.app.command;

import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.intake.TableCount;
import dev.injectorplanner.imports.Complaint;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Says what became of files: for people line by line, or as JSON. */
final class LoadPrinter {
    private static final int SHOWN = 20;

    private final PrintWriter out;
    private final boolean everyProblem;

    /** @param everyProblem whether every refused row is printed, or the first twenty of a file */
    LoadPrinter(PrintWriter out, boolean everyProblem) {
        this.out = out;
        this.everyProblem = everyProblem;
    }

    void print(FileReport report) {
        if (report.refusal() != null) {
            out.println(report.refusal());
            return;
        }
        for (TableCount count : report.tables()) {
            out.printf(
                    "%s, table %s: %,d read, %,d added, %,d changed, %,d unchanged, %,d refused%n",
                    name(report.file()),
                    count.table(),
                    count.read(),
                    count.added(),
                    count.changed(),
                    count.unchanged(),
                    count.refused());
        }
        List<Complaint> complaints = report.complaints();
        int shown = everyProblem ? complaints.size() : Math.min(SHOWN, complaints.size());
        complaints.subList(0, shown).forEach(complaint -> out.println("  " + complaint));
        if (report.refusedCount() > shown) {
            out.printf("  ... %,d refused rows in total%n", report.refusedCount());
        }
        report.remarks().forEach(remark -> out.println("  " + remark));
        report.refusedRows().forEach(file -> out.println("  Refused rows, to correct and load again: " + file));
        if (!report.applied()) {
            out.println(everyProblem ? "  Checked only: nothing was stored." : "  Nothing of this file was stored.");
        }
    }

    static void printJson(PrintWriter out, List<FileReport> reports) {
        Json.print(out, Map.of("files", json(reports)));
    }

    static List<Map<String, @Nullable Object>> json(List<FileReport> reports) {
        return reports.stream().map(LoadPrinter::json).toList();
    }

    private static Map<String, @Nullable Object> json(FileReport report) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("file", report.file().toString());
        json.put("applied", report.applied());
        json.put("refusal", report.refusal());
        json.put("tables", report.tables().stream().map(LoadPrinter::json).toList());
        json.put("complaints", report.complaints());
        json.put("remarks", report.remarks());
        json.put(
                "refusedRows", report.refusedRows().stream().map(Path::toString).toList());
        return json;
    }

    private static Map<String, Object> json(TableCount count) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("table", count.table());
        json.put("read", count.read());
        json.put("added", count.added());
        json.put("changed", count.changed());
        json.put("unchanged", count.unchanged());
        json.put("refused", count.refused());
        return json;
    }

    private static String name(Path file) {
        Path name = file.getFileName();
        return name == null ? file.toString() : name.toString();
    }
}
