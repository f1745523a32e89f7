package dev.injectorplanner.imports.propose;

import dev.injectorplanner.imports.Complaint;
import dev.injectorplanner.imports.Remark;
import dev.injectorplanner.imports.RowPlace;
import dev.injectorplanner.imports.RowReceiver;
import dev.injectorplanner.imports.TableReader;
import dev.injectorplanner.imports.file.ReadSettings;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.table.Table;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/** The rows of a file as it is loaded by a match. */
final class ReadRows implements RowReceiver {
    final List<Object> rows = new ArrayList<>();
    final List<String> complaints = new ArrayList<>();
    final List<String> remarks = new ArrayList<>();

    /** @param matches how files of known sources are read */
    static ReadRows of(Path file, KnownNames known, FileMatch... matches) {
        ReadRows read = new ReadRows();
        TableReader.read(
                file,
                ReadSettings.standard(truck -> ZoneOffset.UTC)
                        .withMatches(List.of(matches))
                        .withNameOf((column, cell) -> known.alike(column, cell).orElse(cell)),
                read);
        return read;
    }

    <R> List<R> of(Class<R> type) {
        return rows.stream().map(type::cast).toList();
    }

    @Override
    public <R> void row(Table<R> table, RowPlace place, R row) {
        rows.add(row);
    }

    @Override
    public void refused(Table<?> table, RowPlace place, List<Complaint> refused) {
        refused.forEach(each -> complaints.add(each.toString()));
    }

    @Override
    public void remark(Remark remark) {
        remarks.add(remark.toString());
    }
}
