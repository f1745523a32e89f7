package dev.injectorplanner.app.demo;

import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;

/**
 * The demo's files. They lie in {@code imports/samples/demo} as they are, with the slips of real files added: a row that
 * is a duplicate and two rows that are refused.
 */
public final class SampleFiles {
    private static final String FOLDER = "/samples/demo/";
    private static final String UNKNOWN_TRUCK = "T099,2026-02-27T05:40:00Z,118204.0,,no\n";
    private static final String REMOVED_BEFORE_FITTED = "T003,2,";

    private SampleFiles() {}

    /** Copies the files that came with the program into a folder. */
    public static List<Path> copyTo(Path folder) throws IOException {
        List<Path> files = new ArrayList<>();
        for (Table<?> table : Tables.ALL) {
            String name = FleetFiles.nameOf(table);
            try (InputStream sample = SampleFiles.class.getResourceAsStream(FOLDER + name)) {
                if (sample != null) { // a table of which the demo has no row has no file
                    Path file = folder.resolve(name);
                    Files.copy(sample, file);
                    files.add(file);
                }
            }
        }
        if (files.isEmpty()) {
            throw new IllegalStateException("the program was built without its sample files, " + FOLDER);
        }
        return files;
    }

    /** Makes the files again from the demo's fleet; what lies in {@code imports/samples/demo} must equal them. */
    public static List<Path> make(Path folder) throws IOException {
        List<Path> files = FleetFiles.write(DemoFleet.make().snapshot(), folder);
        slips(folder);
        return files;
    }

    private static void slips(Path folder) throws IOException {
        Path readings = folder.resolve(FleetFiles.nameOf(Tables.READINGS));
        List<String> lines = Files.readAllLines(readings);
        append(readings, lines.get(lines.size() / 2) + "\n" + UNKNOWN_TRUCK);
        Path injectors = folder.resolve(FleetFiles.nameOf(Tables.INJECTORS));
        String removed = Files.readAllLines(injectors).stream()
                .filter(line -> line.startsWith(REMOVED_BEFORE_FITTED))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no row " + REMOVED_BEFORE_FITTED));
        append(injectors, removedTooEarly(removed) + "\n");
    }

    /** The row again under another day of fitting, with a removal the year before it. */
    private static String removedTooEarly(String row) {
        List<String> cells = new ArrayList<>(List.of(row.split(",", -1)));
        List<String> columns =
                Tables.INJECTORS.columns().stream().map(column -> column.name()).toList();
        cells.set(columns.indexOf("fitted_on"), "2025-07-14");
        cells.set(columns.indexOf("removed_on"), "2024-07-14");
        cells.set(columns.indexOf("found"), "worn");
        return String.join(",", cells);
    }

    private static void append(Path file, String text) throws IOException {
        Files.writeString(file, text, StandardOpenOption.APPEND);
    }
}
