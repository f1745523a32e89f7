package dev.injectorplanner.imports.table;

import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.fleet.JobPart;
import dev.injectorplanner.core.fleet.Per;
import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.imports.cell.CellKinds;
import dev.injectorplanner.imports.cell.ColumnUnit;
import java.util.List;

/** Tables of engine families: what they are, how cylinders are reached, what a job needs, when it is due. */
final class EngineTables {
    private EngineTables() {}

    static Table<EngineFamily> engineFamilies() {
        return familyColumns()
                .key(List.of("family"), f -> List.of(f.family()))
                .made(v -> new EngineFamily(
                        v.get("family"),
                        v.get("cylinders"),
                        v.get("banks"),
                        v.get("firing_order"),
                        v.get("cylinder_hours"),
                        v.get("coolant_l"),
                        v.get("glycol_percent"),
                        v.get("injector_part"),
                        v.get("road_failure_cost")));
    }

    private static Table.Builder<EngineFamily> familyColumns() {
        return Table.named("engine_families", EngineFamily.class)
                .required("family", CellKinds.TEXT, EngineFamily::family, "name used in the tables")
                .required("cylinders", CellKinds.WHOLE, EngineFamily::cylinders, "number of cylinders, 1 to 16")
                .required(
                        "banks",
                        CellKinds.BANKS,
                        EngineFamily::banks,
                        "cylinders of each bank, front to rear: left 1 3 5 7; right 2 4 6 8")
                .required(
                        "firing_order",
                        CellKinds.FIRING_ORDER,
                        EngineFamily::firingOrder,
                        "each cylinder once: 1 5 3 6 2 4")
                .required(
                        "cylinder_hours",
                        CellKinds.NUMBER,
                        EngineFamily::cylinderHours,
                        "own labour of one cylinder once it is reached, hours")
                .measured(
                        "coolant",
                        ColumnUnit.VOLUME,
                        true,
                        EngineFamily::coolantLitres,
                        "what the cooling system holds")
                .required(
                        "glycol_percent",
                        CellKinds.PERCENT,
                        EngineFamily::glycolPercent,
                        "ethylene glycol, percent by volume")
                .required("injector_part", CellKinds.TEXT, EngineFamily::injectorPart, "part number of the injector")
                .required(
                        "road_failure_cost",
                        CellKinds.MONEY,
                        EngineFamily::roadFailureCost,
                        "extra cost of a failure in service, beyond the planned work");
    }

    static Table<AccessStep> access() {
        return Table.named("access", AccessStep.class)
                .required("family", CellKinds.TEXT, AccessStep::family, "engine family")
                .required("step", CellKinds.TEXT, AccessStep::step, "name, unique within the family")
                .required("order", CellKinds.WHOLE, AccessStep::order, "place in the order of removal")
                .required("hours", CellKinds.NUMBER, AccessStep::hours, "labour to remove and refit")
                .optional(
                        "cylinders",
                        CellKinds.CYLINDERS,
                        AccessStep::cylinders,
                        "cylinders it serves; all or empty: all")
                .optional(
                        "drains_coolant_percent",
                        CellKinds.PERCENT,
                        AccessStep::drainsCoolantPercent,
                        "share of the cooling system that comes out; empty: none")
                .optional("cautions", CellKinds.TEXT, AccessStep::cautions, "cautions for the bay sheet")
                .key(List.of("family", "step"), a -> List.of(a.family(), a.step()))
                .made(v -> new AccessStep(
                        v.get("family"),
                        v.get("step"),
                        v.get("order"),
                        v.get("hours"),
                        v.or("cylinders", List.of()),
                        v.or("drains_coolant_percent", 0.0),
                        v.or("cautions", "")));
    }

    static Table<JobPart> jobParts() {
        return Table.named("job_parts", JobPart.class)
                .required("family", CellKinds.TEXT, JobPart::family, "engine family")
                .required(
                        "per",
                        CellKinds.choice(Per.class),
                        JobPart::per,
                        "counted by cylinder, bank, visit, step or task")
                .optional("step", CellKinds.TEXT, JobPart::step, "the access step where per is step; else empty")
                .required("part", CellKinds.TEXT, JobPart::part, "part number")
                .required("quantity", CellKinds.NUMBER, JobPart::quantity, "quantity")
                .optional(
                        "chance",
                        CellKinds.CHANCE,
                        JobPart::chance,
                        "chance that it is needed, 0 to 1; empty: 1, always needed")
                .optional("task", CellKinds.TEXT, JobPart::task, "the scheduled service where per is task; else empty")
                .key(List.of("family", "per", "step", "part", "task"), j -> {
                    String step = j.step();
                    String task = j.task();
                    return List.of(j.family(), j.per(), step == null ? "" : step, j.part(), task == null ? "" : task);
                })
                .made(v -> new JobPart(
                        v.get("family"),
                        v.get("per"),
                        v.find("step"),
                        v.get("part"),
                        v.get("quantity"),
                        v.or("chance", 1.0),
                        v.find("task")));
    }

    static Table<IntervalTask> intervals() {
        return Table.named("intervals", IntervalTask.class)
                .required("family", CellKinds.TEXT, IntervalTask::family, "engine family")
                .required("task", CellKinds.TEXT, IntervalTask::task, "its name")
                .measured(
                        "every",
                        ColumnUnit.DISTANCE,
                        false,
                        IntervalTask::everyKm,
                        "distance between services; empty: not by distance")
                .optional(
                        "every_hours",
                        CellKinds.NUMBER,
                        IntervalTask::everyHours,
                        "engine hours between services; empty: not by engine hours")
                .optional(
                        "every_months",
                        CellKinds.WHOLE,
                        IntervalTask::everyMonths,
                        "months between services; empty: not by months")
                .required("hours", CellKinds.NUMBER, IntervalTask::hours, "labour")
                .optional("rides", CellKinds.YES_NO, IntervalTask::rides, "may be done during another visit; empty: no")
                .key(List.of("family", "task"), t -> List.of(t.family(), t.task()))
                .made(v -> new IntervalTask(
                        v.get("family"),
                        v.get("task"),
                        v.find("every_km"),
                        v.find("every_hours"),
                        v.find("every_months"),
                        v.get("hours"),
                        v.or("rides", false)));
    }

    static Table<Rule> rules() {
        return Table.named("rules", Rule.class)
                .optional("family", CellKinds.FAMILY_OR_ALL, Rule::family, "engine family; all or empty: all")
                .required("rule", CellKinds.choice(RuleKind.class), Rule::rule, "what it checks")
                .required(
                        "limit",
                        CellKinds.NUMBER,
                        Rule::limit,
                        "in the rule's unit: months, km, hours, faults, mm3/stroke, ml/min, percent, days")
                .optional(
                        "window_days",
                        CellKinds.WHOLE,
                        Rule::windowDays,
                        "days to look back for faults and tests; empty: no window")
                .key(List.of("family", "rule"), r -> {
                    String family = r.family();
                    return List.of(family == null ? "" : family, r.rule());
                })
                .made(v -> new Rule(v.find("family"), v.get("rule"), v.get("limit"), v.find("window_days")));
    }
}
