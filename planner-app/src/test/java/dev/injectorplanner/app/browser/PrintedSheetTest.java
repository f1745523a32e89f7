package dev.injectorplanner.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import dev.injectorplanner.app.people.Role;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a browser prints of a bay sheet says what its PDF says, word for word, and nothing of the page around it. */
@InBrowser
class PrintedSheetTest {
    @ParameterizedTest
    @ValueSource(strings = {"T036", "T059"})
    void a_browser_prints_what_the_pdf_says(String truck, Site.Demo demo) throws Exception {
        try (Person manager = demo.person(Role.MANAGER, Size.DESK)) {
            Page page = manager.page();
            manager.open("/bay/" + truck);
            List<String> printed = words(page.pdf());
            byte[] pdf = page.request()
                    .get(demo.address().resolve("/bay/" + truck + "/sheet.pdf").toString())
                    .body();
            List<String> paper = words(pdf);
            assertThat(paper).hasSizeGreaterThan(100);
            assertThat(without(printed, paper))
                    .as("printed by the browser alone")
                    .isEmpty();
            assertThat(without(paper, printed)).as("in the PDF alone").isEmpty();
        }
    }

    private static TreeSet<String> without(List<String> some, List<String> others) {
        TreeSet<String> left = new TreeSet<>(some);
        left.removeAll(others);
        return left;
    }

    /** Words without the page numbers that a PDF writer adds by itself. */
    private static List<String> words(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document).replaceAll("page \\d+ of \\d+", " ");
            return Arrays.stream(text.split("[\\s\u00a0-]+"))
                    .filter(word -> word.matches(".*[\\p{L}\\p{N}].*"))
                    .toList();
        }
    }
}
