package dev.injectorplanner.app.web.week;

import dev.injectorplanner.app.web.office.Address;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.week.WeekView.Question;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.option.VisitReason;
import dev.injectorplanner.core.parts.ShortAdvice;
import dev.injectorplanner.core.parts.ShortLine;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.plan.TruckReason;
import dev.injectorplanner.core.plan.Unplanned;
import dev.injectorplanner.core.schedule.Schedule.BrokenWish;
import dev.injectorplanner.core.schedule.Schedule.Wish;
import dev.injectorplanner.core.visit.Visit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What somebody must decide: safety items, holds that cannot be kept, parts too late, work without a visit. */
final class Questions {
    private final IsoWeek week;
    private final boolean first;

    /** @param first whether the week is the plans' first, which also asks what concerns the whole plan */
    Questions(IsoWeek week, boolean first) {
        this.week = week;
        this.first = first;
    }

    /** The most pressing first. */
    List<Question> of(List<DepotPlan> plans) {
        List<Question> questions = new ArrayList<>();
        if (first) {
            plans.forEach(plan -> safety(plan, questions));
            plans.forEach(plan -> plan.brokenWishes().stream()
                    .filter(wish -> !plan.isDone(wish.truck()))
                    .forEach(wish -> questions.add(broken(plan, wish))));
        }
        plans.forEach(plan -> shortVisits(plan, questions));
        if (first) {
            plans.forEach(plan -> withoutVisit(plan, questions));
        }
        return List.copyOf(questions);
    }

    private static void safety(DepotPlan plan, List<Question> questions) {
        Map<String, List<DueItem>> trucks = new LinkedHashMap<>();
        plan.dueItems().stream()
                .filter(item -> item.kind() == DueKind.SAFETY && !plan.isDone(item.truck()))
                .forEach(item -> trucks.computeIfAbsent(item.truck(), truck -> new ArrayList<>())
                        .add(item));
        trucks.values().forEach(dueItems -> questions.add(mustNotWait(plan, dueItems)));
    }

    /** @param dueItems of one truck, the most pressing first */
    private static Question mustNotWait(DepotPlan plan, List<DueItem> dueItems) {
        DueItem item = dueItems.get(0);
        String evidence = dueItems.stream().map(DueItem::evidence).collect(Collectors.joining("; "));
        String proposed = plan.visits().stream()
                .filter(visit -> visit.truck().equals(item.truck()) && visit.diagnosis())
                .findFirst()
                .map(visit ->
                        "find the cause " + when(plan, visit) + ", " + DisplayFormat.tenth(visit.labourHours()) + " h.")
                .orElse("bring it in now: the plan has no diagnosis for it.");
        return new Question(
                item.truck() + ", " + item.depot() + ": safety, bring in now",
                DisplayFormat.sentence(evidence) + ". Due " + DisplayFormat.day(item.by()) + ".",
                proposed,
                "If fuel leaks, stop the truck now; the engine maker’s manual decides.",
                "Open the safety fault",
                Address.safety(item.truck()),
                "Open the truck",
                Address.truck(item.truck()));
    }

    private static Question broken(DepotPlan plan, BrokenWish wish) {
        IsoWeek asked = plan.plan().firstWeek().plus(wish.week());
        Optional<Visit> visit = plan.findVisit(wish.truck());
        return new Question(
                wish.truck() + ", " + plan.depot() + ": "
                        + (wish.wish() == Wish.PIN ? "its pin to " + asked : "the latest week, " + asked + ",")
                        + " cannot be kept",
                DisplayFormat.sentence(wish.reason()) + ".",
                visit.map(each -> "it comes in " + when(plan, each) + " instead.")
                        .orElse("no visit: none of its weeks is possible."),
                anotherWeek(plan, wish.truck()),
                visit.isPresent() ? "Choose another week" : "Open the truck",
                visit.map(Address::change).orElse(Address.truck(wish.truck())),
                "",
                "");
    }

    private void shortVisits(DepotPlan plan, List<Question> questions) {
        Map<String, List<ShortLine>> byTruck = plan.shortList().stream()
                .filter(line -> line.week().equals(week) && line.advice() != ShortAdvice.GO_AHEAD)
                .filter(line -> !plan.isDone(line.truck(), line.week()))
                .collect(Collectors.groupingBy(ShortLine::truck, LinkedHashMap::new, Collectors.toList()));
        byTruck.values().forEach(lines -> questions.add(shortVisit(plan, lines)));
    }

