package dev.injectorplanner.imports;

import dev.injectorplanner.imports.file.TextScan;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Files that are refused as a whole, each with the sentence that says so. */
public final class MalformedFiles {
    private static final String GOOD_HEADINGS = "truck,taken_at,odometer_km\n";
    private static final String GOOD_ROW = "T1,2026-04-03T08:00Z,120500\n";

    private final Path folder;
    private final List<Case> cases = new ArrayList<>();

    /**
     * A broken file.
     *
     * @param name what is broken
     * @param file where it lies
     * @param sentence the whole message of the refusal
     */
    public record Case(String name, Path file, String sentence) {
        @Override
        public String toString() {
            return name;
        }
    }

    private MalformedFiles(Path folder) {
        this.folder = folder;
    }

    /** Writes all broken files into a folder. */
    public static List<Case> in(Path folder) throws IOException {
        MalformedFiles files = new MalformedFiles(folder);
        files.addWrongThings();
        files.addBytes();
        files.addQuotes();
        files.addHeadings();
        files.addUnknownTables();
        files.cases.addAll(MalformedWorkbooks.in(folder));
        return List.copyOf(files.cases);
    }

    private void addWrongThings() throws IOException {
        cases.add(new Case(
                "not there",
                folder.resolve("missing.csv"),
                "missing.csv: is not there. Fix: check the name and the folder."));
        Path inner = Files.createDirectories(folder.resolve("inner.csv"));
        cases.add(new Case("a folder", inner, "inner.csv: is a folder. Fix: name the files in it."));
        add("empty", "readings-empty.csv", "", "is empty. Fix: export it again.");
        add("a mark only", "readings-mark.csv", "\uFEFF", "holds only blank lines. Fix: export it again.");
        add("blank lines", "readings-blank.csv", "\n  \n\n", "holds only blank lines. Fix: export it again.");
        add("blank cells", "readings-commas.csv", ",,\n,,\n", "holds no rows. Fix: export it again.");
        String asTable = " Fix: save the table as CSV (UTF-8) or XLSX and load that.";
        add("PDF", "readings-pdf.csv", "%PDF-1.7\n1 0 obj\n", "is a PDF, not a table." + asTable);
        add("RTF", "readings-rtf.csv", "{\\rtf1\\ansi readings}", "is a text document (RTF), not a table." + asTable);
        add(
                "HTML",
                "readings-page.csv",
                "<!DOCTYPE html><table></table>",
                "is a web page or XML, not a table." + asTable);
        add(
                "XML",
                "readings-xml.csv",
                "<?xml version=\"1.0\"?><a/>",
                "is XML, but no ISO 15143-3 snapshot (Fleet). Fix: save a table as CSV or XLSX and load that.");
        addBytes(
                "PNG",
                "readings-png.csv",
                bytes(0x89, 'P', 'N', 'G', 13, 10, 26, 10),
                "is a picture, not a table." + asTable);
        addBytes("JPEG", "readings-jpg.csv", bytes(0xFF, 0xD8, 0xFF, 0xE0, 0), "is a picture, not a table." + asTable);
        addBytes("GZIP", "readings-gz.csv", bytes(0x1F, 0x8B, 8, 0, 0), "is a compressed file, not a table." + asTable);
    }

