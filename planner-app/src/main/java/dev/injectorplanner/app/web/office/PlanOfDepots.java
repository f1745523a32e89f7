package dev.injectorplanner.app.web.office;

import dev.injectorplanner.core.allocation.AllocatedPieces;
import dev.injectorplanner.core.allocation.Allocation;
import dev.injectorplanner.core.allocation.Shipment;
import dev.injectorplanner.core.coolant.CoolantPlan;
import dev.injectorplanner.core.cores.CoreOwed;
import dev.injectorplanner.core.due.DueItems;
import dev.injectorplanner.core.parts.OrderLine;
import dev.injectorplanner.core.parts.OverdueLine;
import dev.injectorplanner.core.parts.PartsPlan;
import dev.injectorplanner.core.parts.ShortLine;
import dev.injectorplanner.core.plan.DepotPart;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.PlanCost;
import dev.injectorplanner.core.plan.RecordsState;
import dev.injectorplanner.core.warranty.WarrantyClaim;
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
 * The plans in force of some depots as one plan that speaks of those depots alone: each depot's part of its plan, one after
 * the other. Lives and what the plan takes as given are the newest plan's; the cost stays that of the plans it was taken
 * from, since a schedule's cost has no parts.
 */
public final class PlanOfDepots {
    private final List<DepotPlan> plans;
    private final List<Plan> parts;
    private final Plan newest;

    private PlanOfDepots(List<DepotPlan> plans) {
        this.plans = plans;
        this.parts = plans.stream()
                .map(plan -> DepotPart.of(plan.plan(), plan.fleet().fleet(), plan.depot()))
                .toList();
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
                parts.stream()
                        .map(Plan::firstWeek)
                        .min(Comparator.naturalOrder())
                        .orElseThrow(),
                parts.stream().mapToInt(Plan::weeks).max().orElseThrow(),
                cost(),
                all(Plan::injectors),
                all(Plan::risks),
                firstOf(Plan::lives, life -> life.part() + "\n" + life.origin()),
                newest.signEffects(),
                firstOf(Plan::inspections, row -> row.family()),
                all(Plan::expectedFailures),
                all(Plan::dueItems, DueItems.MOST_PRESSING),
                all(Plan::visits),
                all(Plan::reasons),
                all(Plan::unplanned),
                all(Plan::days),
                all(Plan::loads),
                parts(),
                all(Plan::cores, CoreOwed.MOST_URGENT),
                all(Plan::claims, WarrantyClaim.OLDEST),
                new CoolantPlan(
                        newest.coolant().rules(),
                        all(plan -> plan.coolant().needs()),
                        all(plan -> plan.coolant().weeks())),
                newest.assumptions(),
                all(Plan::safety),
                newest.lifeChanges(),
                all(Plan::failureBands),
                new RecordsState(
                        all(plan -> plan.records().depots()), newest.records().questions()));
    }

    private PartsPlan parts() {
        return new PartsPlan(
                newest.parts().rules(),
                all(plan -> plan.parts().needs()),
                all(plan -> plan.parts().shortList(), ShortLine.BY_WEEK),
                parts.stream().allMatch(plan -> plan.parts().forecastKnown()),
                all(plan -> plan.parts().unplannedNeeds()),
                all(plan -> plan.parts().orders(), OrderLine.BY_DAY),
                all(plan -> plan.parts().stockWeeks()),
                new Allocation(
                        distinct(plan -> plan.parts().allocation().pieces(), AllocatedPieces.BY_VISIT),
                        distinct(plan -> plan.parts().allocation().shipments(), Shipment.BY_DAY),
                        List.of()),
                distinct(plan -> plan.parts().overdue(), Comparator.comparing(OverdueLine::expectedOn)),
                all(plan -> plan.parts().shelves()));
    }

    /** What two depots share, such as a transfer, stands in both parts. */
    private <R> List<R> distinct(Function<Plan, List<R>> rows, Comparator<R> order) {
        return all(rows, order).stream().distinct().toList();
    }

    private PlanCost cost() {
        PlanCost one = newest.cost();
        double money = kept().mapToDouble(plan -> plan.cost().money()).sum();
        double weights = kept().mapToDouble(plan -> plan.cost().weights()).sum();
        return new PlanCost(
                money + weights,
                money,
                weights,
                null,
                null,
                all(plan -> plan.cost().brokenWishes()),
                one.stop());
    }

    /** Each plan once, though it may be in force at several depots. */
    private Stream<Plan> kept() {
        Set<Long> seen = new HashSet<>();
        return plans.stream().filter(plan -> seen.add(plan.kept().id())).map(DepotPlan::plan);
    }

    private <T> List<T> all(Function<Plan, List<T>> rows) {
        return parts.stream().flatMap(plan -> rows.apply(plan).stream()).toList();
    }

    private <T> List<T> all(Function<Plan, List<T>> rows, Comparator<T> order) {
        return parts.stream()
                .flatMap(plan -> rows.apply(plan).stream())
                .sorted(order)
                .toList();
    }

    private <T> List<T> firstOf(Function<Plan, List<T>> rows, Function<T, String> key) {
        Map<String, T> found = new LinkedHashMap<>();
        Stream.concat(Stream.of(newest), kept())
                .forEach(plan -> rows.apply(plan).forEach(row -> found.putIfAbsent(key.apply(row), row)));
        return new ArrayList<>(found.values());
    }
}
