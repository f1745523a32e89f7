package dev.injectorplanner.core.plan;

import static dev.injectorplanner.core.testkit.FleetBuilder.INJECTOR;
import static dev.injectorplanner.core.testkit.FleetBuilder.NORTH;
import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** With its parts in stock a visit pays for no express shipment, on whatever day of the week the plan is made. */
class G01_ShelfFullOnAWednesdayTest {
    private static Plan plan(double onHand, LocalDate day) {
        FleetBuilder fleet =
                new FleetBuilder().truck("T1").allInjectors("T1", 210_000).rule(RuleKind.DISTANCE_KM, 200_000);
        fleet.stock.add(new StockLine(NORTH, INJECTOR, onHand));
        FleetSnapshot built = fleet.build();
        return new Planner(new ExactScheduler(SearchLimits.USUAL)).plan(built, Policy.standard(), day);
    }

    private static double extra(Plan plan) {
        double saved = plan.reasons().get(0).reason() == null
                ? Double.NaN
                : plan.reasons().get(0).reason().saves();
        return plan.cost().cost() + saved;
    }

    @Test
    void onAWednesdayTheShelfIsEnough() {
        assertThat(extra(plan(8, TODAY.plusDays(2)))).isCloseTo(0, within(1e-6));
    }

    @Test
    void withAnEmptyShelfTheCurrentWeekPaysOneShipment() {
        Plan plan = plan(0, TODAY.plusDays(1));
        assertThat(plan.visits().get(0).week()).isEqualTo(plan.firstWeek());
        assertThat(extra(plan)).isCloseTo(90, within(1e-6));
    }

    /** An express shipment of Wednesday comes on Friday, and 9.2 hours of work do not fit into one bay's day. */
    @Test
    void wherePartsComeTooLateForTheWeekTheVisitGoesToTheNext() {
        Plan plan = plan(0, TODAY.plusDays(2));
        assertThat(plan.visits().get(0).week()).isEqualTo(plan.firstWeek().plus(1));
        assertThat(plan.days().get(0).days().laid()).hasSize(1);
        assertThat(plan.days().get(0).days().notLaid()).isEmpty();
    }
}
