package dev.injectorplanner.core.parts;

import static dev.injectorplanner.core.testkit.FleetBuilder.INJECTOR;
import static dev.injectorplanner.core.testkit.FleetBuilder.NORTH;
import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static dev.injectorplanner.core.testkit.FleetBuilder.V8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.JobPart;
import dev.injectorplanner.core.fleet.Per;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.testkit.FleetBuilder;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Longest lead time of the injector: 21 days. Week 2026-W10 begins today. */
class PartNeedsTest {
    private static final IsoWeek W10 = new IsoWeek(2026, 10);
    private final FleetBuilder fleet = new FleetBuilder().truck("T1").truck("T2");

    private static Visit visit(String truck, int weeksAhead, Integer... cylinders) {
        List<String> steps = cylinders.length == 0 ? List.of() : List.of("covers off", "intake off");
        return new Visit(
                truck,
                NORTH,
                V8,
                W10.plus(weeksAhead),
                List.of(cylinders),
                steps,
                List.of(),
                false,
                5,
                20,
                List.of(),
                "");
    }

    private PartNeeds needs() {
        return new PartNeeds(new FleetIndex(fleet.build()), TODAY, OrderRules.standard());
    }

    private void order(String number, double quantity, LocalDate due, LocalDate received) {
        fleet.purchaseLines.add(new PurchaseLine(number, INJECTOR, NORTH, quantity, due, received));
    }

    @Test
    void countedByCylinderBankVisitAndStepWithTheirChance() {
        for (String part : List.of("SEAL", "GASKET", "FILTER", "INTAKE", "PIPE", "MOUNT")) {
            fleet.parts.add(FleetBuilder.part(part, 0, 0));
        }
        fleet.jobParts.add(new JobPart(V8, Per.CYLINDER, null, "SEAL", 2, 1));
        fleet.jobParts.add(new JobPart(V8, Per.BANK, null, "GASKET", 1, 1));
        fleet.jobParts.add(new JobPart(V8, Per.VISIT, null, "FILTER", 1, 1));
        fleet.jobParts.add(new JobPart(V8, Per.STEP, "intake off", "INTAKE", 1, 1));
        fleet.jobParts.add(new JobPart(V8, Per.STEP, "cab mounts down", "MOUNT", 1, 1));
        fleet.jobParts.add(new JobPart(V8, Per.CYLINDER, null, "PIPE", 1, 0.25));
        Map<String, Kit> kit = needs().kitOf(visit("T1", 0, 1, 2, 3));
        assertThat(kit)
                .containsEntry(INJECTOR, new Kit(3, 3))
                .containsEntry("SEAL", new Kit(6, 6))
                .containsEntry("GASKET", new Kit(2, 2))
                .containsEntry("FILTER", new Kit(1, 1))
                .containsEntry("INTAKE", new Kit(1, 1))
                .doesNotContainKey("MOUNT");
        // 3 pipes at 0.25: none 0.421875, one more 0.421875, two more 0.140625; two suffice with 0.984
        assertThat(kit).containsEntry("PIPE", new Kit(0.75, 2));
    }

    @Test
    void aTestAloneTakesNoParts() {
        assertThat(needs().of(List.of(visit("T1", 0)))).isEmpty();
    }

    /** On the shelf 3, 2 arrive for the second week; needs 2, 4, 1: short 0, 1, 1. */
    @Test
    void nettedWeekByWeek() {
        fleet.stock.add(new StockLine(NORTH, INJECTOR, 3));
        order("P1", 2, TODAY.plusDays(4), null);
        List<PartNeed> rows = needs().of(List.of(visit("T1", 0, 1, 2), visit("T2", 1, 1, 2, 3, 4), visit("T1", 2, 1)));
        assertThat(rows).extracting(PartNeed::onHandBefore).containsExactly(3.0, 3.0, 0.0);
        assertThat(rows).extracting(PartNeed::arriving).containsExactly(0.0, 2.0, 0.0);
        assertThat(rows).extracting(PartNeed::missing).containsExactly(0.0, 1.0, 1.0);
        assertThat(rows)
                .extracting(PartNeed::orderBy)
                .containsExactly(null, TODAY.plusDays(7 - 21), TODAY.plusDays(14 - 21));
    }

