package dev.injectorplanner.imports;

import de.siegmar.fastcsv.writer.CsvWriter;
import dev.injectorplanner.imports.cell.FormulaGuard;
import dev.injectorplanner.imports.match.RefusalHeadings;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The refused rows of a file, beside it: {@code trucks.csv} gives {@code trucks.refused.csv}, sheet Trucks of {@code
 * fleet.xlsx} gives {@code fleet.xlsx.Trucks.refused.csv}. Each row says line, column, value, reason and how to fix
 * it, then come the original cells under their own headings, so that a person can correct and load that very file.
 * Where nothing is refused there is no such file, and one from before is removed.
 */
public final class RefusedRowsFile implements AutoCloseable {
    /** Headings that the reader knows and leaves out. */
    static final List<String> OWN_HEADINGS = RefusalHeadings.ALL;

    private static final String END = ".refused.csv";
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private final Path original;
    private final Map<String, CsvWriter> open = new LinkedHashMap<>();
    private final List<Path> written = new ArrayList<>();

    private RefusedRowsFile(Path original) {
        this.original = original;
    }

    /** For the refused rows of a file; nothing is written before the first of them, old ones are removed now. */
    public static RefusedRowsFile beside(Path original) {
        RefusedRowsFile refused = new RefusedRowsFile(original);
        refused.removeOld();
        return refused;
    }

    /** Adds a row that the reader, or a check after it, refused. */
    public void add(RowPlace place, List<Complaint> complaints) {
        Layout layout = place.layout();
        List<Integer> kept = keptPositions(layout.headings());
        CsvWriter csv =
                open.computeIfAbsent(layout.sheet() == null ? "" : layout.sheet(), sheet -> start(layout, kept));
        List<String> cells = new ArrayList<>();
        cells.add(String.valueOf(place.line()));
        cells.add(joined(complaints, Complaint::column));
        cells.add(joined(complaints, Complaint::value));
        cells.add(joined(complaints, Complaint::reason));
        cells.add(joined(complaints, Complaint::fix));
        List<String> original = place.cells();
        kept.stream().map(at -> at < original.size() ? original.get(at) : "").forEach(cells::add);
        for (int at = layout.headings().size(); at < original.size(); at++) {
            cells.add(original.get(at));
        }
        csv.writeRecord(cells.stream().map(FormulaGuard::guarded).toList());
    }

    /** The files written so far. */
    public List<Path> files() {
        return List.copyOf(written);
    }

    private static String joined(List<Complaint> complaints, Function<Complaint, String> part) {
        return complaints.stream().map(part).collect(Collectors.joining("; "));
    }

    /** A refused file that is loaded again and refused again does not carry its own first columns twice. */
    private static List<Integer> keptPositions(List<String> headings) {
        List<Integer> kept = new ArrayList<>();
        for (int at = 0; at < headings.size(); at++) {
            if (!isOwn(headings.get(at))) {
                kept.add(at);
            }
        }
        return kept;
    }

    static boolean isOwn(String heading) {
        return RefusalHeadings.isOne(heading);
    }

    private CsvWriter start(Layout layout, List<Integer> kept) {
        Path file = original.resolveSibling(nameFor(layout.sheet()));
        try {
            Writer to = Files.newBufferedWriter(file, StandardCharsets.UTF_8);
            written.add(file);
            to.write(BYTE_ORDER_MARK); // so that spreadsheet programs read the names right
            CsvWriter csv =
                    CsvWriter.builder().fieldSeparator(layout.delimiter()).build(to);
            List<String> headings = new ArrayList<>(OWN_HEADINGS);
            kept.forEach(at -> headings.add(layout.headings().get(at)));
            csv.writeRecord(headings.stream().map(FormulaGuard::guarded).toList());
            return csv;
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write the refused rows to " + file, e);
        }
    }

    private String nameFor(@Nullable String sheet) {
        String name = FileRefusedException.nameOf(original);
        if (sheet != null) {
            return name + "." + sheet.replaceAll("[^\\p{L}\\p{N} _-]", "_") + END;
        }
        int dot = name.lastIndexOf('.');
        return (dot > 0 ? name.substring(0, dot) : name) + END;
    }

    private void removeOld() {
        Path folder = original.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            return;
        }
        String name = FileRefusedException.nameOf(original);
        String ofText = nameFor(null);
        try (DirectoryStream<Path> beside =
                Files.newDirectoryStream(folder, file -> isOld(FileRefusedException.nameOf(file), name, ofText))) {
            for (Path old : beside) {
                Files.deleteIfExists(old);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("cannot remove the refused rows of an earlier load of " + original, e);
        }
    }

    private static boolean isOld(String file, String original, String ofText) {
        boolean ofSheets = original.toLowerCase(Locale.ROOT).matches(".*\\.(xls[xm]?|ods)");
        return ofSheets ? file.startsWith(original + ".") && file.endsWith(END) : file.equals(ofText);
    }

    @Override
    public void close() {
        for (CsvWriter csv : open.values()) {
            try {
                csv.close();
            } catch (IOException e) {
                throw new UncheckedIOException("cannot finish the refused rows beside " + original, e);
            }
        }
        open.clear();
    }
}
