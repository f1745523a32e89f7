package dev.injectorplanner.core.schedule.exact;

import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.units.Figures;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Says which limits kept a truck out. */
final class Reasons {
    private Reasons() {}

    static String notPlaced(Problem problem, Assignment chosen, int truck) {
        TruckOptions asked = problem.trucks.get(truck);
        if (asked.options().isEmpty()) {
            return "it cannot be spared in any week of the plan";
        }
        if (asked.options().stream().noneMatch(option -> option.cost() < 0)) {
            return "deferring it costs less than any of its visits";
        }
        int first = problem.first[truck];
        int last = problem.first[truck + 1];
        if (first == last) {
            return "each visit worth making needs more hours, bay-days or truck-days than its week has";
        }
        return "other trucks save more in the " + Figures.count(last - first, "visit", "visits")
                + " it could have; limited by: " + limits(problem, chosen, first, last);
    }

    private static String limits(Problem problem, Assignment chosen, int first, int last) {
        Map<Limit, Integer> limits = new TreeMap<>();
        for (int option = first; option < last; option++) {
            Limit limit = chosen.inTheWay(option);
            limits.merge(limit == null ? Limit.DEAR_OVERTIME : limit, 1, Integer::sum);
        }
        return limits.entrySet().stream()
                .map(entry -> entry.getKey().words + " in " + entry.getValue())
                .collect(Collectors.joining(", "));
    }

    /**
     * Why a wish cannot be met beside the others.
     *
     * @param problem trucks with wishes, with the options that would meet one
     * @param kept the others, as they are met
     * @param truck whose wish is broken
     * @param offered whether any of its visits would meet the wish
     * @param meeting those of them that the problem has, because they fit on their own
     */
    static String brokenWish(Problem problem, Assignment kept, int truck, boolean offered, List<Integer> meeting) {
        if (!offered) {
            return "no visit is possible then: the truck cannot be spared, or parts come later";
        }
        Set<String> why = new TreeSet<>();
        Assignment without = kept.copy();
        without.drop(truck);
        for (int option : meeting) {
            Limit beside = without.inTheWay(option);
            if (beside != null) {
                why.add("the " + beside.words + " of week " + problem.options[option].week() + " are taken by "
                        + others(problem, without, option));
            }
        }
        return why.isEmpty()
                ? "its visit needs more hours, bay-days or truck-days than are available"
                : String.join("; ", why);
    }

    private static String others(Problem problem, Assignment kept, int option) {
        int cell = problem.cellOf[option];
        int group = problem.groupOf[option];
        StringBuilder names = new StringBuilder();
        for (int truck = 0; truck < problem.truckCount(); truck++) {
            int its = kept.choice(truck);
            boolean near = its != Assignment.NONE
                    && (problem.cellOf[its] == cell || (group >= 0 && problem.groupOf[its] == group));
            if (near) {
                names.append(names.isEmpty() ? "" : ", ")
                        .append(problem.trucks.get(truck).truck());
            }
        }
        return names + ", also pinned or due";
    }
}
