package dev.injectorplanner.imports;

import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.fleet.JobPart;
import dev.injectorplanner.core.fleet.Per;
import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.fleet.RuleKind;
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
                .required("family", Kinds.TEXT, EngineFamily::family, "its name in the tables")
                .required("cylinders", Kinds.WHOLE, EngineFamily::cylinders, "how many, 1 to 16")
                .required(
                        "banks",
                        Kinds.BANKS,
                        EngineFamily::banks,
                        "cylinders of each bank, front to rear: left 1 3 5 7; right 2 4 6 8")
                .required(
                        "firing_order",
                        Kinds.FIRING_ORDER,
                        EngineFamily::firingOrder,
                        "every cylinder once: 1 5 3 6 2 4")
                .required(
                        "cylinder_hours",
                        Kinds.NUMBER,
                        EngineFamily::cylinderHours,
                        "own labour of one cylinder once it is reached, hours")
                .measured("coolant", Unit.VOLUME, true, EngineFamily::coolantLitres, "what the cooling system holds")
                .required(
                        "glycol_percent",
                        Kinds.PERCENT,
                        EngineFamily::glycolPercent,
                        "ethylene glycol, percent by volume")
                .required("injector_part", Kinds.TEXT, EngineFamily::injectorPart, "part number of the injector")
                .required(
                        "road_failure_cost",
                        Kinds.MONEY,
                        EngineFamily::roadFailureCost,
                        "what a failure in service costs beyond the planned work");
    }

    static Table<AccessStep> access() {
        return Table.named("access", AccessStep.class)
                .required("family", Kinds.TEXT, AccessStep::family, "engine family")
                .required("step", Kinds.TEXT, AccessStep::step, "its name, one of a kind within the family")
                .required("order", Kinds.WHOLE, AccessStep::order, "place in the sequence of taking off")
                .required("hours", Kinds.NUMBER, AccessStep::hours, "labour, off and on again")
                .optional("cylinders", Kinds.CYLINDERS, AccessStep::cylinders, "cylinders it serves; all or empty: all")
                .optional(
                        "drains_coolant_percent",
                        Kinds.PERCENT,
                        AccessStep::drainsCoolantPercent,
                        "share of the cooling system that comes out; empty: none")
                .optional("cautions", Kinds.TEXT, AccessStep::cautions, "what to mind, for the bay sheet")
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
                .required("family", Kinds.TEXT, JobPart::family, "engine family")
                .required("per", Kinds.choice(Per.class), JobPart::per, "counted by cylinder, bank, visit or step")
                .optional("step", Kinds.TEXT, JobPart::step, "the access step where per is step; else empty")
                .required("part", Kinds.TEXT, JobPart::part, "part number")
                .required("quantity", Kinds.NUMBER, JobPart::quantity, "how many")
                .optional(
                        "chance",
                        Kinds.CHANCE,
                        JobPart::chance,
                        "chance that it is needed, 0 to 1; empty: 1, always needed")
                .key(List.of("family", "per", "step", "part"), j -> {
                    String step = j.step();
                    return List.of(j.family(), j.per(), step == null ? "" : step, j.part());
                })
                .made(v -> new JobPart(
                        v.get("family"),
                        v.get("per"),
                        v.find("step"),
                        v.get("part"),
                        v.get("quantity"),
                        v.or("chance", 1.0)));
    }

    static Table<IntervalTask> intervals() {
        return Table.named("intervals", IntervalTask.class)
                .required("family", Kinds.TEXT, IntervalTask::family, "engine family")
                .required("task", Kinds.TEXT, IntervalTask::task, "its name")
                .measured(
                        "every",
                        Unit.DISTANCE,
                        false,
                        IntervalTask::everyKm,
                        "distance between; empty: not by distance")
                .optional(
                        "every_hours",
                        Kinds.NUMBER,
                        IntervalTask::everyHours,
                        "engine hours between; empty: not by engine hours")
                .optional(
                        "every_months", Kinds.WHOLE, IntervalTask::everyMonths, "months between; empty: not by months")
                .required("hours", Kinds.NUMBER, IntervalTask::hours, "labour")
                .optional("rides", Kinds.YES_NO, IntervalTask::rides, "may be done along with a visit; empty: no")
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
                .optional("family", Kinds.FAMILY_OR_ALL, Rule::family, "engine family; all or empty: all")
                .required("rule", Kinds.choice(RuleKind.class), Rule::rule, "what it looks at")
                .required(
                        "limit",
                        Kinds.NUMBER,
                        Rule::limit,
                        "in the rule's unit: months, km, hours, faults, mm3/stroke, ml/min, percent, days")
                .optional(
                        "window_days",
                        Kinds.WHOLE,
                        Rule::windowDays,
                        "days looked back for faults and tests; empty: no window")
                .key(List.of("family", "rule"), r -> {
                    String family = r.family();
                    return List.of(family == null ? "" : family, r.rule());
                })
                .made(v -> new Rule(v.find("family"), v.get("rule"), v.get("limit"), v.find("window_days")));
    }
}
