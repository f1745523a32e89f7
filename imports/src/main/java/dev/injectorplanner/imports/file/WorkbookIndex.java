package dev.injectorplanner.imports.file;

import java.util.ArrayList;
import java.util.List;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** The list of sheets of a workbook, and the day from which it counts. */
final class WorkbookIndex extends DefaultHandler {
    private final List<Entry> sheets = new ArrayList<>();
    private boolean from1904;

    /** A sheet: its name, the relation that leads to it, whether it is hidden. */
    record Entry(String name, String relation, boolean hidden) {}

    List<Entry> sheets() {
        return sheets;
    }

    /** Whether days are counted from 1904 rather than 1900. */
    boolean from1904() {
        return from1904;
    }

    @Override
    public void startElement(String uri, String local, String qualified, Attributes attributes) {
        if (local.equals("workbookPr")) {
            String value = attributes.getValue("date1904");
            from1904 = "1".equals(value) || "true".equals(value);
        } else if (local.equals("sheet")) {
            String name = attributes.getValue("name");
            String state = attributes.getValue("state");
            String relation = relation(attributes);
            if (name != null && !relation.isEmpty()) {
                sheets.add(new Entry(name, relation, state != null && !state.equals("visible")));
            }
        }
    }

    private static String relation(Attributes attributes) {
        for (int i = 0; i < attributes.getLength(); i++) {
            if (attributes.getLocalName(i).equals("id") && attributes.getURI(i).endsWith("/relationships")) {
                return attributes.getValue(i);
            }
        }
        return "";
    }
}
