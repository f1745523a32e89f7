package dev.injectorplanner.app.intake;

import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.LogSource;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.imports.Remark;
import dev.injectorplanner.imports.RowReceiver;
import dev.injectorplanner.imports.TableReader;
import dev.injectorplanner.imports.bus.BusLog;
import dev.injectorplanner.imports.bus.LogClock;
import dev.injectorplanner.imports.file.GivenRows;
import dev.injectorplanner.imports.file.ReadSettings;
import dev.injectorplanner.imports.j1939.SpnLayout;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import dev.injectorplanner.imports.table.Column;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import dev.injectorplanner.imports.vehicle.LogContents;
import dev.injectorplanner.imports.vehicle.LogListener;
import dev.injectorplanner.imports.vehicle.LogNameRule;
import dev.injectorplanner.imports.vehicle.LogRouting;
import dev.injectorplanner.imports.vehicle.TruckLog;
import dev.injectorplanner.imports.vehicle.VehicleLog;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A vehicle log as rows of the tables readings and faults. It is read twice: once for its VINs, once for the rest, since the
 * truck decides whose clock times without an offset go by.
 */
final class LogRows implements FileLoad.RowSource {
    private static final LogRouting NOBODY = new LogRouting(source -> null, source -> SpnLayout.VERSION_4);

    private final Path file;
    private final Destination destination;
    private final LogNameRule rule;
    private final LogClaim claim;

    LogRows(Path file, Destination destination, LogNameRule rule, LogClaim claim) {
        this.file = file;
        this.destination = destination;
        this.rule = rule;
        this.claim = claim;
    }

    static boolean isLog(Path file, LoadSettings settings) {
        return settings.as() == null && BusLog.isLog(file);
    }

    /** Fault messages in a log, for showing how far a load is. */
    static long count(Path file) {
        return VehicleLog.read(file, ZoneOffset.UTC, NOBODY, LogListener.SILENT).faultMessages();
    }

    @Override
    public void read(ReadSettings settings, RowReceiver receiver) {
        LogContents first = VehicleLog.read(file, ZoneOffset.UTC, NOBODY, LogListener.SILENT);
        if (first.tally().clock() == LogClock.START_OF_LOG) {
            throw new FileRefusedException(
                    file,
                    "has times that count from the start of the recording, so no day is known",
                    "record it with the clock's time, as candump -L does");
        }
        References known = destination.references();
        LogOwners owners = LogOwners.of(
                file, first.vins(), destination.writer().all(LogSource.class), known.trucks(), rule, claim);
        String truck = owners.anyTruck();
        ZoneId zone = truck == null ? null : known.zoneOfTruck(truck);
        LogContents contents =
                VehicleLog.read(file, zone == null ? ZoneOffset.UTC : zone, owners.routing(), LogListener.SILENT);
        owners.remarks().forEach(text -> remark(receiver, text));
        say(contents, receiver);
        List<Reading> readings = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        for (TruckLog each : contents.trucks()) {
            EpisodeRows rows = new EpisodeRows(each, destination.writer());
            readings.addAll(rows.readings());
            faults.addAll(rows.faults());
            if (each.episodesNotKept() > 0) {
                remark(
                        receiver,
                        Figures.whole(each.episodesNotKept()) + " further faults of truck " + each.truck()
                                + " were not taken: a log holds too many; split it");
            }
        }
        give(Tables.READINGS, readings, settings, receiver);
        give(Tables.FAULTS, faults, settings, receiver);
    }

    private void say(LogContents contents, RowReceiver receiver) {
        remark(
                receiver,
                "vehicle log: " + Figures.count(contents.tally().frames(), "frame", "frames") + ", "
                        + Figures.count(contents.faultMessages(), "fault message", "fault messages"));
        if (contents.tally().damaged() > 0) {
            remark(
                    receiver,
                    Figures.count(contents.tally().damaged(), "damaged line", "damaged lines")
                            + " left out, the first: "
                            + contents.tally().examples().get(0));
        }
        if (contents.lostMessages() > 0) {
            remark(
                    receiver,
                    Figures.count(contents.lostMessages(), "message", "messages")
                            + " of several packets left out because packets are missing");
        }
    }

    private void remark(RowReceiver receiver, String text) {
        receiver.remark(new Remark(FileRefusedException.nameOf(file), null, text));
    }

    private <R> void give(Table<R> table, List<R> rows, ReadSettings settings, RowReceiver receiver) {
        if (!rows.isEmpty()) {
            List<String> headings = table.columns().stream().map(Column::name).toList();
            List<List<@Nullable String>> cells = new ArrayList<>();
            rows.forEach(row -> cells.add(new ArrayList<>(table.cells(row))));
            GivenRows given = new GivenRows(FileRefusedException.nameOf(file), headings, List.copyOf(cells));
            TableReader.read(given, settings.withAs(table), receiver);
        }
    }
}
