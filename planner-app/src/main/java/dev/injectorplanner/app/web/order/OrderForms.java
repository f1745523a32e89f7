package dev.injectorplanner.app.web.order;

import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.allocation.AllocatedPieces;
import dev.injectorplanner.core.allocation.PieceSource;
import dev.injectorplanner.core.allocation.Shipment;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.parts.OrderLine;
import dev.injectorplanner.core.parts.OverdueLine;
import dev.injectorplanner.core.parts.ShelfState;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * What the buyer can do on the page of parts to order: order the advised lines of a supplier, accept transfers, ask.
 *
 * @param suppliers advised lines to place now, by supplier
 * @param transfers between depots, as the plan proposes them
 * @param questions for suppliers
 */
public record OrderForms(List<SupplierForm> suppliers, List<TransferForm> transfers, List<Question> questions) {

    /**
     * One order to be placed.
     *
     * @param key names the form
     * @param sum value of its lines, in words
     * @param note what the supplier is asked for at first: which lines go by express
     */
    public record SupplierForm(
            String key, String supplier, List<Line> lines, String sum, String deposits, String note) {}

    /** A line of it; {@code quantity} and {@code due} are what the form sends. */
    public record Line(
            String part,
            String description,
            String depot,
            String needed,
            String onHand,
            String onOrder,
            String quantity,
            String each,
            String sum,
            String orderBy,
            String due,
            String arrives,
            String shipment,
            String forWhom) {}

    /**
     * A transfer.
     *
     * @param parts {@code 8 KV-8140}
     * @param sent what the form sends: part and quantity
     * @param onShelf whether all of it lies on the giving depot's shelf, so that it can be sent
     */
    public record TransferForm(
            String key,
            String from,
            String to,
            String truck,
            String parts,
            List<String> sent,
            String sendOn,
            String arrives,
            String arrivesOn,
            String cost,
            boolean onShelf) {}

    /** Something to ask a supplier. */
    public record Question(String what, String why, String link) {}

    static OrderForms of(ChosenDepots chosen) {
        List<OrderLine> now = new ArrayList<>();
        Map<String, ShelfState> shelves = new HashMap<>();
        List<Shipment> transfers = new ArrayList<>();
        List<AllocatedPieces> pieces = new ArrayList<>();
        List<OverdueLine> overdue = new ArrayList<>();
        for (DepotPlan plan : chosen.plans()) {
            String depot = plan.depot();
            var parts = plan.plan().parts();
            parts.orders().stream()
                    .filter(line -> line.now() && line.depot().equals(depot))
                    .forEach(now::add);
            parts.shelves().forEach(shelf -> shelves.put(shelf.depot() + "\n" + shelf.part(), shelf));
            parts.transfers().stream()
                    .filter(each -> each.depot().equals(depot))
                    .forEach(transfers::add);
            parts.allocation().pieces().stream()
                    .filter(each -> each.depot().equals(depot))
                    .forEach(pieces::add);
            parts.overdue().stream().filter(line -> line.depot().equals(depot)).forEach(overdue::add);
        }
        return new OrderForms(
                suppliers(now, shelves),
                transfers.stream().map(each -> transfer(each, pieces)).toList(),
                questions(pieces, overdue));
    }

    private static List<SupplierForm> suppliers(List<OrderLine> now, Map<String, ShelfState> shelves) {
        Map<String, List<OrderLine>> bySupplier =
                now.stream().collect(Collectors.groupingBy(OrderLine::supplier, TreeMap::new, Collectors.toList()));
        List<SupplierForm> forms = new ArrayList<>();
        bySupplier.forEach((supplier, lines) -> forms.add(new SupplierForm(
                UUID.randomUUID().toString(),
                supplier,
                lines.stream()
                        .map(line -> line(line, shelves.get(line.depot() + "\n" + line.part())))
                        .toList(),
                DisplayFormat.money(lines.stream()
                        .mapToDouble(line -> line.value().doubleValue())
                        .sum()),
                DisplayFormat.money(lines.stream()
                        .mapToDouble(line -> line.deposits().doubleValue())
                        .sum()),
                expressNote(lines))));
        return forms;
    }

