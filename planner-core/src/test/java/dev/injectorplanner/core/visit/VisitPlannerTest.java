package dev.injectorplanner.core.visit;

import static dev.injectorplanner.core.testkit.FleetBuilder.NORTH;
import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static dev.injectorplanner.core.testkit.FleetBuilder.V8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.finding.Action;
import dev.injectorplanner.core.finding.DueFinding;
import dev.injectorplanner.core.finding.DueFindings;
import dev.injectorplanner.core.finding.FindingKind;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class VisitPlannerTest {
    private final FleetBuilder fleet = new FleetBuilder().truck("T1");

    VisitPlannerTest() {
        fleet.intervals.add(new IntervalTask(V8, "valves", 100_000.0, null, null, 3, true));
        fleet.intervals.add(new IntervalTask(V8, "timing", 100_000.0, null, null, 6, false));
    }

    private static DueFinding replace(int cylinder, int daysAhead) {
        return finding(cylinder, FindingKind.DISTANCE_KM, null, Action.REPLACE, TODAY.plusDays(daysAhead));
    }

    private static DueFinding test(int daysAhead) {
        return finding(null, FindingKind.WARRANTY, null, Action.INSPECT, TODAY.plusDays(daysAhead));
    }

    private static DueFinding task(String task, int daysAhead) {
        return finding(null, FindingKind.INTERVAL, task, Action.SERVICE, TODAY.plusDays(daysAhead));
    }

    private static DueFinding finding(Integer cylinder, FindingKind kind, String task, Action action, LocalDate by) {
        return new DueFinding("T1", NORTH, cylinder, kind, task, action, "seen", "allowed", "site rule", by);
    }

    private VisitWork work(DueFinding... findings) {
        List<DueFinding> sorted =
                Stream.of(findings).sorted(DueFindings.MOST_PRESSING).toList();
        return new VisitPlanner(new FleetIndex(fleet.build()), 0.5).workOf(fleet.trucks.get(0), sorted, TODAY);
    }

    /** 0.5 + 2.5 + 3 h of steps, 2 x 0.4 h, 3 h of valves, 0.5 h of testing. */
    @Test
    void everythingDueSoonIsOneVisit() {
        VisitWork work = work(replace(8, 3), replace(1, -20), replace(1, 30), task("valves", 50), test(10));
        assertThat(work.cylinders()).containsExactly(1, 8);
        assertThat(work.tasks()).containsExactly("valves");
        assertThat(work.inspection()).isTrue();
        assertThat(work.labourHours()).isCloseTo(10.3, within(1e-9));
        assertThat(work.drainedLitres()).isEqualTo(30);
        assertThat(work.findings()).hasSize(5);
        assertThat(work.leftOut()).isEmpty();
    }

    @Test
    void whatFallsDueMuchLaterWaits() {
        VisitWork work = work(replace(1, -20), replace(2, 12 * 7), replace(3, 12 * 7 + 1));
        assertThat(work.cylinders()).containsExactly(1, 2);
        assertThat(work.leftOut()).singleElement().satisfies(left -> {
            assertThat(left.finding().cylinder()).isEqualTo(3);
            assertThat(left.reason())
                    .isEqualTo("due more than 12 weeks after this truck's visit: a later plan places it");
        });
    }

    @Test
    void aTestMuchLaterIsMadeInItsOwnTime() {
        assertThat(work(replace(1, 0), test(8 * 7)).inspection()).isTrue();
        assertThat(work(replace(1, 0), test(8 * 7 + 1)).leftOut().get(0).reason())
                .startsWith("due more than 8 weeks");
    }

    @Test
    void aTaskThatDoesNotRideIsLeft() {
        VisitWork work = work(replace(1, 3), task("timing", 5));
        assertThat(work.tasks()).isEmpty();
        assertThat(work.leftOut().get(0).reason()).startsWith("does not ride along");
    }

    @Test
    void aTaskMuchBeforeTheInjectorWorkIsNotKeptWaiting() {
        assertThat(work(replace(1, 60), task("valves", 60 - 28)).leftOut()).isEmpty();
        assertThat(work(replace(1, 60), task("valves", 60 - 29))
                        .leftOut()
                        .get(0)
                        .reason())
                .endsWith("do it at ordinary service");
    }

    @Test
    void aTaskAloneIsAVisitWithoutAccess() {
        VisitWork work = work(task("timing", 5), task("valves", 9));
        assertThat(work.steps()).isEmpty();
        assertThat(work.labourHours()).isEqualTo(6);
        assertThat(work.leftOut().get(0).reason())
                .isEqualTo("the task of this truck's visit, timing, takes no other along");
    }

    @Test
    void whyInPlainWords() {
        Visit visit = work(replace(8, 3), replace(1, 1), task("valves", 9)).in(new IsoWeek(2026, 10), "This week.");
        assertThat(visit.why())
                .isEqualTo("Cylinder 1: seen; limit allowed (site rule); due 2026-03-03. 2 more findings join."
                        + " Cylinders 1, 8 share 3 access steps. Rides along: valves. This week.");
    }
}
