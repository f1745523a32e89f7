package dev.injectorplanner.app.desk;

import dev.injectorplanner.app.closeout.CloseOuts;
import dev.injectorplanner.app.holds.Hold;
import dev.injectorplanner.app.holds.HoldBook;
import dev.injectorplanner.app.order.OrderFile;
import dev.injectorplanner.app.order.OrderRef;
import dev.injectorplanner.app.order.PurchaseOrders;
import dev.injectorplanner.app.order.Transfers;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.PurchaseLine;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Makes decisions and takes them back. An order can be taken back until the supplier confirmed, sent or was mailed it; a pin
 * until another hold, a confirmation or a close-out of its truck came after it.
 */
public final class Desk {
    private static final String WHY = "decided on the week's page";

    private final HoldBook holds;
    private final PurchaseOrders orders;
    private final Transfers transfers;
    private final CloseOuts closeOuts;
    private final Decisions decisions;

    public Desk(Store store, HoldBook holds) {
        this.holds = holds;
        this.orders = new PurchaseOrders(store);
        this.transfers = new Transfers(store);
        this.closeOuts = new CloseOuts(store);
        this.decisions = new Decisions(store.dataSource());
    }

    public Decisions decisions() {
        return decisions;
    }

    /**
     * Does what an answer says, and notes it.
     *
     * @param key names the form: sent twice it is done once
     * @param seen the question's state
     * @param words what is done, in words
     */
    public void decide(
            String key, String depot, String subject, String seen, String words, Answer answer, Instant at, String by) {
        if (decisions.find(key).isPresent()) {
            return;
        }
        Instant moment = at.truncatedTo(ChronoUnit.MILLIS);
        List<String> did = make(key, depot, answer, moment, by);
        decisions.add(new Decision(key, answer.kind(), depot, subject, seen, words, did, moment, by, null));
    }

    private List<String> make(String key, String depot, Answer answer, Instant at, String by) {
        if (answer instanceof Answer.Order order) {
            return List.of(orders.place(key, order.supplier(), order.lines(), order.note(), order.day(), at, by));
        }
        if (answer instanceof Answer.Transfer transfer) {
            return send(key, depot, transfer, at, by);
        }
        if (answer instanceof Answer.Move move) {
            return pin(depot, move, at, by);
        }
        if (answer instanceof Answer.Several several) {
            List<String> did = new ArrayList<>();
            for (int part = 0; part < several.parts().size(); part++) {
                did.addAll(make(key + "." + part, depot, several.parts().get(part), at, by));
            }
            return did;
        }
        return answer instanceof Answer.Release release ? release(depot, release, at, by) : List.of();
    }

    private List<String> send(String key, String depot, Answer.Transfer transfer, Instant at, String by) {
        List<String> numbers = new ArrayList<>();
        for (Answer.Sent sent : transfer.shipments()) {
            numbers.add(transfers.send(
                    key + "/" + sent.truck(),
                    sent.from(),
                    depot,
                    new TreeMap<>(sent.pieces()),
                    sent.arrives(),
                    at,
                    by));
        }
        return numbers;
    }

    private List<String> pin(String depot, Answer.Move move, Instant at, String by) {
        List<String> before = held(depot, List.copyOf(move.weeks().keySet()));
        List<String> did = new ArrayList<>();
        new TreeMap<>(move.weeks()).forEach((truck, week) -> {
            holds.hold(new Hold(truck, Hold.Kind.PIN, week, at, by, WHY));
            did.add(truck + "\t" + week);
        });
        did.addAll(before);
        return did;
    }

    private List<String> release(String depot, Answer.Release release, Instant at, String by) {
        List<String> before = held(depot, release.trucks());
        release.trucks().forEach(truck -> holds.release(truck, at, by));
        return before;
    }

    private List<String> held(String depot, List<String> trucks) {
        return holds.list(depot).stream()
                .filter(hold -> trucks.contains(hold.truck()))
                .map(HeldBefore::write)
                .toList();
    }

