package dev.injectorplanner.imports;

import dev.injectorplanner.imports.file.ReadSettings;
import dev.injectorplanner.imports.table.Table;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Keeps all that a file hands over. */
class Collected implements RowReceiver {
    static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

    final List<Object> rows = new ArrayList<>();
    final List<Table<?>> tables = new ArrayList<>();
    final List<RowPlace> places = new ArrayList<>();
    final List<RowPlace> refusedPlaces = new ArrayList<>();
    final List<List<Complaint>> refused = new ArrayList<>();
    final List<String> remarks = new ArrayList<>();

    static ReadSettings usual() {
        Function<String, ZoneId> zones = truck -> truck.startsWith("unknown") ? null : CHICAGO;
        return ReadSettings.standard(zones);
    }

    static Collected of(Path file) {
        return of(file, usual());
    }

    static Collected of(Path file, ReadSettings settings) {
        Collected collected = new Collected();
        TableReader.read(file, settings, collected);
        return collected;
    }

    @Override
    public <R> void row(Table<R> table, RowPlace place, R row) {
        rows.add(table.rowType().cast(row));
        tables.add(table);
        places.add(place);
    }

    @Override
    public void refused(Table<?> table, RowPlace place, List<Complaint> complaints) {
        refusedPlaces.add(place);
        refused.add(complaints);
    }

    @Override
    public void remark(Remark remark) {
        remarks.add(remark.toString());
    }

    /** All complaints as a person reads them. */
    List<String> complaints() {
        return refused.stream().flatMap(List::stream).map(Complaint::toString).toList();
    }
}
