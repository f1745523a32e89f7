package dev.injectorplanner.imports.file;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Rows that come from a form or another program instead of a file. They are read by the same rules; row n counts as line
 * n + 1, below the headings.
 *
 * @param source what complaints call the place they come from
 * @param headings headings as in a file; one may name another unit
 * @param rows texts of the cells, as many a row as there are headings; a line break counts as a blank
 */
public record GivenRows(String source, List<String> headings, List<List<String>> rows) implements RawFile, RawSheet {
    public GivenRows {
        headings = List.copyOf(headings);
        rows = rows.stream()
                .map(row -> row.stream().map(GivenRows::oneLine).toList())
                .toList();
        for (List<String> row : rows) {
            if (row.size() != headings.size()) {
                throw new IllegalArgumentException("a row has " + row.size() + " cells for " + headings.size()
                        + " headings; give each heading a cell, if need be an empty one");
            }
        }
    }

    private static String oneLine(String cell) {
        return cell.replace('\r', ' ').replace('\n', ' ').replace('\0', ' ');
    }

    @Override
    public List<RawSheet> sheets() {
        return List.of(this);
    }

    @Override
    public void close() {
        // there is nothing to close
    }

    @Override
    public @Nullable String name() {
        return null;
    }

    @Override
    public boolean hidden() {
        return false;
    }

    @Override
    public char delimiter() {
        return ',';
    }

    @Override
    public boolean countsCells() {
        return true;
    }

    @Override
    public void read(RawRows to) {
        List<List<String>> all = new ArrayList<>(rows);
        all.add(0, headings);
        for (int at = 0; at < all.size(); at++) {
            to.row(at + 1, all.get(at).toArray(String[]::new));
        }
    }

    @Override
    public List<String> remarks() {
        return List.of();
    }
}