    @Test
    void twoTrucksOfOneWeekShareALine() {
        PartNeed need =
                needs().of(List.of(visit("T2", 0, 1), visit("T1", 0, 5, 6))).get(0);
        assertThat(need.needed()).isEqualTo(3);
        assertThat(need.trucks()).containsExactly("T1", "T2");
    }

    @Test
    void receivedLinesAreOnTheShelfAlready() {
        order("P1", 5, TODAY.minusDays(9), TODAY.minusDays(8));
        assertThat(needs().of(List.of(visit("T1", 1, 1))).get(0).missing()).isEqualTo(1);
    }

    @Test
    void aLinePastItsDayCountsForNothing() {
        order("P1", 5, TODAY.minusDays(9), null);
        List<PartNeed> rows = needs().of(List.of(visit("T1", 0, 1), visit("T2", 1, 1)));
        assertThat(rows).extracting(PartNeed::missing).containsExactly(1.0, 1.0);
    }

    @Test
    void aNewConfirmedDayBringsItBack() {
        fleet.purchaseLines.add(
                new PurchaseLine("P1", INJECTOR, NORTH, 5, TODAY.minusDays(9), null, TODAY.plusDays(5)));
        List<PartNeed> rows = needs().of(List.of(visit("T1", 0, 1), visit("T2", 1, 1)));
        assertThat(rows).extracting(PartNeed::missing).containsExactly(1.0, 0.0);
    }

    @Test
    void aLineDueAfterTheMondayIsTooLateForItsWeek() {
        order("P1", 5, TODAY.plusDays(8), null);
        assertThat(needs().of(List.of(visit("T1", 1, 1))).get(0).missing()).isCloseTo(1, within(1e-9));
    }

    @Test
    void thePartNowFittedWhereTheFamilysIsNotInTheTable() {
        fleet.parts.clear();
        fleet.parts.add(FleetBuilder.part("OTHER", 0, 0));
        fleet.injector("T1", 1, LocalDate.of(2024, 1, 1), null);
        PartNeed unknown = needs().of(List.of(visit("T1", 1, 1))).get(0);
        assertThat(unknown.part()).isEqualTo(INJECTOR);
        assertThat(unknown.orderBy()).isEqualTo(TODAY);
    }

    /** 8 clips at 0.3 in one visit: 5 suffice with 0.989, 4 with 0.942; 16 in two visits: 8, not 10. */
    @Test
    void partsThatBreakShareTheirLuckOverVisits() {
        fleet.parts.add(FleetBuilder.part("CLIP", 0, 0));
        fleet.jobParts.add(new JobPart(V8, Per.CYLINDER, null, "CLIP", 2, 0.3));
        List<PartNeed> rows = needs().of(List.of(visit("T1", 0, 1, 2, 3, 4), visit("T2", 1, 1, 2, 3, 4))).stream()
                .filter(row -> row.part().equals("CLIP"))
                .toList();
        assertThat(rows).extracting(PartNeed::needed).containsExactly(2.4, 2.4);
        assertThat(rows).extracting(PartNeed::required).containsExactly(5.0, 3.0);
    }

    /** Half a can is taken whole or not at all: 4 cylinders at 0.5, three of four suffice with 0.9375, four always. */
    @Test
    void aQuantityThatIsNoWholeNumberIsTakenWholeOrNot() {
        fleet.parts.add(FleetBuilder.part("CAN", 0, 0));
        fleet.jobParts.add(new JobPart(V8, Per.CYLINDER, null, "CAN", 0.5, 0.5));
        assertThat(needs().kitOf(visit("T1", 0, 1, 2, 3, 4))).containsEntry("CAN", new Kit(1, 2));
    }
}
