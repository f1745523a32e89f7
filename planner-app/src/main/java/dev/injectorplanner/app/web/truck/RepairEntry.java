package dev.injectorplanner.app.web.truck;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.imports.file.GivenRows;
import dev.injectorplanner.imports.table.Tables;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/** Records a repair through the intake, so that a form is checked as a file is. */
public final class RepairEntry {
    private final Application application;

    public RepairEntry(Application application) {
        this.application = application;
    }

    /**
     * @param row columns of the table of repairs
     * @throws InvalidValueException with what is wrong first
     */
    public void record(Map<String, String> row, Instant at, String by) {
        take(row);
        String truck = row.getOrDefault("truck", "");
        new StoreSql(application.store().dataSource()).inTransaction(connection -> {
            AuditTrail.write(
                    connection, at, by, "record a repair", truck, "", row.get("what") + ", by " + row.get("by"));
            return true;
        });
    }

    private void take(Map<String, String> row) {
        FileReport report = application
                .intake()
                .loadRows(
                        Tables.REPAIRS,
                        new GivenRows("repairs", List.copyOf(row.keySet()), List.of(List.copyOf(row.values()))));
        if (report.refusal() != null) {
            throw new InvalidValueException("repair", "", report.refusal(), "correct the form");
        }
        report.complaints().stream().findFirst().ifPresent(complaint -> {
            throw new InvalidValueException(complaint.column(), complaint.value(), complaint.reason(), complaint.fix());
        });
    }
}
