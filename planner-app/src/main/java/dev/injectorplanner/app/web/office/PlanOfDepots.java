package dev.injectorplanner.app.web.office;

import dev.injectorplanner.core.coolant.CoolantPlan;
import dev.injectorplanner.core.parts.PartsPlan;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.PlanCost;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The plans in force of some depots as one plan that speaks of those depots alone: out of a plan of all depots their part,
 * out of a plan each the sum. Lives and what the plan takes as given are the newest plan's; the cost stays that of the
 * plans it was taken from, since a schedule's cost has no parts.
 */
public final class PlanOfDepots {
    private final List<DepotPlan> plans;
    private final Plan newest;

    private PlanOfDepots(List<DepotPlan> plans) {
        this.plans = plans;
        this.newest = plans.stream()
                .max(Comparator.comparing(plan -> plan.kept().id()))
                .orElseThrow()
                .plan();
    }

    /** @param plans at least one, each of another depot */
    public static Plan of(List<DepotPlan> plans) {
        return new PlanOfDepots(plans).plan();
    }

    private Plan plan() {
        return new Plan(
                newest.today(),
                plans.stream()
                        .map(plan -> plan.plan().firstWeek())
                        .min(Comparator.naturalOrder())
                        .orElseThrow(),
                plans.stream().mapToInt(plan -> plan.plan().weeks()).max().orElseThrow(),
                cost(),
                own(Plan::injectors, row -> row.truck()),
                all(Plan::risks, risk -> risk.depot()),
                firstOf(Plan::lives, life -> life.part() + "\n" + life.origin()),
                newest.signEffects(),
                firstOf(Plan::inspections, row -> row.family()),
                all(Plan::expectedFailures, row -> row.depot()),
                each(DepotPlan::findings),
                each(DepotPlan::visits),
                own(Plan::reasons, row -> row.truck()),
                each(DepotPlan::unplanned),
                all(Plan::days, row -> row.depot()),
                each(DepotPlan::loads),
                parts(),
                all(Plan::cores, row -> row.depot()),
                all(Plan::claims, row -> row.depot()),
                new CoolantPlan(
                        newest.coolant().rules(),
                        all(Plan::coolantNeeds, row -> row.depot()),
                        all(plan -> plan.coolant().weeks(), row -> row.depot())),
                newest.assumptions());
    }

    private PartsPlan parts() {
        return new PartsPlan(
                newest.parts().rules(),
                all(Plan::partNeeds, row -> row.depot()),
                each(DepotPlan::shortList),
                plans.stream().allMatch(plan -> plan.plan().parts().forecastKnown()),
                all(plan -> plan.parts().unplannedNeeds(), row -> row.depot()),
                all(plan -> plan.parts().orders(), row -> row.depot()),
                all(plan -> plan.parts().stockWeeks(), row -> row.depot()));
    }

    private PlanCost cost() {
        PlanCost one = newest.cost();
        boolean same = plans.stream().allMatch(plan -> plan.plan() == newest);
        double cost = kept().mapToDouble(plan -> plan.cost().cost()).sum();
        return new PlanCost(
                cost, same ? one.bound() : null, same ? one.gap() : null, each(DepotPlan::brokenWishes), one.stop());
    }

    /** Each plan once, though it may be in force at several depots. */
    private Stream<Plan> kept() {
        Set<Long> seen = new HashSet<>();
        return plans.stream().filter(plan -> seen.add(plan.kept().id())).map(DepotPlan::plan);
    }

    private <T> List<T> each(Function<DepotPlan, List<T>> rows) {
        return plans.stream().flatMap(plan -> rows.apply(plan).stream()).toList();
    }

    /** Of each depot's plan the rows of that depot. */
    private <T> List<T> all(Function<Plan, List<T>> rows, Function<T, String> depot) {
        return plans.stream()
                .flatMap(plan -> rows.apply(plan.plan()).stream()
                        .filter(row -> depot.apply(row).equals(plan.depot())))
                .toList();
    }

    /** Of each depot's plan the rows of that depot's trucks. */
    private <T> List<T> own(Function<Plan, List<T>> rows, Function<T, String> truck) {
        return plans.stream()
                .flatMap(plan -> {
                    Set<String> here = plan.trucks();
                    return rows.apply(plan.plan()).stream().filter(row -> here.contains(truck.apply(row)));
                })
                .toList();
    }

    private <T> List<T> firstOf(Function<Plan, List<T>> rows, Function<T, String> key) {
        Map<String, T> found = new LinkedHashMap<>();
        Stream.concat(Stream.of(newest), kept())
                .forEach(plan -> rows.apply(plan).forEach(row -> found.putIfAbsent(key.apply(row), row)));
        return new ArrayList<>(found.values());
    }
}
