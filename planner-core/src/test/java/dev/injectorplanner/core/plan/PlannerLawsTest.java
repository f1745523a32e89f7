package dev.injectorplanner.core.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.generate.FleetGenerator;
import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.testkit.FleetBuilder;
import dev.injectorplanner.core.visit.Visit;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What holds for every plan, tried on made-up fleets. */
class PlannerLawsTest {
    private static FleetSnapshot fleet(long seed) {
        return new FleetGenerator(DemoFleet.ofSize(40, seed)).generate().snapshot();
    }

    @Test
    void theSameFleetGivesTheSamePlanHoweverItsRowsAreMixed() {
        for (long seed = 1; seed <= 3; seed++) {
            FleetSnapshot fleet = fleet(seed);
            Plan plan = PlanOf.fleet(fleet);
            assertThat(PlanOf.fleet(fleet)).as("seed %d, twice", seed).isEqualTo(plan);
            assertThat(PlanOf.fleet(FleetBuilder.shuffled(fleet, seed)))
                    .as("seed %d, mixed", seed)
                    .isEqualTo(plan);
        }
    }

    @Test
    void everyFindingIsAnsweredByOneVisitOrNamedAsNotPlanned() {
        for (long seed = 4; seed <= 9; seed++) {
            Plan plan = PlanOf.fleet(fleet(seed));
            List<DueItem> answered = new ArrayList<>();
            plan.visits().forEach(visit -> answered.addAll(visit.dueItems()));
            answered.removeIf(item -> item.kind() == DueKind.COST); // no rule asked for these
            plan.unplanned().forEach(row -> answered.addAll(row.dueItems()));
            assertThat(plan.dueItems()).as("seed %d", seed).isNotEmpty();
            assertThat(answered).as("seed %d", seed).containsExactlyInAnyOrderElementsOf(plan.dueItems());
        }
    }

    @Test
    void noWeekHasMoreThanItsHoursAndNoTruckTwoMainVisits() {
        for (long seed = 10; seed <= 13; seed++) {
            Plan plan = PlanOf.fleet(fleet(seed));
            assertThat(plan.visits())
                    .as("seed %d", seed)
                    .filteredOn(plan::isMain)
                    .extracting(Visit::truck)
                    .doesNotHaveDuplicates();
            assertThat(plan.visits())
                    .as("seed %d", seed)
                    .filteredOn(visit -> !visit.diagnosis())
                    .extracting(visit -> visit.truck() + " " + visit.week())
                    .doesNotHaveDuplicates();
            assertThat(plan.visits())
                    .as("seed %d", seed)
                    .filteredOn(visit -> !plan.isMain(visit))
                    .allMatch(visit -> visit.cylinders().isEmpty());
            double loaded = plan.loads().stream()
                    .mapToDouble(load -> load.labourHours())
                    .sum();
            double visited =
                    plan.visits().stream().mapToDouble(Visit::labourHours).sum();
            assertThat(loaded).as("seed %d", seed).isCloseTo(visited, within(1e-3));
        }
    }

    @Test
    void anEmptyFleetHasAnEmptyPlan() {
        Plan plan = PlanOf.fleet(FleetSnapshot.empty());
        assertThat(plan.visits()).isEmpty();
        assertThat(plan.dueItems()).isEmpty();
        assertThat(plan.assumptions()).isNotEmpty();
    }

    @Test
    void aSchedulerThatBreaksALimitIsCaught() {
        FleetSnapshot fleet = new FleetBuilder()
                .truck("T1")
                .allInjectors("T1", 210_000)
                .rule(RuleKind.DISTANCE_KM, 200_000)
                .build();
        Planner planner = new Planner(request -> new Schedule(List.of(), List.of(), 0, null));
        assertThatThrownBy(() -> planner.plan(fleet, Policy.standard(), FleetBuilder.TODAY))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("the schedule breaks its limits: truck T1: neither placed nor named as not placed");
    }

    @Test
    void assumptionsNameTheDefaultsInUseAndNotTheSitesOwn() {
        Plan plan = PlanOf.fleet(new FleetBuilder()
                .truck("T1")
                .rule(RuleKind.DISTANCE_KM, 200_000)
                .rule(RuleKind.RISK, 5)
                .build());
        assertThat(plan.assumptions())
                .extracting(Assumption::topic)
                .contains("rule age_months", "rule faults", "sign: rail pressure fault of the engine");
        assertThat(plan.assumptions()).extracting(Assumption::topic).doesNotContain("rule distance_km");
        assertThat(plan.assumptions())
                .filteredOn(row -> row.topic().equals("rule age_months"))
                .extracting(Assumption::source)
                .containsExactly("common practice");
    }
}
