package dev.injectorplanner.app.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.order.Deliveries.Found;
import dev.injectorplanner.app.order.DeliveryProblem.Answer;
import dev.injectorplanner.app.order.DeliveryProblem.Kind;
import dev.injectorplanner.app.returns.Returns;
import dev.injectorplanner.app.returns.Unit;
import dev.injectorplanner.app.stock.GoodsIn;
import dev.injectorplanner.app.stock.SerialisedStock;
import dev.injectorplanner.app.stock.StockMovement;
import dev.injectorplanner.app.stock.StockMovements;
import dev.injectorplanner.app.stock.Stocktakes;
import dev.injectorplanner.app.stock.Stocktakes.Count;
import dev.injectorplanner.app.store.FleetMerge;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.StockCause;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.cores.CoresOwed;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.fleet.UnitReturn;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Splitting, deliveries gone wrong, stocktakes, movements, cores and claims, whatever database is below. */
abstract class ShopLoopContract {
    private static final LocalDate DAY = OneOfEach.DAY;
    private static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");
    private static final String DEPOT = "North";
    private static final String SUPPLIER = "Parts & Sons";

    private Store store;
    private PurchaseOrders orders;
    private Deliveries deliveries;
    private SerialisedStock shelf;
    private Stocktakes stocktakes;
    private Returns returns;
    private StockMovements movements;

    abstract StoreSettings store(Path data) throws Exception;

    @BeforeEach
    void open(@TempDir Path data) throws Exception {
        store = Store.open(store(data.resolve("data")));
        try (var writer = store.writer()) {
            FleetMerge.into(writer, OneOfEach.fleet());
            writer.merge(StockLine.class, List.of(new StockLine(DEPOT, "INJ-4R", 3)), true);
            writer.commit();
        }
        orders = new PurchaseOrders(store);
        deliveries = new Deliveries(store);
        shelf = new SerialisedStock(store);
        stocktakes = new Stocktakes(store);
        returns = new Returns(store);
        movements = new StockMovements(store);
    }

    @AfterEach
    void close() {
        store.close();
    }

    private double stock(String part) {
        return store.snapshot().stock().stream()
                .filter(line -> line.depot().equals(DEPOT) && line.part().equals(part))
                .mapToDouble(StockLine::onHand)
                .sum();
    }

    private OrderRef place(String key, String part, double pieces) {
        String order =
                orders.place(key, SUPPLIER, List.of(new NewLine(part, DEPOT, pieces, DAY.plusDays(7))), NOW, "buyer");
        return new OrderRef(order, part, DEPOT);
    }

    private PurchaseLine line(OrderRef ref) {
        return store.snapshot().purchaseLines().stream()
                .filter(row -> OrderRef.of(row).equals(ref))
                .findFirst()
                .orElseThrow();
    }

    private static Found found(OrderRef ref, Kind kind, double pieces, Answer answer, LocalDate again) {
        return new Found(ref, kind, pieces, "seen at the door", answer, again, false, List.of());
    }

    @Test
    void aSplitLineIsTwoOrdersThatAddUp() {
        OrderRef ref = place("a", "SEAL-1", 40);
        orders.receive("r", ref, 10, DAY, NOW, "buyer");
        String rest = orders.split("s", ref, 12, DAY.plusDays(20), DAY, NOW, "buyer");
        assertThat(rest).isEqualTo(ref.order() + "-2");
        assertThat(line(ref).quantity()).isEqualTo(28);
        assertThat(line(ref).received()).isEqualTo(10);
        assertThat(line(new OrderRef(rest, "SEAL-1", DEPOT)).quantity()).isEqualTo(12);
        assertThat(line(new OrderRef(rest, "SEAL-1", DEPOT)).expectedOn()).isEqualTo(DAY.plusDays(20));
        assertThat(orders.file(rest).head().orElseThrow().splitFrom()).isEqualTo(ref.order());
        assertThat(orders.split("t", ref, 3, DAY.plusDays(30), DAY, NOW, "buyer"))
                .isEqualTo(ref.order() + "-3");
        assertThatThrownBy(() -> orders.split("u", ref, 15, DAY, DAY, NOW, "buyer"))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("15 of 15 open ones");
    }

