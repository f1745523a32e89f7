package dev.injectorplanner.imports;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import dev.injectorplanner.imports.cell.FormulaGuard;
import dev.injectorplanner.imports.table.Column;
import dev.injectorplanner.imports.table.Table;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Writes records of a table as CSV: canonical headings, ISO dates, moments in UTC, km and litres. What it writes,
 * {@link TableReader} reads back unchanged.
 *
 * @param <R> record of the table
 */
public final class TableWriter<R> implements AutoCloseable {
    private final Table<R> table;
    private final CsvWriter csv;

    private TableWriter(Table<R> table, Writer to) {
        this.table = table;
        this.csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(to);
        csv.writeRecord(table.columns().stream().map(Column::name).toList());
    }

    /** Starts a file, in UTF-8; one that is there is overwritten. */
    public static <R> TableWriter<R> open(Path file, Table<R> table) throws IOException {
        return new TableWriter<>(table, Files.newBufferedWriter(file, StandardCharsets.UTF_8));
    }

    /** Writes to a writer, which {@link #close} closes. */
    public static <R> TableWriter<R> to(Writer writer, Table<R> table) {
        return new TableWriter<>(table, writer);
    }

    /** Writes a whole file. */
    public static <R> void write(Path file, Table<R> table, Iterable<? extends R> rows) throws IOException {
        try (TableWriter<R> writer = open(file, table)) {
            rows.forEach(writer::row);
        }
    }

    /** Writes one row. */
    public void row(R row) {
        csv.writeRecord(table.cells(row).stream().map(FormulaGuard::guarded).toList());
    }

    @Override
    public void close() throws IOException {
        csv.close();
    }
}
