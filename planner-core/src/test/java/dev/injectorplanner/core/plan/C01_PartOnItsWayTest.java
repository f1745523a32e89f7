package dev.injectorplanner.core.plan;

import static dev.injectorplanner.core.testkit.FleetBuilder.INJECTOR;
import static dev.injectorplanner.core.testkit.FleetBuilder.NORTH;
import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.AwayWindow;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.parts.PartNeed;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/**
 * Two cylinders are beyond their limit, and the truck is away until Friday 2026-04-24: the visit comes in week 18. One
 * injector lies in stock, one arrives in April: enough. With none in stock one is missing, to be ordered 21 days
 * before Monday 2026-04-27.
 */
class C01_PartOnItsWayTest {
    private final FleetBuilder fleet = new FleetBuilder()
            .truck("T1")
            .injector("T1", 1, LocalDate.of(2023, 1, 9), 90_000.0)
            .injector("T1", 2, LocalDate.of(2023, 1, 9), 90_000.0)
            .rule(RuleKind.DISTANCE_KM, 200_000);

    C01_PartOnItsWayTest() {
        fleet.away.add(new AwayWindow("T1", TODAY, LocalDate.of(2026, 4, 24), "harvest"));
        fleet.purchaseLines.add(new PurchaseLine("P1", INJECTOR, NORTH, 1, TODAY.plusDays(40), null));
    }

    @Test
    void oneOnTheShelfAndOneArrivingAreEnough() {
        fleet.stock.add(new StockLine(NORTH, INJECTOR, 1));
        PartNeed need = PlanOf.fleet(fleet.build()).partNeeds().get(0);
        assertThat(need.week()).isEqualTo(new IsoWeek(2026, 18));
        assertThat(need.onHandBefore()).isEqualTo(2);
        assertThat(need.missing()).isZero();
        assertThat(need.orderBy()).isNull();
    }

    @Test
    void withoutTheShelfOneIsMissing() {
        PartNeed need = PlanOf.fleet(fleet.build()).partNeeds().get(0);
        assertThat(need.missing()).isEqualTo(1);
        assertThat(need.orderBy()).isEqualTo(LocalDate.of(2026, 4, 6));
    }
}
