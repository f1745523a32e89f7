package dev.injectorplanner.app.security;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.NewPerson;
import dev.injectorplanner.app.people.People;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.testkit.PlannerRuns;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.app.web.RunningApp;
import java.io.InputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Addresses, names and headers that mean harm, sent to the running application. */
@PlannerRuns
class HostileRequestsTest {
    private static final String OWN = "quiet lorry under rain";

    private static String location(HttpResponse<String> answer) {
        return answer.headers().firstValue("Location").orElse("");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/imports/refused/..%2f..%2f..%2f..%2fetc%2fpasswd",
                "/imports/refused/%2e%2e%2f%2e%2e%2fetc%2fpasswd",
                "/imports/refused/..",
                "/imports/refused/..%5c..%5cetc%5cpasswd",
                "/sheets/..%2f..%2fetc%2fpasswd.xlsx",
                "/sheets/..%2fupcoming-work.xlsx",
                "/sheets/%2e%2e/%2e%2e/application.yaml",
                "/bay/..%2f..%2fetc/sheet.pdf",
                "/bay/%2e%2e/sheet.pdf",
                "/trucks/..%2f..%2fetc%2fpasswd/record.csv",
                "/trucks/..%5c..%5cetc/record.csv",
                "/planner.css/../../application.yaml",
                "/script/..%2f..%2fapplication.yaml",
                "/script/%2e%2e/%2e%2e/application.yaml",
                "/script/..%252f..%252fapplication.yaml",
                "/script/../application.yaml",
                "/..;/application.yaml",
                "/bay.js;/../application.yaml",
                "//etc/passwd",
                "/calendar/..%2f..%2fetc%2fpasswd.ics",
                "/trucks/%00",
                "/trucks/T-1%00.csv",
                "/settings/audit.csv/..%2fx"
            })
    void an_address_leads_to_no_file(String path, URI address) throws Exception {
        for (Visitor visitor : new Visitor[] {Visitor.nobody(address), Visitor.as(Role.MANAGER, address)}) {
            HttpResponse<String> answer = visitor.send(HttpRequest.newBuilder(URI.create(address + path)));
            assertThat(answer.statusCode()).isIn(302, 400, 403, 404);
            assertThat(answer.body()).doesNotContain("root:", "spring:", "multipart", "Exception", "\tat ");
        }
    }

    @Test
    void raw_requests_with_dots_and_zeros_are_refused(URI address) throws Exception {
        for (String path : new String[] {
            "/../../etc/passwd", "/script/../../application.yaml", "/trucks/\u0000", "http://evil.example/"
        }) {
            try (Socket socket = new Socket(address.getHost(), address.getPort())) {
                socket.setSoTimeout(10_000);
                socket.getOutputStream()
                        .write(("GET " + path + " HTTP/1.1\r\nHost: " + address.getAuthority()
                                        + "\r\nConnection: close\r\n\r\n")
                                .getBytes(StandardCharsets.ISO_8859_1));
                InputStream in = socket.getInputStream();
                String answer = new String(in.readAllBytes(), StandardCharsets.UTF_8);
                assertThat(answer)
                        .as(path)
                        .matches("(?s)HTTP/1.1 (302|400|403|404).*")
                        .doesNotContain("root:", "spring:");
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "/plan/anew, depot",
        "/plan/hold, truck",
        "/store/receiving, depot",
        "/alerts/mute, why",
        "/jobs/run, kind"
    })
    void a_name_with_line_breaks_sets_no_header(String path, String field, URI address) throws Exception {
        Visitor manager = Visitor.as(Role.MANAGER, address);
        String harm = "North\r\nSet-Cookie: planted=1\r\nX-Planted: 1\r\n\r\n<script>alert(1)</script>";
        HttpResponse<String> answer = manager.post("/plan", path, Map.of(field, harm));
        assertThat(answer.headers().map()).doesNotContainKey("x-planted");
        assertThat(answer.headers().allValues("Set-Cookie")).noneMatch(cookie -> cookie.startsWith("planted"));
        assertThat(answer.body()).doesNotContain("<script>alert");
        assertThat(answer.statusCode()).isBetween(400, 499);
    }

    @Test
    void a_header_in_an_address_stays_an_address(URI address) throws Exception {
        Visitor manager = Visitor.as(Role.MANAGER, address);
        for (String path : new String[] {
            "/trucks/x%0d%0aX-Planted:%201/record.csv",
            "/plan?done=x%0d%0aX-Planted:%201",
            "/sheets/x%0d%0aX-Planted:1.xlsx"
        }) {
            HttpResponse<String> answer = manager.get(path);
            assertThat(answer.headers().map()).as(path).doesNotContainKey("x-planted");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/sign-in?continue=https://evil.example/",
                "/sign-in?next=//evil.example/",
                "/sign-in?redirect=https://evil.example/",
                "/sign-in?spring-security-redirect=https://evil.example/"
            })
    void after_signing_in_nobody_lands_elsewhere(String form, URI address) throws Exception {
        Visitor visitor = Visitor.nobody(address);
        HttpResponse<String> answer = visitor.post(form, form, Map.of("name", "buyer", "password", Visitor.PASSWORD));
        assertThat(location(answer)).isEqualTo("/");
        assertThat(location(Visitor.nobody(address)
                        .send(HttpRequest.newBuilder(URI.create(address + "//evil.example/%2f..")))))
                .doesNotContain("evil.example");
    }

    @Test
    void the_page_asked_for_before_signing_in_is_of_this_site(URI address) throws Exception {
        Visitor visitor = Visitor.nobody(address);
        visitor.get("/order?depot=https://evil.example");
        HttpResponse<String> answer = visitor.signIn("buyer", Visitor.PASSWORD);
        assertThat(URI.create(location(answer)).getAuthority()).isIn(null, address.getAuthority());
    }

    @ParameterizedTest
    @CsvSource({"MANAGER, /week", "BUYER, /order", "MECHANIC, /bay", "ADMINISTRATOR, /settings"})
    void each_reader_lands_on_the_own_page(Role role, String page, URI address) throws Exception {
        Visitor visitor = Visitor.as(role, address);
        assertThat(location(visitor.get("/"))).isEqualTo(page);
        assertThat(visitor.get(page).statusCode()).isEqualTo(200);
    }

    @Test
    void who_has_several_roles_lands_on_the_first_of_them(URI address, RunningApp app) throws Exception {
        new People(app.application().store().dataSource(), new Pbkdf2Hashing())
                .add(new NewPerson("two-hats", Set.of(Role.MECHANIC, Role.BUYER), "North"), OWN, false, "test");
        assertThat(location(Visitor.as("two-hats", OWN, address).get("/"))).isEqualTo("/order");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/sign-in",
                "/week",
                "/trucks",
                "/trucks/T-1/record.csv",
                "/order",
                "/sheets/coolant.xlsx",
                "/bay",
                "/bay/T-1",
                "/bay/T-1/sheet.pdf",
                "/store",
                "/alerts",
                "/imports",
                "/jobs",
                "/settings",
                "/settings/people",
                "/settings/audit.csv",
                "/elsewhere",
                "/calendar/none.ics",
                "/api/v1/plan?depot=North"
            })
    void what_holds_data_is_not_stored_by_browsers_and_stands_in_no_frame(String path, URI address) throws Exception {
        for (Role role : new Role[] {Role.MANAGER, Role.ADMINISTRATOR}) {
            var headers = Visitor.as(role, address).get(path).headers();
            assertThat(headers.firstValue("Cache-Control").orElse("")).contains("no-store");
            assertThat(headers.firstValue("X-Frame-Options")).hasValue("DENY");
            assertThat(headers.firstValue("Content-Security-Policy").orElse("")).contains("frame-ancestors 'none'");
            assertThat(headers.firstValue("X-Content-Type-Options")).hasValue("nosniff");
            assertThat(headers.firstValue("Server")).isEmpty();
            assertThat(headers.firstValue("X-Powered-By")).isEmpty();
        }
    }

    @Test
    void without_a_proxy_what_is_forwarded_is_not_believed(URI address) throws Exception {
        Visitor visitor = Visitor.nobody(address);
        HttpResponse<String> answer = visitor.send(HttpRequest.newBuilder(address.resolve("/trucks"))
                .header("X-Forwarded-Proto", "https")
                .header("X-Forwarded-Host", "evil.example")
                .header("X-Forwarded-For", "203.0.113.7"));
        assertThat(location(answer)).doesNotContain("evil.example").doesNotContain("https:");
        assertThat(answer.headers().firstValue("Strict-Transport-Security")).isEmpty();
    }
}
