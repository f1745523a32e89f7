package dev.injectorplanner.reports.bay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.generate.FleetGenerator;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.schedule.EarliestFit;
import dev.injectorplanner.core.units.SiteForm.PaperSize;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.core.visit.Visit;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Paper as it comes out: text read back, square codes decoded by another library (ZXing). */
class PaperTest {
    private static Plan plan;
    private static FleetIndex index;

    @BeforeAll
    static void plan() {
        FleetSnapshot fleet =
                new FleetGenerator(DemoFleet.ofSize(40, 3)).generate().snapshot();
        plan = new Planner(new EarliestFit()).plan(fleet, Policy.standard(), DemoFleet.TODAY);
        index = new FleetIndex(fleet);
    }

    private static Visit largest() {
        return plan.visits().stream()
                .max(Comparator.comparing(visit -> visit.cylinders().size()))
                .orElseThrow();
    }

    @Test
    void a_bay_sheet_says_all_that_a_mechanic_needs() throws Exception {
        Visit visit = largest();
        Map<Integer, CodedInjector> bound = new TreeMap<>();
        visit.cylinders()
                .forEach(cylinder ->
                        bound.put(cylinder, new CodedInjector("SN-70" + cylinder, "7Q2M0F4K91X" + cylinder)));
        BaySheet sheet = new BaySheetMaker(index, plan, SiteUnits.METRIC).of(visit, bound);
        String text = text(pdf(out -> Paper.baySheets(List.of(sheet), out)));
        assertThat(text).contains(visit.truck(), visit.depot(), "Before you start", "never search for leaks by hand");
        visit.steps().forEach(step -> assertThat(text).contains(step));
        visit.cylinders()
                .forEach(cylinder ->
                        assertThat(text).contains("SN-70" + cylinder).contains("7Q2M\u00a00F4K\u00a091X" + cylinder));
        assertThat(text).contains("Calibration codes entered under their cylinders and read back");
        assertThat(sheet.refit().get(0).step())
                .isEqualTo(RefitWords.of(
                        sheet.steps().get(sheet.steps().size() - 1).step()));
        assertThat(text).contains("Batteries connected, earth last", "Old injectors bagged and tagged");
        sheet.seen().forEach(line -> assertThat(text.replaceAll("\\s+", " ")).contains(line.replaceAll("\\s+", " ")));
        assertThat(sheet.kit()).isNotEmpty();
    }

    @Test
    void every_visit_of_a_plan_has_a_sheet_that_can_be_printed() throws Exception {
        BaySheetMaker maker = new BaySheetMaker(index, plan, SiteUnits.METRIC);
        List<BaySheet> sheets =
                plan.visits().stream().map(visit -> maker.of(visit, Map.of())).toList();
        String text = text(pdf(out -> Paper.baySheets(sheets, out)));
        sheets.forEach(sheet -> assertThat(text).contains(sheet.truck()));
    }

    @Test
    void letters_beyond_ascii_and_marks_of_markup_are_printed_as_they_are() throws Exception {
        CylinderLabel label =
                new CylinderLabel("T<1>&\"Ž", 3, "left", "INJ-ā", "SN1", "AB12", "week 2026-W10, Jūrmala");
        String text = text(pdf(out -> Paper.labels(List.of(label), out)));
        assertThat(text).contains("T<1>&\"Ž", "INJ-ā, serial SN1", "Jūrmala");
    }

