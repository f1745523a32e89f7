package dev.injectorplanner.imports.table;

import dev.injectorplanner.core.fleet.UnitReturn;
import dev.injectorplanner.imports.cell.CellKinds;
import java.util.List;

/** The table of cores and claims that were sent. */
final class ReturnTables {
    private ReturnTables() {}

    static Table<UnitReturn> returns() {
        return Table.named("returns", UnitReturn.class)
                .required("what", CellKinds.choice(UnitReturn.What.class), UnitReturn::what, "core or claim")
                .required("truck", CellKinds.TEXT, UnitReturn::truck, "the truck")
                .required("cylinder", CellKinds.WHOLE, UnitReturn::cylinder, "as the engine maker counts")
                .required(
                        "fitted_on",
                        CellKinds.DATE,
                        UnitReturn::fittedOn,
                        "core: day the reman unit was fitted; claim: day the failed unit was fitted")
                .required("document", CellKinds.TEXT, UnitReturn::document, "number of the return note or claim")
                .required("sent_on", CellKinds.DATE, UnitReturn::sentOn, "day it was sent")
                .required("sent_by", CellKinds.TEXT, UnitReturn::sentBy, "who sent it")
                .required("amount", CellKinds.MONEY, UnitReturn::amount, "deposit or value asked for")
                .optional("settled_on", CellKinds.DATE, UnitReturn::settledOn, "day of the answer; empty: open")
                .optional("settled_by", CellKinds.TEXT, UnitReturn::settledBy, "who recorded the answer")
                .optional("credit", CellKinds.MONEY, UnitReturn::credit, "credited; 0: refused; empty: open")
                .optional("reason", CellKinds.TEXT, UnitReturn::reason, "why it was refused, or a remark")
                .optional(
                        "fitting", CellKinds.WHOLE, UnitReturn::fitting, "which fitting of that day; empty: the first")
                .key(
                        List.of("what", "truck", "cylinder", "fitted_on", "fitting"),
                        r -> List.of(r.what(), r.truck(), r.cylinder(), r.fittedOn(), r.fitting()))
                .made(v -> new UnitReturn(
                        v.get("what"),
                        v.get("truck"),
                        v.get("cylinder"),
                        v.get("fitted_on"),
                        v.or("fitting", 1),
                        v.get("document"),
                        v.get("sent_on"),
                        v.get("sent_by"),
                        v.get("amount"),
                        v.find("settled_on"),
                        v.find("settled_by"),
                        v.find("credit"),
                        v.or("reason", "")));
    }
}
