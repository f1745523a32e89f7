package dev.injectorplanner.app.web.plan;

import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.plan.ChangeView.Fact;
import dev.injectorplanner.app.web.plan.ChangeView.Other;
import dev.injectorplanner.app.web.plan.ChangeView.Tried;
import dev.injectorplanner.core.plan.PlanChange;
import dev.injectorplanner.core.plan.PlanChange.Stay;
import dev.injectorplanner.core.plan.PlanChange.VisitChange;
import dev.injectorplanner.core.plan.PlanCost;
import dev.injectorplanner.core.units.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What a change does, in figures and words. */
final class Consequence {
    private Consequence() {}

    /** @param after the plan's cost with the change */
    static Tried of(VisitAction act, PlanChange change, PlanCost after) {
        List<Other> others = change.visits().stream()
                .filter(visit -> !visit.truck().equals(act.truck()))
                .map(Consequence::other)
                .collect(Collectors.toCollection(ArrayList::new));
        Set<String> told = others.stream().map(Other::truck).collect(Collectors.toSet());
        change.days().stream()
                .filter(day -> !day.truck().equals(act.truck()) && told.add(day.truck()))
                .map(day -> new Other(day.truck(), day.depot(), "move", day.before() + ", then " + day.after(), "0.0"))
                .forEach(others::add);
        List<String> broken = change.brokenWishes().stream()
                .map(wish -> wish.truck() + ": " + wish.reason())
                .toList();
        return new Tried(
                act.words(),
                act.words(),
                facts(act, change, after),
                others,
                Stream.concat(broken.stream(), change.limits().stream()).toList(),
                sum(change, others.size()));
    }

    private static List<Fact> facts(VisitAction act, PlanChange change, PlanCost after) {
        List<Fact> facts = new ArrayList<>();
        change.visits().stream()
                .filter(visit -> visit.truck().equals(act.truck()))
                .forEach(visit -> facts.add(new Fact(
                        "The visit of " + act.truck(),
                        stay(visit.before()),
                        stay(visit.after()),
                        hours(visit) + " h")));
        facts.add(new Fact(
                "Cost of the plan with its weights, compared with doing nothing",
                DisplayFormat.money(
                        Math.rint(after.cost()) - Math.rint(change.cost())), // the row adds up as it is shown
                DisplayFormat.money(after.cost()),
                DisplayFormat.more(change.cost())));
        change.days().stream()
                .filter(day -> day.truck().equals(act.truck()))
                .forEach(day -> facts.add(new Fact("Its day", day.before(), day.after(), "")));
        facts.add(new Fact(
                "Overtime in the first two weeks", "", "", DisplayFormat.moreTenth(change.overtimeHours()) + " h"));
        facts.add(new Fact("Labour of the plan", "", "", DisplayFormat.moreTenth(change.hours()) + " h"));
        facts.add(new Fact(
                "Expected failures in these weeks",
                hundredth(change.expectedFailuresBefore()),
                hundredth(change.expectedFailuresBefore() + change.expectedFailures()),
                (change.expectedFailures() >= 0 ? "+" : "\u2212") + hundredth(Math.abs(change.expectedFailures()))));
        return facts;
    }

    private static String sum(PlanChange change, int others) {
        return "The plan "
                + DisplayFormat.costs(change.cost())
                        .replace("costs", "costs more:")
                        .replace("more: nothing", "nothing more")
                + "; "
                + (others == 0
                        ? "every other visit stays where it is."
                        : Figures.count(others, "other visit changes.", "other visits change."));
    }

    private static Other other(VisitChange visit) {
        String mark = switch (visit.what()) {
            case ADDED -> "add";
            case DROPPED -> "gone";
            case MOVED -> "move";
            case OTHER_WORK -> "plan";
        };
        Stay before = visit.before();
        Stay after = visit.after();
        String what = before == null
                ? "new, " + stay(after)
                : after == null ? "removed, was " + stay(before) : stay(before) + ", then " + stay(after);
        return new Other(visit.truck(), visit.depot(), mark, what, hours(visit));
    }

    private static String hours(VisitChange visit) {
        Stay before = visit.before();
        Stay after = visit.after();
        return DisplayFormat.moreTenth(
                (after == null ? 0 : after.labourHours()) - (before == null ? 0 : before.labourHours()));
    }

    private static String stay(@Nullable Stay stay) {
        if (stay == null) {
            return "none";
        }
        String along = String.join(", ", stay.along());
        return DisplayFormat.week(stay.week()) + ": "
                + DisplayFormat.work(stay.cylinders(), -1, false, stay.along().isEmpty() ? List.of() : List.of(along));
    }

    private static String hundredth(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
