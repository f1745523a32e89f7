package dev.injectorplanner.app.intake;

import dev.injectorplanner.imports.Complaint;
import dev.injectorplanner.imports.RowPlace;
import dev.injectorplanner.imports.RowReceiver;
import dev.injectorplanner.imports.TableReader;
import dev.injectorplanner.imports.file.ReadSettings;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.nio.file.Path;
import java.util.List;

/**
 * A first walk through a file, before anything is stored: a file that is broken further down is refused whole, and the
 * number of rows is known.
 *
 * @param file the file
 * @param rows rows in it
 * @param rank place of its first table in the order of loading
 */
record FileScan(Path file, long rows, int rank) {

    /** @throws dev.injectorplanner.imports.refusal.FileRefusedException where the file cannot be read to its end */
    static FileScan of(Path file, ReadSettings settings) {
        Counter counter = new Counter();
        TableReader.read(file, settings, counter);
        return new FileScan(file, counter.rows, counter.rank);
    }

    /** The same of a vehicle log; it goes last, since it has to find its truck. */
    static FileScan ofLog(Path file) {
        return new FileScan(file, LogRows.count(file), Tables.ALL.size());
    }

    private static final class Counter implements RowReceiver {
        private long rows;
        private int rank = Integer.MAX_VALUE;

        @Override
        public <R> void row(Table<R> table, RowPlace place, R row) {
            count(table);
        }

        @Override
        public void refused(Table<?> table, RowPlace place, List<Complaint> complaints) {
            count(table);
        }

        private void count(Table<?> table) {
            rows++;
            rank = Math.min(rank, Tables.ALL.indexOf(table));
        }
    }
}
