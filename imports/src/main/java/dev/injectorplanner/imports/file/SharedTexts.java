package dev.injectorplanner.imports.file;

import dev.injectorplanner.imports.cell.CellText;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** The texts that the cells of a workbook share, without their look and without reading aids. */
final class SharedTexts extends DefaultHandler {
    private static final int BYTES_A_TEXT = 60;

    private final Path file;
    private final long mostBytes;
    private final List<String> texts = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private boolean inText;
    private boolean inAid;
    private long bytes;

    /** @param mostBytes memory that the texts may take */
    SharedTexts(Path file, long mostBytes) {
        this.file = file;
        this.mostBytes = mostBytes;
    }

    /** The text of a number as a cell gives it; empty where there is none. */
    String get(String index) {
        if (!index.matches("[0-9]{1,9}")) {
            return "";
        }
        int at = Integer.parseInt(index);
        return at < texts.size() ? texts.get(at) : "";
    }

    @Override
    public void startElement(String uri, String local, String qualified, Attributes attributes) {
        switch (local) {
            case "si" -> text.setLength(0);
            case "rPh" -> inAid = true;
            case "t" -> inText = !inAid;
            default -> {}
        }
    }

    @Override
    public void characters(char[] chars, int start, int length) {
        if (inText) {
            text.append(chars, start, length);
            refuseBeyond(text.length());
        }
    }

    @Override
    public void endElement(String uri, String local, String qualified) {
        switch (local) {
            case "t" -> inText = false;
            case "rPh" -> inAid = false;
            case "si" -> {
                texts.add(CellText.unescaped(text.toString()));
                bytes += BYTES_A_TEXT + text.length();
                refuseBeyond(0);
            }
            default -> {}
        }
    }

    private void refuseBeyond(int more) {
        if (bytes + more > mostBytes) {
            throw new FileRefusedException(
                    file, "holds more text than fits into memory", "save the table as CSV and load that");
        }
    }
}