    @Test
    void labels_are_read_back_from_the_page_as_a_scanner_reads_them() throws Exception {
        List<CylinderLabel> labels = new ArrayList<>();
        for (int cylinder = 1; cylinder <= 10; cylinder++) {
            labels.add(new CylinderLabel(
                    "T005", cylinder, "left", "INJ-8", "SN-70" + cylinder, "7Q2M0F4K91XA" + cylinder, "week 2026-W10"));
        }
        List<String> read = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf(out -> Paper.labels(labels, out)))) {
            assertThat(document.getNumberOfPages()).isEqualTo(2);
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                read.addAll(decode(new PDFRenderer(document).renderImageWithDPI(page, 150)));
            }
        }
        assertThat(read)
                .containsExactlyInAnyOrderElementsOf(
                        labels.stream().map(CylinderLabel::payload).toList());
        assertThat(CylinderLabel.read(read.get(0))).isPresent();
        assertThat(CylinderLabel.read("T005;3;SN-703;7Q2M0F4K91XA"))
                .hasValue(new CylinderLabel.Scanned("T005", 3, "SN-703", "7Q2M0F4K91XA"));
        assertThat(CylinderLabel.read("7Q2M0F4K91XA")).isEmpty();
    }

    /** Letter is 8.5 by 11 inches, 612 by 792 points; eight labels stand on a page as on A4. */
    @Test
    void labels_on_letter() throws Exception {
        List<CylinderLabel> labels = new ArrayList<>();
        for (int cylinder = 1; cylinder <= 8; cylinder++) {
            labels.add(new CylinderLabel(
                    "T005", cylinder, "left", "INJ-8", "SN-70" + cylinder, "7Q2M0F4K91XA" + cylinder, "week 2026-W10"));
        }
        for (PaperSize size : PaperSize.values()) {
            try (PDDocument document = Loader.loadPDF(pdf(out -> Paper.labels(labels, LabelForm.on(size), out)))) {
                assertThat(document.getNumberOfPages()).as("%s", size).isEqualTo(1);
                assertThat(document.getPage(0).getMediaBox().getHeight())
                        .isBetween(size == PaperSize.LETTER ? 791f : 841f, size == PaperSize.LETTER ? 793f : 843f);
            }
        }
    }

    /** A label printer's resolution is 203 dpi at the least (common practice): what it prints is read back. */
    @Test
    void labels_of_label_printers_are_one_a_page_and_read_back() throws Exception {
        List<CylinderLabel> labels = new ArrayList<>();
        for (int cylinder = 1; cylinder <= 3; cylinder++) {
            labels.add(new CylinderLabel(
                    "T005", cylinder, "left", "INJ-8140-R", "SN-70" + cylinder, "7Q2M0F4K91XA22K" + cylinder, "W10"));
        }
        for (LabelForm form : List.of(LabelForm.LABEL_50X25, LabelForm.ROLL_62)) {
            try (PDDocument document = Loader.loadPDF(pdf(out -> Paper.labels(labels, form, out)))) {
                assertThat(document.getNumberOfPages()).as(form.words()).isEqualTo(3);
                assertThat(document.getPage(0).getMediaBox().getHeight() / 72 * 25.4)
                        .isCloseTo(form.heightMm(), org.assertj.core.api.Assertions.within(0.3));
                for (int page = 0; page < 3; page++) {
                    BufferedImage image = new PDFRenderer(document).renderImageWithDPI(page, 203);
                    int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
                    BinaryBitmap bitmap = new BinaryBitmap(
                            new HybridBinarizer(new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels)));
                    String read = new QRCodeReader()
                            .decode(bitmap, Map.of(DecodeHintType.TRY_HARDER, true))
                            .getText();
                    assertThat(read).isEqualTo(labels.get(page).payload());
                }
            }
        }
    }

    @Test
    void a_name_that_would_break_the_label_is_refused() {
        assertThatThrownBy(() -> new CylinderLabel("T;1", 3, "left", "P", "S", "C", ""))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("T;1");
    }

    @Test
    void codes_are_grouped_for_reading_aloud() {
        assertThat(CodedInjector.grouped("7Q2M0F4K91")).isEqualTo("7Q2M\u00a00F4K\u00a091");
        assertThat(CodedInjector.grouped("7Q-2M")).isEqualTo("7Q-2M");
        assertThat(CodedInjector.grouped("")).isEmpty();
    }

    /** Each label by itself, as it would be held before a scanner: margins 10 and 12 mm, labels of 94 by 66 mm. */
    private static List<String> decode(BufferedImage page) throws Exception {
        double pixelsPerMm = page.getWidth() / 210.0;
        int width = (int) (94 * pixelsPerMm);
        int height = (int) (66 * pixelsPerMm);
        List<String> texts = new ArrayList<>();
        int empty = 0;
        for (int place = 0; place < 8; place++) {
            int x = (int) (10 * pixelsPerMm) + place % 2 * width;
            int y = (int) (12 * pixelsPerMm) + place / 2 * height;
            int[] pixels = page.getRGB(x, y, width, height, null, 0, width);
            BinaryBitmap bitmap = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, pixels)));
            try {
                texts.add(new QRCodeReader()
                        .decode(bitmap, Map.of(DecodeHintType.TRY_HARDER, true))
                        .getText());
            } catch (NotFoundException e) {
                empty++;
            }
        }
        assertThat(empty + texts.size()).isEqualTo(8);
        return texts;
    }

    private interface Writing {
        void to(ByteArrayOutputStream out) throws Exception;
    }

    private static byte[] pdf(Writing writing) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        writing.to(out);
        String keep = System.getProperty("planner.paper");
        if (keep != null) {
            Files.write(Path.of(keep, "paper-" + out.size() + ".pdf"), out.toByteArray());
        }
        return out.toByteArray();
    }

    /** The text of a page, its line breaks as spaces. */
    private static String text(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("[ \\r\\n]+", " ");
        }
    }
}