    @Test
    void whatHappenedToAnOrderStandsOnItsFile() {
        OrderRef ref = place("a", "SEAL-1", 40);
        orders.confirm("c", ref, DAY.plusDays(9), 40, new BigDecimal("2.30"), NOW, "Kim");
        orders.receive("r", ref, 10, DAY, NOW, "Lee");
        assertThat(orders.file(ref.order()).events())
                .extracting(OrderEvent::what, OrderEvent::by)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("place an order", "buyer"),
                        org.assertj.core.groups.Tuple.tuple("confirm an order line", "Kim"),
                        org.assertj.core.groups.Tuple.tuple("receive against an order", "Lee"));
    }

    @Test
    void aShortDeliveryIsClaimedAndNoLongerExpected() {
        OrderRef ref = place("a", "INJ-4R", 8);
        String number = deliveries.record("d", found(ref, Kind.SHORT, 3, Answer.CLAIM, null), DAY, NOW, "storeman");
        assertThat(number).isEqualTo("CL-00001");
        assertThat(line(ref).openQuantity()).isEqualTo(5);
        DeliveryProblem problem = deliveries.list().get(0);
        assertThat(problem.amount()).as("3 x (410 + 120 deposit)").isEqualByComparingTo("1590");
        assertThat(problem.state()).isEqualTo("to send");
        deliveries.send("e", number, DAY.plusDays(1), NOW, "buyer");
        deliveries.settle("f", number, DAY.plusDays(9), new BigDecimal("1200"), "", NOW, "buyer");
        assertThat(deliveries.list().get(0).state()).isEqualTo("credited");
        assertThatThrownBy(() -> deliveries.settle("g", number, DAY, BigDecimal.ONE, "", NOW, "buyer"))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("is credited");
    }

    @Test
    void damagedPiecesThatComeAgainAreALineOfTheirOwn() {
        OrderRef ref = place("a", "SEAL-1", 20);
        deliveries.record("d", found(ref, Kind.DAMAGED, 6, Answer.REPLACE, DAY.plusDays(14)), DAY, NOW, "storeman");
        assertThat(line(ref).openQuantity()).isEqualTo(14);
        PurchaseLine again = line(new OrderRef(ref.order() + "-2", "SEAL-1", DEPOT));
        assertThat(again.openQuantity()).isEqualTo(6);
        assertThat(again.expectedOn()).isEqualTo(DAY.plusDays(14));
        deliveries.record("e", found(ref, Kind.WRONG, 14, Answer.REPLACE, DAY.plusDays(8)), DAY, NOW, "storeman");
        assertThat(line(ref).expectedOn())
                .as("all that is open comes later: the line itself")
                .isEqualTo(DAY.plusDays(8));
        assertThatThrownBy(() -> deliveries.record("f", found(ref, Kind.SHORT, 15, Answer.CLAIM, null), DAY, NOW, "x"))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("15 are wrong, 14 are open");
    }

    @Test
    void anInjectorFoundDamagedInStockLeavesItBySerial() {
        OrderRef ref = place("a", "INJ-4R", 4);
        double before = stock("INJ-4R");
        GoodsIn.Unit one = new GoodsIn.Unit("R1", "AAAA");
        GoodsIn.Unit two = new GoodsIn.Unit("R2", "BBBB");
        shelf.receive(new GoodsIn(DEPOT, "INJ-4R", Origin.REMAN, List.of(one, two), ref.order()), NOW, "storeman");
        assertThat(stock("INJ-4R")).isEqualTo(before + 2);
        deliveries.record(
                "d",
                new Found(ref, Kind.DAMAGED, 1, "connector cracked", Answer.CLAIM, null, true, List.of("r1")),
                DAY,
                NOW,
                "storeman");
        assertThat(stock("INJ-4R")).isEqualTo(before + 1);
        assertThat(shelf.list(DEPOT)).extracting("serial").containsExactly("R2");
        assertThat(line(ref).openQuantity()).as("what is still to come stays").isEqualTo(2);
        assertThat(movements.list(DEPOT, "INJ-4R", 1).get(0).cause().kind()).isEqualTo(StockCause.Kind.RETURNED);
    }

    @Test
    void aSecondScanOfOneSerialIsRefused() {
        GoodsIn.Unit one = new GoodsIn.Unit("R1", "AAAA");
        double before = stock("INJ-4R");
        assertThatThrownBy(() -> shelf.receive(
                        new GoodsIn(DEPOT, "INJ-4R", Origin.REMAN, List.of(one, new GoodsIn.Unit(" r1", "BBBB"))),
                        NOW,
                        "storeman"))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("is a duplicate in this entry");
        shelf.receive(new GoodsIn(DEPOT, "INJ-4R", Origin.REMAN, List.of(one)), NOW, "storeman");
        assertThatThrownBy(() -> shelf.receive(
                        new GoodsIn(DEPOT, "INJ-4R", Origin.REMAN, List.of(new GoodsIn.Unit("R1", "CCCC"))),
                        NOW,
                        "storeman"))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("is in stock at North already");
        assertThat(stock("INJ-4R")).isEqualTo(before + 1);
    }

    @Test
    void existingStockGetsItsSerialsWithoutBeingCountedAgain() {
        double before = stock("INJ-4R");
        assertThat(before).isGreaterThan(0);
        GoodsIn one = new GoodsIn(DEPOT, "INJ-4R", Origin.REMAN, List.of(new GoodsIn.Unit("R1", "AAAA")), null, true);
        shelf.receive(one, NOW, "storeman");
        assertThat(stock("INJ-4R")).isEqualTo(before);
        List<GoodsIn.Unit> tooMany = new java.util.ArrayList<>();
        for (int i = 0; i < before; i++) {
            tooMany.add(new GoodsIn.Unit("X" + i, "X%03d".formatted(i)));
        }
        assertThatThrownBy(() ->
                        shelf.receive(new GoodsIn(DEPOT, "INJ-4R", Origin.REMAN, tooMany, null, true), NOW, "storeman"))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("can still get one");
    }

    @Test
    void aStocktakeSetsWhatWasCountedAndSaysWhy() {
        double seals = stock("SEAL-1");
        double injectors = stock("INJ-4R");
        assertThatThrownBy(() -> stocktakes.post(
                        "s", DEPOT, List.of(new Count("SEAL-1", seals, seals + 2, " ")), DAY, NOW, "storeman"))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("without a reason");
        List<Count> counts = List.of(
                new Count("SEAL-1", seals, seals + 2, "found behind the rack"),
                new Count("INJ-4R", injectors, injectors, ""));
        assertThat(stocktakes.post("s", DEPOT, counts, DAY, NOW, "storeman")).isEqualTo("ST-00001");
        assertThat(stocktakes.post("s", DEPOT, counts, DAY, NOW, "storeman")).isEqualTo("ST-00001");
        assertThat(stock("SEAL-1")).isEqualTo(seals + 2);
        assertThat(stocktakes.list(DEPOT, 5)).singleElement().satisfies(posted -> {
            assertThat(posted.by()).isEqualTo("storeman");
            assertThat(posted.counts()).hasSize(2);
        });
        assertThatThrownBy(() -> stocktakes.post(
                        "t", DEPOT, List.of(new Count("SEAL-1", seals, 1, "lost")), DAY, NOW, "storeman"))
                .as("the stock moved since the list was opened")
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("count this part again");
        StockMovement last = movements.list(DEPOT, "SEAL-1", 1).get(0);
        assertThat(last.pieces()).isEqualTo(2);
        assertThat(last.cause().why()).isEqualTo("found behind the rack");
        assertThat(last.cause().by()).isEqualTo("storeman");
    }

    /** Opening plus movements is closing, after random days of everything that moves stock, files included. */
    @Test
    void everyChangeOfStockIsAMovement() {
        Random random = new Random(41);
        Map<String, Double> opening = new TreeMap<>();
        for (String part : List.of("SEAL-1", "INJ-4R")) {
            opening.put(part, stock(part) - sum(part));
            assertThat(opening.get(part)).as("loaded stock is movements too").isZero();
        }
        for (int act = 0; act < 60; act++) {
            String part = random.nextBoolean() ? "SEAL-1" : "INJ-4R";
            double pieces = 1 + random.nextInt(9);
            double now = stock(part);
            switch (random.nextInt(4)) {
                case 0 -> orders.receive("r" + act, place("p" + act, part, pieces + 1), pieces, DAY, NOW, "a");
                case 1 ->
                    stocktakes.post("s" + act, DEPOT, List.of(new Count(part, now, pieces, "counted")), DAY, NOW, "b");
                case 2 ->
                    store.inJointTransaction((connection, writer) ->
                            writer.merge(StockLine.class, List.of(new StockLine(DEPOT, part, pieces * 3)), true));
                default -> {
                    OrderRef ref = place("q" + act, part, pieces);
                    orders.receive("t" + act, ref, pieces, DAY, NOW, "c");
                    deliveries.record(
                            "d" + act,
                            new Found(ref, Kind.WRONG, pieces, "other size", Answer.CLAIM, null, true, List.of()),
                            DAY,
                            NOW,
                            "c");
                }
            }
            assertThat(sum(part)).as("act %d of seed 41, %s", act, part).isEqualTo(stock(part));
            StockMovement last = movements.list(DEPOT, part, 1).get(0);
            assertThat(last.onHand()).isEqualTo(stock(part));
            assertThat(last.cause().by()).isNotBlank();
        }
    }

    private double sum(String part) {
        return movements.list(DEPOT, part, 10_000).stream()
                .mapToDouble(StockMovement::pieces)
                .sum();
    }

    private void fit(int cylinder, LocalDate day) {
        FittedInjector reman = new FittedInjector(
                "T-2",
                cylinder,
                "INJ-4R",
                "N" + cylinder,
                "N00" + cylinder,
                Origin.REMAN,
                day,
                null,
                null,
                null,
                null,
                null,
                null);
        store.inJointTransaction((connection, writer) -> writer.merge(FittedInjector.class, List.of(reman), true));
    }

    private int owed() {
        return CoresOwed.of(new FleetIndex(store.snapshot()), DAY).size();
    }

    @Test
    void coresAreShippedWithOneNoteAndCreditedOrRefused() {
        int before = owed();
        fit(1, DAY.minusDays(10));
        fit(2, DAY.minusDays(10));
        fit(3, DAY.minusDays(10));
        assertThat(owed()).isEqualTo(before + 3);
        Unit one = new Unit("T-2", 1, DAY.minusDays(10));
        Unit two = new Unit("T-2", 2, DAY.minusDays(10));
        String note = returns.ship("k", List.of(one, two), DAY, NOW, "Kim");
        assertThat(returns.ship("k", List.of(one, two), DAY, NOW, "Kim")).isEqualTo(note);
        assertThat(owed()).isEqualTo(before + 1);
        assertThatThrownBy(() -> returns.ship("l", List.of(one), DAY, NOW, "Kim"))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("was sent on 2026-03-02 with " + note);
        returns.settle("m", UnitReturn.What.CORE, one, DAY.plusDays(5), new BigDecimal("120"), "", NOW, "Lee");
        assertThatThrownBy(() -> returns.settle(
                        "n", UnitReturn.What.CORE, two, DAY.plusDays(5), BigDecimal.ZERO, "", NOW, "Lee"))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("nothing was credited");
        assertThatThrownBy(() -> returns.takeBack("o", note, NOW, "Lee"))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("has answered");
        returns.settle("p", UnitReturn.What.CORE, two, DAY.plusDays(6), BigDecimal.ZERO, "tip broken", NOW, "Lee");
        assertThat(returns.list().stream().filter(row -> row.document().equals(note)))
                .extracting(UnitReturn::state)
                .containsExactly(UnitReturn.State.CREDITED, UnitReturn.State.REFUSED);
    }

    /** One that was dead on arrival and the one that stayed: two old units are owed, and one claim is not the other's. */
    @Test
    void twoFittingsOfADayAreTwoCores() {
        LocalDate day = DAY.minusDays(10);
        int before = owed();
        FittedInjector dead = new FittedInjector(
                "T-2",
                4,
                "INJ-4R",
                "D4",
                "D004",
                Origin.REMAN,
                day,
                null,
                null,
                day,
                null,
                null,
                dev.injectorplanner.core.fleet.Found.FAILED,
                1);
        FittedInjector stays = new FittedInjector(
                "T-2", 4, "INJ-4R", "N4", "N004", Origin.REMAN, day, null, null, null, null, null, null, 2);
        store.inJointTransaction(
                (connection, writer) -> writer.merge(FittedInjector.class, List.of(dead, stays), true));
        assertThat(owed()).isEqualTo(before + 2);
        returns.ship("k", List.of(new Unit("T-2", 4, day, 1)), DAY, NOW, "Kim");
        assertThat(owed()).isEqualTo(before + 1);
        returns.ship("l", List.of(new Unit("T-2", 4, day, 2)), DAY, NOW, "Kim");
        assertThat(owed()).isEqualTo(before);
        assertThatThrownBy(() -> returns.claim("c", new Unit("T-2", 4, day, 2), BigDecimal.ONE, DAY, NOW, "Kim"))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("was not found failed");
        assertThat(returns.claim("d", new Unit("T-2", 4, day, 1), new BigDecimal("410"), DAY, NOW, "Kim"))
                .startsWith("CL-");
    }

    @Test
    void aShipmentTakenBackIsOwedAsBefore() {
        fit(1, DAY.minusDays(10));
        int before = owed();
        String note = returns.ship("k", List.of(new Unit("T-2", 1, DAY.minusDays(10))), DAY, NOW, "Kim");
        assertThat(owed()).isEqualTo(before - 1);
        returns.takeBack("l", note, NOW, "Kim");
        assertThat(owed()).isEqualTo(before);
        String again = returns.ship("m", List.of(new Unit("T-2", 1, DAY.minusDays(10))), DAY, NOW, "Kim");
        returns.creditAll("n", again, DAY.plusDays(3), NOW, "Kim");
        assertThat(returns.list().stream().filter(row -> row.document().equals(again)))
                .singleElement()
                .satisfies(row -> assertThat(row.credit()).isEqualByComparingTo("120"));
    }

    @Test
    void aClaimIsForWhatFailed() {
        fit(1, DAY.minusDays(10));
        Unit failed = new Unit("T-1", 1, DAY.minusYears(2));
        String number = returns.claim("c", failed, new BigDecimal("410"), DAY, NOW, "Kim");
        assertThat(number).startsWith("CL-");
        returns.settle("s", UnitReturn.What.CLAIM, failed, DAY, new BigDecimal("205"), "half", NOW, "Kim");
        assertThatThrownBy(
                        () -> returns.claim("d", new Unit("T-2", 1, DAY.minusDays(10)), BigDecimal.ONE, DAY, NOW, "K"))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("was not found failed");
    }
}
