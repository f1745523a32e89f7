package dev.injectorplanner.app.security;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import dev.injectorplanner.app.output.Reader;
import dev.injectorplanner.app.output.Sheets;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.app.testkit.DemoSite;
import dev.injectorplanner.app.testkit.Multipart;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.units.SiteForm;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * Texts that a spreadsheet would run, in every text column that a file or a form can set, on their way into workbooks and
 * text files. A planted text has PLANTED in it; each text column of the demo's files has one, or is refused.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FormulaTest {
    private static final String PLANTED = "=HYPERLINK(\"http://evil.example\";\"PLANTED\")";

    /** File and column number of texts that nothing refers to. */
    private static final List<Map.Entry<String, Integer>> TEXTS = List.of(
            Map.entry("parts.csv", 1),
            Map.entry("parts.csv", 3),
            Map.entry("access.csv", 5),
            Map.entry("away.csv", 3),
            Map.entry("depots.csv", 1));

    @TempDir
    private static Path folder;

    private DemoSite site;
    private Visitor manager;

    @BeforeAll
    void start() throws Exception {
        site = DemoSite.start(folder, FormulaTest::plant);
        manager = Visitor.as(Role.MANAGER, site.app().address());
    }

    @AfterAll
    void stop() {
        site.close();
    }

    private static void plant(List<Path> files) throws IOException {
        for (Path file : files) {
            String name = file.getFileName().toString();
            if (Set.of("readings.csv", "faults.csv", "cylinder_tests.csv", "injectors.csv")
                    .contains(name)) {
                continue; // no text of a person's own
            }
            List<List<String>> rows = new ArrayList<>();
            try (CsvReader<CsvRecord> csv = CsvReader.builder().ofCsvRecord(file)) {
                csv.forEach(row -> rows.add(new ArrayList<>(row.getFields())));
            }
            for (List<String> row : rows.subList(1, rows.size())) {
                TEXTS.stream()
                        .filter(text -> text.getKey().equals(name))
                        .forEach(text -> row.set(text.getValue(), PLANTED));
                row.replaceAll(FormulaTest::renamed);
            }
            try (CsvWriter csv = CsvWriter.builder().build(file)) {
                rows.forEach(csv::writeRecord);
            }
        }
    }

    /** Names are changed everywhere alike, so that the files still fit together. */
    private static String renamed(String cell) {
        return cell.replace("fuel filter", "-PLANTED fuel filter")
                .replace("batteries off", "+PLANTED batteries off")
                .replaceFirst("^(.*) long haul$", "@PLANTED $1");
    }

    @Test
    void no_workbook_holds_a_formula_that_a_text_brought() throws Exception {
        Set<String> seen = new TreeSet<>();
        for (String name : List.of("upcoming-work", "parts-needs", "coolant")) {
            HttpResponse<byte[]> answer = manager.file("/sheets/" + name + ".xlsx");
            assertThat(answer.statusCode()).isEqualTo(200);
            try (Workbook book = WorkbookFactory.create(new ByteArrayInputStream(answer.body()))) {
                look(name, book, seen);
            }
        }
        Planned planned = site.application().planning().plan(DemoFleet.TODAY, Policy.standard(), DemoSite.HOME);
        for (Path file :
                new Sheets(folder.resolve("sheets"), SiteForm.STANDARD).write(planned, EnumSet.allOf(Reader.class))) {
            if (file.toString().endsWith(".xlsx")) {
                try (InputStream in = Files.newInputStream(file);
                        Workbook book = WorkbookFactory.create(in)) {
                    look(file.getFileName().toString(), book, seen);
                }
            }
        }
        assertThat(seen)
                .as("workbooks that show a planted text")
                .anyMatch(name -> name.startsWith("work-list"))
                .contains("upcoming-work", "parts-needs");
    }

    private static void look(String name, Workbook book, Set<String> seen) {
        book.forEach(sheet -> sheet.forEach(row -> row.forEach(cell -> {
            if (String.valueOf(cell).contains("PLANTED")) {
                seen.add(name);
                assertThat(cell.getCellType()).as(place(name, cell)).isEqualTo(CellType.STRING);
                assertThat(cell.getHyperlink()).as(place(name, cell)).isNull();
                if (cell.getStringCellValue().matches("(?s)[=+@-].*")) {
                    assertThat(cell.getCellStyle().getQuotePrefixed())
                            .as(place(name, cell))
                            .isTrue();
                }
            }
            if (cell.getCellType() == CellType.FORMULA) {
                assertThat(cell.getCellFormula()).as(place(name, cell)).doesNotContain("HYPERLINK", "evil");
            }
        })));
        assertThat(book.getNumberOfNames()).isNotNegative();
        book.getAllNames().forEach(each -> assertThat(each.getRefersToFormula()).doesNotContain("PLANTED"));
    }

    private static String place(String name, Cell cell) {
        return name + ", " + cell.getSheet().getSheetName() + "!" + cell.getAddress();
    }

    @Test
    void no_text_file_begins_a_cell_with_a_formula() throws Exception {
        site.application().audit().record("=1+PLANTED", "@PLANTED", "+PLANTED", "-PLANTED", "\t=PLANTED");
        List<String> files = new ArrayList<>();
        files.add(Visitor.as(Role.ADMINISTRATOR, site.app().address())
                .get("/settings/audit.csv")
                .body());
        String truck =
                site.application().planning().fleet("Aldermoor").trucks().get(0).truck();
        files.add(manager.get("/trucks/" + truck + "/record.csv").body());
        Multipart form = new Multipart()
                .field("_csrf", manager.csrf("/imports"))
                .field("mode", "good_rows")
                .file(
                        "files",
                        "away.csv",
                        ("truck,from,to,reason,=PLANTED\n" + "=PLANTED,2026-03-09,2026-03-10,@PLANTED,+PLANTED\n")
                                .getBytes(StandardCharsets.UTF_8));
        String page =
                manager.send(form.to(site.app().address().resolve("/imports"))).body();
        Matcher link = Pattern.compile("/imports/refused/[A-Za-z0-9_-]+").matcher(page);
        assertThat(link.find()).isTrue();
        files.add(manager.get(link.group()).body());
        for (String file : files) {
            try (CsvReader<CsvRecord> csv = CsvReader.builder().ofCsvRecord(file.replace("\uFEFF", ""))) {
                csv.forEach(row ->
                        assertThat(row.getFields()).noneMatch(cell -> cell.matches("(?s)[=+@\\t\\r].*|-[^0-9].*")));
            }
        }
        assertThat(String.join("", files)).contains("'=1+PLANTED", "'=PLANTED", "'@PLANTED", "'+PLANTED", "'-PLANTED");
    }
}
