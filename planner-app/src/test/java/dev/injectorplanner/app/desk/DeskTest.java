package dev.injectorplanner.app.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.holds.Hold;
import dev.injectorplanner.app.holds.HoldBook;
import dev.injectorplanner.app.order.NewLine;
import dev.injectorplanner.app.order.OrderRef;
import dev.injectorplanner.app.order.PurchaseOrders;
import dev.injectorplanner.app.store.FleetMerge;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PurchaseLine;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is decided is done at once, once, and taken back for as long as nothing was built on it. */
class DeskTest {
    private static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");
    private static final IsoWeek WEEK = IsoWeek.parse("2026-W12");
    private static final IsoWeek EARLIER = IsoWeek.parse("2026-W11");

    @TempDir
    private Path folder;

    private Application application;

    @AfterEach
    void close() {
        application.close();
    }

    private Store store(StoreSettings settings) {
        application = Application.open(settings);
        Store store = application.store();
        try (StoreWriter writer = store.writer()) {
            FleetMerge.into(writer, OneOfEach.fleet());
            writer.commit();
        }
        return store;
    }

    private static Answer order(Part part) {
        return new Answer.Order(
                part.supplier(),
                List.of(new NewLine(part.part(), "North", 4, LocalDate.of(2026, 3, 9))),
                "Please send by express.",
                LocalDate.of(2026, 3, 2));
    }

    private static Part part() {
        return OneOfEach.fleet().parts().get(0);
    }

    @Test
    void an_order_is_placed_once_and_cancelled_by_undo() {
        Store store = store(StoreSettings.embedded(folder.resolve("data")));
        Desk desk = new Desk(store, new HoldBook(store));
        desk.decide("k1", "North", "short", "seen", "Express 4.", order(part()), NOW, "kim");
        desk.decide("k1", "North", "short", "seen", "Express 4.", order(part()), NOW, "kim");

        Decision made = desk.decisions().list("North", NOW).get(0);
        assertThat(desk.decisions().list("North", NOW)).hasSize(1);
        assertThat(open(store, made)).hasSize(1);
        assertThat(desk.findBuiltOn(made)).isEmpty();

        desk.undo(made, NOW.plusSeconds(60), "kim");
        assertThat(open(store, made)).isEmpty();
        assertThat(desk.decisions().list("North", NOW)).isEmpty();
        assertThat(desk.decisions().find("k1").orElseThrow().stands()).isFalse();
    }

    private static List<PurchaseLine> open(Store store, Decision made) {
        return new PurchaseOrders(store)
                .open().stream()
                        .filter(line -> made.did().contains(line.order()))
                        .toList();
    }

    @Test
    void an_order_that_the_supplier_confirmed_stands() {
        Store store = store(StoreSettings.embedded(folder.resolve("data")));
        Desk desk = new Desk(store, new HoldBook(store));
        desk.decide("k1", "North", "short", "seen", "Express 4.", order(part()), NOW, "kim");
        Decision made = desk.decisions().list("North", NOW).get(0);
        PurchaseLine line = open(store, made).get(0);
        new PurchaseOrders(store).confirm("c1", OrderRef.of(line), LocalDate.of(2026, 3, 10), 4, null, NOW, "lee");

        assertThat(desk.findBuiltOn(made).orElseThrow()).contains("confirmed");
        assertThatThrownBy(() -> desk.undo(made, NOW, "kim"))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("can be undone no more");
        assertThat(open(store, made)).hasSize(1);
    }

    @Test
    void undo_puts_back_what_held_the_truck_before() {
        Store store = store(StoreSettings.embedded(folder.resolve("data")));
        HoldBook holds = new HoldBook(store);
        Hold before = new Hold("T-1", Hold.Kind.PIN, EARLIER, NOW.minusSeconds(600), "lee", "driver asked");
        holds.hold(before);
        Desk desk = new Desk(store, holds);
        desk.decide("k2", "North", "short", "seen", "Move.", new Answer.Move(Map.of("T-1", WEEK)), NOW, "kim");
        assertThat(holds.list("North")).extracting(Hold::week).containsExactly(WEEK);

        desk.undo(desk.decisions().list("North", NOW).get(0), NOW.plusSeconds(5), "kim");

        assertThat(holds.list("North")).containsExactly(before);
    }

    @Test
    void a_pin_stands_once_its_visit_is_confirmed_or_it_is_held_in_another_way() {
        Store store = store(StoreSettings.embedded(folder.resolve("data")));
        HoldBook holds = new HoldBook(store);
        Desk desk = new Desk(store, holds);
        desk.decide("k3", "North", "short", "seen", "Move.", new Answer.Move(Map.of("T-1", WEEK)), NOW, "kim");
        Decision made = desk.decisions().list("North", NOW).get(0);
        assertThat(desk.findBuiltOn(made)).isEmpty();

        holds.confirm(Map.of("T-1", WEEK), NOW, "lee");
        assertThat(desk.findBuiltOn(made).orElseThrow()).contains("confirmed for 2026-W12");

        holds.hold(new Hold("T-1", Hold.Kind.PIN, EARLIER, NOW.plusSeconds(60), "lee", ""));
        assertThat(desk.findBuiltOn(made).orElseThrow()).contains("held in another way");
    }

    @Test
    void several_answers_are_one_decision() {
        several(store(StoreSettings.embedded(folder.resolve("data"))));
    }

    @Test
    void several_answers_on_postgresql() throws Exception {
        try (EmbeddedPostgres postgres = EmbeddedPostgres.start()) {
            several(store(new StoreSettings(postgres.getJdbcUrl("postgres", "postgres"), "postgres", "postgres")));
            application.close();
        }
    }

    private static void several(Store store) {
        HoldBook holds = new HoldBook(store);
        Desk desk = new Desk(store, holds);
        desk.decide(
                "k4",
                "North",
                "short",
                "seen",
                "Express; move.",
                new Answer.Several(List.of(order(part()), new Answer.Move(Map.of("T-1", WEEK)))),
                NOW,
                "kim");
        Decision made = desk.decisions().list("North", NOW).get(0);
        assertThat(open(store, made)).hasSize(1);
        assertThat(holds.list("North")).hasSize(1);

        desk.undo(made, NOW.plusSeconds(5), "kim");

        assertThat(open(store, made)).isEmpty();
        assertThat(holds.list("North")).isEmpty();
    }
}
