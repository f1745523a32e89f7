package dev.injectorplanner.imports.table;

import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Replacement;
import dev.injectorplanner.imports.cell.CellKinds;
import dev.injectorplanner.imports.cell.ColumnUnit;
import java.util.List;

/** Work orders: one row closes the old injectors and opens the new ones. */
final class ReplacementTables {
    private ReplacementTables() {}

    static Table<Replacement> replacements() {
        return fitted(job())
                .key(
                        List.of("truck", "cylinders", "done_on", "serial"),
                        r -> List.of(r.truck(), r.cylinders(), r.doneOn(), r.serials()))
                .made(v -> new Replacement(
                        v.get("truck"),
                        v.get("cylinders"),
                        v.get("done_on"),
                        v.find("odometer_km"),
                        v.find("engine_hours"),
                        v.find("part"),
                        v.find("origin"),
                        v.or("serial", List.of()),
                        v.or("code", List.of()),
                        v.find("found")));
    }

    private static Table.Builder<Replacement> job() {
        return Table.named("replacements", Replacement.class)
                .required("truck", CellKinds.TEXT, Replacement::truck, "the truck")
                .required(
                        "cylinders",
                        CellKinds.CYLINDER_PICK,
                        Replacement::cylinders,
                        "cylinders that got new injectors: 3, 1-4, all, left bank")
                .required("done_on", CellKinds.DATE, Replacement::doneOn, "day of the work")
                .measured(
                        "odometer",
                        ColumnUnit.DISTANCE,
                        false,
                        Replacement::odometerKm,
                        "odometer that day; empty: not known")
                .optional("engine_hours", CellKinds.NUMBER, Replacement::engineHours, "engine hours that day")
                .optional("part", CellKinds.TEXT, Replacement::part, "part fitted; empty: the family's injector")
                .optional(
                        "origin",
                        CellKinds.choice(Origin.class),
                        Replacement::origin,
                        "new, reman or unknown; empty: unknown");
    }

    private static Table.Builder<Replacement> fitted(Table.Builder<Replacement> job) {
        return job.optional(
                        "serial",
                        CellKinds.TEXTS,
                        row -> row.serials().isEmpty() ? null : row.serials(),
                        "serial of the new one; of several, one a cylinder, separated by semicolons")
                .optional(
                        "code",
                        CellKinds.TEXTS,
                        row -> row.codes().isEmpty() ? null : row.codes(),
                        "calibration code of the new one; of several as serials")
                .optional(
                        "found",
                        CellKinds.choice(Found.class),
                        Replacement::found,
                        "what was found of the old one: failed, worn, healthy, unknown");
    }
}
