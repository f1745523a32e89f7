package dev.injectorplanner.app.intake;

import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.imports.TableReader;
import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.file.GivenRows;
import dev.injectorplanner.imports.file.ReadSettings;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.vehicle.LogNameRule;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Files into the store. Files that others refer to go first, whatever their order on the command line. */
public final class Intake {
    private final Store store;
    private final Supplier<LogNameRule> logNames;

    /** With the planner's own rule for the names of vehicle logs. */
    public Intake(Store store) {
        this(store, () -> new LogNameRule(LogNameRule.STANDARD));
    }

    /** @param logNames how the file name of a vehicle log tells its truck */
    public Intake(Store store, Supplier<LogNameRule> logNames) {
        this.store = store;
        this.logNames = logNames;
    }

    /** How files of known sources are read. */
    public KeptMatches matches() {
        return new KeptMatches(store);
    }

    /**
     * Loads files, or only checks them.
     *
     * @return a report a file, in the order of loading; refused files come first
     */
    public List<FileReport> load(List<Path> files, LoadSettings given, LoadListener listener) {
        List<FileMatch> known = new ArrayList<>(
                matches().list().stream().map(KeptMatches.Kept::match).toList());
        known.addAll(given.matches());
        LoadSettings settings = given.withMatches(known);
        List<FileReport> reports = new ArrayList<>();
        List<FileScan> scans = new ArrayList<>();
        Causes causes = new Causes();
        try (StoreWriter writer = store.writer()) {
            ReadSettings reading = reading(settings, new References(writer));
            for (Path file : withoutOwnRefusals(files)) {
                try {
                    scans.add(LogRows.isLog(file, settings) ? FileScan.ofLog(file) : FileScan.of(file, reading));
                } catch (FileRefusedException e) {
                    causes.file(e, file);
                    report(FileReport.refused(file, String.valueOf(e.getMessage())), reports, listener);
                }
            }
        }
        scans.sort(Comparator.comparingInt(FileScan::rank));
        if (settings.mode() == Mode.CHECK) {
            check(scans, settings, listener, reports, causes);
        } else {
            scans.forEach(scan -> report(load(scan, settings, listener, causes), reports, listener));
        }
        return reports.stream()
                .map(report -> report.withCauses(causes.of(report.file())))
                .toList();
    }

    /** A refused-rows file whose original is loaded along is left out: it is about to be made again. */
    private static List<Path> withoutOwnRefusals(List<Path> files) {
        Set<String> made = files.stream()
                .map(file -> file.toString().replaceFirst("\\.[^.]*$", "") + ".refused.csv")
                .collect(Collectors.toSet());
        return files.stream().filter(file -> !made.contains(file.toString())).toList();
    }

    private static void report(FileReport report, List<FileReport> reports, LoadListener listener) {
        reports.add(report);
        listener.finished(report);
    }

    /** One writer for all files, so that a file may refer to what is in another; nothing is written. */
    private void check(
            List<FileScan> scans,
            LoadSettings settings,
            LoadListener listener,
            List<FileReport> reports,
            Causes causes) {
        try (StoreWriter writer = store.writer()) {
            Destination nowhere = Destination.nowhere(writer, causes);
            scans.forEach(scan -> report(pass(scan, settings, nowhere, listener), reports, listener));
        }
    }

    private FileReport load(FileScan scan, LoadSettings settings, LoadListener listener, Causes causes) {
        if (settings.mode() == Mode.ALL_OR_NOTHING) {
            try (StoreWriter writer = store.writer()) {
                FileReport tried = pass(scan, settings, Destination.nowhere(writer, causes), trying(listener));
                if (tried.anyRefused()) {
                    causes.nothingStored(scan.file(), tried.tables());
                    return tried;
                }
            }
        }
        try (StoreWriter writer = store.writer()) {
            return pass(scan, settings, Destination.store(writer, settings.mode() == Mode.GOOD_ROWS, causes), listener);
        }
    }

    /** Rows that are only tried are nobody's progress, but may be stopped as well. */
    private static LoadListener trying(LoadListener listener) {
        return new LoadListener() {
            @Override
            public void stopIfAsked() {
                listener.stopIfAsked();
            }
        };
    }

    private FileReport pass(FileScan scan, LoadSettings settings, Destination destination, LoadListener listener) {
        listener.starting(scan.file(), scan.rows());
        FileLoad load = LogRows.isLog(scan.file(), settings)
                ? log(scan.file(), settings, destination, listener, LogClaim.NONE)
                : FileLoad.of(scan.file(), settings, destination, listener);
        try {
            return load.run(reading(settings, destination.references()));
        } catch (FileRefusedException e) { // it was there and whole a moment ago
            destination.causes().file(e, scan.file());
            return FileReport.refused(scan.file(), String.valueOf(e.getMessage()));
        }
    }

    private FileLoad log(
            Path file, LoadSettings settings, Destination destination, LoadListener listener, LogClaim claim) {
        return FileLoad.ofLog(
                new LogRows(file, destination, logNames.get(), claim), file, settings, destination, listener);
    }

    /**
     * Takes one vehicle log in, its good rows.
     *
     * @param claim what its sender says of it
     */
    public FileReport loadLog(Path file, LogClaim claim) {
        LoadSettings settings = LoadSettings.of(Mode.GOOD_ROWS);
        try (StoreWriter writer = store.writer()) {
            if (!LogRows.isLog(file, settings)) {
                throw new FileRefusedException(
                        file,
                        "is not a log of bus frames",
                        "send candump -L lines, a hex table with times, or a pcapng of the CAN interface");
            }
            Destination destination = Destination.store(writer, true, new Causes());
            return log(file, settings, destination, LoadListener.SILENT, claim)
                    .run(reading(settings, destination.references()));
        } catch (FileRefusedException e) {
            return FileReport.refused(file, String.valueOf(e.getMessage()));
        }
    }

    /** Takes rows of a form or another program in, by the rules of files: all of them, or none. */
    public FileReport loadRows(Table<?> table, GivenRows rows) {
        LoadSettings settings = new LoadSettings(table, DateOrder.UNSTATED, Mode.ALL_OR_NOTHING);
        try {
            try (StoreWriter writer = store.writer()) {
                FileReport tried = given(rows, settings, Destination.nowhere(writer, new Causes()));
                if (tried.anyRefused()) {
                    return tried;
                }
            }
            try (StoreWriter writer = store.writer()) {
                return given(rows, settings, Destination.store(writer, false, new Causes()));
            }
        } catch (FileRefusedException e) {
            return FileReport.refused(Path.of(rows.source()), String.valueOf(e.getMessage()));
        }
    }

    private static FileReport given(GivenRows rows, LoadSettings settings, Destination destination) {
        return new FileLoad(
                        Path.of(rows.source()),
                        (reading, receiver) -> TableReader.read(rows, reading, receiver),
                        null,
                        destination,
                        LoadListener.SILENT)
                .run(reading(settings, destination.references()));
    }

    private static ReadSettings reading(LoadSettings settings, References references) {
        Function<String, @Nullable ZoneId> zoneOfTruck = references::zoneOfTruck;
        return ReadSettings.standard(zoneOfTruck)
                .withAs(settings.as())
                .withDates(settings.dates())
                .withNumbers(settings.numbers())
                .withMatches(settings.matches())
                .withTruckOf(references::truckOfVin)
                .withNameOf(references::nameOf);
    }
}
