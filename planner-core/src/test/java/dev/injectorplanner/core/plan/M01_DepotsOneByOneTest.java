package dev.injectorplanner.core.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.parts.OrderRules;
import dev.injectorplanner.core.risk.FleetLives;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.visit.Visit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The demo's three depots planned one by one with the whole fleet's lives come to the plan of all of them at once. */
class M01_DepotsOneByOneTest {
    /** Transfers are what a depot's plan cannot know of: none here. */
    private static final Policy POLICY = Policy.standard()
            .withOrders(OrderRules.standard()
                    .withTransferCost(new BigDecimal("1000000"))
                    .withTransferDays(60));

    private static final FleetSnapshot FLEET = DemoFleet.make().snapshot().withTransfers(List.of());

    private final Planner planner = PlanOf.planner();
    private final Plan whole = planner.plan(FLEET, POLICY, DemoFleet.TODAY);
    private final FleetLives lives = planner.learnLives(FLEET, POLICY, DemoFleet.TODAY);

    private Plan planOf(String depot) {
        return planner.tell(
                planner.tryOut(planner.prepare(only(depot), POLICY, DemoFleet.TODAY, lives), Holds.none(), List.of()));
    }

    private static FleetSnapshot only(String depot) {
        List<Truck> trucks = FLEET.trucks().stream()
                .filter(truck -> truck.depot().equals(depot))
                .toList();
        Set<String> names = trucks.stream().map(Truck::truck).collect(Collectors.toSet());
        return new FleetSnapshot(
                FLEET.depots().stream().filter(row -> row.depot().equals(depot)).toList(),
                FLEET.capacity().stream()
                        .filter(row -> row.depot().equals(depot))
                        .toList(),
                FLEET.engineFamilies(),
                FLEET.access(),
                FLEET.dutyGroups(),
                trucks,
                FLEET.injectors().stream()
                        .filter(row -> names.contains(row.truck()))
                        .toList(),
                FLEET.readings().stream()
                        .filter(row -> names.contains(row.truck()))
                        .toList(),
                FLEET.faults().stream()
                        .filter(row -> names.contains(row.truck()))
                        .toList(),
                FLEET.cylinderTests().stream()
                        .filter(row -> names.contains(row.truck()))
                        .toList(),
                FLEET.parts(),
                FLEET.jobParts(),
                FLEET.stock().stream().filter(row -> row.depot().equals(depot)).toList(),
                FLEET.purchaseLines().stream()
                        .filter(row -> row.depot().equals(depot))
                        .toList(),
                FLEET.away().stream().filter(row -> names.contains(row.truck())).toList(),
                FLEET.intervals(),
                FLEET.rules());
    }

    @Test
    void theSameRisksAndTheSameVisits() {
        for (String depot : List.of("Aldermoor", "Brennick", "Norrvik")) {
            Plan one = planOf(depot);
            assertThat(one.lives()).isEqualTo(whole.lives());
            assertThat(one.risks()).isEqualTo(of(depot, whole.risks()));
            assertThat(one.visits())
                    .extracting(Visit::truck, Visit::week, Visit::cylinders)
                    .isEqualTo(whole.visits().stream()
                            .filter(visit -> visit.depot().equals(depot))
                            .map(visit -> tuple(visit.truck(), visit.week(), visit.cylinders()))
                            .toList());
        }
    }

    private static List<InjectorRisk> of(String depot, List<InjectorRisk> risks) {
        return risks.stream().filter(risk -> risk.depot().equals(depot)).toList();
    }

    /** By its own records alone a depot would judge otherwise: that is why lives are shared. */
    @Test
    void byItsOwnRecordsADepotWouldJudgeOtherwise() {
        Plan alone = planner.plan(only("Brennick"), POLICY, DemoFleet.TODAY);
        assertThat(alone.lives()).isNotEqualTo(whole.lives());
    }

    /** Cut out of the plan of all: its own rows whole, nothing of the others. */
    @Test
    void aDepotsPartOfAPlanNamesNoOtherDepot() {
        int visits = 0;
        int orders = 0;
        for (String depot : List.of("Aldermoor", "Brennick", "Norrvik")) {
            Plan part = DepotPart.of(whole, FLEET, depot);
            assertThat(part.visits()).isNotEmpty();
            assertThat(part.injectors()).hasSameSizeAs(planOf(depot).injectors());
            assertThat(part.lives()).isEqualTo(whole.lives());
            visits += part.visits().size();
            orders += part.parts().orders().size();
            String all = part.toString();
            FLEET.trucks().stream()
                    .filter(truck -> !truck.depot().equals(depot))
                    .forEach(truck -> assertThat(all).doesNotContain("truck=" + truck.truck() + ","));
            FLEET.depots().stream()
                    .filter(other -> !other.depot().equals(depot))
                    .forEach(other -> assertThat(all).doesNotContain(other.depot()));
        }
        assertThat(visits).isEqualTo(whole.visits().size());
        assertThat(orders).isEqualTo(whole.parts().orders().size());
    }
}
