package dev.injectorplanner.app.intake;

import dev.injectorplanner.imports.RowPlace;
import dev.injectorplanner.imports.table.Table;
import java.util.ArrayList;
import java.util.List;

/** Rows of one table on their way, each with its place in the file. */
final class Batch<R> {
    private final Table<R> table;
    private final List<Placed<R>> rows = new ArrayList<>();

    record Placed<R>(RowPlace place, R row) {}

    Batch(Table<R> table) {
        this.table = table;
    }

    Table<R> table() {
        return table;
    }

    void add(RowPlace place, R row) {
        rows.add(new Placed<>(place, row));
    }

    List<Placed<R>> rows() {
        return rows;
    }

    int size() {
        return rows.size();
    }
}
