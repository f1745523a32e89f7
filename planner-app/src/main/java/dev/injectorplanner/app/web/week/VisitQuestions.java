package dev.injectorplanner.app.web.week;

import dev.injectorplanner.app.desk.Answer;
import dev.injectorplanner.app.web.office.Address;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.week.DeskQuestion.Option;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.plan.Unplanned;
import dev.injectorplanner.core.schedule.Schedule.BrokenWish;
import dev.injectorplanner.core.schedule.Schedule.Wish;
import dev.injectorplanner.core.units.Figures;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Work without a visit, one question a reason and depot; and holds that cannot be kept. */
final class VisitQuestions {
    private static final int NAMED = 6;
    private static final String BLOCKED = "it is blocked in every week it could come in";
    private static final String CHEAPER = "deferring costs less than any visit";

    private final DepotPlan plan;

    VisitQuestions(DepotPlan plan) {
        this.plan = plan;
    }

    List<DeskQuestion> list() {
        List<DeskQuestion> questions = new ArrayList<>();
        broken(questions);
        Map<String, List<Unplanned>> byCause = new TreeMap<>();
        Map<String, Unplanned> trucks = new LinkedHashMap<>();
        plan.unplanned().stream()
                .filter(each -> plan.findVisit(each.truck()).isEmpty() && !plan.isDone(each.truck()))
                .forEach(each -> trucks.putIfAbsent(each.truck(), each));
        trucks.values()
                .forEach(each -> byCause.computeIfAbsent(cause(each.reason()), key -> new ArrayList<>())
                        .add(each));
        byCause.forEach((cause, rows) -> questions.add(withoutVisit(cause, rows)));
        return questions;
    }

    /** The same cause in one sentence whatever its figures are. */
    private static String cause(String reason) {
        return reason.startsWith(CHEAPER)
                ? CHEAPER
                : reason.replaceAll("\\d{4}-W\\d{2}", "a week").replaceAll("[\\d,.]*\\d", "some");
    }

    private DeskQuestion withoutVisit(String cause, List<Unplanned> rows) {
        List<String> trucks = rows.stream().map(Unplanned::truck).toList();
        double failures = trucks.stream().mapToDouble(plan::chanceIn12Weeks).sum();
        double money = rows.stream()
                .mapToDouble(each -> plan.chanceIn12Weeks(each.truck()) * roadFailure(each.truck()))
                .sum();
        DueItem first = rows.get(0).dueItems().get(0);
        String reason = rows.size() == 1 ? rows.get(0).reason() : cause;
        List<Option> options = new ArrayList<>();
        if (reason.equals(BLOCKED)) {
            options.add(Option.of(
                    rows.size() == 1 ? "Release " + trucks.get(0) : "Release all " + rows.size(),
                    "",
                    "as planned then",
                    "falls with the visit",
                    "Their blocks and pins are taken back; the plan gives each the week that costs least.",
                    new Answer.Release(trucks)));
        }
        options.add(leave(rows.size(), failures, money, cause.equals(CHEAPER)));
        options.add(Option.page(
                rows.size() == 1 ? "Open " + trucks.get(0) : "Open these trucks",
                "Pin one to a week, or see what each week costs.",
                rows.size() == 1
                        ? Address.truck(trucks.get(0))
                        : "/trucks?state=no-visit&depot=" + Address.escaped(plan.depot())));
        return new DeskQuestion(
                "no visit: " + cause,
                plan.depot(),
                String.join(", ", trucks),
                "decide",
                plan.depot() + ": " + Figures.count(rows.size(), "truck", "trucks") + " due, no visit planned",
                named(trucks) + ". " + DisplayFormat.sentence(reason) + ". "
                        + (rows.size() == 1 ? DisplayFormat.sentence(first.evidence()) + ". " : ""),
                trucks,
                0,
                cause.equals(CHEAPER) ? 0 : money,
                options);
    }

    private static Option leave(int trucks, double failures, double money, boolean cheaper) {
        return Option.of(
                trucks == 1 ? "Let it run" : "Let them run",
                cheaper ? "±0" : DisplayFormat.more(money),
                "±0",
                DisplayFormat.tenth(failures) + " road failures in 12 weeks",
                cheaper
                        ? "The plan prices waiting below every visit: the expected failures are in that price."
                        : "The money is the chance of failing on the road times what a road failure costs.",
                new Answer.Leave());
    }

    private double roadFailure(String truck) {
        return plan.fleet().fleet().trucks().stream()
                .filter(each -> each.truck().equals(truck))
                .findFirst()
                .map(Truck::family)
                .flatMap(plan::findFamily)
                .map(EngineFamily::roadFailureCost)
                .map(Number::doubleValue)
                .orElse(0.0);
    }

    private void broken(List<DeskQuestion> questions) {
        List<BrokenWish> wishes = plan.brokenWishes().stream()
                .filter(wish -> !plan.isDone(wish.truck()))
                .toList();
        for (Wish kind : Wish.values()) {
            List<BrokenWish> of =
                    wishes.stream().filter(wish -> wish.wish() == kind).toList();
            if (!of.isEmpty()) {
                questions.add(broken(kind, of));
            }
        }
    }

    private DeskQuestion broken(Wish kind, List<BrokenWish> wishes) {
        List<String> trucks = wishes.stream().map(BrokenWish::truck).distinct().toList();
        String each = each(wishes);
        List<Option> options = new ArrayList<>();
        if (kind == Wish.PIN) {
            options.add(Option.of(
                    trucks.size() == 1 ? "Release " + trucks.get(0) : "Release all " + trucks.size(),
                    "",
                    "as planned",
                    "no change",
                    "The pins are taken back; the plan keeps the week that it found.",
                    new Answer.Release(trucks)));
        }
        options.add(Option.of(
                "Leave", "±0", "±0", "no change", "The holds stay, and are tried at every plan.", new Answer.Leave()));
        options.add(Option.page(
                "Choose another week",
                "On the plan, with what it costs.",
                Address.plan(plan.depot()) + "&truck=" + Address.escaped(trucks.get(0)) + "#change"));
        return new DeskQuestion(
                "broken " + kind,
                plan.depot(),
                wishes.stream().map(wish -> wish.truck() + " " + wish.week()).collect(Collectors.joining(", ")),
                "decide",
                plan.depot() + ": "
                        + (kind == Wish.PIN
                                ? Figures.count(trucks.size(), "pin", "pins")
                                : Figures.count(trucks.size(), "latest week", "latest weeks"))
                        + " cannot be kept",
                each + (wishes.size() > NAMED ? ". And " + (wishes.size() - NAMED) + " more" : "") + ".",
                trucks,
                0,
                0,
                options);
    }

    private String each(List<BrokenWish> wishes) {
        return wishes.stream()
                .limit(NAMED)
                .map(wish -> wish.truck() + ", asked for "
                        + DisplayFormat.week(plan.plan().firstWeek().plus(wish.week())) + ": " + wish.reason() + "; "
                        + plan.findVisit(wish.truck())
                                .map(visit -> "comes in " + DisplayFormat.week(visit.week()) + " instead")
                                .orElse("no week is possible"))
                .collect(Collectors.joining(". "));
    }

    private static String named(List<String> trucks) {
        return trucks.stream().limit(NAMED).collect(Collectors.joining(", "))
                + (trucks.size() > NAMED ? " and " + (trucks.size() - NAMED) + " more" : "");
    }
}
