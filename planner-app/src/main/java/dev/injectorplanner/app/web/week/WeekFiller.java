package dev.injectorplanner.app.web.week;

import dev.injectorplanner.app.desk.Decision;
import dev.injectorplanner.app.desk.Desk;
import dev.injectorplanner.app.plans.KeptPlans;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.plan.Holds;
import dev.injectorplanner.core.plan.SafetyCase;
import dev.injectorplanner.core.schedule.WeekLoad;
import dev.injectorplanner.core.visit.Visit;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** Fills the week ahead from the plans in force. */
final class WeekFiller {
    /** Questions shown; a person can finish these, and the rest is folded with its sum. */
    static final int SHOWN = 8;

    private static final int DONE_SHOWN = 3;
    private static final int DECIDED_DAYS = 60;

    private final KeptPlans kept;
    private final Desk desk;

    WeekFiller(KeptPlans kept, Desk desk) {
        this.kept = kept;
        this.desk = desk;
    }

    /**
     * The week of the depots chosen, which have at least one plan.
     *
     * @param asked the week to show, or null for the plans' first
     * @param holds pins and confirmed visits, by depot
     * @throws InvalidValueException where the week lies outside the plans
     */
    WeekView of(ChosenDepots chosen, @Nullable IsoWeek asked, Map<String, Holds> holds) {
        IsoWeek first = firstWeek(chosen);
        int weeks = chosen.plans().get(0).plan().weeks();
        IsoWeek week = within(asked == null ? first : asked, first, weeks);
        int ahead = first.weeksUntil(week);
        List<Visit> visits = chosen.plans().stream()
                .flatMap(plan -> plan.visitsOf(week).stream())
                .toList();
        List<WeekView.Waiting> waiting = waiting(chosen, week);
        BoardFiller board = new BoardFiller(week, chosen.plans(), holds);
        Changes changes = new Changes(kept);
        Map<String, List<Decision>> decided = decided(chosen);
        List<DeskQuestion> questions = new Questions(ahead == 0 ? null : week).of(chosen.plans(), decided);
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
                ahead == 0 ? SafetyBoxes.of(chosen.plans()) : List.of(),
                questions,
                folded(questions),
                done(chosen, decided),
                board.columns(),
                board.rows(),
                board.notLaid(),
                waiting,
                changes.of(chosen.plans()),
                changes.since(chosen.plans()));
    }

    private static List<WeekView.Waiting> waiting(ChosenDepots chosen, IsoWeek week) {
        return chosen.plans().stream()
                .flatMap(plan -> WaitingFor.of(plan, week).stream())
                .toList();
    }

    private static IsoWeek firstWeek(ChosenDepots chosen) {
        return chosen.plans().stream()
                .map(plan -> plan.plan().firstWeek())
                .min(IsoWeek::compareTo)
                .orElseThrow();
    }

    /** What stands of each depot's decisions since its plan of some weeks ago: older ones ask again. */
    Map<String, List<Decision>> decided(ChosenDepots chosen) {
        Map<String, List<Decision>> decided = new TreeMap<>();
        for (DepotPlan plan : chosen.plans()) {
            Instant since = plan.kept().keptAt().minus(DECIDED_DAYS, ChronoUnit.DAYS);
            decided.put(plan.depot(), desk.decisions().list(plan.depot(), since));
        }
        return decided;
    }

    private static WeekView.Folded folded(List<DeskQuestion> questions) {
        List<DeskQuestion> rest = questions.subList(Math.min(SHOWN, questions.size()), questions.size());
        return new WeekView.Folded(
                rest.size(),
                DisplayFormat.money(
                        rest.stream().mapToDouble(DeskQuestion::proposal).sum()),
                DisplayFormat.money(
                        rest.stream().mapToDouble(DeskQuestion::stake).sum()));
    }

    private List<WeekView.Done> done(ChosenDepots chosen, Map<String, List<Decision>> decided) {
        List<Lately> lately = new ArrayList<>();
        for (DepotPlan plan : chosen.plans()) {
            Instant since = plan.kept().keptAt().minus(1, ChronoUnit.DAYS);
            decided.getOrDefault(plan.depot(), List.of()).stream()
                    .filter(decision -> decision.at().isAfter(since))
                    .forEach(decision -> lately.add(new Lately(plan, decision)));
        }
        return lately.stream()
                .sorted(Comparator.comparing((Lately each) -> each.decision().at())
                        .reversed())
                .limit(DONE_SHOWN)
                .map(this::done)
                .toList();
    }

    private record Lately(DepotPlan plan, Decision decision) {}

    private WeekView.Done done(Lately lately) {
        Decision decision = lately.decision();
        return new WeekView.Done(
                decision.key(),
                decision.words(),
                DisplayFormat.moment(decision.at(), lately.plan().site().timeZone()),
                decision.by(),
                desk.findBuiltOn(decision).orElse(""));
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
