package dev.injectorplanner.app.web.imports;

import dev.injectorplanner.app.intake.CauseText;
import dev.injectorplanner.app.intake.FileReport;
import java.util.List;

/**
 * What became of a file, as it is shown.
 *
 * @param refusal why the whole file was refused, or empty
 * @param counts rows by table, in words
 * @param lines refused rows and remarks, the first of them
 * @param more how many lines are not shown
 */
record ReportRow(String file, String refusal, List<String> counts, List<String> lines, int more) {
    private static final int SHOWN = 50;

    static List<ReportRow> of(List<FileReport> reports) {
        return reports.stream().map(ReportRow::of).toList();
    }

    private static ReportRow of(FileReport report) {
        List<String> lines = new java.util.ArrayList<>();
        report.causes().forEach(cause -> lines.add(String.join(". ", CauseText.lines(cause))));
        report.remarks().forEach(remark -> lines.add(remark.toString()));
        return new ReportRow(
                String.valueOf(report.file().getFileName()),
                "",
                report.tables().stream()
                        .map(table -> String.format(
                                java.util.Locale.ROOT,
                                "%s: %,d read, %,d added, %,d changed, %,d unchanged, %,d refused",
                                table.table(),
                                table.read(),
                                table.added(),
                                table.changed(),
                                table.unchanged(),
                                table.refused()))
                        .toList(),
                lines.subList(0, Math.min(SHOWN, lines.size())),
                Math.max(0, lines.size() - SHOWN));
    }
}
