package dev.injectorplanner.core.plan;

import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.due.DueAction;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.util.List;
import org.junit.jupiter.api.Test;

class F01_RiskInThePlanTest {
    private static FleetBuilder oneTruck() {
        return new FleetBuilder().truck("T1").injector("T1", 3, TODAY.minusYears(3), 100_000.0);
    }

    private static List<DueItem> dueItems(FleetBuilder fleet, DueKind kind) {
        return PlanOf.fleet(fleet.build()).dueItems().stream()
                .filter(item -> item.kind() == kind)
                .toList();
    }

    @Test
    void aRuleOnRiskMakesAFindingWhenTheChanceReachesIt() {
        InjectorRisk risk = PlanOf.fleet(oneTruck().build()).risks().get(0);
        double percent = 100 * risk.chance12();
        List<DueItem> now = dueItems(oneTruck().rule(RuleKind.RISK, 0.99 * percent), DueKind.RISK);
        assertThat(now).hasSize(1);
        assertThat(now.get(0).by()).isEqualTo(TODAY);
        assertThat(now.get(0).action()).isEqualTo(DueAction.REPLACE);
        assertThat(now.get(0).evidence())
                .contains("200,000 km since fitting, no warning sign;")
                .contains("chance of failing within 12");
        List<DueItem> later = dueItems(oneTruck().rule(RuleKind.RISK, 1.05 * percent), DueKind.RISK);
        assertThat(later).hasSize(1);
        assertThat(later.get(0).by()).isAfter(TODAY);
        assertThat(dueItems(oneTruck().rule(RuleKind.RISK, 5 * percent), DueKind.RISK))
                .isEmpty();
    }

    @Test
    void faultsRaiseTheChanceThatTheSheetShows() {
        double quiet = PlanOf.fleet(oneTruck().build()).risks().get(0).chance12();
        Plan plan = PlanOf.fleet(oneTruck()
                .fault("T1", TODAY.minusDays(12), "SPN 653 FMI 7")
                .fault("T1", TODAY.minusDays(3), "SPN 653 FMI 7")
                .build());
        InjectorRisk risk = plan.risks().get(0);
        assertThat(risk.condition()).isEqualTo("faults on several days");
        assertThat(risk.multiplierSource()).isEqualTo("planner default");
        assertThat(risk.chance12()).isGreaterThan(2.5 * quiet);
    }

    @Test
    void dueForInspectionIsAFindingOfTheWholeTruck() {
        FleetBuilder fleet = new FleetBuilder().truck("T1").allInjectors("T1", 150_000);
        for (int cylinder = 1; cylinder <= 8; cylinder++) {
            fleet.test("T1", cylinder, TODAY.minusWeeks(20), TestKind.RETURN_FLOW, 30, "ml/min");
        }
        assertThat(dueItems(fleet, DueKind.INSPECTION))
                .as("nothing to gain from a test")
                .isEmpty();
        List<DueItem> dueItems =
                PlanOf.fleet(fleet.build(), Policy.standard().withUnseenFailureLimit(0.02)).dueItems().stream()
                        .filter(item -> item.kind() == DueKind.INSPECTION)
                        .toList();
        assertThat(dueItems).hasSize(1);
        DueItem item = dueItems.get(0);
        assertThat(item.cylinder()).isNull();
        assertThat(item.action()).isEqualTo(DueAction.INSPECT);
        assertThat(item.evidence())
                .startsWith("injectors last tested on " + TODAY.minusWeeks(20) + ", 28,000 km ago;")
                .endsWith("delay and sensitivity are planner defaults");
        assertThat(item.limit()).isEqualTo("2 % for a road failure from an undetected defect");
        assertThat(item.limitSource()).isEqualTo("site rule");
    }

    @Test
    void theDemoNamesEveryModelItUses() {
        Plan plan = PlanOf.fleet(DemoFleet.make().snapshot());
        assertThat(plan.lives()).hasSize(6);
        assertThat(plan.risks()).hasSameSizeAs(plan.injectors());
        assertThat(plan.expectedFailures())
                .allSatisfy(row -> assertThat(row.expected()).isNotNegative());
        assertThat(plan.assumptions())
                .extracting(Assumption::topic)
                .contains("life of KV-8140 new", "life of KV-8140 reman", "worn injectors", "injector tests")
                .contains("defects of KV-8140", "tests of V8-140", "sign: test over its limit");
        assertThat(plan.dueItems())
                .filteredOn(item -> item.cylinder() != null && item.action() == DueAction.REPLACE)
                .isNotEmpty()
                .allSatisfy(item -> assertThat(item.evidence()).contains("chance of failing within 12 weeks"));
    }
}
