package dev.injectorplanner.app.intake;

import dev.injectorplanner.app.intake.Batch.Placed;
import dev.injectorplanner.imports.Complaint;
import dev.injectorplanner.imports.RefusedRowsFile;
import dev.injectorplanner.imports.Remark;
import dev.injectorplanner.imports.RowPlace;
import dev.injectorplanner.imports.RowReceiver;
import dev.injectorplanner.imports.TableReader;
import dev.injectorplanner.imports.file.ReadSettings;
import dev.injectorplanner.imports.table.Table;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One file on its way: rows are gathered into batches, and every one is counted. */
final class FileLoad implements RowReceiver {
    private static final int BATCH = 2_000;

    private final Path file;
    private final RowSource source;
    private final Destination destination;
    private final LoadListener listener;
    private final Map<Table<?>, TableCount> counts = new LinkedHashMap<>();
    private final List<Complaint> complaints = new ArrayList<>();
    private final List<Remark> remarks = new ArrayList<>();
    private final @Nullable RefusedRowsFile refusedRows;
    private @Nullable Batch<?> batch;
    private List<Placed<?>> held = List.of();
    private long done;
    private long refusedSoFar;

    /** Where rows come from: a file, a form, or another program. */
    @FunctionalInterface
    interface RowSource {
        void read(ReadSettings settings, RowReceiver receiver);
    }

    /** @param refusedRows where refused rows are written, or null where they are only reported */
    FileLoad(
            Path file,
            RowSource source,
            @Nullable RefusedRowsFile refusedRows,
            Destination destination,
            LoadListener listener) {
        this.file = file;
        this.source = source;
        this.destination = destination;
        this.listener = listener;
        this.refusedRows = refusedRows;
    }

    static FileLoad of(Path file, LoadSettings settings, Destination destination, LoadListener listener) {
        RefusedRowsFile refusedRows = settings.writesRefused() ? RefusedRowsFile.beside(file) : null;
        return new FileLoad(
                file,
                (reading, receiver) -> TableReader.read(file, reading, receiver),
                refusedRows,
                destination,
                listener);
    }

    static FileLoad ofLog(
            LogRows rows, Path file, LoadSettings settings, Destination destination, LoadListener listener) {
        RefusedRowsFile refusedRows = settings.writesRefused() ? RefusedRowsFile.beside(file) : null;
        return new FileLoad(file, rows, refusedRows, destination, listener);
    }

    FileReport run(ReadSettings settings) {
        MeterRemarks meters = new MeterRemarks(file);
        destination.meters().listen(meters);
        try {
            source.read(settings, this);
            finishTable();
        } finally {
            if (refusedRows != null) {
                refusedRows.close();
            }
        }
        boolean anyRefused = counts.values().stream().anyMatch(count -> count.refused() > 0);
        boolean applied = destination.writes() && (destination.batches() || !anyRefused);
        if (applied) {
            destination.writer().commit();
        }
        remarks.addAll(meters.remarks());
        List<Path> written = refusedRows == null ? List.of() : refusedRows.files();
        return new FileReport(
                file, applied, null, List.copyOf(counts.values()), complaints, List.of(), remarks, written);
    }

    @Override
    @SuppressWarnings("unchecked") // a batch holds rows of its own table
    public <R> void row(Table<R> table, RowPlace place, R row) {
        if (batch != null && batch.table() != table) {
            finishTable();
        }
        if (batch == null) {
            batch = new Batch<>(table);
        }
        ((Batch<R>) batch).add(place, row);
        if (batch.size() >= BATCH) {
            flush();
        }
    }

    @Override
    public void refused(Table<?> table, RowPlace place, List<Complaint> refused) {
        destination.causes().row(file, table, place, refused);
        leaveOut(table, place, refused);
    }

    private void leaveOut(Table<?> table, RowPlace place, List<Complaint> refused) {
        count(table).refuse();
        complaints.addAll(refused.subList(0, Math.min(refused.size(), FileReport.MOST_COMPLAINTS - complaints.size())));
        if (refusedRows != null) {
            refusedRows.add(place, refused);
        }
        done++;
        refusedSoFar++;
        if (refusedSoFar % BATCH == 0) {
            listener.refused(file, refusedSoFar);
            listener.done(file, done);
            listener.stopIfAsked();
        }
    }

    @Override
    public void remark(Remark remark) {
        remarks.add(remark);
    }

    private TableCount count(Table<?> table) {
        return counts.computeIfAbsent(table, each -> new TableCount(each.name()));
    }

    /** Rows that were held back since their place was taken are tried once more: what took it may have gone since. */
    private void finishTable() {
        flush();
        if (!held.isEmpty() && batch != null) {
            retry(batch.table());
        }
        batch = null;
    }

    @SuppressWarnings("unchecked") // rows are held within one table
    private <R> void retry(Table<R> table) {
        Batch<R> again = new Batch<>(table);
        held.forEach(placed -> again.add(placed.place(), (R) placed.row()));
        held = List.of();
        merge(again, false);
    }

    private void flush() {
        Batch<?> full = batch;
        if (full != null && full.size() > 0) {
            merge(full, true);
            batch = new Batch<>(full.table());
        }
    }

    private <R> void merge(Batch<R> full, boolean hold) {
        BatchMerge<R> merge = new BatchMerge<>(full, destination);
        TableCount count = count(full.table());
        count.count(merge.run());
        if (destination.batches()) {
            destination.writer().commit();
        }
        done += full.size() - merge.refused().size();
        for (BatchMerge.Refused<R> refused : merge.refused()) {
            if (hold && refused.mayPass()) {
                hold(refused.placed());
            } else if (refused.root() != null) {
                destination.causes().dependant(full.table(), refused.placed().place(), refused.root());
                leaveOut(full.table(), refused.placed().place(), List.of(refused.complaint()));
            } else {
                refused(full.table(), refused.placed().place(), List.of(refused.complaint()));
            }
        }
        listener.refused(file, refusedSoFar);
        listener.done(file, done);
        listener.stopIfAsked();
    }

    private void hold(Placed<?> placed) {
        if (held.isEmpty()) {
            held = new ArrayList<>();
        }
        held.add(placed);
    }
}
