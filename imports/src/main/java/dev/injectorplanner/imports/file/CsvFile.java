package dev.injectorplanner.imports.file;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import dev.injectorplanner.imports.cell.FormulaGuard;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A text file of rows (RFC 4180), with comma, semicolon or tab between cells. */
public final class CsvFile implements RawFile, RawSheet {
    /** A quoted cell of several lines may be this long, characters; a longer one is a quote that was never closed. */
    private static final int LONGEST_CELL = 2 * TextScan.LONGEST_LINE;

    private final Path file;
    private final TextScan scan;
    private final char delimiter;
    private final List<String> remarks = new ArrayList<>();

    private CsvFile(Path file, TextScan scan) {
        this.file = file;
        this.scan = scan;
        this.delimiter = Delimiter.of(firstLines());
        if (scan.firstLineNotUtf8() > 0) {
            remarks.add("line " + scan.firstLineNotUtf8() + " is not UTF-8; the file was read as Windows-1252");
        }
        if (delimiter != ',') {
            remarks.add("the cells are separated by " + (delimiter == ';' ? "semicolons" : "tabs"));
        }
    }

    public static CsvFile open(Path file) {
        return new CsvFile(file, TextScan.of(file));
    }

    @Override
    public List<RawSheet> sheets() {
        return List.of(this);
    }

    @Override
    public List<String> remarks() {
        return remarks;
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
        return delimiter;
    }

    @Override
    public boolean countsCells() {
        return true;
    }

    @Override
    public void close() {
        // nothing stays open between two readings
    }

    @Override
    public void read(RawRows rows) {
        try (CsvReader<CsvRecord> csv = CsvReader.builder()
                .fieldSeparator(delimiter)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .skipEmptyLines(true)
                .allowUnclosedQuote(false)
                .maxBufferSize(LONGEST_CELL)
                .ofCsvRecord(reader())) {
            for (CsvRecord record : csv) {
                String[] cells = record.getFields().toArray(String[]::new);
                for (int at = 0; at < cells.length; at++) {
                    cells[at] = FormulaGuard.unguarded(cells[at]);
                }
                rows.row(record.getStartingLineNumber(), cells);
            }
        } catch (HandOverFailed e) {
            throw e;
        } catch (CsvParseException e) {
            throw notRead(e);
        } catch (UncheckedIOException | IOException e) {
            throw new FileRefusedException(file, "cannot be read to its end", "check the disk, or copy it again", e);
        }
    }

    private FileRefusedException notRead(CsvParseException e) {
        String words = String.valueOf(e.getMessage());
        String where = words.replaceAll("(?s).*starting at line ([0-9]+).*", "$1");
        String row = where.matches("[0-9]+") ? "the row that starts in line " + where : "a row";
        if (words.startsWith("Unexpected character after closing quote")) {
            return new FileRefusedException(
                    file,
                    row + " has text after a closing quotation mark",
                    "close the quotation mark at the end of its cell, and double any quotation mark inside a cell",
                    e);
        }
        if (words.contains("surpassed the maximum limit")) {
            return new FileRefusedException(
                    file,
                    row + " has more cells than any table can have",
                    "check that the export ends each row with a line break",
                    e);
        }
        return new FileRefusedException(
                file,
                row + " opens a quotation mark that is never closed",
                "close it, or double a quotation mark inside a cell",
                e);
    }

    private Reader reader() throws IOException {
        InputStream in = Files.newInputStream(file);
        if (scan.hasMark()) {
            in.skipNBytes(3);
        }
        return new BufferedReader(new InputStreamReader(in, scan.charset()));
    }

    /** The first lines that are not blank. */
    private List<String> firstLines() {
        List<String> first = new ArrayList<>();
        try (BufferedReader lines = (BufferedReader) reader()) {
            String line = lines.readLine();
            while (line != null && first.size() < Delimiter.LINES) {
                if (!line.isBlank()) {
                    first.add(line);
                }
                line = lines.readLine();
            }
        } catch (IOException e) {
            throw new FileRefusedException(file, "cannot be read", "check that you have permission to read it", e);
        }
        if (first.isEmpty()) {
            throw new FileRefusedException(file, "holds only blank lines", "export it again");
        }
        return first;
    }
}
