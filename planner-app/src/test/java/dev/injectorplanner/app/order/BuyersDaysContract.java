package dev.injectorplanner.app.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PartKind;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.fleet.Transfer;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Buyers' days on one store, whatever database is below, against a plain ledger that the test keeps. */
abstract class BuyersDaysContract {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");
    private static final List<String> DEPOTS = List.of("North", "South");
    private static final List<String> PARTS = List.of("SEAL", "CLIP", "PIPE");

    private Store store;
    private PurchaseOrders orders;
    private Transfers transfers;

    abstract StoreSettings store(Path data) throws Exception;

    @BeforeEach
    void open(@TempDir Path data) throws Exception {
        store = Store.open(store(data.resolve("data")));
        orders = new PurchaseOrders(store);
        transfers = new Transfers(store);
        store.inJointTransaction((connection, writer) -> {
            writer.merge(
                    Depot.class, DEPOTS.stream().map(BuyersDaysContract::depot).toList(), true);
            writer.merge(
                    Part.class, PARTS.stream().map(BuyersDaysContract::part).toList(), true);
            writer.merge(StockLine.class, List.of(new StockLine("North", "SEAL", 9)), true);
            return true;
        });
    }

    @AfterEach
    void close() {
        store.close();
    }

    private static Depot depot(String name) {
        return new Depot(
                name,
                name,
                ZoneId.of("Europe/Berlin"),
                2,
                16,
                EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
                new BigDecimal("60"),
                new BigDecimal("90"),
                8);
    }

    private static Part part(String name) {
        return new Part(
                name, name, PartKind.SEAL, "Seal House", BigDecimal.TEN, BigDecimal.ZERO, 0, 3, 7, 1, 0, 0, 0, null);
    }

    private Map<String, Double> stock() {
        Map<String, Double> sums = new TreeMap<>();
        store.snapshot().stock().forEach(line -> sums.put(line.depot() + " " + line.part(), line.onHand()));
        sums.values().removeIf(pieces -> pieces == 0);
        return sums;
    }

    private Map<String, Double> onOrder() {
        Map<String, Double> sums = new TreeMap<>();
        orders.open().forEach(line -> sums.merge(line.depot() + " " + line.part(), line.openQuantity(), Double::sum));
        return sums;
    }

    private String place(String key, double quantity) {
        return orders.place(
                key, "Seal House", List.of(new NewLine("SEAL", "North", quantity, DAY.plusDays(7))), NOW, "buyer");
    }

    @Test
    void ordersHaveTheirOwnNumbersOneAfterTheOther() {
        assertThat(List.of(place("a", 1), place("b", 2), place("c", 3)))
                .containsExactly("PO-00001", "PO-00002", "PO-00003");
    }

    @Test
    void aFormThatIsSentTwiceIsOneOrder() {
        assertThat(place("a", 4)).isEqualTo(place("a", 4));
        assertThat(onOrder()).containsExactly(Map.entry("North SEAL", 4.0));
    }

    @Test
    void aPartialReceiptLeavesTheRestOpen() {
        OrderRef ref = new OrderRef(place("a", 8), "SEAL", "North");
        orders.receive("r", ref, 5, DAY, NOW, "buyer");
        orders.receive("r", ref, 5, DAY, NOW, "buyer");
        assertThat(stock()).containsExactly(Map.entry("North SEAL", 14.0));
        assertThat(onOrder()).containsExactly(Map.entry("North SEAL", 3.0));
        assertThatThrownBy(() -> orders.receive("r2", ref, 4, DAY, NOW, "buyer"))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("4 came, 3 are open");
        orders.receive("r3", ref, 3, DAY, NOW, "buyer");
        assertThat(onOrder()).isEmpty();
        assertThatThrownBy(() -> orders.receive("r4", ref, 1, DAY, NOW, "buyer"))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("was complete or closed on 2026-03-02");
    }

    @Test
    void aConfirmedDayQuantityAndPriceStandInTheLine() {
        OrderRef ref = new OrderRef(place("a", 8), "SEAL", "North");
        orders.confirm("c", ref, DAY.plusDays(12), 6, new BigDecimal("11.50"), NOW, "buyer");
        PurchaseLine line = orders.open().get(0);
        assertThat(line.expectedOn()).isEqualTo(DAY.plusDays(12));
        assertThat(line.quantity()).isEqualTo(6);
        assertThat(line.price()).isEqualByComparingTo("11.5");
        assertThatThrownBy(() -> orders.confirm("d", ref, DAY, 0, null, NOW, "buyer"))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("quantity");
    }

    @Test
    void cancellingNeedsAReasonAndLeavesWhatCame() {
        OrderRef ref = new OrderRef(place("a", 8), "SEAL", "North");
        orders.receive("r", ref, 2, DAY, NOW, "buyer");
        assertThatThrownBy(() -> orders.cancel("x", ref, " ", DAY, NOW, "buyer"))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("enter why");
        orders.cancel("x", ref, "discontinued", DAY, NOW, "buyer");
        assertThat(onOrder()).isEmpty();
        assertThat(stock()).containsExactly(Map.entry("North SEAL", 11.0));
        assertThat(new AuditTrail(store.dataSource()).list(Long.MAX_VALUE, 10).toString())
                .contains("because: discontinued");
    }