    /** Why a decision can be undone no more, in words; empty while it can. */
    public Optional<String> findBuiltOn(Decision decision) {
        Optional<String> order = orders(decision).stream()
                .map(this::orderGoesOn)
                .flatMap(Optional::stream)
                .findFirst();
        return order.isPresent() || trucks(decision).isEmpty() ? order : heldSince(decision);
    }

    /** Orders and transfers that it made: their numbers hold no tab, and what was held does. */
    private static List<String> orders(Decision decision) {
        return decision.did().stream().filter(line -> line.indexOf('\t') < 0).toList();
    }

    private Optional<String> orderGoesOn(String number) {
        OrderFile file = orders.file(number);
        if (file.head().isPresent() && file.head().get().mailedTo() != null) {
            return Optional.of(number + " was mailed to the supplier");
        }
        for (PurchaseLine line : file.lines()) {
            if (line.received() > 0 || line.receivedOn() != null) {
                return Optional.of("parts of " + number + " have been received");
            }
            if (line.confirmedOn() != null) {
                return Optional.of("the supplier has confirmed " + number);
            }
        }
        return Optional.empty();
    }

    private Optional<String> heldSince(Decision decision) {
        List<Hold> now = holds.list(decision.depot());
        var closed = closeOuts.since(decision.depot(), decision.at()).keySet();
        Map<String, IsoWeek> pinned = pinned(decision);
        for (String truck : trucks(decision)) {
            if (closed.contains(truck)) {
                return Optional.of("truck " + truck + " was closed out since");
            }
            IsoWeek week = pinned.get(truck);
            List<Hold> of =
                    now.stream().filter(hold -> hold.truck().equals(truck)).toList();
            boolean same = week == null
                    ? of.isEmpty()
                    : of.stream()
                            .anyMatch(hold ->
                                    week.equals(hold.week()) && hold.madeAt().equals(decision.at()));
            if (!same) {
                return Optional.of("truck " + truck + " is held in another way since");
            }
            if (week != null
                    && week.equals(
                            holds.holds(decision.depot(), week).confirmed().get(truck))) {
                return Optional.of("the visit of " + truck + " was confirmed for " + week);
            }
        }
        return Optional.empty();
    }

    private static Map<String, IsoWeek> pinned(Decision decision) {
        Map<String, IsoWeek> weeks = new TreeMap<>();
        decision.did().stream()
                .map(line -> line.split("\t", -1))
                .filter(field -> field.length == 2)
                .forEach(field -> weeks.put(field[0], IsoWeek.parse(field[1])));
        return weeks;
    }

    private static List<String> trucks(Decision decision) {
        return decision.did().stream()
                .filter(line -> line.indexOf('\t') >= 0)
                .map(line -> line.split("\t", -1)[0])
                .distinct()
                .toList();
    }

    /**
     * Takes a decision back.
     *
     * @throws InvalidValueException where something was built on it
     */
    public void undo(Decision decision, Instant at, String by) {
        findBuiltOn(decision).ifPresent(why -> {
            throw new InvalidValueException(
                    "decision", decision.words(), "can be undone no more: " + why, "change it where it stands now");
        });
        orders(decision).forEach(number -> cancel(number, decision.key(), at, by));
        trucks(decision).forEach(truck -> holds.release(truck, at, by));
        decision.did().stream()
                .filter(line -> line.split("\t", -1).length > 2)
                .map(HeldBefore::read)
                .forEach(holds::hold);
        decisions.undone(decision, at, by);
    }

    private void cancel(String number, String key, Instant at, String by) {
        LocalDate day = LocalDate.ofInstant(at, ZoneOffset.UTC);
        List<PurchaseLine> lines = orders.file(number).lines();
        for (int row = 0; row < lines.size(); row++) {
            PurchaseLine line = lines.get(row);
            orders.cancel(
                    "undo " + key + "/" + number + "/" + row,
                    new OrderRef(number, line.part(), line.depot()),
                    "the decision was undone",
                    day,
                    at,
                    by);
        }
    }
}
