package dev.injectorplanner.core.plan;

import static dev.injectorplanner.core.testkit.FleetBuilder.NORTH;
import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.AwayWindow;
import dev.injectorplanner.core.fleet.CapacityOverride;
import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A truck pinned to week 12 of 2026, Monday 16 March; its visit takes at least 5.4 h, 0.7 days
 * (the six cylinders in front). Each test puts one limit in the way. */
class I01_WishesNameTheirLimitTest {
    private static final IsoWeek W12 = new IsoWeek(2026, 12);
    private static final LocalDate MONDAY = TODAY.plusDays(14);

    private FleetBuilder fleet = overdue(new FleetBuilder(), "T1");

    private static FleetBuilder overdue(FleetBuilder fleet, String truck) {
        return fleet.truck(truck, "haul").allInjectors(truck, 210_000).rule(RuleKind.DISTANCE_KM, 200_000);
    }

    I01_WishesNameTheirLimitTest() {
        fleet.dutyGroups.add(new DutyGroup("haul", 0, BigDecimal.TEN));
    }

    private Plan pinned(Map<String, Set<IsoWeek>> refused) {
        return PlanOf.held(fleet.build(), new Holds(Map.of("T1", W12), refused, Map.of()));
    }

    private String broken() {
        Plan plan = pinned(Map.of());
        assertThat(plan.cost().brokenWishes()).hasSize(1);
        return plan.cost().brokenWishes().get(0).reason();
    }

    @Test
    void nothingInTheWayAndItHolds() {
        Plan plan = pinned(Map.of());
        assertThat(plan.cost().brokenWishes()).isEmpty();
        assertThat(plan.visits().get(0).week()).isEqualTo(W12);
    }

    @Test
    void away() {
        fleet.away.add(new AwayWindow("T1", MONDAY, MONDAY.plusDays(4), "harvest"));
        assertThat(broken()).isEqualTo("pinned to 2026-W12: away 2026-03-16 to 2026-03-20 (harvest)");
    }

    @Test
    void refused() {
        Plan plan = pinned(Map.of("T1", Set.of(W12)));
        assertThat(plan.cost().brokenWishes().get(0).reason()).isEqualTo("pinned to 2026-W12: it is blocked");
        assertThat(plan.visits()).hasSize(1);
    }

    @Test
    void outOfService() {
        Truck truck = fleet.trucks.get(0);
        fleet.trucks.set(
                0,
                new Truck(
                        truck.truck(),
                        truck.vin(),
                        truck.depot(),
                        truck.family(),
                        truck.dutyGroup(),
                        truck.inServiceOn(),
                        MONDAY.minusDays(2),
                        null));
        assertThat(broken()).isEqualTo("pinned to 2026-W12: it leaves the fleet on 2026-03-14");
    }

    @Test
    void longerThanTheHoursOfTheWeek() {
        for (int day = 0; day < 5; day++) {
            fleet.capacity.add(new CapacityOverride(NORTH, MONDAY.plusDays(day), day < 2 ? 0.5 : 0, day < 2 ? 2 : 0));
        }
        assertThat(broken()).isEqualTo("pinned to 2026-W12: it takes at least 5.4 h, the week has 4.2 h with overtime");
    }

    @Test
    void theDepotIsShut() {
        for (int day = 0; day < 5; day++) {
            fleet.capacity.add(new CapacityOverride(NORTH, MONDAY.plusDays(day), 0, 0));
        }
        assertThat(broken()).isEqualTo("pinned to 2026-W12: it takes 0.7 days, the depot works 0 days then");
    }

    @Test
    void theDutyGroupSparesNobody() {
        fleet.dutyGroups.clear();
        fleet.dutyGroups.add(new DutyGroup("haul", 1, BigDecimal.TEN));
        assertThat(broken())
                .isEqualTo(
                        "pinned to 2026-W12: it is off the road for 0.7 days, duty group haul can spare 0 days that week");
    }

    /** Two trucks pinned to a week of 5 h and 4 h overtime: both would need 10.8 h. */
    @Test
    void anotherPinTakesTheHours() {
        fleet = overdue(overdue(new FleetBuilder().withDepot(2, 1, 4), "T1"), "T2");
        fleet.dutyGroups.add(new DutyGroup("haul", 0, BigDecimal.TEN));
        fleet.rules.remove(1);
        Plan plan = PlanOf.held(fleet.build(), new Holds(Map.of("T1", W12, "T2", W12), Map.of(), Map.of()));
        assertThat(plan.cost().brokenWishes())
                .singleElement()
                .satisfies(wish -> assertThat(wish.reason())
                        .startsWith("pinned to 2026-W12: no labour hours free: 8.8 of 9 h are booked (T1 also held)"));
        assertThat(plan.visits()).hasSize(2);
    }

    @Test
    void refusedAlwaysIsTheReasonOfATruckWithoutVisit() {
        Plan plan = PlanOf.held(fleet.build(), new Holds(Map.of(), Map.of("T1", Set.of()), Map.of()));
        assertThat(plan.unplanned().get(0).reason()).isEqualTo("it is blocked in every week it could come in");
    }

    @Test
    void aPinAfterTheLastWeekWaitsForALaterPlan() {
        Plan plan = PlanOf.held(fleet.build(), new Holds(Map.of("T1", W12.plus(40)), Map.of(), Map.of()));
        assertThat(plan.visits()).isEmpty();
        assertThat(plan.cost().brokenWishes()).isEmpty();
        assertThat(plan.unplanned().get(0).reason()).isEqualTo("it is pinned to 2026-W52, after this plan's last week");
    }
}