    @Test
    void aTransferLeavesItsDepotNowAndComesBackWhereItIsCancelled() {
        String number = transfers.send("t", "North", "South", Map.of("SEAL", 4.0), DAY.plusDays(2), NOW, "buyer");
        assertThat(number).isEqualTo("TR-00001");
        assertThat(stock()).containsExactly(Map.entry("North SEAL", 5.0));
        assertThat(onOrder()).containsExactly(Map.entry("South SEAL", 4.0));
        OrderRef ref = new OrderRef(number, "SEAL", "South");
        orders.receive("r", ref, 1, DAY, NOW, "buyer");
        orders.cancel("x", ref, "van broke down", DAY, NOW, "buyer");
        assertThat(stock()).containsExactly(Map.entry("North SEAL", 8.0), Map.entry("South SEAL", 1.0));
        assertThatThrownBy(() -> transfers.send("u", "North", "South", Map.of("SEAL", 40.0), DAY, NOW, "buyer"))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("North has 8 of 40 SEAL in stock");
        assertThat(stock()).containsExactly(Map.entry("North SEAL", 8.0), Map.entry("South SEAL", 1.0));
    }

    @Test
    void aWayBetweenDepotsIsStoredAndComesWithAllDepotsOnly() {
        Transfer way = new Transfer("North", "South", new BigDecimal("45"), 1);
        store.inJointTransaction((connection, writer) -> writer.merge(Transfer.class, List.of(way), true));
        assertThat(store.snapshot().transfers()).containsExactly(way);
        assertThat(store.findSnapshot("North").orElseThrow().transfers()).isEmpty();
    }

    @Test
    void anotherSuppliersPartIsRefused() {
        assertThatThrownBy(
                        () -> orders.place("a", "Other", List.of(new NewLine("SEAL", "North", 1, DAY)), NOW, "buyer"))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("is not sold by Other");
        assertThatThrownBy(() -> orders.place("b", "Seal House", List.of(), NOW, "buyer"))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("no line is chosen");
    }

    /** A month of random days: at the end of each, stock and on order are what the ledger says. Half of the forms come twice. */
    @Test
    void aMonthOfRandomDaysAddsUp() {
        Random random = new Random(17);
        Map<String, Double> stock = new TreeMap<>(Map.of("North SEAL", 9.0));
        Map<String, Double> open = new TreeMap<>();
        Map<OrderRef, Double> lines = new TreeMap<>(java.util.Comparator.comparing(OrderRef::toString));
        for (int day = 0; day < 30; day++) {
            LocalDate date = DAY.plusDays(day);
            for (int act = 0; act < 6; act++) {
                String key = day + "-" + act;
                int times = 1 + random.nextInt(2);
                String depot = DEPOTS.get(random.nextInt(2));
                String part = PARTS.get(random.nextInt(3));
                double pieces = 1 + random.nextInt(9);
                int kind = random.nextInt(4);
                List<OrderRef> refs = new ArrayList<>(lines.keySet());
                OrderRef ref = refs.isEmpty() ? null : refs.get(random.nextInt(refs.size()));
                if (kind == 0 || ref == null) {
                    String number = "";
                    for (int i = 0; i < times; i++) {
                        number = orders.place(
                                key,
                                "Seal House",
                                List.of(new NewLine(part, depot, pieces, date.plusDays(5))),
                                NOW,
                                "buyer");
                    }
                    lines.put(new OrderRef(number, part, depot), pieces);
                    open.merge(depot + " " + part, pieces, Double::sum);
                } else if (kind == 1) {
                    double came = Math.min(pieces, lines.get(ref));
                    for (int i = 0; i < times; i++) {
                        orders.receive(key, ref, came, date, NOW, "buyer");
                    }
                    stock.merge(ref.depot() + " " + ref.part(), came, Double::sum);
                    open.merge(ref.depot() + " " + ref.part(), -came, Double::sum);
                    lines.merge(ref, -came, Double::sum);
                } else if (kind == 2) {
                    for (int i = 0; i < times; i++) {
                        orders.cancel(key, ref, "not needed", date, NOW, "buyer");
                    }
                    if (ref.order().startsWith("TR")) {
                        String giver = ref.depot().equals("North") ? "South" : "North";
                        stock.merge(giver + " " + ref.part(), lines.get(ref), Double::sum);
                    }
                    open.merge(ref.depot() + " " + ref.part(), -lines.get(ref), Double::sum);
                    lines.remove(ref);
                } else {
                    String to = depot.equals("North") ? "South" : "North";
                    double there = stock.getOrDefault(depot + " " + part, 0.0);
                    if (there >= pieces) {
                        String number = "";
                        for (int i = 0; i < times; i++) {
                            number = transfers.send(
                                    key, depot, to, Map.of(part, pieces), date.plusDays(2), NOW, "buyer");
                        }
                        stock.merge(depot + " " + part, -pieces, Double::sum);
                        open.merge(to + " " + part, pieces, Double::sum);
                        lines.put(new OrderRef(number, part, to), pieces);
                    }
                }
                lines.values().removeIf(left -> left == 0);
                stock.values().removeIf(left -> left == 0);
                open.values().removeIf(left -> left == 0);
            }
            assertThat(stock()).as("stock at the end of day %d", day).isEqualTo(stock);
            assertThat(onOrder()).as("on order at the end of day %d", day).isEqualTo(open);
        }
    }

    /** Two buyers at once lose nothing and share no number. */
    @Test
    void twoBuyersAtOnce() throws Exception {
        var buyers = Executors.newFixedThreadPool(2);
        List<Callable<String>> acts = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            String key = "k" + i;
            acts.add(() -> place(key, 1));
        }
        List<String> numbers = new ArrayList<>();
        for (var each : buyers.invokeAll(acts)) {
            numbers.add(each.get());
        }
        buyers.shutdown();
        assertThat(numbers).doesNotHaveDuplicates();
        assertThat(onOrder()).containsExactly(Map.entry("North SEAL", 12.0));
    }
}
