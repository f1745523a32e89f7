package dev.injectorplanner.reports.paper;

import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import dev.injectorplanner.core.units.SiteForm.PaperSize;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;
import org.thymeleaf.templatemode.TemplateMode;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;

/** Fills a template and writes it as PDF. Nothing is fetched from anywhere: fonts and drawings are inside. */
public final class PdfPage {
    private static final String FOLDER = "dev/injectorplanner/reports/";
    private static final TemplateEngine TEMPLATES = templates();

    static {
        XRLog.setLoggingEnabled(false);
    }

    private static final java.util.regex.Pattern RULE =
            java.util.regex.Pattern.compile("([^{}]+)\\{((?:[^{}]|\\{[^{}]*\\})*)\\}");

    private PdfPage() {}

    private static TemplateEngine templates() {
        ClassLoaderTemplateResolver resolver = new ClassLoaderTemplateResolver(PdfPage.class.getClassLoader());
        resolver.setPrefix(FOLDER);
        resolver.setSuffix(".html");
        resolver.setTemplateMode(TemplateMode.HTML);
        resolver.setCharacterEncoding("UTF-8");
        TemplateEngine engine = new TemplateEngine();
        engine.setTemplateResolver(resolver);
        return engine;
    }

    /**
     * Writes a page.
     *
     * @param template its file below the package, such as {@code bay/labels}
     * @param model what the template names
     */
    public static void write(String template, Map<String, Object> model, OutputStream out) throws IOException {
        write(template, model, PaperSize.A4, out);
    }

    /** The same on a site's paper, of a template that is written for A4. */
    public static void write(String template, Map<String, Object> model, PaperSize size, OutputStream out)
            throws IOException {
        String page = onPaper(TEMPLATES.process(template, new Context(Locale.ENGLISH, model)), size);
        try (PDDocument document = new PDDocument();
                PaperFonts fonts = new PaperFonts(document)) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.usePDDocument(document);
            builder.useFastMode();
            builder.useUriResolver((base, uri) -> null);
            builder.useSVGDrawer(new BatikSVGDrawer());
            fonts.into(builder);
            builder.withHtmlContent(page, null);
            builder.withProducer("Injector Planner");
            builder.toStream(out);
            builder.run();
        }
    }

    /** What stands between a page's body tags, for a browser that prints the same. */
    public static String body(String template, Map<String, Object> model) {
        String page = TEMPLATES.process(template, new Context(Locale.ENGLISH, model));
        return page.substring(page.indexOf('>', page.indexOf("<body")) + 1, page.indexOf("</body>"));
    }

    /**
     * A page's style sheet with each rule held to what stands within an element; rules of the page itself and what only a PDF
     * writer knows are left as they are or out.
     *
     * @param within selector of that element, such as {@code .paper-only}
     */
    public static String style(String template, String within) {
        String page = TEMPLATES.process(template, new Context(Locale.ENGLISH, Map.of("sheets", java.util.List.of())));
        String style = page.substring(page.indexOf("<style>") + 7, page.indexOf("</style>"));
        StringBuilder held = new StringBuilder("@page { margin: 13mm 13mm 15mm; }\n");
        java.util.regex.Matcher rule = RULE.matcher(style);
        while (rule.find()) {
            String selectors = rule.group(1).strip();
            if (!selectors.startsWith("@")) {
                held.append(java.util.Arrays.stream(selectors.split(","))
                                .map(each -> each.strip().equals("body") ? within : within + " " + each.strip())
                                .collect(java.util.stream.Collectors.joining(", ")))
                        .append(" {")
                        .append(rule.group(2).replaceAll("-fs-[^;}]*;?|position: running[^;}]*;?", ""))
                        .append("}\n");
            }
        }
        return held.toString();
    }

    /** The style sheet before the body is changed for Letter. */
    private static String onPaper(String page, PaperSize size) {
        int body = page.indexOf("<body");
        return size == PaperSize.A4 || body < 0
                ? page
                : page.substring(0, body).replace("size: A4;", "size: letter;") + page.substring(body);
    }

    static InputStream resource(String name) {
        InputStream stream = PdfPage.class.getResourceAsStream("/" + FOLDER + name);
        if (stream == null) {
            throw new IllegalStateException(name + " is missing in " + FOLDER);
        }
        return stream;
    }
}
