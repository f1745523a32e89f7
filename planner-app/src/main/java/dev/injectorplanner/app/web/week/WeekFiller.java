package dev.injectorplanner.app.web.week;

import dev.injectorplanner.app.plans.KeptPlans;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.plan.Holds;
import dev.injectorplanner.core.plan.SafetyCase;
import dev.injectorplanner.core.schedule.WeekLoad;
import dev.injectorplanner.core.visit.Visit;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** Fills the week ahead from the plans in force. */
final class WeekFiller {
    private final KeptPlans kept;

    WeekFiller(KeptPlans kept) {
        this.kept = kept;
    }

    /**
     * The week of the depots chosen, which have at least one plan.
     *
     * @param asked the week to show, or null for the plans' first
     * @param holds pins and confirmed visits, by depot
     * @throws InvalidValueException where the week lies outside the plans
     */
    WeekView of(ChosenDepots chosen, @Nullable IsoWeek asked, Map<String, Holds> holds) {
        IsoWeek first = chosen.plans().stream()
                .map(plan -> plan.plan().firstWeek())
                .min(IsoWeek::compareTo)
                .orElseThrow();
        int weeks = chosen.plans().get(0).plan().weeks();
        IsoWeek week = within(asked == null ? first : asked, first, weeks);
        int ahead = first.weeksUntil(week);
        List<Visit> visits = chosen.plans().stream()
                .flatMap(plan -> plan.visitsOf(week).stream())
                .toList();
        List<WeekView.Waiting> waiting = chosen.plans().stream()
                .flatMap(plan -> WaitingFor.of(plan, week).stream())
                .toList();
        BoardFiller board = new BoardFiller(week, chosen.plans(), holds);
        Changes changes = new Changes(kept);
        return new WeekView(
                week.toString(),
                DisplayFormat.days(week.monday(), board.last()),
                chosen.made(),
                (int) waiting.stream().map(WeekView.Waiting::truck).distinct().count(),
                visits.size(),
                visits.stream().mapToInt(visit -> visit.cylinders().size()).sum(),
                DisplayFormat.tenth(
                        visits.stream().mapToDouble(Visit::labourHours).sum()),
                DisplayFormat.tenth(sum(chosen, week, WeekLoad::availableHours)),
                DisplayFormat.tenth(sum(chosen, week, WeekLoad::overtimeHours)),
                ahead == 0 ? null : week.plus(-1).toString(),
                ahead == weeks - 1 ? null : week.plus(1).toString(),
                weeks,
                safety(chosen),
                new Questions(week, ahead == 0).of(chosen.plans()),
                board.columns(),
                board.rows(),
                board.notLaid(),
                waiting,
                changes.of(chosen.plans()),
                changes.since(chosen.plans()));
    }

    private static List<String> safety(ChosenDepots chosen) {
        return chosen.plans().stream()
                .flatMap(plan -> plan.safety().stream())
                .map(SafetyCase::words)
                .toList();
    }

    private static IsoWeek within(IsoWeek week, IsoWeek first, int weeks) {
        int ahead = first.weeksUntil(week);
        if (ahead < 0 || ahead >= weeks) {
            throw new InvalidValueException(
                    "week",
                    week,
                    "is outside the plan, " + first + " to " + first.plus(weeks - 1),
                    "choose a week in the plan");
        }
        return week;
    }

    private static double sum(ChosenDepots chosen, IsoWeek week, ToDoubleFunction<WeekLoad> hours) {
        return chosen.plans().stream()
                .flatMap(plan -> plan.findLoad(week).stream())
                .mapToDouble(hours)
                .sum();
    }
}
