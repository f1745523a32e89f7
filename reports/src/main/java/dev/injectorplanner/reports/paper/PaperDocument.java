package dev.injectorplanner.reports.paper;

import dev.injectorplanner.core.units.SiteForm.PaperSize;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;

/**
 * A document that goes to a supplier: a head with its number, who it is for, facts, tables, and what is asked. All in words
 * and figures as people of the site read them.
 *
 * @param kind such as {@code Purchase order}
 * @param number its number
 * @param to who it is for, line by line
 * @param from who sends it, line by line
 * @param fields facts in the head, in order
 * @param sections parts from top to bottom
 * @param foot the small line at the foot of each page
 * @param pictures photographs at its end
 */
public record PaperDocument(
        String kind,
        String number,
        List<String> to,
        List<String> from,
        List<Field> fields,
        List<Section> sections,
        String foot,
        List<Picture> pictures) {
    public PaperDocument {
        to = List.copyOf(to);
        from = List.copyOf(from);
        fields = List.copyOf(fields);
        sections = List.copyOf(sections);
        pictures = List.copyOf(pictures);
    }

    /** One without photographs. */
    public PaperDocument(
            String kind,
            String number,
            List<String> to,
            List<String> from,
            List<Field> fields,
            List<Section> sections,
            String foot) {
        this(kind, number, to, from, fields, sections, foot, List.of());
    }

    /** The same with photographs at its end. */
    public PaperDocument with(List<Picture> others) {
        return new PaperDocument(kind, number, to, from, fields, sections, foot, others);
    }

    /**
     * A photograph.
     *
     * @param words what it shows
     * @param jpegBase64 the picture, JPEG, in Base64
     */
    public record Picture(String words, String jpegBase64) {}

    /** A fact with its label. */
    public record Field(String label, String value) {}

    /** A column: figures stand at the right, codes in their own letters. */
    public record Column(String name, boolean figure, boolean code) {
        public static Column text(String name) {
            return new Column(name, false, false);
        }

        public static Column figure(String name) {
            return new Column(name, true, false);
        }

        public static Column code(String name) {
            return new Column(name, false, true);
        }
    }

    /**
     * A part of the document.
     *
     * @param title its heading, or empty
     * @param lead sentences above its table
     * @param columns columns of its table; none for no table
     * @param rows rows, each with a cell a column
     * @param sums lines below the table: label and value
     * @param closing sentences below
     */
    public record Section(
            String title,
            List<String> lead,
            List<Column> columns,
            List<List<String>> rows,
            List<Field> sums,
            List<String> closing) {
        public Section {
            lead = List.copyOf(lead);
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
            sums = List.copyOf(sums);
            closing = List.copyOf(closing);
        }

        /** Sentences alone. */
        public static Section said(String title, List<String> lines) {
            return new Section(title, lines, List.of(), List.of(), List.of(), List.of());
        }
    }

    /** Writes it as PDF. */
    public void write(PaperSize size, OutputStream out) throws IOException {
        writeAll(List.of(this), size, out);
    }

    /** Writes several into one file, each from a page of its own. */
    public static void writeAll(List<PaperDocument> documents, PaperSize size, OutputStream out) throws IOException {
        PdfPage.write(
                "paper/document",
                Map.of("documents", documents, "size", size == PaperSize.LETTER ? "letter" : "A4"),
                out);
    }
}
