package dev.injectorplanner.app.web.bay;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.closeout.CloseOut;
import dev.injectorplanner.app.closeout.CloseOuts;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.stock.SerialisedStock;
import dev.injectorplanner.app.stock.StockInjector;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.testkit.PlanByHand;
import dev.injectorplanner.app.testkit.PlannerRuns;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.app.web.RunningApp;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.visit.Visit;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;

/** A storeman's and a mechanic's day, page by page, in the order of the day. */
@PlannerRuns
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class BayPagesTest {
    private static Visitor manager;

    @BeforeAll
    static void plan(RunningApp app) throws Exception {
        manager = Visitor.as(Role.MANAGER, app.address());
        List<Visit> visits = List.of(visit("T-1", List.of(1, 2)), visit("T-2", List.of(3)));
        app.application()
                .plans()
                .keep(
                        "by hand",
                        "North",
                        Instant.now().minusSeconds(60),
                        PlanByHand.of(OneOfEach.DAY, List.of(), visits).plan());
    }

    private static Visit visit(String truck, List<Integer> cylinders) {
        return new Visit(
                truck,
                "North",
                "Four",
                IsoWeek.of(OneOfEach.DAY),
                cylinders,
                List.of("coolant down"),
                List.of("fuel filter"),
                false,
                3.5,
                17.1,
                List.of(),
                "for the faults");
    }

    private HttpResponse<String> get(URI address, String path) throws Exception {
        return manager.get(path);
    }

    private HttpResponse<String> post(URI address, String path, Map<String, String> form) throws Exception {
        return manager.postBare(path, "_csrf=" + manager.csrf("/store") + "&" + Visitor.form(form));
    }

    private static String location(HttpResponse<String> answer) {
        return answer.headers().firstValue("Location").orElse("");
    }

    private static String valueOf(String page, String field) {
        Matcher found = Pattern.compile("<(?:input|textarea)[^>]*name=\"" + Pattern.quote(field) + "\"[^>]*>")
                .matcher(page);
        assertThat(found.find()).as(field).isTrue();
        Matcher value = Pattern.compile(" value=\"([^\"]*)\"").matcher(found.group());
        return value.find() ? value.group(1) : "";
    }

    private static Map<String, String> typed(String key) {
        Map<String, String> form = new LinkedHashMap<>();
        form.put("formKey", key);
        form.put("week", "2026-W10");
        form.put("doneOn", "2026-03-02");
        form.put("labourHours", "3,5");
        form.put("odometer", "124 000");
        form.put("extras", "clip <b>renewed</b>");
        form.put("task", "fuel filter");
        form.put("usedPart", "SEAL-1");
        form.put("used.SEAL-1", "2");
        form.put("c1.fate", "fitted");
        form.put("c1.found", "FAILED");
        form.put("c1.asPicked", "yes");
        form.put("c1.programmed", "yes");
        form.put("c1.compared", "yes");
        form.put("c2.fate", "left");
        form.put("c2.reason", "bolt seized");
        form.put("do", "close");
        return form;
    }

    @Test
    @Order(1)
    void goods_come_in_with_serial_and_code_or_are_refused_with_all_that_was_typed(URI address) throws Exception {
        Map<String, String> form = new LinkedHashMap<>(Map.of(
                "depot",
                "North",
                "part",
                "INJ-4R",
                "origin",
                "REMAN",
                "u0.serial",
                "R1",
                "u0.code",
                "AAAA",
                "u2.serial",
                "R2",
                "u2.code",
                "toolong"));
        HttpResponse<String> refused = post(address, "/store/receiving", form);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body())
                .contains("Injector 2, code &quot;TOOLONG&quot;: does not match the pattern of part INJ-4R")
                .contains("Fix: read it on the injector again.");
        assertThat(valueOf(refused.body(), "u0.serial")).isEqualTo("R1");
        assertThat(valueOf(refused.body(), "u1.code")).isEqualTo("toolong");
        form.put("u2.code", "BBBB");
        assertThat(location(post(address, "/store/receiving", form))).contains("/store?depot=North&in=2");
        assertThat(get(address, "/store?depot=North&in=2").body())
                .contains("2 injectors received.", "R1", "BBBB", "to allocate", "2026-W10");
    }

    @Test
    @Order(2)
    void a_kit_is_filled_and_its_labels_read_back(URI address, RunningApp app) throws Exception {
        assertThat(location(post(address, "/store/kits", Map.of("depot", "North", "truck", "T-1", "do", "fill"))))
                .endsWith("/store?depot=North");
        Map<Integer, StockInjector> kit = new SerialisedStock(app.application().store()).kitOf("T-1");
        assertThat(kit.keySet()).containsExactly(1, 2);
        HttpResponse<byte[]> labels = manager.file("/bay/T-1/labels.pdf");
        assertThat(labels.headers().firstValue("Content-Type")).hasValue("application/pdf");
        assertThat(LabelReading.of(labels.body())).containsExactlyInAnyOrder("T-1;1;R1;AAAA", "T-1;2;R2;BBBB");
        assertThat(get(address, "/bay/T-2/labels.pdf").statusCode()).isEqualTo(404);
        HttpResponse<String> none =
                post(address, "/store/kits", Map.of("depot", "North", "truck", "T-2", "do", "fill"));
        assertThat(location(none)).endsWith("/store?depot=North&lacking=1");
    }

    @Test
    @Order(3)
    void the_list_and_the_sheet_show_what_a_mechanic_needs(URI address) throws Exception {
        assertThat(get(address, "/bay").body())
                .contains("This week", "/bay/T-1", "cylinders 1 2, fuel filter", "planned");
        String sheet = get(address, "/bay/T-1").body();
        assertThat(sheet)
                .containsSubsequence(
                        "Before you start",
                        "The engine maker",
                        "Let the rail bleed down",
                        "coolant down",
                        "hot coolant",
                        "Picked for this cylinder:",
                        "R1, code AAAA",
                        "Coolant refilled",
                        "Stored faults cleared",
                        "Hours worked",
                        "Save and close out")
                .doesNotContain("style=\"", "src=\"http", "href=\"http", "onclick");
        assertThat(Visitor.withoutOwnScript(sheet).split("<script", -1)).hasSize(6);
        assertThat(sheet).contains("src=\"/bay.js\"", "autocapitalize=\"characters\"", "inputmode=\"decimal\"");
        assertThat(get(address, "/bay.js").statusCode()).isEqualTo(200);
        HttpResponse<byte[]> paper = manager.file("/bay/T-1/sheet.pdf");
        assertThat(new String(paper.body(), 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
        assertThat(get(address, "/bay/Nowhere").statusCode()).isEqualTo(404);
        assertThat(get(address, "/bay?depot=Nowhere").statusCode()).isEqualTo(404);
    }

    @Test
    @Order(4)
    void a_refused_form_comes_back_with_all_that_was_typed(URI address, RunningApp app) throws Exception {
        Map<String, String> form = typed("key-1");
        form.put("odometer", "12 thousand");
        form.put("c1.asPicked", "no");
        form.put("c1.code", "T-1;2;R2;BBBB");
        form.put("c2.reason", "");
        form.put("tick", "s 1");
        HttpResponse<String> answer = post(address, "/bay/T-1", form);
        assertThat(answer.statusCode()).isEqualTo(422);
        String page = answer.body();
        assertThat(page)
                .contains("Not saved. 3 things to fix")
                .contains("odometer &quot;12 thousand&quot;: is not a number. Fix: write it as 412600 or 6.5.")
                .contains("Cylinder 1, the scanned label is for truck T-1, cylinder 2.")
                .contains("Cylinder 2: not done, and no reason given.")
                .contains("clip &lt;b&gt;renewed&lt;/b&gt;")
                .doesNotContain("<b>renewed");
        assertThat(valueOf(page, "odometer")).isEqualTo("12 thousand");
        assertThat(valueOf(page, "labourHours")).isEqualTo("3,5");
        assertThat(valueOf(page, "c1.code")).isEqualTo("T-1;2;R2;BBBB");
        assertThat(valueOf(page, "formKey")).isEqualTo("key-1");
        assertThat(page)
                .containsPattern("value=\"s 1\" checked")
                .containsPattern("name=\"c1.found\" value=\"FAILED\" checked");
        assertThat(new CloseOuts(app.application().store()).ofTruck("T-1")).isEmpty();
    }

    /** 124,000 km or 124 and no more: nobody but the person who typed it knows. */
    @Test
    @Order(5)
    void a_comma_before_three_digits_is_not_guessed_at(URI address, RunningApp app) throws Exception {
        for (String unit : List.of("KM", "MILES")) {
            Map<String, String> form = typed("key-1");
            form.put("odometer", "124,000");
            form.put("distance", unit);
            HttpResponse<String> answer = post(address, "/bay/T-1", form);
            assertThat(answer.statusCode()).isEqualTo(422);
            assertThat(answer.body())
                    .contains("odometer &quot;124,000&quot;: its comma can be read in two ways."
                            + " Fix: write 124000 or 124.000.");
        }
        assertThat(new CloseOuts(app.application().store()).ofTruck("T-1")).isEmpty();
    }

    @Test
    @Order(5)
    void enter_in_a_field_only_checks(URI address, RunningApp app) throws Exception {
        Map<String, String> form = typed("key-1");
        form.put("do", "check");
        HttpResponse<String> answer = post(address, "/bay/T-1", form);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).contains("No problems found so far.");
        assertThat(new CloseOuts(app.application().store()).ofTruck("T-1")).isEmpty();
    }

    @Test
    @Order(6)
    void a_close_out_is_kept_once_and_shown(URI address, RunningApp app) throws Exception {
        assertThat(location(post(address, "/bay/T-1", typed("key-1")))).endsWith("/bay/T-1?saved=now");
        assertThat(location(post(address, "/bay/T-1", typed("key-1")))).endsWith("/bay/T-1?saved=before");
        List<CloseOut> kept = new CloseOuts(app.application().store()).ofTruck("T-1");
        assertThat(kept).singleElement().satisfies(row -> {
            assertThat(row.odometerKm()).isEqualTo(124_000);
            assertThat(row.cylinders().get(0).serial()).isEqualTo("R1");
            assertThat(row.cylinders().get(1).reason()).isEqualTo("bolt seized");
            assertThat(row.madeBy()).isEqualTo("manager");
        });
        assertThat(get(address, "/bay/T-1?saved=before").body())
                .contains("Sending it again changed nothing.")
                .contains("fitted R1 (reman)", "AAAA", "programmed, read back and compared", "not done: bolt seized")
                .contains("data-kept=\"key-1\"")
                .doesNotContain("Save and close out");
        assertThat(get(address, "/bay").body()).contains("done");
        assertThat(get(address, "/plan?depot=North&week=2026-W10").body()).contains("<span>done</span>");
        assertThat(get(address, "/trucks/T-1").body())
                .containsPattern("Closed out on 2.Mar.2026, after this plan was made");
        assertThat(get(address, "/trucks/T-2").body()).doesNotContain("Closed out on");
    }

    @Test
    @Order(7)
    void a_manager_corrects_it_and_both_versions_are_read(URI address, RunningApp app) throws Exception {
        long id = new CloseOuts(app.application().store()).ofTruck("T-1").get(0).id();
        String form = get(address, "/bay/T-1/close-outs/" + id).body();
        assertThat(valueOf(form, "c1.serial")).isEqualTo("R1");
        assertThat(valueOf(form, "c2.reason")).isEqualTo("bolt seized");
        Map<String, String> typed = typed("key-2");
        typed.remove("c1.asPicked");
        typed.put("c1.serial", "R1");
        typed.put("c1.code", "AAAA");
        typed.put("c1.found", "WORN");
        assertThat(post(address, "/bay/T-1/close-outs/" + id, typed).body())
                .contains("reason for the correction: is empty");
        typed.put("why", "it was worn, not failed");
        assertThat(location(post(address, "/bay/T-1/close-outs/" + id, typed))).endsWith("/bay/T-1/close-outs");
        assertThat(get(address, "/bay/T-1/close-outs").body())
                .contains(
                        "Version 2",
                        "it was worn, not failed",
                        "found worn",
                        "Version 1",
                        "found failed",
                        "corrected later");
        assertThat(get(address, "/bay/T-1/close-outs/" + id).statusCode()).isEqualTo(404);
    }

    @Test
    @Order(8)
    void a_truck_without_a_visit_can_be_closed_out_too(URI address, RunningApp app) throws Exception {
        assertThat(get(address, "/bay/T-1?more=true").body())
                .contains("choose those that were done", "Save and close out");
        Map<String, String> form = typed("key-3");
        form.put("c2.fate", "stays");
        form.put("c1.fate", "stays");
        form.put("c4.fate", "fitted");
        form.put("c4.found", "UNKNOWN");
        form.put("c4.serial", "S4");
        form.put("c4.code", "4444");
        form.put("c4.programmed", "yes");
        form.put("c4.readBack", "4444");
        assertThat(location(post(address, "/bay/T-1", form))).endsWith("saved=now");
        assertThat(new CloseOuts(app.application().store())
                        .ofTruck("T-1")
                        .get(0)
                        .fitted())
                .containsExactly(4);
    }
}
