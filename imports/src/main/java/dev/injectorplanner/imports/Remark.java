package dev.injectorplanner.imports;

import org.jspecify.annotations.Nullable;

/**
 * Something a person should know about a file that was read all the same: its encoding, a column that was ignored.
 *
 * @param file name of the file
 * @param sheet name of the sheet, or null where the whole file is meant
 * @param text the remark, without a full stop
 */
public record Remark(String file, @Nullable String sheet, String text) {
    @Override
    public String toString() {
        return file + (sheet == null ? "" : ", sheet \"" + sheet + '"') + ": " + text + '.';
    }
}
