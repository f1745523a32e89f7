package dev.injectorplanner.imports.table;

import dev.injectorplanner.core.fleet.FailureAnswer;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PartKind;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.fleet.Transfer;
import dev.injectorplanner.imports.cell.CellKinds;
import dev.injectorplanner.imports.cell.ColumnUnit;
import java.math.BigDecimal;
import java.util.List;

/** Tables of parts: what is bought, what is in stock, what is on order. */
final class PartTables {
    private PartTables() {}

    static Table<Part> parts() {
        return partColumns().key(List.of("part"), p -> List.of(p.part())).made(v -> {
            int leadDays = v.get("lead_days");
            return new Part(
                    v.get("part"),
                    v.or("description", ""),
                    v.get("kind"),
                    v.get("supplier"),
                    v.get("price"),
                    v.or("core_deposit", BigDecimal.ZERO),
                    v.or("core_days", 0),
                    leadDays,
                    v.or("lead_days_max", leadDays),
                    v.or("pack", 1),
                    v.or("minimum_order", 0),
                    v.or("warranty_months", 0),
                    v.or("warranty_km", 0.0),
                    v.find("code_pattern"));
        });
    }

    private static Table.Builder<Part> partColumns() {
        return Table.named("parts", Part.class)
                .required("part", CellKinds.TEXT, Part::part, "its number")
                .optional("description", CellKinds.TEXT, Part::description, "what it is")
                .required("kind", CellKinds.choice(PartKind.class), Part::kind, "its kind, such as injector or seal")
                .required("supplier", CellKinds.TEXT, Part::supplier, "supplier")
                .required("price", CellKinds.MONEY, Part::price, "price of one")
                .optional(
                        "core_deposit",
                        CellKinds.MONEY,
                        Part::coreDeposit,
                        "deposit until the old unit is returned; empty: none")
                .optional("core_days", CellKinds.WHOLE, Part::coreDays, "days allowed to return the old unit; empty: 0")
                .required("lead_days", CellKinds.WHOLE, Part::leadDays, "usual days from order to receipt")
                .optional(
                        "lead_days_max",
                        CellKinds.WHOLE,
                        Part::leadDaysMax,
                        "days hardly ever exceeded; empty: same as lead_days")
                .optional("pack", CellKinds.WHOLE, Part::pack, "pack size; empty: 1")
                .optional("minimum_order", CellKinds.WHOLE, Part::minimumOrder, "minimum order quantity; empty: 0")
                .optional(
                        "warranty_months",
                        CellKinds.WHOLE,
                        Part::warrantyMonths,
                        "months from fitting; empty: no warranty")
                .measured(
                        "warranty",
                        ColumnUnit.DISTANCE,
                        false,
                        Part::warrantyKm,
                        "from fitting; empty: no such warranty")
                .optional(
                        "code_pattern",
                        CellKinds.TEXT,
                        Part::codePattern,
                        "regular expression of its calibration codes; empty: none");
    }

    static Table<FailureAnswer> failureAnswers() {
        return Table.named("failure_answers", FailureAnswer.class)
                .required("part", CellKinds.TEXT, FailureAnswer::part, "part without a failure on record")
                .required(
                        "answer",
                        CellKinds.choice(FailureAnswer.Answer.class),
                        FailureAnswer::answer,
                        "none_failed: it is so; not_recorded: failures were not recorded before that day")
                .required("answered_on", CellKinds.DATE, FailureAnswer::answeredOn, "day of the answer")
                .required("by", CellKinds.TEXT, FailureAnswer::by, "who answered")
                .key(List.of("part"), a -> List.of(a.part()))
                .made(v -> new FailureAnswer(v.get("part"), v.get("answer"), v.get("answered_on"), v.get("by")));
    }

    static Table<StockLine> stock() {
        return Table.named("stock", StockLine.class)
                .required("depot", CellKinds.TEXT, StockLine::depot, "the depot")
                .required("part", CellKinds.TEXT, StockLine::part, "part number")
                .required("on_hand", CellKinds.NUMBER, StockLine::onHand, "pieces, or litres, on hand")
                .key(List.of("depot", "part"), s -> List.of(s.depot(), s.part()))
                .made(v -> new StockLine(v.get("depot"), v.get("part"), v.get("on_hand")));
    }

    static Table<PurchaseLine> purchaseLines() {
        return Table.named("purchase_lines", PurchaseLine.class)
                .required("order", CellKinds.TEXT, PurchaseLine::order, "order number")
                .required("part", CellKinds.TEXT, PurchaseLine::part, "part number")
                .required("depot", CellKinds.TEXT, PurchaseLine::depot, "where it is to arrive")
                .required("quantity", CellKinds.NUMBER, PurchaseLine::quantity, "quantity")
                .required("due_on", CellKinds.DATE, PurchaseLine::dueOn, "promised delivery day")
                .optional("received_on", CellKinds.DATE, PurchaseLine::receivedOn, "day received; empty: still open")
                .optional(
                        "confirmed_on",
                        CellKinds.DATE,
                        PurchaseLine::confirmedOn,
                        "day the supplier confirmed last; empty: as promised")
                .optional(
                        "received", CellKinds.NUMBER, PurchaseLine::received, "pieces that have come so far; empty: 0")
                .optional("price", CellKinds.MONEY, PurchaseLine::price, "price of one as confirmed; empty: none")
                .key(List.of("order", "part", "depot"), p -> List.of(p.order(), p.part(), p.depot()))
                .made(v -> new PurchaseLine(
                        v.get("order"),
                        v.get("part"),
                        v.get("depot"),
                        v.get("quantity"),
                        v.get("due_on"),
                        v.find("received_on"),
                        v.find("confirmed_on"),
                        v.or("received", 0.0),
                        v.find("price")));
    }

    static Table<Transfer> transfers() {
        return Table.named("transfers", Transfer.class)
                .required("from", CellKinds.TEXT, Transfer::from, "depot that gives")
                .required("to", CellKinds.TEXT, Transfer::to, "depot that takes")
                .required("cost", CellKinds.MONEY, Transfer::cost, "cost of one trip, whatever it carries")
                .required("days", CellKinds.WHOLE, Transfer::days, "days until the parts are there")
                .key(List.of("from", "to"), t -> List.of(t.from(), t.to()))
                .made(v -> new Transfer(v.get("from"), v.get("to"), v.get("cost"), v.get("days")));
    }
}
