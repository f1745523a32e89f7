package dev.injectorplanner.app.command;

import dev.injectorplanner.app.intake.Cause;
import dev.injectorplanner.app.intake.CauseText;
import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.intake.TableCount;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reports what became of files: a line a table, then why rows were refused; or as JSON. */
final class LoadPrinter {
    private static final int SHOWN = 10;

    private final PrintWriter out;
    private final boolean checked;
    private final boolean all;

    /**
     * @param checked whether the files were only checked
     * @param all whether every cause is printed, or those that cost most
     */
    LoadPrinter(PrintWriter out, boolean checked, boolean all) {
        this.out = out;
        this.checked = checked;
        this.all = all;
    }

    void print(List<FileReport> reports) {
        reports.forEach(this::print);
        causes(reports);
        reports.stream()
                .flatMap(report -> report.refusedRows().stream())
                .forEach(file -> out.println("Refused rows, to correct and load again: " + file));
        if (checked) {
            out.println("Checked only: nothing was stored.");
        }
    }

    private void print(FileReport report) {
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
        report.remarks().forEach(remark -> out.println("  " + remark));
        if (!report.applied() && !checked && report.refusal() == null) {
            out.println("  Nothing of this file was stored.");
        }
    }

    private void causes(List<FileReport> reports) {
        List<Cause> causes = reports.stream()
                .flatMap(report -> report.causes().stream())
                .sorted(Comparator.comparing((Cause cause) -> !cause.table().isEmpty())
                        .thenComparing(Comparator.comparingLong(Cause::cost).reversed()))
                .toList();
        if (causes.isEmpty()) {
            return;
        }
        long refused = reports.stream().mapToLong(FileReport::refusedCount).sum();
        out.printf(
                "Refused: %,d rows, %,d %s%n",
                refused, causes.size(), causes.size() == 1 ? "cause" : "causes, the most costly first");
        int shown = all ? causes.size() : Math.min(SHOWN, causes.size());
        for (Cause cause : causes.subList(0, shown)) {
            List<String> lines = CauseText.lines(cause);
            out.println("  " + lines.get(0));
            lines.subList(1, lines.size()).forEach(line -> out.println("      " + line));
        }
        if (shown < causes.size()) {
            long rows = causes.subList(shown, causes.size()).stream()
                    .mapToLong(Cause::cost)
                    .sum();
            out.printf(
                    "  ... %,d more causes, %,d rows: --all shows them%s%n",
                    causes.size() - shown, rows, checked ? ", --refused writes each refused row to a file" : "");
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
        json.put("causes", report.causes());
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
