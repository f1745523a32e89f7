package dev.injectorplanner.core.plan;

import static dev.injectorplanner.core.testkit.FleetBuilder.INJECTOR;
import static dev.injectorplanner.core.testkit.FleetBuilder.NORTH;
import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.coolant.CoolantRules;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.parts.FailureChance;
import dev.injectorplanner.core.parts.FailureForecast;
import dev.injectorplanner.core.parts.OrderLine;
import dev.injectorplanner.core.schedule.EarliestFit;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.util.Collections;
import org.junit.jupiter.api.Test;

/** A truck with all eight injectors over the limit, nothing on the stock. */
class F01_PartsAndCoolantTest {
    private static final FleetSnapshot FLEET = new FleetBuilder()
            .truck("T1")
            .allInjectors("T1", 210_000)
            .rule(RuleKind.DISTANCE_KM, 200_000)
            .build();

    private static String assumption(Plan plan, String topic) {
        return plan.assumptions().stream()
                .filter(row -> row.topic().equals(topic))
                .map(row -> row.text() + " | " + row.source())
                .findFirst()
                .orElse("");
    }

    @Test
    void theVisitOrdersItsInjectorsAndStandsOnTheShortList() {
        Plan plan = PlanOf.fleet(FLEET);
        assertThat(plan.parts().orders()).singleElement().satisfies(line -> {
            assertThat(line.part()).isEqualTo(INJECTOR);
            assertThat(line.quantity()).isEqualTo(8);
        });
        assertThat(plan.parts().shortList()).singleElement().satisfies(line -> {
            assertThat(line.truck()).isEqualTo("T1");
            assertThat(line.missing()).isEqualTo(8);
        });
        assertThat(plan.parts().stockWeeks()).hasSize(26);
        assertThat(assumption(plan, "safety stock")).startsWith("covers failures until an order");
        assertThat(assumption(plan, "expediting")).endsWith("planner default");
    }

    @Test
    void aForecastAddsAReserve() {
        FailureForecast forecast =
                FailureForecast.ofRates(Collections.nCopies(8, new FailureChance(NORTH, INJECTOR, 0.05)));
        Plan plan = new Planner(new EarliestFit())
                .plan(FLEET, Policy.standard(), FleetBuilder.TODAY, Holds.none(), forecast);
        // 8 injectors, within 14 to 25 days each fails with 0.10 to 0.17: three cover them with 95 %
        assertThat(plan.parts().unplannedNeeds()).singleElement().satisfies(need -> {
            assertThat(need.expected()).isBetween(8 * 0.097, 8 * 0.168);
            assertThat(need.target()).isEqualTo(3);
        });
        // eight by express for the visit of this week, three as usual for the shelf
        assertThat(plan.parts().orders()).extracting(OrderLine::quantity).containsExactly(8.0, 3.0);
        assertThat(plan.parts().orders()).extracting(OrderLine::express).containsExactly(true, false);
        assertThat(assumption(plan, "safety stock")).startsWith("covers failures");
    }

    @Test
    void thePolicyRulesTheCoolant() {
        Policy renew = Policy.standard().withCoolant(CoolantRules.standard().withRenew(true));
        Plan plan = new Planner(new EarliestFit()).plan(FLEET, renew, FleetBuilder.TODAY);
        // all cylinders drain 60 % of 50 l
        assertThat(plan.coolantNeeds()).singleElement().satisfies(need -> {
            assertThat(need.drainedLitres()).isEqualTo(30);
            assertThat(need.concentrateLitres()).isEqualTo(15);
            assertThat(need.wasteLitres()).isEqualTo(30);
        });
        assertThat(plan.coolant().weeks()).singleElement().satisfies(week -> {
            assertThat(week.concentrateContainers()).isEqualTo(1);
            assertThat(week.wasteContainers()).isEqualTo(1);
        });
        assertThat(assumption(plan, "coolant"))
                .isEqualTo("drained coolant is replaced; the old coolant is waste | site");
    }
}
