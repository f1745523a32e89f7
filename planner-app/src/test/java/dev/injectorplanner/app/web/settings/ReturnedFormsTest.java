package dev.injectorplanner.app.web.settings;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.testkit.DemoSite;
import dev.injectorplanner.app.testkit.SentForm;
import dev.injectorplanner.app.testkit.Visitor;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Forms that come back: two people have one open, the first mistypes something, mends it on the page that comes back, and saves. */
class ReturnedFormsTest {
    @TempDir
    private static Path folder;

    private static DemoSite site;
    private static Visitor manager;

    @BeforeAll
    static void start() throws Exception {
        site = DemoSite.start(folder);
        manager = Visitor.as(Role.MANAGER, site.app().address());
        Visitor administrator = Visitor.as(Role.ADMINISTRATOR, site.app().address());
        send(administrator, "/settings/site", "/settings/site", Map.of("v.volume", "US gallons"));
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static void send(Visitor who, String page, String path, Map<String, String> typed) throws Exception {
        Map<String, String> fields = SentForm.of(who.get(page).body(), path);
        fields.putAll(typed);
        assertThat(who.postBare(path, Visitor.form(fields)).statusCode()).isEqualTo(302);
    }

    private static String key(String key) {
        return URLEncoder.encode(key, StandardCharsets.UTF_8);
    }

    /** One page is open, another person sets frozen weeks, and the first mistypes the rescheduling cost, mends it and saves. */
    @Test
    void mending_a_wrong_figure_does_not_undo_what_another_set_meanwhile() throws Exception {
        Map<String, String> first = SentForm.of(manager.get("/settings/figures").body(), "/settings/figures");
        send(manager, "/settings/figures", "/settings/figures", Map.of("v.frozen-weeks", "3"));
        first.put("v.rescheduling-cost", "many");
        Map<String, String> again = SentForm.of(
                manager.postBare("/settings/figures", Visitor.form(first)).body(), "/settings/figures");
        again.put("v.rescheduling-cost", "160");

        assertThat(manager.postBare("/settings/figures", Visitor.form(again)).statusCode())
                .isEqualTo(302);

        assertThat(site.application().settings().policy().visits().frozenWeeks())
                .isEqualTo(3);
        assertThat(site.application().settings().policy().visits().reschedulingCost())
                .isEqualTo(160);
    }

    /** The same, where both set the same figure: the first is told, and only then may overwrite it. */
    @Test
    void a_wrong_figure_beside_it_does_not_hide_what_another_set_meanwhile() throws Exception {
        Map<String, String> first = SentForm.of(manager.get("/settings/figures").body(), "/settings/figures");
        send(manager, "/settings/figures", "/settings/figures", Map.of("v.frozen-weeks", "4"));
        first.put("v.frozen-weeks", "5 weeks");
        String mistyped =
                manager.postBare("/settings/figures", Visitor.form(first)).body();
        Map<String, String> again = SentForm.of(mistyped, "/settings/figures");
        again.put("v.frozen-weeks", "5");
        HttpResponse<String> told = manager.postBare("/settings/figures", Visitor.form(again));
        assertThat(told.statusCode()).isEqualTo(422);
        assertThat(told.body()).contains("manager set it to 4 weeks").contains("nothing was overwritten");

        Map<String, String> anew = SentForm.of(told.body(), "/settings/figures");
        assertThat(anew).containsEntry("v.frozen-weeks", "5");
        assertThat(manager.postBare("/settings/figures", Visitor.form(anew)).statusCode())
                .isEqualTo(302);
        assertThat(site.application().settings().policy().visits().frozenWeeks())
                .isEqualTo(5);
    }

    @Test
    void mending_a_row_does_not_undo_what_another_changed_meanwhile() throws Exception {
        String family =
                site.application().store().snapshot().engineFamilies().get(0).family();
        String page = "/settings/families/row?key=" + key(family);
        Map<String, String> first = SentForm.of(manager.get(page).body(), "/settings/families/save");
        send(manager, page, "/settings/families/save", Map.of("v.glycol_percent", "47"));
        first.put("v.coolant_l", "11,3");
        Map<String, String> again = SentForm.of(
                manager.postBare("/settings/families/save", Visitor.form(first)).body(), "/settings/families/save");
        again.put("v.coolant_l", "11.4");

        HttpResponse<String> told = manager.postBare("/settings/families/save", Visitor.form(again));

        assertThat(told.statusCode()).isEqualTo(422);
        assertThat(told.body()).contains("Somebody changed this row").contains("nothing was overwritten");
    }

    /** A phone's keyboard of figures may have no minus, and a choice says what is wrong with it as any field does. */
    @Test
    void fields_say_how_they_are_typed_and_what_is_wrong() throws Exception {
        String page = manager.get("/settings/figures").body();
        assertThat(page)
                .containsPattern("<input[^>]*id=\"v.protect-to\"[^>]*inputmode=\"text\"")
                .containsPattern("<input[^>]*id=\"v.rescheduling-cost\"[^>]*inputmode=\"decimal\"");

        Map<String, String> form = SentForm.of(page, "/settings/figures");
        form.put("v.renew-coolant", "maybe");
        assertThat(manager.postBare("/settings/figures", Visitor.form(form)).body())
                .containsPattern("<select[^>]*id=\"v.renew-coolant\"[^>]*aria-invalid=\"true\""
                        + "[^>]*aria-describedby=\"w.renew-coolant h.renew-coolant\"");
        Map<String, String> rule =
                SentForm.of(manager.get("/settings/rules/row").body(), "/settings/rules/save");
        rule.put("v.limit", "2");
        assertThat(manager.postBare("/settings/rules/save", Visitor.form(rule)).body())
                .containsPattern("<select[^>]*id=\"v.rule\"[^>]*aria-describedby=\"w.rule h.rule\"");
    }
}