    private static String expressNote(List<OrderLine> lines) {
        List<String> express = lines.stream()
                .filter(OrderLine::express)
                .map(line -> Require.plain(line.quantity()) + " " + line.part() + " for " + line.depot())
                .toList();
        return express.isEmpty() ? "" : "Please send by express: " + String.join(", ", express) + ".";
    }

    private static Line line(OrderLine line, @org.jspecify.annotations.Nullable ShelfState shelf) {
        return new Line(
                line.part(),
                line.description(),
                line.depot(),
                shelf == null ? "" : DisplayFormat.pieces(shelf.needed()),
                shelf == null ? "" : DisplayFormat.pieces(shelf.onHand()),
                shelf == null ? "" : onOrder(shelf),
                Require.plain(line.quantity()),
                line.price().toPlainString(),
                DisplayFormat.money(line.value().doubleValue()),
                line.late()
                        ? "order date missed: " + DisplayFormat.shortDate(line.orderBy())
                        : DisplayFormat.shortDate(line.orderBy()),
                line.thereBy().toString(),
                DisplayFormat.shortDate(line.thereBy()),
                line.express() ? "express" : "ordinary",
                line.trucks().isEmpty() ? "safety stock" : String.join(", ", line.trucks()));
    }

    static String onOrder(ShelfState shelf) {
        return DisplayFormat.pieces(shelf.onOrder())
                + (shelf.nextOn() == null ? "" : ", next " + DisplayFormat.shortDate(shelf.nextOn()))
                + (shelf.overdue() > 0 ? "; " + DisplayFormat.pieces(shelf.overdue()) + " overdue" : "");
    }

    private static TransferForm transfer(Shipment shipment, List<AllocatedPieces> pieces) {
        boolean onShelf = pieces.stream()
                .filter(each -> each.source() == PieceSource.TRANSFER
                        && each.truck().equals(shipment.truck())
                        && shipment.from().equals(each.fromDepot()))
                .allMatch(each -> each.order() == null);
        return new TransferForm(
                UUID.randomUUID().toString(),
                shipment.from(),
                shipment.depot(),
                shipment.truck(),
                shipment.pieces().entrySet().stream()
                        .map(each -> DisplayFormat.pieces(each.getValue()) + " " + each.getKey())
                        .collect(Collectors.joining(", ")),
                shipment.pieces().entrySet().stream()
                        .map(each -> each.getKey() + "\t" + Require.plain(each.getValue()))
                        .toList(),
                DisplayFormat.shortDate(shipment.sendOn()),
                DisplayFormat.shortDate(shipment.readyOn()),
                shipment.readyOn().toString(),
                DisplayFormat.money(shipment.cost()),
                onShelf);
    }

    private static List<Question> questions(List<AllocatedPieces> pieces, List<OverdueLine> overdue) {
        List<Question> questions = new ArrayList<>();
        for (OverdueLine line : overdue) {
            questions.add(new Question(
                    line.question(),
                    "order " + line.order() + ", " + line.part() + " for " + line.depot() + ", expected "
                            + DisplayFormat.shortDate(line.expectedOn())
                            + "; it counts for nothing until a new day is confirmed",
                    "/orders"));
        }
        for (AllocatedPieces each : pieces) {
            if (each.sooner()) {
                questions.add(new Question(
                        "Ask for " + DisplayFormat.pieces(each.quantity()) + " " + each.part() + " of order "
                                + each.order() + " by " + DisplayFormat.shortDate(each.readyOn())
                                + (each.source() == PieceSource.EXPRESS ? " by express" : ""),
                        "truck " + each.truck()
                                + " needs them before the order is due; ordering more would leave them over",
                        "/orders"));
            }
        }
        return questions;
    }
}
