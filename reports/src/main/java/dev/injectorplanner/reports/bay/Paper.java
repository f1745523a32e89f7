package dev.injectorplanner.reports.bay;

import dev.injectorplanner.core.units.SiteForm.PaperSize;
import dev.injectorplanner.reports.paper.PdfPage;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;

/** Bay sheets and cylinder labels as PDF. */
public final class Paper {
    private Paper() {}

    /** Writes bay sheets, each from a page of its own. */
    public static void baySheets(List<BaySheet> sheets, OutputStream out) throws IOException {
        baySheets(sheets, PaperSize.A4, out);
    }

    /** The same on a site's paper. */
    public static void baySheets(List<BaySheet> sheets, PaperSize size, OutputStream out) throws IOException {
        PdfPage.write("bay/bay-sheet", Map.of("sheets", sheets), size, out);
    }

    /** The same sheet as a browser prints it, within an element that {@link #style} speaks of. */
    public static String html(BaySheet sheet) {
        return PdfPage.body("bay/bay-sheet", Map.of("sheets", List.of(sheet)));
    }

    /** The style of {@link #html}, held to an element. */
    public static String style(String within) {
        return PdfPage.style("bay/bay-sheet", within);
    }

    /** Writes cylinder labels, two by four on a page of A4. */
    public static void labels(List<CylinderLabel> labels, OutputStream out) throws IOException {
        labels(labels, LabelForm.A4, out);
    }

    /** Writes cylinder labels for what they are printed on. */
    public static void labels(List<CylinderLabel> labels, LabelForm form, OutputStream out) throws IOException {
        PdfPage.write(form.single() ? "bay/labels-single" : "bay/labels", Map.of("labels", labels, "form", form), out);
    }
}
