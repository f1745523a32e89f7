package dev.injectorplanner.core.allocation;

import static dev.injectorplanner.core.testkit.FleetBuilder.INJECTOR;
import static dev.injectorplanner.core.testkit.FleetBuilder.NORTH;
import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Each planted violation is found, and nothing is found where there is none. Four lie on the shelf, four come on Friday. */
class AllocationCheckerTest {
    private static final IsoWeek W10 = IsoWeek.of(TODAY);
    private static final LocalDate FRIDAY = TODAY.plusDays(4);

    private final FleetBuilder fleet = new FleetBuilder().truck("T1").truck("T2");

    AllocationCheckerTest() {
        fleet.stock.add(new StockLine(NORTH, INJECTOR, 4));
        fleet.purchaseLines.add(new PurchaseLine("PO-1", INJECTOR, NORTH, 4, FRIDAY, null));
    }

    private static AllocatedPieces pieces(
            String truck, double count, PieceSource source, @Nullable String order, LocalDate ready) {
        return new AllocatedPieces(truck, NORTH, W10, INJECTOR, count, source, null, order, ready);
    }

    private List<String> violations(double needed, LocalDate start, AllocatedPieces... pieces) {
        List<KitNeed> needs = List.of(new KitNeed("T1", NORTH, W10, W10.sunday(), false, Map.of(INJECTOR, needed)));
        return AllocationChecker.listViolations(
                fleet.build(),
                TODAY,
                2,
                needs,
                new Allocation(List.of(pieces), List.of(), List.of()),
                Map.of("T1 " + W10, start));
    }

    @Test
    void nothingWhereAllHolds() {
        assertThat(violations(
                        6,
                        FRIDAY,
                        pieces("T1", 4, PieceSource.SHELF, null, TODAY),
                        pieces("T1", 2, PieceSource.ORDER, "PO-1", FRIDAY)))
                .isEmpty();
    }

    @Test
    void aPieceUsedTwice() {
        assertThat(violations(
                        4,
                        TODAY,
                        pieces("T1", 4, PieceSource.SHELF, null, TODAY),
                        pieces("T2", 1, PieceSource.SHELF, null, TODAY)))
                .singleElement()
                .asString()
                .isEqualTo("stock of " + INJECTOR + " at " + NORTH + ": 5.0 pieces used, 4.0 there");
    }

    @Test
    void anOrderLineUsedTwice() {
        assertThat(violations(
                        3,
                        FRIDAY,
                        pieces("T1", 3, PieceSource.ORDER, "PO-1", FRIDAY),
                        pieces("T2", 2, PieceSource.EXPRESS, "PO-1", FRIDAY)))
                .singleElement()
                .asString()
                .contains("order PO-1")
                .contains("5.0 pieces used, 4.0 there");
    }

    @Test
    void aStartBeforeTheKitIsComplete() {
        assertThat(violations(2, FRIDAY.minusDays(1), pieces("T1", 2, PieceSource.ORDER, "PO-1", FRIDAY)))
                .singleElement()
                .asString()
                .contains("before its kit is complete on " + FRIDAY);
    }

    @Test
    void aPieceThatIsReadyBeforeItCanBe() {
        assertThat(violations(2, FRIDAY, pieces("T1", 2, PieceSource.EXPRESS, null, TODAY.plusDays(1))))
                .singleElement()
                .asString()
                .contains("not there before " + TODAY.plusDays(2));
    }

    @Test
    void aKitThatLacksAPiece() {
        assertThat(violations(5, FRIDAY, pieces("T1", 4, PieceSource.SHELF, null, TODAY)))
                .singleElement()
                .asString()
                .contains("its kit has 4.0 of 5.0");
    }

    @Test
    void anOverdueLineGivesNothing() {
        fleet.purchaseLines.set(0, new PurchaseLine("PO-1", INJECTOR, NORTH, 4, TODAY.minusDays(1), null));
        assertThat(violations(2, FRIDAY, pieces("T1", 2, PieceSource.ORDER, "PO-1", FRIDAY)))
                .singleElement()
                .asString()
                .contains("2.0 pieces used, 0.0 there");
    }
}
