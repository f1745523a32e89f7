package dev.injectorplanner.imports.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.DateUtil;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** What the styles of a workbook make of numbers: dates, percentages, or just numbers. */
final class CellStyles extends DefaultHandler {
    private static final int MOST_STYLES = 100_000;

    private final Map<Integer, String> formats = new HashMap<>();
    private final List<Shown> styles = new ArrayList<>();
    private boolean inCellStyles;

    /** How a number is shown. */
    enum Shown {
        NUMBER,
        DATE,
        PERCENT
    }

    /** How a cell of a style shows its number. */
    Shown of(int style) {
        return style >= 0 && style < styles.size() ? styles.get(style) : Shown.NUMBER;
    }

    @Override
    public void startElement(String uri, String local, String qualified, Attributes attributes) {
        if (local.equals("numFmt")) {
            formats.put(number(attributes, "numFmtId"), String.valueOf(attributes.getValue("formatCode")));
        } else if (local.equals("cellXfs")) {
            inCellStyles = true;
        } else if (inCellStyles && local.equals("xf") && styles.size() < MOST_STYLES) {
            styles.add(shown(number(attributes, "numFmtId")));
        }
    }

    @Override
    public void endElement(String uri, String local, String qualified) {
        if (local.equals("cellXfs")) {
            inCellStyles = false;
        }
    }

    private Shown shown(int format) {
        String code = formats.getOrDefault(format, BuiltinFormats.getBuiltinFormat(format));
        if (code == null) {
            return Shown.NUMBER;
        }
        if (DateUtil.isADateFormat(format, code)) {
            return Shown.DATE;
        }
        return code.contains("%") ? Shown.PERCENT : Shown.NUMBER;
    }

    private static int number(Attributes attributes, String name) {
        String value = attributes.getValue(name);
        return value != null && value.matches("[0-9]{1,6}") ? Integer.parseInt(value) : 0;
    }
}
