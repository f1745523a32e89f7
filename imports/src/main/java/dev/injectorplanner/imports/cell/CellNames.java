package dev.injectorplanner.imports.cell;

/** Names of cells in a sheet: A1, F42, AB7. */
public final class CellNames {
    private CellNames() {}

    /** Letters of a column, from 0: A, B, ..., Z, AA. */
    public static String column(int at) {
        StringBuilder letters = new StringBuilder();
        for (int rest = at + 1; rest > 0; rest = (rest - 1) / 26) {
            letters.insert(0, (char) ('A' + (rest - 1) % 26));
        }
        return letters.toString();
    }

    /** Position of a cell's column, from 0, by its name such as F42; -1 if it is no name of a cell. */
    public static int columnOf(String cell) {
        int column = 0;
        int i = 0;
        while (i < cell.length() && cell.charAt(i) >= 'A' && cell.charAt(i) <= 'Z') {
            column = column * 26 + cell.charAt(i) - 'A' + 1;
            i++;
        }
        return i == 0 || i > 3 || i == cell.length() ? -1 : column - 1;
    }
}
