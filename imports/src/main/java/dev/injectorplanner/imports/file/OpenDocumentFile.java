package dev.injectorplanner.imports.file;

import dev.injectorplanner.imports.cell.CellText;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** A spreadsheet of the OpenDocument standard (ODS, ISO/IEC 26300): its {@code content.xml}, read as a stream of events. */
final class OpenDocumentFile implements RawFile {
    private static final String TYPE = "application/vnd.oasis.opendocument.spreadsheet";
    private static final int MOST_COLUMNS = 16_384;
    private static final int MOST_ROWS = 1_048_576;

    private final List<RawSheet> sheets = new ArrayList<>();

    private OpenDocumentFile() {}

    /** Whether a ZIP file is such a spreadsheet. */
    static boolean is(Path file) {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            ZipEntry type = zip.getEntry("mimetype");
            return type != null
                    && new String(zip.getInputStream(type).readNBytes(60), StandardCharsets.US_ASCII).startsWith(TYPE);
        } catch (IOException | RuntimeException e) {
            return false;
        }
    }

    static OpenDocumentFile open(Path file, long mostBytes) {
        OpenDocumentFile read = new OpenDocumentFile();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            ZipEntry content = zip.getEntry("content.xml");
            if (content == null) {
                throw new FileRefusedException(file, "is an OpenDocument file without content", "save it again");
            }
            if (content.getSize() > mostBytes
                    || content.getSize() > 200 * Math.max(1 << 16, content.getCompressedSize())) {
                throw new FileRefusedException(file, "unpacks to far too much", "save the table as CSV and load that");
            }
            XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
            factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
            factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
            try (InputStream in = zip.getInputStream(content)) {
                XMLStreamReader xml = factory.createXMLStreamReader(in);
                while (xml.hasNext()) {
                    if (xml.next() == XMLStreamReader.START_ELEMENT
                            && xml.getLocalName().equals("table")) {
                        read.sheets.add(sheet(xml));
                    }
                }
            }
        } catch (XMLStreamException e) {
            throw new FileRefusedException(
                    file,
                    "is an OpenDocument file that is damaged or protected by a password",
                    "open it, and save a copy without a password",
                    e);
        } catch (IOException e) {
            throw new FileRefusedException(file, "cannot be read to its end", "copy or download it again", e);
        }
        return read;
    }

    private static RawSheet sheet(XMLStreamReader xml) throws XMLStreamException {
        String name = attribute(xml, "name", "Sheet");
        List<String[]> rows = new ArrayList<>();
        int blank = 0;
        int merged = 0;
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamReader.END_ELEMENT && xml.getLocalName().equals("table")) {
                break;
            }
            if (event != XMLStreamReader.START_ELEMENT || !xml.getLocalName().equals("table-row")) {
                continue;
            }
            int times = repeated(xml, "number-rows-repeated", MOST_ROWS);
            Cells cells = new Cells();
            merged += cells.read(xml);
            String[] row = cells.row();
            if (row.length == 0) {
                blank += times; // the empty rest of a sheet is one row a million times
                continue;
            }
            for (; blank > 0 && rows.size() < MOST_ROWS; blank--) {
                rows.add(new String[0]);
            }
            for (int i = 0; i < times && rows.size() < MOST_ROWS; i++) {
                rows.add(row);
            }
        }
        List<String> remarks = merged == 0
                ? List.of()
                : List.of("merged areas (" + merged
                        + "): only the first cell of each holds its value; the others are empty");
        return new RowsInMemory(name, false, rows, remarks);
    }

    /** The cells of one row. */
    private static final class Cells {
        private String[] cells = new String[16];
        private int at;
        private int width;

        /** @return how many merged areas begin here */
        int read(XMLStreamReader xml) throws XMLStreamException {
            int merged = 0;
            while (xml.hasNext()) {
                int event = xml.next();
                if (event == XMLStreamReader.END_ELEMENT && xml.getLocalName().equals("table-row")) {
                    break;
                }
                if (event == XMLStreamReader.START_ELEMENT
                        && (xml.getLocalName().equals("table-cell")
                                || xml.getLocalName().equals("covered-table-cell"))) {
                    merged += xml.getAttributeValue(xml.getNamespaceURI(), "number-columns-spanned") == null ? 0 : 1;
                    int times = repeated(xml, "number-columns-repeated", MOST_COLUMNS);
                    put(value(xml), times);
                }
            }
            return merged;
        }

        private void put(String value, int times) {
            if (!value.isEmpty()) {
                int end = Math.min(MOST_COLUMNS, at + times);
                if (end > cells.length) {
                    cells = Arrays.copyOf(cells, Math.min(MOST_COLUMNS, Math.max(end, 2 * cells.length)));
                }
                for (int i = at; i < end; i++) {
                    cells[i] = value;
                }
                width = Math.max(width, end);
            }
            at = Math.min(MOST_COLUMNS, at + times);
        }

        String[] row() {
            String[] row = Arrays.copyOf(cells, width);
            for (int i = 0; i < width; i++) {
                row[i] = row[i] == null ? "" : row[i];
            }
            return row;
        }
    }

    private static String value(XMLStreamReader xml) throws XMLStreamException {
        String type = office(xml, "value-type");
        String value = office(xml, "value");
        String day = office(xml, "date-value");
        String truth = office(xml, "boolean-value");
        boolean formula = xml.getAttributeValue(xml.getNamespaceURI(), "formula") != null;
        String cell = xml.getLocalName();
        String text = text(xml, cell);
        return switch (type) {
            case "float", "currency" -> number(value, false);
            case "percentage" -> number(value, true);
            case "date" -> day.replace("T00:00:00", "").strip();
            case "boolean" -> truth.equals("true") ? "yes" : "no";
            case "" -> formula && text.isEmpty() ? CellText.NO_RESULT : text;
            default -> text;
        };
    }

    private static String number(String value, boolean percent) {
        try {
            double number = Double.parseDouble(value);
            return percent ? SheetRows.percent(number) : SheetRows.plain(number);
        } catch (NumberFormatException e) {
            return value;
        }
    }

    /** The paragraphs of a cell, joined by blanks; notes beside it are left out. */
    private static String text(XMLStreamReader xml, String cell) throws XMLStreamException {
        StringBuilder text = new StringBuilder();
        int notes = 0;
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamReader.END_ELEMENT) {
                if (xml.getLocalName().equals(cell)) {
                    break;
                }
                notes -= xml.getLocalName().equals("annotation") ? 1 : 0;
            } else if (event == XMLStreamReader.START_ELEMENT) {
                notes += xml.getLocalName().equals("annotation") ? 1 : 0;
                boolean breaks =
                        xml.getLocalName().equals("p") || xml.getLocalName().equals("s");
                text.append(breaks && notes == 0 && text.length() > 0 ? " " : "");
            } else if (event == XMLStreamReader.CHARACTERS && notes == 0) {
                text.append(xml.getText());
            }
        }
        return text.toString().strip();
    }

    private static String office(XMLStreamReader xml, String name) {
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            boolean office = xml.getAttributeNamespace(i) != null
                    && xml.getAttributeNamespace(i).endsWith(":office:1.0");
            if (office && xml.getAttributeLocalName(i).equals(name)) {
                return xml.getAttributeValue(i);
            }
        }
        return "";
    }

    private static String attribute(XMLStreamReader xml, String name, String otherwise) {
        String value = xml.getAttributeValue(xml.getNamespaceURI(), name);
        return value == null ? otherwise : value;
    }

    private static int repeated(XMLStreamReader xml, String name, int most) {
        String value = xml.getAttributeValue(xml.getNamespaceURI(), name);
        return value == null || !value.matches("[0-9]{1,8}") ? 1 : Math.max(1, Math.min(most, Integer.parseInt(value)));
    }

    @Override
    public List<RawSheet> sheets() {
        return sheets;
    }

    @Override
    public void close() {
        // everything is in memory
    }
}
