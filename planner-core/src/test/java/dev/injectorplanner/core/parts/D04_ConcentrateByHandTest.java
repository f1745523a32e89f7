package dev.injectorplanner.core.parts;

import static dev.injectorplanner.core.testkit.FleetBuilder.NORTH;
import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static dev.injectorplanner.core.testkit.FleetBuilder.V8;
import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.coolant.ConcentratePart;
import dev.injectorplanner.core.coolant.CoolantPlan;
import dev.injectorplanner.core.coolant.CoolantRules;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PartKind;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.testkit.FleetBuilder;
import dev.injectorplanner.core.visit.Visit;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Concentrate for four visits that renew coolant at 50 %: 20, 20, 20 and 30 l drained draw 10, 10, 10 and 15 l, half,
 * half, half and three quarters of a 20 l can. One can is in stock; lead time 4 to 8 days.
 */
class D04_ConcentrateByHandTest {
    private static final IsoWeek W10 = new IsoWeek(2026, 10);
    private static final String CAN = "CAN-20";
    private static final CoolantRules RENEW = CoolantRules.standard().withRenew(true);

    private static Part coolant(String part) {
        return new Part(
                part,
                "coolant concentrate, 20 l",
                PartKind.COOLANT,
                "Supplier Two",
                new BigDecimal("68.00"),
                BigDecimal.ZERO,
                0,
                4,
                8,
                1,
                0,
                0,
                0,
                null);
    }

    private static FleetBuilder fleet() {
        FleetBuilder fleet = new FleetBuilder().truck("A").truck("B").truck("C").truck("D");
        fleet.parts.add(coolant(CAN));
        fleet.stock.add(new StockLine(NORTH, CAN, 1));
        return fleet;
    }

    private static Visit visit(String truck, int weeksAhead, double drained) {
        return new Visit(
                truck,
                NORTH,
                V8,
                W10.plus(weeksAhead),
                List.of(1),
                List.of(),
                List.of(),
                false,
                5,
                drained,
                List.of(),
                "");
    }

    private static PartsPlan plan(FleetBuilder fleet, CoolantRules rules) {
        FleetIndex index = new FleetIndex(fleet.build());
        List<Visit> visits = List.of(visit("A", 0, 20), visit("B", 1, 20), visit("C", 2, 20), visit("D", 3, 30));
        OrderRules orders = OrderRules.standard();
        return PartsPlan.of(
                index,
                TODAY,
                4,
                orders,
                visits,
                FailureForecast.NONE,
                PostponementCost.perWeek(orders),
                null,
                CoolantPlan.of(index, visits, rules));
    }

    private static List<PartNeed> needs(PartsPlan plan) {
        return plan.needs().stream().filter(need -> need.part().equals(CAN)).toList();
    }

    /** The can in stock serves the first two weeks; after it half a can and three quarters are missing. */
    @Test
    void aCanThatIsBegunServesTheNextVisit() {
        List<PartNeed> rows = needs(plan(fleet(), RENEW));
        assertThat(rows).extracting(PartNeed::needed).containsExactly(0.5, 0.5, 0.5, 0.75);
        assertThat(rows).extracting(PartNeed::onHandBefore).containsExactly(1.0, 0.5, 0.0, 0.0);
        assertThat(rows).extracting(PartNeed::missing).containsExactly(0.0, 0.0, 0.5, 0.75);
        assertThat(rows)
                .extracting(PartNeed::orderBy)
                .containsExactly(null, null, TODAY.plusDays(14 - 8), TODAY.plusDays(21 - 8));
    }

    /** Half a can is a whole one; what it leaves covers half of the last week, which then takes one more. */
    @Test
    void wholeCansAreOrdered() {
        List<OrderLine> orders = plan(fleet(), RENEW).orders().stream()
                .filter(line -> line.part().equals(CAN))
                .toList();
        assertThat(orders).extracting(OrderLine::quantity).containsExactly(1.0, 1.0);
        assertThat(orders).extracting(OrderLine::leftOver).containsExactly(0.0, 0.5);
        assertThat(orders.get(1).trucks()).containsExactly("D");
    }

    @Test
    void theSiteNamesThePartWhereThereAreTwo() {
        FleetBuilder two = fleet();
        two.parts.add(coolant("WATER"));
        assertThat(needs(plan(two, RENEW))).isEmpty();
        assertThat(ConcentratePart.words(new FleetIndex(two.build()), RENEW)).startsWith("not ordered: name its part");
        assertThat(needs(plan(two, RENEW.withConcentratePart(CAN)))).hasSize(4);
        assertThat(ConcentratePart.words(new FleetIndex(two.build()), RENEW.withConcentratePart("NONE")))
                .isEqualTo("not ordered: the parts table has no NONE");
    }
}
