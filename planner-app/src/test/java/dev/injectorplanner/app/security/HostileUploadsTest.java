package dev.injectorplanner.app.security;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.testkit.Multipart;
import dev.injectorplanner.app.testkit.PlannerRuns;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.app.web.RunningApp;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that mean harm, sent to the running application: each is answered in a sentence, and none leaves anything. */
@PlannerRuns
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HostileUploadsTest {
    private static final String GOOD = "truck,taken_at,odometer_km\nT-2,2026-02-27T06:00:00Z,88000\n";

    private URI address;
    private Visitor manager;

    @BeforeAll
    void signIn(RunningApp app) throws Exception {
        address = app.address();
        manager = Visitor.as(Role.MANAGER, address);
    }

    private Multipart check(String fileName, byte[] content) throws Exception {
        return new Multipart()
                .field("_csrf", manager.csrf("/imports"))
                .field("mode", "check")
                .file("files", fileName, content);
    }

    private HttpResponse<String> send(Multipart form) throws Exception {
        return manager.send(form.to(address.resolve("/imports")));
    }

    private static List<Path> temporary() throws IOException {
        try (Stream<Path> all = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            return all.filter(path -> path.getFileName().toString().startsWith("planner-upload"))
                    .toList();
        }
    }

    private static void saysWithoutFault(HttpResponse<String> answer) {
        assertThat(answer.body())
                .doesNotContain("Exception", "\tat ", "Something went wrong", "/tmp/")
                .contains("</html>");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../../planted.csv",
                "..\\..\\planted.csv",
                "/etc/planted.csv",
                "C:\\Windows\\planted.csv",
                "..%2f..%2fplanted.csv",
                "....//....//planted.csv",
                "planted.csv/..",
                "\\\\host\\share\\planted.csv",
                "file:///etc/planted.csv",
                "planted.csv\u0000.xlsx",
                "..",
                "",
                "con",
                "planted\r\nX-Planted: 1.csv",
                "<script>alert(1)</script>.csv"
            })
    void a_files_name_leads_nowhere(String name) throws Exception {
        List<Path> before = temporary();
        HttpResponse<String> answer = send(check(name, GOOD.getBytes(StandardCharsets.UTF_8)));
        assertThat(answer.statusCode()).isIn(200, 400, 403);
        saysWithoutFault(answer);
        assertThat(Visitor.withoutOwnScript(answer.body())).doesNotContain("<script");
        assertThat(answer.headers().map()).doesNotContainKey("x-planted");
        for (Path start = Path.of("").toAbsolutePath(); start != null; start = start.getParent()) {
            assertThat(start.resolve("planted.csv")).doesNotExist();
        }
        assertThat(Path.of("/etc/planted.csv")).doesNotExist();
        assertThat(temporary()).as("nothing stays behind").containsExactlyInAnyOrderElementsOf(before);
    }

    @Test
    void two_files_of_one_name_leave_nothing_behind() throws Exception {
        List<Path> before = temporary();
        Multipart form = check("a/x.csv", GOOD.getBytes(StandardCharsets.UTF_8))
                .file("files", "b/x.csv", GOOD.getBytes(StandardCharsets.UTF_8));
        assertThat(send(form).body()).contains("was chosen twice. Fix: choose each file once");
        assertThat(temporary()).containsExactlyInAnyOrderElementsOf(before);
    }

    @Test
    void a_form_with_files_needs_its_token_too() throws Exception {
        Multipart without = new Multipart()
                .field("mode", "good_rows")
                .file("files", "readings.csv", GOOD.getBytes(StandardCharsets.UTF_8));
        HttpResponse<String> answer = send(without);
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.body()).contains("This form has expired");
        Multipart guessed = new Multipart()
                .field("_csrf", "guessed")
                .field("mode", "good_rows")
                .file("files", "readings.csv", GOOD.getBytes(StandardCharsets.UTF_8));
        assertThat(send(guessed).statusCode()).isEqualTo(403);
    }

    @Test
    void what_is_too_large_is_refused_with_and_without_a_length() throws Exception {
        byte[] large = new byte[65 * 1024 * 1024];
        java.util.Arrays.fill(large, (byte) 'x');
        for (HttpResponse<String> answer : List.of(
                send(check("large.csv", large)),
                manager.send(check("large.csv", large).inChunksTo(address.resolve("/imports"))))) {
            assertThat(answer.statusCode()).isEqualTo(413);
            assertThat(answer.body())
                    .contains("At most 64 MB of files can be sent at a time", "Fix: ")
                    .doesNotContain("Exception");
        }
        HttpResponse<String> form =
                manager.postBare("/plan/anew", "_csrf=" + manager.csrf("/plan") + "&depot=" + "x".repeat(2_000_000));
        assertThat(form.statusCode()).isBetween(400, 499);
        assertThat(manager.get("/trucks").statusCode()).as("it goes on").isEqualTo(200);
    }

    @Test
    void thousands_of_parts_are_refused() throws Exception {
        Multipart many = check("one.csv", GOOD.getBytes(StandardCharsets.UTF_8));
        for (int i = 0; i < 2_000; i++) {
            many.field("x" + i, "y");
        }
        HttpResponse<String> answer = send(many);
        assertThat(answer.statusCode()).isBetween(400, 499);
        saysWithoutFault(answer);
    }

    @Test
    void a_workbook_that_unpacks_without_end_is_refused() throws Exception {
        HttpResponse<String> answer = send(check("readings.xlsx", workbook("xl/worksheets/sheet1.xml", out -> {
            byte[] zeros = new byte[1 << 20];
            for (int i = 0; i < 400; i++) {
                out.write(zeros);
            }
        })));
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body())
                .containsAnyOf("unpacks to more than", "is a damaged workbook")
                .contains("Fix: ");
        saysWithoutFault(answer);
    }

    @Test
    void shared_texts_without_end_are_refused() throws Exception {
        HttpResponse<String> answer = send(check("readings.xlsx", workbook("xl/sharedStrings.xml", out -> {
            write(out, "<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">");
            byte[] text = ("<si><t>" + "k".repeat(10_000) + "</t></si>").getBytes(StandardCharsets.UTF_8);
            for (int i = 0; i < 40_000; i++) {
                out.write(text);
            }
            write(out, "</sst>");
        })));
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body())
                .containsAnyOf("unpacks to more than", "more text than fits")
                .contains("Fix: ");
        saysWithoutFault(answer);
    }

    @Test
    void elements_within_elements_without_end_do_no_harm() throws Exception {
        HttpResponse<String> answer = send(check("readings.xlsx", workbook("xl/sharedStrings.xml", out -> {
            write(out, "<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">");
            for (int i = 0; i < 200_000; i++) {
                write(out, "<a" + i % 7919 + ">");
            }
        })));
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).contains("Fix: ");
        saysWithoutFault(answer);
    }

    @Test
    void a_workbook_reads_no_file_and_asks_no_host() throws Exception {
        Path secret = Files.writeString(Files.createTempFile("planner-secret", ".txt"), "TOP-SECRET-TEXT");
        try {
            for (String part : List.of(
                    "xl/sharedStrings.xml", "xl/worksheets/sheet1.xml", "xl/workbook.xml", "[Content_Types].xml")) {
                HttpResponse<String> answer =
                        send(check("readings.xlsx", workbook(part, out -> write(out, """
                        <?xml version="1.0"?><!DOCTYPE sst [<!ENTITY x SYSTEM "%s">]>
                        <sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><si><t>&x;</t></si></sst>""".formatted(secret.toUri())))));
                assertThat(answer.statusCode()).as(part).isEqualTo(200);
                assertThat(answer.body()).as(part).contains("Fix: ").doesNotContain("TOP-SECRET-TEXT");
                saysWithoutFault(answer);
            }
        } finally {
            Files.delete(secret);
        }
    }

    @Test
    void what_is_no_table_is_said_so() throws Exception {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
            gzip.write(GOOD.getBytes(StandardCharsets.UTF_8));
        }
        assertThat(send(check("readings.csv", packed.toByteArray())).body())
                .contains("is a compressed file, not a table");
        assertThat(send(check("readings.csv", "<html><script>alert(1)</script>".getBytes(StandardCharsets.UTF_8)))
                        .body())
                .contains("is a web page or XML, not a table")
                .doesNotContain("<script>alert");
        assertThat(send(check("readings.csv", "a,b\u0000\u0007,c\n1,2,3\n".getBytes(StandardCharsets.UTF_8)))
                        .statusCode())
                .isEqualTo(200);
    }

    private interface Content {
        void to(OutputStream out) throws IOException;
    }

    private static void write(OutputStream out, String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.UTF_8));
    }

    /** A real workbook with one of its parts replaced. */
    private static byte[] workbook(String part, Content content) throws IOException {
        ByteArrayOutputStream real = new ByteArrayOutputStream();
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            book.createSheet("readings").createRow(0).createCell(0).setCellValue("truck");
            book.write(real);
        }
        ByteArrayOutputStream made = new ByteArrayOutputStream();
        try (var in = new java.util.zip.ZipInputStream(new java.io.ByteArrayInputStream(real.toByteArray()));
                ZipOutputStream out = new ZipOutputStream(made)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                out.putNextEntry(new ZipEntry(entry.getName()));
                if (entry.getName().equals(part)) {
                    content.to(out);
                } else {
                    in.transferTo(out);
                }
                out.closeEntry();
            }
        }
        return made.toByteArray();
    }
}
