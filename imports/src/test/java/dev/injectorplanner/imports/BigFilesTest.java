package dev.injectorplanner.imports;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.imports.table.Table;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rows are handed over as they are read: what stays in memory does not grow with the rows. */
class BigFilesTest {
    private static final int ROWS = 60_000;
    private static final long FINGERPRINT_BYTES_A_ROW = 62; // a slot of 28 bytes, less than half of the slots filled
    private static final long BUFFER_BYTES = 8L << 20; // of the readers; the rows as records would take 20 MB

    @TempDir
    Path folder;

    @Test
    void textFilesStream() throws IOException {
        readsInLittleMemory(BigFiles.csv(folder.resolve("readings.csv"), ROWS));
    }

    @Test
    void workbooksStream() throws IOException {
        readsInLittleMemory(BigFiles.xlsx(folder.resolve("readings.xlsx"), ROWS, true));
    }

    /** Looks at what is still held, after a collection, when the last rows come: fingerprints only, no rows. */
    private static void readsInLittleMemory(Path file) {
        long before = heldBytes();
        long[] held = new long[1];
        BigFiles.Counting counting = new BigFiles.Counting() {
            @Override
            public <R> void row(Table<R> table, RowPlace place, R row) {
                super.row(table, place, row);
                if (rows == ROWS - 1) {
                    held[0] = heldBytes() - before;
                }
            }
        };

        TableReader.read(file, Collected.usual(), counting);

        assertThat(counting.rows).isEqualTo(ROWS);
        assertThat(counting.refused).isZero();
        assertThat(held[0]).isLessThan(BUFFER_BYTES + ROWS * FINGERPRINT_BYTES_A_ROW);
    }

    private static long heldBytes() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    @Test
    void countsAddUp() throws IOException {
        Path file = BigFiles.csv(folder.resolve("readings.csv"), 1_000);
        Collected read = Collected.of(file);
        assertThat(List.of(read.rows.size(), read.refused.size())).containsExactly(1_000, 0);
    }
}
