package dev.injectorplanner.app.intake;

import dev.injectorplanner.imports.Complaint;
import dev.injectorplanner.imports.Remark;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What became of one file.
 *
 * @param file the file
 * @param applied whether its good rows are in the store now (true as well where there was nothing new)
 * @param refusal why the file as a whole was refused, or null
 * @param tables rows by table, in the order in which they were read
 * @param complaints refused rows, the first {@value #MOST_COMPLAINTS}
 * @param causes why rows were refused, equal causes once, the most costly first
 * @param remarks what else a person should know
 * @param refusedRows files that hold the refused rows, one a sheet
 */
public record FileReport(
        Path file,
        boolean applied,
        @Nullable String refusal,
        List<TableCount> tables,
        List<Complaint> complaints,
        List<Cause> causes,
        List<Remark> remarks,
        List<Path> refusedRows) {
    /** The most complaints kept here; the refused-rows file has them all. */
    public static final int MOST_COMPLAINTS = 10_000;

    public FileReport {
        tables = List.copyOf(tables);
        complaints = List.copyOf(complaints);
        causes = List.copyOf(causes);
        remarks = List.copyOf(remarks);
        refusedRows = List.copyOf(refusedRows);
    }

    static FileReport refused(Path file, String refusal) {
        return new FileReport(file, false, refusal, List.of(), List.of(), List.of(), List.of(), List.of());
    }

    FileReport withCauses(List<Cause> gathered) {
        return new FileReport(file, applied, refusal, tables, complaints, gathered, remarks, refusedRows);
    }

    public long refusedCount() {
        return tables.stream().mapToLong(TableCount::refused).sum();
    }

    /** Whether anything was refused: the file, or a row. */
    public boolean anyRefused() {
        return refusal != null || refusedCount() > 0;
    }
}
