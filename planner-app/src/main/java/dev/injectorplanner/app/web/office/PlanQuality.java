package dev.injectorplanner.app.web.office;

import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.plan.PlanCost;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.visit.Visit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What a plan is worth: money first, then limits and what lateness weighs, never added; and how near it is to the best possible. */
public final class PlanQuality {
    private final int keptSets;

    /** @param keptSets sets of cylinders tried a truck and week */
    public PlanQuality(int keptSets) {
        this.keptSets = keptSets;
    }

    /** @param ofOthers whether the plans hold depots that are not shown, whose money is not told */
    public List<String> sentences(List<DepotPlan> plans, boolean ofOthers) {
        List<String> sentences = new ArrayList<>();
        List<PlanCost> costs = costs(plans);
        if (!ofOthers) {
            double saved = -costs.stream().mapToDouble(PlanCost::money).sum();
            sentences.add("Expected money, compared with doing nothing in these weeks: "
                    + (saved >= 0 ? "saves " : "costs ") + DisplayFormat.money(Math.abs(saved))
                    + " (parts, labour, standing, express and road failures).");
        }
        sentences.add(limits(plans));
        if (!ofOthers) {
            double weights = costs.stream().mapToDouble(PlanCost::weights).sum();
            sentences.add("Weights, kept apart from the money: "
                    + (Math.abs(weights) < 0.5
                            ? "none; nothing is late past a limit or moved after it was confirmed."
                            : DisplayFormat.money(weights)
                                    + " for lateness past limits, confirmed visits moved and tests before a warranty ends; below"
                                    + " zero, less of it than doing nothing."));
            sentences.add(best(costs));
        }
        return sentences;
    }

    /** Of each plan once, whatever number of its depots is shown. */
    public static List<PlanCost> costs(List<DepotPlan> plans) {
        Set<Long> seen = new HashSet<>();
        return plans.stream()
                .filter(plan -> seen.add(plan.kept().id()))
                .map(plan -> plan.plan().cost())
                .toList();
    }

    private static String limits(List<DepotPlan> plans) {
        int all = 0;
        int met = 0;
        for (DepotPlan plan : plans) {
            Set<DueItem> inTime = new HashSet<>();
            for (Visit visit : plan.visits()) {
                visit.dueItems().stream()
                        .filter(item -> !visit.week().monday().isAfter(item.by()))
                        .forEach(inTime::add);
            }
            all += plan.dueItems().size();
            met += (int) plan.dueItems().stream().filter(inTime::contains).count();
        }
        return all == 0
                ? "Limits: nothing is due in these weeks."
                : "Limits: " + met + " of " + Figures.count(all, "due item is", "due items are")
                        + " answered by a visit that begins in time; the others are late, or waiting costs less.";
    }

    private String best(List<PlanCost> costs) {
        double widest = 0;
        for (PlanCost cost : costs) {
            Double gap = cost.gap();
            if (gap == null) {
                return "How near it is to the best possible is not proven.";
            }
            widest = Math.max(widest, gap);
        }
        return "Best possible within " + String.format(Locale.ROOT, "%.2f", 100 * widest) + " %, among at most "
                + keptSets + " sets of cylinders a truck and week: no plan of those could be better by more.";
    }
}
