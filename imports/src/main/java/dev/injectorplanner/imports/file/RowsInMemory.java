package dev.injectorplanner.imports.file;

import java.util.List;

/**
 * A sheet whose rows are in memory.
 *
 * @param rows cells by row, blank rows among them
 */
record RowsInMemory(String name, boolean hidden, List<String[]> rows, List<String> remarks) implements RawSheet {
    @Override
    public char delimiter() {
        return ',';
    }

    @Override
    public boolean countsCells() {
        return false;
    }

    @Override
    public void read(RawRows to) {
        for (int at = 0; at < rows.size(); at++) {
            to.row(at + 1L, rows.get(at).clone());
        }
    }
}
