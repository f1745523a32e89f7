package dev.injectorplanner.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.testkit.PlanByHand;
import dev.injectorplanner.app.testkit.PlannerRuns;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.visit.Visit;
import java.net.URI;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/**
 * Every route by which something is changed, taken from the application itself: a successful change leaves a note of who
 * did what to what. A new route without a case here fails the test, and one without a note as well.
 */
@PlannerRuns
class AuditedRoutesTest {
    /** Routes of any method that change nothing. */
    private static final Set<String> CHANGE_NOTHING =
            Set.of("/error", "/bay/{truck}/readings", "/imports/match", "/replay"); // a file that waits for its match

    private URI address;
    private RunningApp app;
    private AuditNotes notes;

    @Test
    void every_change_leaves_a_note(URI address, RunningApp app) throws Exception {
        this.address = address;
        this.app = app;
        this.notes = new AuditNotes(app.application().audit());
        fill();
        new AuditedWorkshop(address, app, notes).all();
        new AuditedPlan(address, app, notes).all();
        new AuditedOrders(address, app, notes).all();
        new AuditedShop(address, app, notes).all();
        new AuditedBay(address, app, notes).all();
        people();
        new AuditedSettings(address, app, notes).all();
        assertThat(notes.routes()).containsExactlyElementsOf(changingRoutes(app));
        assertThat(notes.missing()).isEmpty();
        assertThat(notes.all()).doesNotContain("four test people share it");
    }

    private static Set<String> changingRoutes(RunningApp app) {
        Set<String> routes = new TreeSet<>();
        for (RequestMappingHandlerMapping mapping :
                app.context().getBeansOfType(RequestMappingHandlerMapping.class).values()) {
            for (RequestMappingInfo info : mapping.getHandlerMethods().keySet()) {
                Set<RequestMethod> methods = info.getMethodsCondition().getMethods();
                boolean reads = !methods.isEmpty()
                        && Set.of(RequestMethod.GET, RequestMethod.HEAD).containsAll(methods);
                if (!reads) {
                    routes.addAll(info.getPatternValues());
                }
            }
        }
        routes.removeAll(CHANGE_NOTHING);
        return routes;
    }

    private void fill() {
        List<Visit> visits = List.of(visit("T-1", List.of(1, 2)), visit("T-2", List.of(3)));
        var planned = PlanByHand.of(
                OneOfEach.DAY, List.of(PlanByHand.item("T-1", 3, "3 faults", OneOfEach.DAY.plusDays(5))), visits);
        app.application().plans().keep("by hand", "North", Instant.now().minusSeconds(60), planned.plan());
        new Alerts(app.application().store().dataSource()).update(planned, Instant.now());
    }

    private static Visit visit(String truck, List<Integer> cylinders) {
        return new Visit(
                truck,
                "North",
                "Four",
                IsoWeek.of(OneOfEach.DAY),
                cylinders,
                List.of("coolant down"),
                List.of(),
                false,
                3.5,
                17.1,
                List.of(),
                "for the faults");
    }

    private void people() throws Exception {
        Visitor administrator = Visitor.as(Role.ADMINISTRATOR, address);
        String page = "/settings/people";
        notes.take(
                page + "/add",
                "administrator",
                "add a person",
                () -> administrator.post(page, page + "/add", AuditNotes.form("name", "new", "role", "buyer")));
        notes.take(
                page + "/change",
                "administrator",
                "change a person",
                () -> administrator.post(page, page + "/change", AuditNotes.form("name", "new", "role", "manager")));
        notes.take(
                page + "/password",
                "administrator",
                "set a password",
                () -> administrator.post(page, page + "/password", AuditNotes.form("name", "new")));
        notes.take(
                page + "/disable",
                "administrator",
                "disable a person",
                () -> administrator.post(page, page + "/disable", AuditNotes.form("name", "new", "disabled", "true")));
        Visitor buyer = Visitor.as(Role.BUYER, address);
        notes.take(
                "/password",
                "buyer",
                "set a password",
                () -> buyer.post(
                        "/password",
                        "/password",
                        AuditNotes.form(
                                "now",
                                Visitor.PASSWORD,
                                "next",
                                "another one of five words",
                                "again",
                                "another one of five words")));
        assertThat(notes.of("/password")).doesNotContain("another one");
    }
}
