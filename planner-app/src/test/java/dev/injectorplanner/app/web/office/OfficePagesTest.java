package dev.injectorplanner.app.web.office;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.demo.SampleFiles;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.app.web.Listening;
import dev.injectorplanner.app.web.RunningApp;
import dev.injectorplanner.app.web.WebApp;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.wiring.JobsSettings;
import dev.injectorplanner.app.wiring.Settings;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.plan.Policy;
import java.io.ByteArrayInputStream;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every page of the office, on the demo's fleet with a script planted in its texts. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class OfficePagesTest {
    private static final String PLANTED = "<script>alert(1)</script>";
    private static final Pattern ADDRESS = Pattern.compile("(?:href|src|action)=\"([^\"]*)\"");

    private static final String SHORT = "\\d+ short for \\d+ visits?";

    @TempDir
    private static Path folder;

    private RunningApp app;
    private Visitor manager;

    @BeforeAll
    void start() throws Exception {
        Application application = Application.open(StoreSettings.embedded(folder.resolve("data")));
        List<Path> files = SampleFiles.copyTo(Files.createDirectories(folder.resolve("files")));
        Path away = files.stream()
                .filter(file -> file.endsWith("away.csv"))
                .findFirst()
                .orElseThrow();
        Files.writeString(away, Files.readString(away).replace("on hire abroad", PLANTED));
        application.intake().load(files, LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT);
        application.planning().planAndKeep("demo", Instant.now(), DemoFleet.TODAY, Policy.standard(), null);
        Visitor.addAll(application.store(), "Norrvik");
        app = WebApp.start(
                CompletableFuture.completedFuture(application),
                JobsSettings.of(Settings.none()),
                Listening.here(0),
                new SiteClock(InstantSource.system()));
        manager = Visitor.as(Role.MANAGER, app.address());
    }

    @AfterAll
    void stop() {
        app.close();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/week",
                "/week?week=2026-W11",
                "/week?depot=Norrvik",
                "/plan",
                "/plan?depot=Norrvik&week=2026-W11",
                "/plan?depot=Norrvik&truck=T026",
                "/plan?depot=Aldermoor&week=2026-W10&truck=T034&do=move&to=2026-W13",
                "/trucks",
                "/trucks/T026",
                "/trucks/T040?failed=6",
                "/trucks/T028/record",
                "/safety/T028",
                "/order",
                "/returns",
                "/coolant",
                "/alerts",
                "/life",
                "/outlook",
                "/results",
                "/results?depot=Norrvik",
                "/replay",
                "/find?q=T0",
                "/outlook?depot=Norrvik&months=6",
                "/imports",
                "/settings",
                "/settings/figures",
                "/settings/site",
                "/settings/families",
                "/settings/access",
                "/settings/rules",
                "/settings/depots",
                "/settings/rules/row",
                "/settings/depots/row?key=Norrvik"
            })
    void a_page_is_whole_escapes_what_was_typed_and_asks_no_other_host(String path) throws Exception {
        HttpResponse<String> page = get(path);

        assertThat(page.statusCode()).isEqualTo(200);
        String body = page.body().replaceAll("<script[^>]*src=\"/(?:board|find|live).js\"[^>]*></script>", "");
        assertThat(body).endsWith("</html>\n").doesNotContain("<script").doesNotContain("style=\"");
        Matcher addresses = ADDRESS.matcher(page.body());
        while (addresses.find()) {
            assertThat(addresses.group(1)).matches("[/#?].*").doesNotStartWith("//");
        }
    }

    @Test
    void the_planted_text_is_shown_as_text() throws Exception {
        assertThat(get("/week").body()).contains("&lt;script&gt;alert(1)&lt;/script&gt;");
        assertThat(get("/trucks/T026").body()).contains("&lt;script&gt;alert(1)&lt;/script&gt;");
    }

    /** Replaced meters, no tests, no visit, inline and V: each kind of truck is among them. */
    @Test
    void the_file_of_every_truck_opens() throws Exception {
        for (int truck = 1; truck <= 60; truck++) {
            String name = String.format(java.util.Locale.ROOT, "T%03d", truck);
            assertThat(get("/trucks/" + name).statusCode()).as(name).isEqualTo(200);
        }
    }

    /** T048's odometer was replaced in November 2024; its readings before and after say at what. */
    @Test
    void a_replaced_meter_is_said_in_words() throws Exception {
        assertThat(get("/trucks/T048").body().replace('\u00a0', ' '))
                .containsPattern("Odometer replaced on 6 November 2024 at [0-9,]+ km; the new one began at 0 km");
    }

    /** A visit's other weeks, its bill, its cylinders' small pictures and its tests stand in the file. */
    @Test
    void a_truck_file_tells_of_other_weeks_bill_tests_and_time_line() throws Exception {
        String page = get("/trucks/T023").body();
        assertThat(page)
                .contains("Another week")
                .contains("do=move")
                .contains("Labour, shared access")
                .contains("Odometer and what happened")
                .contains("Cylinder 1, balance and return flow")
                .contains("one row a day and test");
    }

    @Test
    void a_safety_question_tells_of_the_diagnosis_and_not_of_the_visit_after_it() throws Exception {
        assertThat(get("/week").body())
                .contains("T028, Aldermoor: safety, bring in now")
                .contains("find the cause ")
                .contains("href=\"/safety/T028\"");
    }

    @Test
    void a_part_that_is_short_is_one_question_whose_answers_act() throws Exception {
        String page = get("/week").body();

        assertThat(Pattern.compile("KL-6110 \\(injector, inline six\\), Brennick: " + SHORT)
                        .matcher(page)
                        .results())
                .hasSize(1);
        assertThat(page).contains("action=\"/week/decide\"", "no change", "Leave", "Proposed: ");
        String buyer = Visitor.as(Role.BUYER, app.address()).get("/week").body();
        assertThat(buyer).containsPattern(SHORT).doesNotContain("/week/decide", "/week/undo");
    }

    @Test
    void the_summary_is_one_page_with_what_to_decide() throws Exception {
        try (PDDocument paper =
                Loader.loadPDF(manager.file("/sheets/summary.pdf").body())) {
            assertThat(paper.getNumberOfPages()).isEqualTo(1);
            assertThat(new PDFTextStripper().getText(paper).replaceAll("\\s+", " "))
                    .contains("T028", "Best possible within", "Brennick")
                    .containsPattern(SHORT);
        }
        assertThat(Visitor.as(Role.MECHANIC, app.address())
                        .get("/sheets/summary.pdf")
                        .statusCode())
                .isEqualTo(403);
    }

    @Test
    void the_worklist_is_a_workbook_of_what_is_filtered() throws Exception {
        try (Workbook book = WorkbookFactory.create(new ByteArrayInputStream(
                manager.file("/sheets/trucks.xlsx?depot=Norrvik&sort=truck").body()))) {
            List<String> first = new ArrayList<>();
            book.getSheetAt(0).forEach(row -> first.add(new DataFormatter().formatCellValue(row.getCell(1))));
            assertThat(first).contains("Norrvik").doesNotContain("Brennick", "Aldermoor");
        }
    }

    @Test
    void an_outlook_is_worked_out_and_then_shown() throws Exception {
        HttpResponse<String> page = get("/outlook?months=6");
        for (int look = 0; look < 600 && page.body().contains("Being worked out"); look++) {
            assertThat(page.headers().firstValue("Refresh")).hasValue("2");
            Thread.sleep(100); // the page looks again every two seconds; a test has less patience
            page = get("/outlook?months=6");
        }
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.headers().firstValue("Refresh")).isEmpty();
        assertThat(page.body())
                .endsWith("</html>\n")
                .doesNotContain("style=\"")
                .contains("6 months, March 2026 to August 2026", "200 runs", "KV-8140", "Norrvik", "10 to 90 %");
        assertThat(manager.file("/outlook/outlook.xlsx?months=6").body()).startsWith('P', 'K');
        assertThat(get("/outlook?months=7").statusCode()).isEqualTo(400);
    }

    @Test
    void a_workbook_of_the_plan_in_force_is_a_workbook() throws Exception {
        for (String name : List.of("upcoming-work", "parts-needs", "coolant")) {
            HttpResponse<byte[]> book = manager.file("/sheets/" + name + ".xlsx");
            assertThat(book.statusCode()).isEqualTo(200);
            assertThat(book.body()).startsWith('P', 'K');
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"/week?depot=Nowhere", "/week?week=soon", "/plan?week=1999-W01", "/trucks/T040?failed=99"})
    void what_cannot_be_is_said_in_a_sentence(String path) throws Exception {
        HttpResponse<String> page = get(path);

        assertThat(page.statusCode()).isEqualTo(400);
        assertThat(page.body()).contains("Fix: ");
    }

    @Test
    void what_is_not_there_is_said() throws Exception {
        assertThat(get("/trucks/T999").statusCode()).isEqualTo(404);
        assertThat(get("/sheets/other.xlsx").statusCode()).isEqualTo(404);
    }

    @Test
    void a_visit_is_moved_and_the_plan_in_force_follows() throws Exception {
        HttpResponse<String> answer = post("/plan/hold", "truck=T023&do=move&from=2026-W10&to=2026-W12&why=test");

        assertThat(answer.statusCode()).isEqualTo(302);
        String page = get("/trucks/T023").body();
        assertThat(page).contains("pinned to 2026-W12").contains("2026-W12: ");
        assertThat(get("/week").body()).contains("from W10 to W12");
        assertThat(get("/alerts").body()).contains("T028");
    }

    private HttpResponse<String> get(String path) throws Exception {
        return manager.get(path);
    }

    private HttpResponse<String> post(String path, String form) throws Exception {
        return manager.postBare(path, "_csrf=" + manager.csrf("/plan") + "&" + form);
    }
}
