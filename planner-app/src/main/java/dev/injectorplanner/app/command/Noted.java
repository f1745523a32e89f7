package dev.injectorplanner.app.command;

import dev.injectorplanner.app.Application;
import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.intake.TableCount;
import java.util.List;
import java.util.stream.Collectors;

/** What commands change goes into the audit trail, under the name of who typed them. */
final class Noted {
    private Noted() {}

    static void change(Application application, String what, String subject, String before, String after) {
        application.audit().record(Person.here(), what, subject, before, after);
    }

    /** Files that put something into the store. */
    static void files(Application application, List<FileReport> reports) {
        for (FileReport report : reports) {
            if (report.applied() && report.tables().stream().anyMatch(Noted::changes)) {
                String counts = report.tables().stream()
                        .map(table -> table.table() + ": " + table.added() + " added, " + table.changed() + " changed")
                        .collect(Collectors.joining("; "));
                change(application, "load a file", String.valueOf(report.file().getFileName()), "", counts);
            }
        }
    }

    private static boolean changes(TableCount table) {
        return table.added() + table.changed() > 0;
    }
}
