package dev.injectorplanner.imports.file;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.imports.cell.CellForm;
import dev.injectorplanner.imports.cell.CellNames;
import dev.injectorplanner.imports.cell.CellText;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Arrays;
import org.apache.poi.ss.usermodel.DateUtil;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** The rows of one sheet as texts: dates in ISO form, numbers with a dot, formulas by their saved result. */
final class SheetRows extends DefaultHandler {
    private static final int MOST_COLUMNS = 16_384;

    private final SharedTexts texts;
    private final CellStyles styles;
    private final boolean from1904;
    private final RawRows rows;

    private String[] cells = new String[16];
    private int width;
    private long line;
    private int at = -1;
    private String type = "";
    private int style;
    private boolean formula;
    private boolean hasValue;
    private boolean collects;
    private boolean inAid;
    private final StringBuilder text = new StringBuilder();
    private long hiddenRows;
    private long mergedAreas;

    SheetRows(SharedTexts texts, CellStyles styles, boolean from1904, RawRows rows) {
        this.texts = texts;
        this.styles = styles;
        this.from1904 = from1904;
        this.rows = rows;
    }

    long hiddenRows() {
        return hiddenRows;
    }

    long mergedAreas() {
        return mergedAreas;
    }

    @Override
    public void startElement(String uri, String local, String qualified, Attributes attributes) {
        switch (local) {
            case "row" -> startRow(attributes);
            case "c" -> startCell(attributes);
            case "f" -> formula = true;
            case "v" -> {
                hasValue = true;
                collects = true;
            }
            case "rPh" -> inAid = true;
            case "t" -> collects = type.equals("inlineStr") && !inAid;
            case "mergeCell" -> mergedAreas++;
            default -> {}
        }
    }

    private void startRow(Attributes attributes) {
        String number = attributes.getValue("r");
        line = number != null && number.matches("[0-9]{1,9}") ? Long.parseLong(number) : line + 1;
        String hidden = attributes.getValue("hidden");
        hiddenRows += "1".equals(hidden) || "true".equals(hidden) ? 1 : 0;
        width = 0;
        at = -1;
    }

    private void startCell(Attributes attributes) {
        String name = attributes.getValue("r");
        int named = name == null ? -1 : CellNames.columnOf(name);
        at = named >= 0 && named < MOST_COLUMNS ? named : at + 1;
        type = CellText.orEmpty(attributes.getValue("t"));
        String given = attributes.getValue("s");
        style = given != null && given.matches("[0-9]{1,6}") ? Integer.parseInt(given) : 0;
        formula = false;
        hasValue = false;
        text.setLength(0);
    }

    @Override
    public void characters(char[] chars, int start, int length) {
        if (collects && text.length() < TextScan.LONGEST_LINE) {
            text.append(chars, start, length);
        }
    }

    @Override
    public void endElement(String uri, String local, String qualified) {
        switch (local) {
            case "v", "t" -> collects = false;
            case "rPh" -> inAid = false;
            case "c" -> put(value());
            case "row" -> endRow();
            default -> {}
        }
    }

    private void endRow() {
        if (width > 0) {
            String[] row = Arrays.copyOf(cells, width);
            for (int i = 0; i < width; i++) {
                row[i] = row[i] == null ? "" : row[i];
            }
            rows.row(line, row);
        }
        Arrays.fill(cells, null);
    }

    private void put(String value) {
        if (value.isEmpty() || at >= MOST_COLUMNS) {
            return;
        }
        if (at >= cells.length) {
            cells = Arrays.copyOf(cells, Math.min(MOST_COLUMNS, Math.max(at + 1, 2 * cells.length)));
        }
        cells[at] = value;
        width = Math.max(width, at + 1);
    }

    private String value() {
        String stored = text.toString();
        if (formula && !hasValue && !type.equals("inlineStr")) {
            return CellText.NO_RESULT;
        }
        return switch (type) {
            case "s" -> texts.get(stored.strip());
            case "str", "inlineStr" -> CellText.unescaped(stored);
            case "b" -> stored.isEmpty() ? "" : stored.strip().equals("1") ? "yes" : "no";
            case "e", "d" -> stored;
            default -> stored.isEmpty() ? "" : number(stored.strip());
        };
    }

    private String number(String stored) {
        double value;
        try {
            value = Double.parseDouble(stored);
        } catch (NumberFormatException e) {
            return stored;
        }
        return switch (styles.of(style)) {
            case DATE -> date(value, from1904);
            case PERCENT -> percent(value);
            case NUMBER -> plain(value);
        };
    }

    /** A real number is never in doubt: 428.125 becomes 428.1250, which nobody can take for thousands. */
    static String plain(double value) {
        String text = Require.plain(value);
        return CellForm.readsTwoWays(text) ? text + "0" : text;
    }

    /** As it is shown: 0.5 is 50%. */
    static String percent(double value) {
        return new BigDecimal(Require.plain(value))
                        .movePointRight(2)
                        .stripTrailingZeros()
                        .toPlainString() + "%";
    }

    static String date(double value, boolean from1904) {
        LocalDateTime at = DateUtil.isValidExcelDate(value) ? DateUtil.getLocalDateTime(value, from1904, true) : null;
        if (at == null) {
            return Require.plain(value);
        }
        return at.toLocalTime().equals(LocalTime.MIDNIGHT) ? at.toLocalDate().toString() : at.toString();
    }
}
