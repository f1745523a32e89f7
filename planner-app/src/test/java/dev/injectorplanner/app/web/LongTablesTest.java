package dev.injectorplanner.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.command.PlannerCommand;
import dev.injectorplanner.app.demo.DemoDay;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.web.office.Turned;
import dev.injectorplanner.app.wiring.JobsSettings;
import dev.injectorplanner.app.wiring.Settings;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** On a fleet with many rows, no page of the office shows a long table at once; the rest of each is a link away. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LongTablesTest {
    private static final String TRUCKS = "240";

    /** Headings of groups stand between rows; the list of trucks has rows of one line and pages of its own. */
    private static final int HEADINGS = 10;

    private static final int TRUCKS_A_PAGE = 50;
    private static final Pattern BODY = Pattern.compile("<tbody.*?</tbody>", Pattern.DOTALL);
    private static final Pattern NEXT = Pattern.compile("<a href=\"([^\"]*)\">Next<");

    @TempDir
    private static Path folder;

    private RunningApp app;
    private Visitor manager;

    @BeforeAll
    void start() throws Exception {
        Path demo = folder.resolve("demo");
        assertThat(PlannerCommand.run("demo", "--trucks", TRUCKS, "--dir", demo.toString()))
                .isZero();
        Application application = Application.open(StoreSettings.embedded(demo.resolve("data")));
        Visitor.addAll(application.store(), "D001"); // the first depot of a generated fleet
        app = WebApp.start(
                CompletableFuture.completedFuture(application),
                JobsSettings.of(Settings.none()),
                Listening.here(0),
                new SiteClock(DemoDay.clock()));
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
                "/plan",
                "/plan?week=2026-W12",
                "/trucks",
                "/trucks?sort=-visit&page=2",
                "/trucks/T001",
                "/find?q=T0",
                "/alerts",
                "/alerts?list=A&from=25",
                "/order",
                "/orders",
                "/stock",
                "/returns",
                "/coolant",
                "/life",
                "/outlook/parts",
                "/results",
                "/bay",
                "/store",
                "/settings/rules",
                "/settings/depots"
            })
    void a_table_has_no_more_rows_than_a_person_reads(String path) throws Exception {
        int most = path.startsWith("/trucks") ? TRUCKS_A_PAGE : Turned.MOST + HEADINGS;
        assertThat(rows(body(path)))
                .as("rows of each table")
                .allSatisfy(rows -> assertThat(rows).isLessThanOrEqualTo(most));
    }

    private String body(String path) throws Exception {
        var page = manager.get(path);
        assertThat(page.statusCode()).as(path).isEqualTo(200);
        return page.body();
    }

    private static List<Integer> rows(String body) {
        List<Integer> rows = new ArrayList<>();
        Matcher tables = BODY.matcher(body);
        while (tables.find()) {
            rows.add(tables.group().split("<tr[ >]", -1).length - 1);
        }
        return rows;
    }

    /** Every row is reached by the links of the page alone, once each, and the place on the page stays. */
    @ParameterizedTest
    @ValueSource(strings = {"/coolant", "/plan?week=2026-W10", "/order"})
    void the_rest_is_reached_by_its_links(String path) throws Exception {
        String body = body(path);
        Matcher next = NEXT.matcher(body);
        assertThat(next.find()).as("more rows than fit on " + path).isTrue();
        String address = next.group(1).replace("&amp;", "&");
        assertThat(address).startsWith(path).contains("from=25").contains("#sec-");
        String list = address.substring(0, address.indexOf("from="));
        String section = address.substring(address.indexOf('#'));
        int from = Turned.MOST;
        int all = Integer.MAX_VALUE;
        while (from < all) {
            String turned = body(list + "from=" + from);
            Matcher place =
                    Pattern.compile((from + 1) + " to ([\\d,]+) of ([\\d,]+)").matcher(turned);
            assertThat(place.find()).as("rows from %d on of %s", from + 1, path).isTrue();
            int to = number(place.group(1));
            all = number(place.group(2));
            boolean more = turned.contains("from=" + to + section) || turned.contains("from=" + to + "&");
            assertThat(more).as("a link beyond %d of %d", to, all).isEqualTo(to < all);
            from = to;
        }
        assertThat(from).isEqualTo(all);
    }

    private static int number(String shown) {
        return Integer.parseInt(shown.replace(",", ""));
    }

    @Test
    void cores_of_a_note_stay_in_one_form() throws Exception {
        String body = body("/returns");
        Matcher forms = Pattern.compile("<form[^>]*action=\"/returns/ship\".*?</form>", Pattern.DOTALL)
                .matcher(body);
        List<Integer> units = new ArrayList<>();
        while (forms.find()) {
            units.add(forms.group().split("name=\"unit\"", -1).length - 1);
        }
        assertThat(units).as("cores by supplier").anyMatch(count -> count > Turned.MOST);
    }
}
