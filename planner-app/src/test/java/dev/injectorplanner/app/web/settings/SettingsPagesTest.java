package dev.injectorplanner.app.web.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.closeout.CloseOuts;
import dev.injectorplanner.app.demo.SampleFiles;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.people.AuditEntry;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.testkit.SentForm;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.app.web.Listening;
import dev.injectorplanner.app.web.RunningApp;
import dev.injectorplanner.app.web.WebApp;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.wiring.JobsSettings;
import dev.injectorplanner.app.wiring.Settings;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.generate.DemoFleet;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;

/** A manager and an administrator set up the demo's site, step by step. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class SettingsPagesTest {
    private static final String BEFORE = "The plan in force was made before this change: replan.";

    @TempDir
    private static Path folder;

    private RunningApp app;
    private Visitor manager;
    private Visitor administrator;

    @BeforeAll
    void start() throws Exception {
        Application application = Application.open(StoreSettings.embedded(folder.resolve("data")));
        List<Path> files = SampleFiles.copyTo(Files.createDirectories(folder.resolve("files")));
        application.intake().load(files, LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT);
        application
                .planning()
                .planAndKeep(
                        "demo",
                        Instant.now(),
                        DemoFleet.TODAY,
                        application.planning().policy(),
                        null);
        Visitor.addAll(application.store(), "Norrvik");
        app = WebApp.start(
                CompletableFuture.completedFuture(application),
                JobsSettings.of(Settings.none()),
                Listening.here(0),
                new SiteClock(InstantSource.system()));
        manager = Visitor.as(Role.MANAGER, app.address());
        administrator = Visitor.as(Role.ADMINISTRATOR, app.address());
    }

    @AfterAll
    void stop() {
        app.close();
    }

    private HttpResponse<String> send(Visitor who, String page, String path, Map<String, String> typed)
            throws Exception {
        Map<String, String> fields = SentForm.of(who.get(page).body(), path);
        fields.putAll(typed);
        return who.postBare(path, Visitor.form(fields));
    }

    private AuditEntry newest() {
        return app.application().audit().list(Long.MAX_VALUE, 1).get(0);
    }

    private static String key(String key) {
        return URLEncoder.encode(key, StandardCharsets.UTF_8);
    }

    @Test
    @Order(1)
    void a_manager_sets_a_figure_and_the_plan_made_anew_says_it_is_the_sites() throws Exception {
        assertThat(manager.get("/settings/figures").body()).doesNotContain(BEFORE);

        assertThat(send(manager, "/settings/figures", "/settings/figures", Map.of("v.rescheduling-cost", "120"))
                        .statusCode())
                .isEqualTo(302);

        String page = manager.get("/settings/figures").body();
        assertThat(page).contains(BEFORE).contains("set by manager").contains("Back to default");
        assertThat(newest().subject()).isEqualTo("Rescheduling cost: moving a confirmed visit");
        assertThat(send(manager, "/settings/figures", "/plan/anew", Map.of()).statusCode())
                .isEqualTo(302);
        String given = manager.get("/settings").body();
        assertThat(given).doesNotContain(BEFORE);
        assertThat(given)
                .containsPattern("(?s)rescheduling one costs 120; in the first 1 week they stay where they"
                        + " are</td>.{0,60}site and planner");
    }

    @Test
    @Order(2)
    void a_wrong_figure_is_said_at_its_field_and_what_was_typed_stays() throws Exception {
        HttpResponse<String> answer = send(
                manager,
                "/settings/figures",
                "/settings/figures",
                Map.of("v.service-level", "120", "v.review-days", "7"));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(SentForm.of(answer.body(), "/settings/figures"))
                .containsEntry("v.service-level", "120")
                .containsEntry("v.review-days", "7");
        assertThat(answer.body()).contains("Nothing was saved").contains("is out of range. Fix: ");
        assertThat(app.application().settings().kept()).containsOnlyKeys("rescheduling-cost");
    }

    @Test
    @Order(3)
    void an_older_page_overwrites_nothing() throws Exception {
        Map<String, String> older = SentForm.of(manager.get("/settings/figures").body(), "/settings/figures");
        send(manager, "/settings/figures", "/settings/figures", Map.of("v.rescheduling-cost", "130"));
        older.put("v.rescheduling-cost", "140");

        HttpResponse<String> answer = manager.postBare("/settings/figures", Visitor.form(older));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("manager set it to 130").contains("nothing was overwritten");
        assertThat(app.application().settings().policy().visits().reschedulingCost())
                .isEqualTo(130);
    }

    @Test
    @Order(4)
    void back_to_the_planner_default_is_one_button() throws Exception {
        send(manager, "/settings/figures", "/settings/figures", Map.of("clear", "rescheduling-cost"));

        assertThat(app.application().settings().kept()).isEmpty();
        assertThat(newest().after()).endsWith("(planner default)");
    }

    @Test
    @Order(5)
    void who_may_not_set_it_is_shown_it() throws Exception {
        assertThat(administrator.get("/settings/figures").body())
                .contains("Only a fleet manager for all depots can change these.");
        assertThat(manager.get("/settings/site").body())
                .contains("Only an administrator for all depots can change these.");
        assertThat(manager.postBare("/settings/site", "_csrf=" + manager.csrf("/plan"))
                        .statusCode())
                .isEqualTo(403);
    }

    @Test
    @Order(6)
    void a_step_is_changed_and_a_wrong_one_is_said_at_its_field() throws Exception {
        String step = app.application().store().snapshot().access().get(0).step();
        String family = app.application().store().snapshot().access().get(0).family();
        String page = "/settings/access/row?key=" + key(family + ", " + step);

        HttpResponse<String> wrong =
                send(manager, page, "/settings/access/save", Map.of("v.hours", "soon", "v.cautions", "<b>mind</b>"));
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(SentForm.of(wrong.body(), "/settings/access/save"))
                .containsEntry("v.hours", "soon")
                .containsEntry("v.cautions", "<b>mind</b>");
        assertThat(wrong.body()).contains("id=\"w.hours\"").contains("Fix: ").doesNotContain("<b>mind</b>");

        assertThat(send(administrator, page, "/settings/access/save", Map.of("v.hours", "2.75"))
                        .statusCode())
                .isEqualTo(302);
        assertThat(newest().who()).isEqualTo("administrator");
        assertThat(newest().after()).isEqualTo("hours 2.75");
        assertThat(manager.get("/settings/access").body()).contains("2.75").contains(BEFORE);
    }

    @Test
    @Order(7)
    void a_rule_is_added_and_removed_and_a_family_in_use_stays() throws Exception {
        Map<String, String> rule = Map.of("v.family", "all", "v.rule", "safety", "v.limit", "2", "v.window_days", "30");
        assertThat(send(manager, "/settings/rules/row", "/settings/rules/save", rule)
                        .statusCode())
                .isEqualTo(302);
        assertThat(send(manager, "/settings/rules/row", "/settings/rules/save", rule)
                        .body())
                .contains("already exists");
        String page = "/settings/rules/row?key=" + key("all, safety");
        assertThat(send(manager, page, "/settings/rules/remove", Map.of()).statusCode())
                .isEqualTo(302);
        assertThat(manager.get(page).statusCode()).isEqualTo(404);

        String family =
                app.application().store().snapshot().engineFamilies().get(0).family();
        HttpResponse<String> kept =
                send(manager, "/settings/families/row?key=" + key(family), "/settings/families/remove", Map.of());
        assertThat(kept.statusCode()).isEqualTo(422);
        assertThat(kept.body()).contains("cannot be removed").contains("trucks");
    }

    @Test
    @Order(8)
    void a_site_in_miles_reads_miles_on_every_page() throws Exception {
        assertThat(send(
                                administrator,
                                "/settings/site",
                                "/settings/site",
                                Map.of(
                                        "v.site-name",
                                        "Aldermoor & Sons",
                                        "v.distance",
                                        "miles",
                                        "v.volume",
                                        "US gallons",
                                        "v.temperature",
                                        "fahrenheit"))
                        .statusCode())
                .isEqualTo(302);

        for (String path : List.of(
                "/week",
                "/plan",
                "/plan?depot=Aldermoor&week=2026-W10",
                "/trucks/T005",
                "/trucks/T005/record",
                "/alerts",
                "/life",
                "/coolant",
                "/bay/T005",
                "/settings",
                "/settings/families",
                "/settings/rules")) {
            assertThat(manager.get(path).body())
                    .as(path)
                    .contains("Aldermoor &amp; Sons")
                    .doesNotContainPattern("\\d[ \u00a0]km\\b")
                    .doesNotContainPattern("\\d[ \u00a0]l\\b");
        }
        assertThat(manager.get("/coolant").body()).contains("Drained US gal");
        // 351,449 km / 1.609344 = 218,380.3, by calculator
        assertThat(manager.get("/trucks/T005").body()).contains("218,380 mi since fitting");
    }

    /** 250,000.4 mi are 402,336.64 km: 250,000.4 x 1.609344, by calculator. */
    @Test
    @Order(9)
    void an_odometer_typed_in_miles_is_kept_in_km_and_shown_again_as_typed() throws Exception {
        String truck = "T005";
        String page = manager.get("/bay/" + truck + "?more=true").body();
        assertThat(page).contains("Odometer, mi");
        Map<String, String> form = closeOut(page, "/bay/" + truck);
        form.put("labourHours", "1");
        form.put("odometer", "250000.4");
        form.put("distance", "MILES");
        HttpResponse<String> answer = manager.postBare("/bay/" + truck, Visitor.form(form));
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(302);

        Reading last = app.application().store().snapshot().readings().stream()
                .filter(reading -> reading.truck().equals(truck))
                .reduce((one, other) -> other)
                .orElseThrow();
        assertThat(last.odometerKm()).isCloseTo(402_336.64, within(0.01));
        assertThat(SentForm.of(manager.get(correction()).body(), correction())).containsEntry("odometer", "250000.4");
    }

    /** The form of a close-out, nothing but a look at cylinder 1. */
    private static Map<String, String> closeOut(String page, String path) {
        Map<String, String> form = new LinkedHashMap<>(SentForm.of(page, path));
        form.keySet().removeIf(name -> name.matches("used.*|tick|do|c\\d\\..*"));
        form.put("meterReplaced", "yes");
        form.put("c1.fate", "left");
        form.put("c1.reason", "looked at only");
        return form;
    }

    /** Where the close-out of T005 that holds is corrected. */
    private String correction() throws Exception {
        String kept = manager.get("/bay/T005/close-outs").body();
        Matcher link = Pattern.compile("/bay/T005/close-outs/\\d+").matcher(kept);
        assertThat(link.find()).as(kept).isTrue();
        return link.group();
    }

    private Double correctedKm() throws Exception {
        String at = correction();
        return new CloseOuts(app.application().store())
                .find(Long.parseLong(at.substring(at.lastIndexOf('/') + 1)))
                .orElseThrow()
                .odometerKm();
    }

    private void distance(String typed) throws Exception {
        assertThat(send(administrator, "/settings/site", "/settings/site", Map.of("v.distance", typed))
                        .statusCode())
                .isEqualTo(302);
    }

    /** The page was made while the site read km; it is sent when the site reads miles. */
    @Test
    @Order(13)
    void a_correction_is_read_in_the_unit_in_which_its_page_asked() throws Exception {
        distance("");
        String path = correction();
        Map<String, String> form = closeOut(manager.get(path).body(), path);
        form.put("odometer", "410000");
        form.put("why", "misread");
        distance("miles");

        assertThat(manager.postBare(path, Visitor.form(form)).statusCode()).isEqualTo(302);

        assertThat(correctedKm()).isEqualTo(410_000);
    }

    @Test
    @Order(14)
    void an_odometer_that_is_not_touched_stays_to_the_last_digit() throws Exception {
        String path = correction();
        Map<String, String> form = closeOut(manager.get(path).body(), path);
        assertThat(form).containsEntry("odometer", "254762.189");
        form.put("why", "other hours");

        assertThat(manager.postBare(path, Visitor.form(form)).statusCode()).isEqualTo(302);

        assertThat(correctedKm()).isEqualTo(410_000);
    }

    @Test
    @Order(10)
    void a_family_in_gallons_and_a_rule_in_miles_are_kept_as_typed() throws Exception {
        String family =
                app.application().store().snapshot().engineFamilies().get(0).family();
        String page = "/settings/families/row?key=" + key(family);
        double stored =
                app.application().store().snapshot().engineFamilies().get(0).coolantLitres();
        send(manager, page, "/settings/families/save", Map.of("v.glycol_percent", "48"));
        assertThat(app.application().store().snapshot().engineFamilies().get(0).coolantLitres())
                .as("not touched")
                .isEqualTo(stored);
        assertThat(newest().after()).isEqualTo("glycol_percent 48");
        send(manager, page, "/settings/families/save", Map.of("v.coolant_l", "11.3"));
        assertThat(app.application().store().snapshot().engineFamilies().get(0).coolantLitres())
                .isCloseTo(42.775, within(0.001));
        assertThat(SentForm.of(manager.get(page).body(), "/settings/families/save"))
                .containsEntry("v.coolant_l", "11.3");
        assertThat(send(manager, page, "/settings/families/save", Map.of("v.coolant_l", "11,3"))
                        .body())
                .contains("is not a number");
    }

    /** 500 l are 132.086 US gal, 10,000,000 km are 6,213,712 mi: by calculator. */
    @Test
    @Order(11)
    void a_refusal_says_what_was_typed_and_its_unit() throws Exception {
        String family =
                app.application().store().snapshot().engineFamilies().get(0).family();
        String page = "/settings/families/row?key=" + key(family);
        assertThat(send(manager, page, "/settings/families/save", Map.of("v.coolant_l", "200"))
                        .body())
                .contains(
                        "“200 US gal” must be from 0 to 132.086 US gal. Fix: enter a number from 0 to 132.086 US gal.");

        Map<String, String> form = closeOut(manager.get("/bay/T005?more=true").body(), "/bay/T005");
        form.put("labourHours", "1");
        form.put("odometer", "7000000");
        assertThat(manager.postBare("/bay/T005", Visitor.form(form)).body())
                .contains("odometer &quot;7,000,000 mi&quot;: must be from 0 mi to 6,213,712 mi."
                        + " Fix: enter a number from 0 mi to 6,213,712 mi.");
    }
}
