package dev.injectorplanner.app.web.bay;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.bayjob.BayJob;
import dev.injectorplanner.app.bayjob.BayJobs;
import dev.injectorplanner.app.closeout.CloseOut;
import dev.injectorplanner.app.closeout.CloseOuts;
import dev.injectorplanner.app.diagnosis.LookBook;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.photo.Photo;
import dev.injectorplanner.app.photo.Photos;
import dev.injectorplanner.app.stock.SerialisedStock;
import dev.injectorplanner.app.stock.StockInjector;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.testkit.PlanByHand;
import dev.injectorplanner.app.testkit.PlannerRuns;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.app.testkit.WorkshopForms;
import dev.injectorplanner.app.web.RunningApp;
import dev.injectorplanner.core.diagnosis.DiagnosisKind;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.core.fleet.Repair;
import java.net.URI;
import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;

/** What is pressed twice, sent late, or sent by two phones at once does no harm. In the order of an unplanned job. */
@PlannerRuns
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class PressedTwiceTest {
    private static final String TRUCK = "T-1";

    private static Visitor mechanic;
    private static BayJobs jobs;

    @BeforeAll
    static void stock(URI address, RunningApp app) throws Exception {
        app.application()
                .plans()
                .keep(
                        "by hand",
                        "North",
                        Instant.now().minusSeconds(60),
                        PlanByHand.of(OneOfEach.DAY, List.of(), List.of()).plan());
        jobs = new BayJobs(app.application().store());
        mechanic = Visitor.as(Role.MECHANIC, address);
        post("/store/receiving", WorkshopForms.twoReceived());
    }

    private static HttpResponse<String> post(String path, String... fields) throws Exception {
        return post(path, WorkshopForms.of(fields));
    }

    private static HttpResponse<String> post(String path, Map<String, String> form) throws Exception {
        return mechanic.postBare(path, "_csrf=" + mechanic.csrf("/store") + "&" + Visitor.form(form));
    }

    private static Map<Integer, String> kit(RunningApp app) {
        Map<Integer, String> serials = new LinkedHashMap<>();
        Map<Integer, StockInjector> kit = new SerialisedStock(app.application().store()).kitOf(TRUCK);
        kit.forEach((cylinder, row) -> serials.put(cylinder, row.serial()));
        return serials;
    }

    private static String job() {
        return String.valueOf(jobs.findOpen(TRUCK).orElseThrow().id());
    }

    @Test
    @Order(1)
    void a_form_whose_job_is_over_starts_no_other_and_cancels_none() throws Exception {
        post("/start/T-1", WorkshopForms.started("job-1"));
        post("/start/T-1", WorkshopForms.started("job-1"));
        String first = job();
        post("/start/T-1/call-off", "job", first);
        HttpResponse<String> again = post("/start/T-1", WorkshopForms.started("job-1"));
        assertThat(again.statusCode()).isEqualTo(422);
        assertThat(again.body()).contains("the job of this form is over already");
        assertThat(jobs.findOpen(TRUCK)).isEmpty();
        post("/start/T-1", WorkshopForms.started("job-2"));
        post("/start/T-1/call-off", "job", first);
        assertThat(jobs.findOpen(TRUCK)).isPresent();
    }

    @Test
    @Order(2)
    void a_second_press_does_not_swap_the_kit_back(RunningApp app) throws Exception {
        assertThat(kit(app)).isEqualTo(Map.of(1, "R7", 2, "R8"));
        String[] form = {"swap", "1 2", "kit.1", "R7", "kit.2", "R8", "c1.serial", "R8"};
        HttpResponse<String> swapped = post("/bay/T-1/swap", form);
        assertThat(swapped.statusCode()).isEqualTo(302);
        assertThat(kit(app)).isEqualTo(Map.of(1, "R8", 2, "R7"));
        assertThat(mechanic.get("/bay/T-1").body()).contains("cylinders 1 and 2 are swapped", "value=\"R8\"");
        post("/bay/T-1/swap", form);
        assertThat(kit(app)).isEqualTo(Map.of(1, "R8", 2, "R7"));
        HttpResponse<String> old = post("/bay/T-1/swap", "swap", "1 2", "kit.1", "R7", "kit.2", "R9");
        assertThat(old.statusCode()).isEqualTo(422);
        assertThat(old.body()).contains("the kit was changed since this page was opened");
    }

    @Test
    @Order(3)
    void two_phones_keep_each_others_steps(RunningApp app) throws Exception {
        String look = "/bay/T-1/look/leak";
        String never = "NOT_LOOKED";
        post(
                look,
                "state.filter-housing",
                "CAUSE",
                "found.filter-housing",
                "wet",
                "was.state.filter-housing",
                never,
                "was.found.filter-housing",
                "",
                "state.pump",
                never,
                "was.state.pump",
                never);
        post(
                look,
                "state.filter-housing",
                never,
                "found.filter-housing",
                "",
                "was.state.filter-housing",
                never,
                "was.found.filter-housing",
                "",
                "state.pump",
                "IN_ORDER",
                "was.state.pump",
                never);
        assertThat(LookBook.words(
                        DiagnosisKind.LEAK, new LookBook(app.application().store()).open(TRUCK, DiagnosisKind.LEAK)))
                .contains("wet")
                .contains("High-pressure pump: in order");
    }

    /** The second sending comes late: another phone began to look anew in between, and what it found stays. */
    @Test
    @Order(3)
    void a_diagnosis_that_is_sent_twice_ends_once(RunningApp app) throws Exception {
        String look = "/bay/T-1/look/pressure";
        String[] form = {
            "formKey", "look-1", "state.filter", "CAUSE", "was.state.filter", "NOT_LOOKED", "end", "nothing"
        };
        assertThat(post(look, form).headers().firstValue("Location"))
                .hasValueSatisfying(at -> assertThat(at).endsWith("?ended=nothing"));
        LookBook looks = new LookBook(app.application().store());
        assertThat(looks.open(TRUCK, DiagnosisKind.PRESSURE)).isEmpty();
        post(look, "formKey", "look-2", "state.filter", "IN_ORDER", "was.state.filter", "NOT_LOOKED");
        assertThat(post(look, form).headers().firstValue("Location"))
                .hasValueSatisfying(at -> assertThat(at).endsWith("?ended=nothing"));
        assertThat(LookBook.words(DiagnosisKind.PRESSURE, looks.open(TRUCK, DiagnosisKind.PRESSURE)))
                .isEqualTo("Fuel filter: in order");
        String[] late = {"formKey", "look-2", "state.filter", "IN_ORDER", "was.state.filter", "NOT_LOOKED"};
        post(look, "formKey", "look-3", "state.filter", "CAUSE", "was.state.filter", "IN_ORDER");
        post(look, late);
        post(
                look,
                "formKey",
                "look-2",
                "state.supply",
                "IN_ORDER",
                "was.state.supply",
                "NOT_LOOKED"); // back, and more found
        assertThat(LookBook.words(DiagnosisKind.PRESSURE, looks.open(TRUCK, DiagnosisKind.PRESSURE)))
                .isEqualTo("Fuel filter: cause found; Low-pressure supply: in order");
        // "Aa" and "BB" have the same hash in Java: two notes of one form none the less
        assertThat("Aa".hashCode()).isEqualTo("BB".hashCode());
        for (String found : List.of("Aa", "BB")) {
            post(look, "formKey", "look-2", "state.supply", "IN_ORDER", "found.supply", found);
        }
        assertThat(LookBook.words(DiagnosisKind.PRESSURE, looks.open(TRUCK, DiagnosisKind.PRESSURE)))
                .isEqualTo("Fuel filter: cause found; Low-pressure supply: in order, BB");
    }

    @Test
    @Order(4)
    void the_photographs_of_a_visit_are_six_whatever_the_form_says(URI address, RunningApp app) throws Exception {
        String token = mechanic.csrf("/store");
        for (int photo = 0; photo < 8; photo++) {
            mechanic.send(WorkshopForms.photograph(token, "photo-" + photo)
                    .field("visit", "another " + photo)
                    .to(address.resolve("/bay/T-1/photos")));
        }
        assertThat(new Photos(app.application().store()).ofTruck(TRUCK))
                .hasSize(6)
                .extracting(Photo::visit)
                .containsOnly("job " + job());
    }

    private static Map<String, String> done(String key, int cylinder, String serial, String code, String... more) {
        Map<String, String> form = WorkshopForms.closed(key);
        form.putAll(WorkshopForms.fitted(cylinder, "FAILED", "serial", serial, "code", code));
        form.putAll(WorkshopForms.of(more));
        return form;
    }

    @Test
    @Order(5)
    void a_close_out_of_another_visit_leaves_the_job_open(RunningApp app) throws Exception {
        post("/bay/T-1", done("key-3", 3, "S3", "3333", "week", "2026-W10"));
        assertThat(new CloseOuts(app.application().store()).ofTruck(TRUCK)).hasSize(1);
        assertThat(jobs.findOpen(TRUCK)).isPresent();
    }

    @Test
    @Order(6)
    void a_swap_of_a_closed_out_job_is_done_once(RunningApp app) throws Exception {
        CloseOuts closeOuts = new CloseOuts(app.application().store());
        Map<String, String> both = done("key-job", 1, "R8", "HHHH", "job", job());
        both.putAll(WorkshopForms.fitted(2, "WORN", "serial", "R7", "code", "GGGG"));
        post("/bay/T-1", both);
        assertThat(jobs.findOpen(TRUCK)).isEmpty();
        CloseOut made = closeOuts.ofTruck(TRUCK).get(0);
        String[] form = {"first", "1", "second", "2", "coded", "yes", "version", String.valueOf(made.id())};
        post("/bay/T-1/changed-over", form);
        post("/bay/T-1/changed-over", form);
        CloseOut now = closeOuts.ofTruck(TRUCK).get(0);
        assertThat(now.version()).isEqualTo(2);
        assertThat(now.cylinders().get(0).serial()).isEqualTo("R7");
    }

    /** Replaced on the day of the report: the close-out names the codes, and taken back it answers nothing. */
    @Test
    @Order(7)
    void a_replacement_after_a_diagnosis_answers_its_codes(RunningApp app) throws Exception {
        app.application()
                .store()
                .inJointTransaction((connection, writer) -> writer.merge(
                        Fault.class,
                        List.of(new Fault(
                                TRUCK, Instant.parse("2026-03-02T06:00:00Z"), new FaultCode("P0093"), null, 1, null)),
                        true));
        post("/start/T-1", "formKey", "job-3", "failed", "4", "set", "4", "look", "leak");
        BayJob job = jobs.findOpen(TRUCK).orElseThrow();
        assertThat(job.diagnosed()).containsExactly("P0093");
        assertThat(new LookBook(app.application().store()).open(TRUCK, DiagnosisKind.LEAK))
                .isEmpty();
        post("/bay/T-1", done("key-4", 4, "S4", "4444", "job", job()));
        assertThat(answers(app))
                .singleElement()
                .satisfies(what ->
                        assertThat(what).startsWith("replaced after diagnosis: cylinder 4 (P0093), close-out "));
        CloseOuts closeOuts = new CloseOuts(app.application().store());
        closeOuts.voidIt(closeOuts.ofTruck(TRUCK).get(0).id(), TRUCK, "not done", Instant.now(), "kim");
        assertThat(answers(app)).isEmpty();
    }

    private static List<String> answers(RunningApp app) {
        return app
                .application()
                .store()
                .inJointTransaction((connection, writer) -> writer.ofTrucks(Repair.class, List.of(TRUCK)))
                .stream()
                .map(Repair::what)
                .filter(what -> what.startsWith("replaced after diagnosis"))
                .toList();
    }
}
