package dev.injectorplanner.imports.file;

/** Takes the rows of a file or sheet as they stand there, blank ones and headings too. */
@FunctionalInterface
public interface RawRows {
    /**
     * Takes one row.
     *
     * @param line line or row number as a person counts, from 1
     * @param cells the cells as text, none null
     */
    void row(long line, String[] cells);

    static boolean isBlank(String[] cells) {
        for (String cell : cells) {
            if (!cell.isBlank()) {
                return false;
            }
        }
        return true;
    }
}
