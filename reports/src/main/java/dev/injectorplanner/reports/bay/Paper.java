package dev.injectorplanner.reports.bay;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import dev.injectorplanner.core.units.SiteForm.PaperSize;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;
import org.thymeleaf.templatemode.TemplateMode;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;

/** Bay sheets and cylinder labels as PDF. Nothing is fetched from anywhere: fonts and drawings are inside. */
public final class Paper {
    private static final String FOLDER = "/dev/injectorplanner/reports/bay/";
    private static final TemplateEngine TEMPLATES = templates();

    static {
        XRLog.setLoggingEnabled(false);
    }

    private Paper() {}

    /** Writes bay sheets, each from a page of its own. */
    public static void baySheets(List<BaySheet> sheets, OutputStream out) throws IOException {
        baySheets(sheets, PaperSize.A4, out);
    }

    /** The same on a site's paper. */
    public static void baySheets(List<BaySheet> sheets, PaperSize size, OutputStream out) throws IOException {
        write("bay-sheet", Map.of("sheets", sheets), size, out);
    }

    /** Writes cylinder labels, two by four on a page. */
    public static void labels(List<CylinderLabel> labels, OutputStream out) throws IOException {
        labels(labels, PaperSize.A4, out);
    }

    /** The same on a site's paper; labels for Letter are a little lower, so that four still stand below each other. */
    public static void labels(List<CylinderLabel> labels, PaperSize size, OutputStream out) throws IOException {
        write("labels", Map.of("labels", labels), size, out);
    }

    private static TemplateEngine templates() {
        ClassLoaderTemplateResolver resolver = new ClassLoaderTemplateResolver(Paper.class.getClassLoader());
        resolver.setPrefix(FOLDER.substring(1));
        resolver.setSuffix(".html");
        resolver.setTemplateMode(TemplateMode.HTML);
        resolver.setCharacterEncoding("UTF-8");
        TemplateEngine engine = new TemplateEngine();
        engine.setTemplateResolver(resolver);
        return engine;
    }

    private static void write(String template, Map<String, Object> model, PaperSize size, OutputStream out)
            throws IOException {
        String page = onPaper(TEMPLATES.process(template, new Context(Locale.ENGLISH, model)), size);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.useUriResolver((base, uri) -> null);
        builder.useSVGDrawer(new BatikSVGDrawer());
        font(builder, "LiberationSans-Regular", "Liberation Sans", 400);
        font(builder, "LiberationSans-Bold", "Liberation Sans", 700);
        font(builder, "LiberationMono-Bold", "Liberation Mono", 700);
        builder.withHtmlContent(page, null);
        builder.withProducer("Injector Planner");
        builder.toStream(out);
        builder.run();
    }

    /** Templates are written for A4; their style sheets, before the body, are changed for Letter. */
    private static String onPaper(String page, PaperSize size) {
        int body = page.indexOf("<body");
        return size == PaperSize.A4 || body < 0
                ? page
                : page.substring(0, body)
                                .replace("size: A4;", "size: letter;")
                                .replace("height: 66mm;", "height: 62mm;")
                        + page.substring(body);
    }

    private static void font(PdfRendererBuilder builder, String file, String family, int weight) {
        builder.useFont(() -> resource("fonts/" + file + ".ttf"), family, weight, FontStyle.NORMAL, true);
    }

    private static InputStream resource(String name) {
        InputStream stream = Paper.class.getResourceAsStream(FOLDER + name);
        if (stream == null) {
            throw new IllegalStateException(name + " is missing beside " + Paper.class);
        }
        return stream;
    }
}