    private void addBytes() throws IOException {
        String text = GOOD_HEADINGS + GOOD_ROW;
        addBytes(
                "UTF-16 with its mark",
                "readings-utf16.csv",
                ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE),
                "is written in UTF-16. Fix: save it as UTF-8.");
        addBytes(
                "UTF-16 without its mark",
                "readings-utf16be.csv",
                text.getBytes(StandardCharsets.UTF_16BE),
                "is written in UTF-16. Fix: save it as UTF-8.");
        add(
                "zero byte",
                "readings-zero.csv",
                text + "T2,2026-04-03T08:00Z,\0\n",
                "line 3 holds a zero byte, which a text file never has. Fix: export it again as CSV (UTF-8).");
        addBytes(
                "neither UTF-8 nor Windows-1252",
                "readings-bytes.csv",
                (text + "T\u0081,2026-04-03T08:00Z,7\n").getBytes(StandardCharsets.ISO_8859_1),
                "line 3 holds a byte (81) that is text neither in UTF-8 nor in Windows-1252. Fix: save it as UTF-8.");
        add(
                "endless cells",
                "readings-cells.csv",
                text + ",".repeat(20_000) + "\n",
                "the row that starts in line 3 has more cells than any table can have."
                        + " Fix: check that the export ends each row with a line break.");
        add(
                "long line",
                "readings-long.csv",
                text + "T".repeat(TextScan.LONGEST_LINE + 1),
                "line 3 is longer than 1 MiB. Fix: check that the export ends each row with a line break.");
    }

    private void addQuotes() throws IOException {
        String never = " opens a quotation mark that is never closed. Fix: close it, or double a quotation mark"
                + " inside a cell.";
        String behind = " has text after a closing quotation mark. Fix: close the quotation mark at the end of its"
                + " cell, and double any quotation mark inside a cell.";
        add(
                "quote never closed",
                "readings-quote.csv",
                GOOD_HEADINGS + GOOD_ROW + "\"T2,2026-04-03T09:00Z,7\n" + GOOD_ROW,
                "the row that starts in line 3" + never);
        add(
                "quote never closed in a long file",
                "readings-quotes.csv",
                GOOD_HEADINGS + "\"T2,2026-04-03T09:00Z,7\n" + GOOD_ROW.repeat(90_000),
                "the row that starts in line 2" + never);
        add(
                "text behind a quote",
                "readings-behind.csv",
                GOOD_HEADINGS + "\"T2\"x,2026-04-03T09:00Z,7\n",
                "the row that starts in line 2" + behind);
        add(
                "quote in the headings never closed",
                "readings-head.csv",
                "truck,\"taken_at,odometer_km\nT1,2026-04-03T08:00Z,120500\n",
                "the row that starts in line 1" + never);
    }

    private void addHeadings() throws IOException {
        add(
                "headings only",
                "readings-head-only.csv",
                GOOD_HEADINGS,
                "has headings but no rows. Fix: export it again, with its rows.");
        add(
                "headings and blank lines",
                "readings-head-blank.csv",
                GOOD_HEADINGS + "\n,,\n",
                "has headings but no rows. Fix: export it again, with its rows.");
        add(
                "one column",
                "readings-one.csv",
                "truck\nT1\n",
                "has only one column. Fix: separate the cells by commas, semicolons or tabs.");
        add(
                "separated by bars",
                "readings-bars.csv",
                "truck|taken_at|odometer_km\nT1|2026-04-03|7\n",
                "has only one column. Fix: separate the cells by commas, semicolons or tabs.");
        add(
                "heading twice",
                "readings-twice.csv",
                "truck,taken_at,Truck,odometer_km\nT1,2026-04-03,T1,7\n",
                "column truck is a duplicate, in cell 1 of line 1 and cell 3 of line 1."
                        + " Fix: keep one of the two, and rename or remove the other.");
        add(
                "two units",
                "readings-units.csv",
                "truck,taken_at,odometer_km,odometer_mi\nT1,2026-04-03,7,4\n",
                "column odometer_km is a duplicate, in cell 3 of line 1 and cell 4 of line 1."
                        + " Fix: keep one of the two, and rename or remove the other.");
        add(
                "no unit",
                "readings-unit.csv",
                "truck,taken_at,Odometer\nT1,2026-04-03,7\n",
                "heading \"Odometer\" in cell 3 of line 1 does not name its unit."
                        + " Fix: name it odometer_km or odometer_mi.");
        add(
                "blank heading over a value",
                "readings-blank-heading.csv",
                "truck,,taken_at,odometer_km\nT1,,2026-04-03,7\nT2,x,2026-04-03,7\n",
                "the value in cell 2 of line 3 is under a blank heading."
                        + " Fix: give the column a heading, or clear it.");
        add(
                "missing column",
                "readings-missing.csv",
                "truck,odometer_km\nT1,7\n",
                "is read as table readings but has no column taken_at. Fix: add the column, or rename its heading.");
        add(
                "misspelt column",
                "readings-misspelt.csv",
                "truck,takn at,odometer_km\nT1,2026-04-03,7\n",
                "is read as table readings but has no column taken_at; nearest: \"takn at\" for taken_at."
                        + " Fix: rename the heading, or add the column.");
        add(
                "no headings",
                "readings-bare.csv",
                GOOD_ROW + GOOD_ROW,
                "is read as table readings but has no column truck, taken_at."
                        + " Fix: add the column, or rename its heading.");
        add(
                "another table",
                "trucks-wrong.csv",
                "truck,from,to\nT1,2026-04-03,2026-04-05\n",
                "is read as table trucks but has no column depot, family, in_service_on."
                        + " Fix: add it, or load it as table away, which its headings match.");
    }

    private void addUnknownTables() throws IOException {
        String noTable =
                "matches no table, neither by its name nor by its headings. Fix: match its headings once: match FILE;"
                        + " or say which table it is, such as --as readings.";
        add("no table", "misc.csv", "colour,shape\nred,round\n", noTable);
        add("two names", "parts for trucks.csv", "colour,shape\nred,round\n", noTable);
        add("a letter", "letter.csv", "Dear Sir, we are pleased\nto offer, as agreed\n", noTable);
    }

    private void add(String name, String file, String text, String sentence) throws IOException {
        addBytes(name, file, text.getBytes(StandardCharsets.UTF_8), sentence);
    }

    private void addBytes(String name, String file, byte[] bytes, String sentence) throws IOException {
        Path path = folder.resolve(file);
        Files.write(path, bytes);
        cases.add(new Case(name, path, file + ": " + sentence));
    }

    private static byte[] bytes(int... values) {
        byte[] bytes = new byte[values.length];
        for (int i = 0; i < values.length; i++) {
            bytes[i] = (byte) values[i];
        }
        return bytes;
    }
}
