package dev.injectorplanner.reports.workbook;

import dev.injectorplanner.core.units.SiteForm;
import java.util.EnumMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.ss.usermodel.Workbook;

/** The few styles of a workbook: ink on paper, rules instead of tints. */
final class Styles {
    private static final short TITLE_POINTS = 16;
    private static final short BODY_POINTS = 10;
    private static final String FONT = "Liberation Sans";

    private final Workbook workbook;
    private final SiteForm form;
    private final Map<Format, CellStyle> cells = new EnumMap<>(Format.class);
    private final Map<Format, CellStyle> totals = new EnumMap<>(Format.class);
    private final Map<Format, CellStyle> heads = new EnumMap<>(Format.class);
    private final CellStyle title;
    private final CellStyle remark;
    private final CellStyle quoted;
    private final CellStyle section;

    Styles(Workbook workbook, SiteForm form) {
        this.workbook = workbook;
        this.form = form;
        this.title = workbook.createCellStyle();
        title.setFont(font(TITLE_POINTS, true));
        this.section = workbook.createCellStyle();
        section.setFont(font((short) (BODY_POINTS + 2), true));
        section.setBorderBottom(BorderStyle.MEDIUM);
        this.remark = workbook.createCellStyle();
        remark.setFont(font(BODY_POINTS, false));
        this.quoted = cell(Format.TEXT);
        quoted.setQuotePrefixed(true);
        for (Format format : Format.values()) {
            cells.put(format, cell(format));
            CellStyle total = cell(format);
            total.setFont(font(BODY_POINTS, true));
            total.setBorderTop(BorderStyle.MEDIUM);
            total.setBorderBottom(BorderStyle.NONE);
            totals.put(format, total);
            heads.put(format, head(format));
        }
    }

    private Font font(short points, boolean bold) {
        Font font = workbook.createFont();
        font.setFontName(FONT);
        font.setFontHeightInPoints(points);
        font.setBold(bold);
        return font;
    }

    private CellStyle cell(Format format) {
        CellStyle style = workbook.createCellStyle();
        style.setFont(font(BODY_POINTS, false));
        style.setDataFormat(workbook.createDataFormat().getFormat(format.pattern(form.dates())));
        style.setAlignment(format.alignment());
        style.setVerticalAlignment(VerticalAlignment.CENTER);
        style.setBorderBottom(BorderStyle.HAIR);
        style.setWrapText(format == Format.WRAPPED);
        style.setIndention(indention(format));
        return style;
    }

    private CellStyle head(Format format) {
        CellStyle style = workbook.createCellStyle();
        style.setFont(font(BODY_POINTS, true));
        style.setAlignment(
                format.alignment() == HorizontalAlignment.RIGHT ? HorizontalAlignment.RIGHT : HorizontalAlignment.LEFT);
        style.setVerticalAlignment(VerticalAlignment.BOTTOM);
        style.setBorderTop(BorderStyle.MEDIUM);
        style.setBorderBottom(BorderStyle.THIN);
        style.setWrapText(true);
        style.setIndention(indention(format));
        return style;
    }

    /** Keeps text off a number that ends at its left. */
    private static short indention(Format format) {
        return (short) (format.alignment() == HorizontalAlignment.LEFT ? 1 : 0);
    }

    SiteForm form() {
        return form;
    }

    CellStyle title() {
        return title;
    }

    CellStyle section() {
        return section;
    }

    CellStyle remark() {
        return remark;
    }

    CellStyle cellOf(Format format) {
        return of(cells, format);
    }

    CellStyle totalOf(Format format) {
        return of(totals, format);
    }

    CellStyle headOf(Format format) {
        return of(heads, format);
    }

    /** For text that a spreadsheet program could take for a formula when it is edited. */
    CellStyle quoted() {
        return quoted;
    }

    private static CellStyle of(Map<Format, CellStyle> styles, Format format) {
        CellStyle style = styles.get(format);
        if (style == null) {
            throw new IllegalStateException("no style for " + format);
        }
        return style;
    }
}
