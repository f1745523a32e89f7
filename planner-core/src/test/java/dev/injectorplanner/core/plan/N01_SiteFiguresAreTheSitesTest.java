package dev.injectorplanner.core.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.coolant.CoolantRules;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.option.VisitRules;
import dev.injectorplanner.core.risk.DefectDefaults;
import dev.injectorplanner.core.risk.DefectHistory;
import dev.injectorplanner.core.testkit.FleetBuilder;
import dev.injectorplanner.core.units.SiteUnits;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the plan takes as given says whose each figure is, and in the site's units where it is read in them. */
class N01_SiteFiguresAreTheSitesTest {
    private final FleetSnapshot fleet = new FleetBuilder()
            .truck("T1")
            .allInjectors("T1", 210_000)
            .rule(RuleKind.DISTANCE_KM, 200_000)
            .build();

    private static Assumption of(Plan plan, String topic, String words) {
        return plan.assumptions().stream()
                .filter(each -> each.topic().equals(topic) && each.text().contains(words))
                .findFirst()
                .orElseThrow(() -> new AssertionError(topic + ": " + words + " in " + plan.assumptions()));
    }

    @Test
    void whatTheSiteLeavesIsThePlanners() {
        Plan plan = PlanOf.fleet(fleet);
        assertThat(of(plan, "confirmed visits", "rescheduling one costs 80").source())
                .isEqualTo("planner default");
        assertThat(of(plan, "shared access labour", "coolant 3 a litre").source())
                .isEqualTo("planner default");
        assertThat(of(plan, "service level", "95 %").source()).isEqualTo("planner default");
        assertThat(of(plan, "containers", "20 l").source()).isEqualTo("planner default");
    }

    @Test
    void whatTheSiteSetsIsItsOwn() {
        Policy usual = Policy.standard();
        VisitRules visits = usual.visits();
        Plan plan = PlanOf.fleet(
                fleet,
                usual.withVisits(new VisitRules(
                                75,
                                5,
                                300,
                                visits.latePerDay(),
                                visits.taskLatePerDay(),
                                visits.warrantyTestWorth(),
                                120,
                                visits.frozenWeeks(),
                                visits.keptSets()))
                        .withOrders(usual.orders().withServiceLevel(0.9))
                        .withDefects(new DefectDefaults(12_000, 0.9, 0.5)));

        assertThat(of(plan, "confirmed visits", "rescheduling one costs 120").source())
                .isEqualTo("site and planner default");
        assertThat(of(plan, "shared access labour", "a bay costs 75, coolant 5 a litre")
                        .source())
                .isEqualTo("site");
        assertThat(of(plan, "being late", "each day past a site limit").source())
                .isEqualTo("planner default");
        assertThat(of(plan, "service level", "90 %").source()).isEqualTo("site");
        String part = plan.injectors().get(0).part();
        assertThat(of(plan, "defects of " + part, "12,000 km").source()).isEqualTo(DefectHistory.SITE);
        assertThat(of(plan, "defects of " + part, "90 %").source()).isEqualTo(DefectHistory.SITE);
        assertThat(of(plan, "defects of " + part, "50 %").source()).isEqualTo("planner default");
    }

    /** 210,000 km / 1.609344 = 130,488 mi; 20 l / 3.785411784 = 5.28 US gal: by calculator. Figures stay as they are stored. */
    @Test
    void thePlanIsReadInTheSitesUnits() {
        Plan plan = PlanOf.fleet(fleet);
        SiteUnits american =
                new SiteUnits(SiteUnits.Distance.MILES, SiteUnits.Volume.US_GALLONS, SiteUnits.Temperature.FAHRENHEIT);
        Plan read = PlanWords.in(american, plan);

        assertThat(read.visits().get(0).why())
                .contains("130,488 mi since fitting")
                .doesNotContain(" km");
        assertThat(read.dueItems())
                .allSatisfy(each -> assertThat(each.evidence()).doesNotContain(" km"));
        assertThat(of(read, "containers", "5.28 US gal").source()).isEqualTo("planner default");
        assertThat(read.visits().get(0).drainedLitres())
                .isEqualTo(plan.visits().get(0).drainedLitres());
        assertThat(PlanWords.in(SiteUnits.METRIC, plan)).isSameAs(plan);
        assertThat(List.of(read.days(), read.parts(), read.cost()))
                .isEqualTo(List.of(plan.days(), plan.parts(), plan.cost()));
    }

    /**
     * 5 US gal = 18.92705892 l, 1 a US gallon = 0.264172 a litre, -30 F = -34.4444 C, 12,400 mi = 19,955.8656 km: by the
     * definitions (NIST SP 811, from memory) with a calculator. What somebody typed is not said to be something else.
     */
    @Test
    void theSitesFiguresAreSaidAsTheyWereTyped() {
        SiteUnits american =
                new SiteUnits(SiteUnits.Distance.MILES, SiteUnits.Volume.US_GALLONS, SiteUnits.Temperature.FAHRENHEIT);
        Policy usual = Policy.standard();
        VisitRules visits = usual.visits();
        Plan plan = PlanOf.fleet(
                fleet,
                usual.withVisits(new VisitRules(
                                75.5,
                                0.264172,
                                300,
                                visits.latePerDay(),
                                visits.taskLatePerDay(),
                                visits.warrantyTestWorth(),
                                80.25,
                                visits.frozenWeeks(),
                                visits.keptSets()))
                        .withOrders(usual.orders().withServiceLevel(0.9999))
                        .withCoolant(new CoolantRules(false, -34.4444, false, 0.0125, 18.92705892, 20, 60))
                        .withDefects(new DefectDefaults(19_955.8656, 0.925, 0.5)));
        Plan read = PlanWords.in(american, plan);

        String part = plan.injectors().get(0).part();
        of(read, "containers", "concentrate by 5 US gal");
        of(read, "shared access labour", "a bay costs 75.5, coolant 1 a US gallon");
        of(read, "confirmed visits", "rescheduling one costs 80.25;");
        of(read, "coolant strength", "to protect to -30 F;");
        of(read, "coolant", "except for 1.25 % lost");
        of(read, "service level", "a chance of 99.99 %;");
        of(read, "defects of " + part, "fail 12,400 mi after");
        of(read, "defects of " + part, "finds 92.5 % of");
        of(plan, "shared access labour", "coolant 0.2642 a litre");
    }
}
