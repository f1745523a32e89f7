package dev.injectorplanner.app.intake;

import dev.injectorplanner.app.people.AuditTrail;
import java.util.List;
import java.util.stream.Collectors;

/** Files that put something into the store, in the audit trail: one note each, with its counts, right after the load. */
public final class LoadNotes {
    private LoadNotes() {}

    /** @param who who loaded them */
    public static void write(AuditTrail audit, String who, List<FileReport> reports) {
        for (FileReport report : reports) {
            if (report.applied() && report.tables().stream().anyMatch(LoadNotes::changes)) {
                audit.record(who, "load a file", String.valueOf(report.file().getFileName()), "", counts(report));
            }
        }
    }

    private static boolean changes(TableCount table) {
        return table.added() + table.changed() > 0;
    }

    private static String counts(FileReport report) {
        return report.tables().stream()
                .map(table -> table.table() + ": " + table.added() + " added, " + table.changed() + " changed, "
                        + table.refused() + " refused")
                .collect(Collectors.joining("; "));
    }
}