    private static Question shortVisit(DepotPlan plan, List<ShortLine> lines) {
        ShortLine line = lines.get(0);
        String missing = lines.stream()
                .map(each -> DisplayFormat.pieces(each.missing()) + " × " + each.part())
                .collect(Collectors.joining(", "));
        String express = "express, " + DisplayFormat.money(line.expeditePrice().doubleValue());
        String moved = "postpone it to " + DisplayFormat.week(line.moveTo()) + ", "
                + DisplayFormat.money(line.postponementCost().doubleValue()) + " for the weeks it waits";
        String late = "if the supplier is late, postponing it to " + DisplayFormat.week(line.moveTo()) + " costs "
                + DisplayFormat.money(line.postponementCost().doubleValue()) + " ("
                + DisplayFormat.money(line.waitingCost().doubleValue())
                + " on average)";
        boolean move = line.advice() == ShortAdvice.MOVE;
        return new Question(
                line.truck() + ", " + line.depot() + ": " + missing + " short for " + when(plan, line),
                "Ordered today it arrives " + DisplayFormat.day(line.usualArrival()) + ", at the latest "
                        + DisplayFormat.day(line.latestArrival()) + ".",
                switch (line.advice()) {
                    case EXPEDITE -> "order it by " + express + "; the visit stays.";
                    case TRANSFER ->
                        "have " + line.fromDepot() + " send it, "
                                + DisplayFormat.money(line.expeditePrice().doubleValue()) + "; the visit stays.";
                    case MOVE -> moved + ".";
                    default -> "order today as usual; the visit stays.";
                },
                switch (line.advice()) {
                    case EXPEDITE, TRANSFER -> "Otherwise: " + moved + ".";
                    case MOVE -> "To keep it: " + express + ".";
                    default -> DisplayFormat.sentence(late) + "; " + express + ".";
                },
                move ? "Move to " + DisplayFormat.week(line.moveTo()) : "Open parts to order",
                move ? Address.tryMove(plan, line.truck(), line.moveTo()) : Address.order(line.depot()),
                move ? "Open parts to order" : "Move to " + DisplayFormat.week(line.moveTo()),
                move ? Address.order(line.depot()) : Address.tryMove(plan, line.truck(), line.moveTo()));
    }

    private static void withoutVisit(DepotPlan plan, List<Question> questions) {
        Map<String, Unplanned> trucks = new LinkedHashMap<>();
        plan.unplanned().stream()
                .filter(each -> plan.findVisit(each.truck()).isEmpty() && !plan.isDone(each.truck()))
                .forEach(each -> trucks.putIfAbsent(each.truck(), each));
        for (Unplanned each : trucks.values()) {
            DueItem pressing = each.dueItems().get(0);
            questions.add(new Question(
                    each.truck() + ", " + each.depot() + ": due, but no visit planned",
                    DisplayFormat.sentence(pressing.evidence()) + ". " + DisplayFormat.sentence(each.reason()) + ".",
                    "make the truck available for a day, or let it run.",
                    "If it keeps running, one of its injectors fails within 12 weeks with "
                            + DisplayFormat.chance(plan.chanceIn12Weeks(each.truck())) + ".",
                    "Open the truck",
                    Address.truck(each.truck()),
                    "",
                    ""));
        }
    }

    private static String anotherWeek(DepotPlan plan, String truck) {
        VisitReason reason = plan.findReason(truck).map(TruckReason::reason).orElse(null);
        Double later = reason == null ? null : reason.weekLater();
        if (reason == null || later == null) {
            return "";
        }
        String limit = reason.laterLimit();
        return "A week later " + DisplayFormat.costs(later)
                + (limit == null ? "." : ", but is not possible: " + limit + ".");
    }

    private static String when(DepotPlan plan, Visit visit) {
        return DepotDays.find(plan.plan().days(), visit)
                .map(laid -> DisplayFormat.dayAndTime(laid.start()) + ", bay " + laid.bay())
                .orElse("in " + visit.week());
    }

    private static String when(DepotPlan plan, ShortLine line) {
        return plan.findVisit(line.truck())
                .map(visit -> DepotDays.find(plan.plan().days(), visit)
                        .map(laid -> DisplayFormat.day(laid.start().toLocalDate()))
                        .orElse(DisplayFormat.week(line.week())))
                .orElse(DisplayFormat.week(line.week()));
    }
}
