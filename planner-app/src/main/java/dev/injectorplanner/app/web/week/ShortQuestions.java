package dev.injectorplanner.app.web.week;

import dev.injectorplanner.app.desk.Answer;
import dev.injectorplanner.app.order.NewLine;
import dev.injectorplanner.app.web.office.Address;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.week.DeskQuestion.Option;
import dev.injectorplanner.core.allocation.Shipment;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.parts.OrderLine;
import dev.injectorplanner.core.parts.ShortAdvice;
import dev.injectorplanner.core.parts.ShortLine;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Parts that come too late for visits: one question a part and depot. */
final class ShortQuestions {
    private static final String NO_HOURS = "±0";

    private final DepotPlan plan;
    private final RoadRisk risk;

    ShortQuestions(DepotPlan plan) {
        this.plan = plan;
        this.risk = new RoadRisk(plan);
    }

    /** @param week only visits of this week, or null for all weeks of the plan */
    List<DeskQuestion> list(@Nullable IsoWeek week) {
        Map<String, List<ShortLine>> byPart = plan.shortList().stream()
                .filter(line -> line.advice() != ShortAdvice.GO_AHEAD)
                .filter(line -> week == null || line.week().equals(week))
                .filter(line -> !plan.isDone(line.truck(), line.week()))
                .collect(Collectors.groupingBy(ShortLine::part, TreeMap::new, Collectors.toList()));
        List<DeskQuestion> questions = new ArrayList<>();
        byPart.forEach((part, lines) -> questions.add(question(part, lines)));
        return questions;
    }

    private DeskQuestion question(String part, List<ShortLine> lines) {
        double missing = lines.stream().mapToDouble(ShortLine::missing).sum();
        Set<String> trucks = lines.stream().map(ShortLine::truck).collect(Collectors.toCollection(TreeSet::new));
        double waiting = sum(lines, line -> line.waitingCost().doubleValue());
        Map<ShortAdvice, Option> options = options(part, lines, missing);
        ShortAdvice advised = advised(lines);
        List<Option> sorted = new ArrayList<>();
        java.util.Optional<Option> mixed = mixed(part, lines);
        mixed.ifPresent(sorted::add);
        Option first = mixed.isPresent() ? null : options.remove(advised);
        if (first != null) {
            sorted.add(first);
        }
        sorted.addAll(options.values());
        sorted.add(leave(lines, waiting));
        sorted.add(
                Option.page("Open parts to order", "Every line, quantity and supplier.", Address.order(plan.depot())));
        return new DeskQuestion(
                "short " + part,
                plan.depot(),
                lines.stream()
                        .map(line -> line.truck() + " " + line.week() + " " + DisplayFormat.pieces(line.missing()))
                        .collect(Collectors.joining(", ")),
                "decide",
                WaitingFor.named(plan, part) + ", " + plan.depot() + ": " + DisplayFormat.pieces(missing)
                        + " short for " + Figures.count(trucks.size(), "visit", "visits"),
                lead(lines),
                List.copyOf(trucks),
                proposal(lines),
                Math.max(waiting, proposal(lines)),
                sorted);
    }

    /** What the plan advises for the most trucks; one answer then holds for all of them. */
    private static ShortAdvice advised(List<ShortLine> lines) {
        Map<ShortAdvice, Long> counts =
                lines.stream().collect(Collectors.groupingBy(ShortLine::advice, TreeMap::new, Collectors.counting()));
        return counts.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(ShortAdvice.ORDER_TODAY);
    }

    private static double proposal(List<ShortLine> lines) {
        return byAdvice(lines).entrySet().stream()
                .mapToDouble(each -> money(each.getKey(), each.getValue()))
                .sum();
    }

    private static Map<ShortAdvice, List<ShortLine>> byAdvice(List<ShortLine> lines) {
        return lines.stream().collect(Collectors.groupingBy(ShortLine::advice, TreeMap::new, Collectors.toList()));
    }

    /** Each truck by the way that the plan found cheapest for it; nothing where that is one way for all. */
    private java.util.Optional<Option> mixed(String part, List<ShortLine> lines) {
        Map<ShortAdvice, List<ShortLine>> ways = byAdvice(lines);
        if (ways.size() < 2) {
            return java.util.Optional.empty();
        }
        List<Option> each = new ArrayList<>();
        ways.forEach((advice, of) -> {
            double missing = of.stream().mapToDouble(ShortLine::missing).sum();
            Option option = options(part, of, missing).get(advice);
            if (option != null) {
                each.add(option);
            }
        });
        List<Answer> answers = new ArrayList<>();
        each.forEach(option -> {
            if (option.answer() != null) {
                answers.add(option.answer());
            }
        });
        return answers.size() < ways.size()
                ? java.util.Optional.empty()
                : java.util.Optional.of(Option.of(
                        each.stream().map(Option::label).collect(Collectors.joining("; ")),
                        DisplayFormat.more(proposal(lines)),
                        each.get(0).hours(),
                        each.stream().map(Option::risk).distinct().collect(Collectors.joining("; ")),
                        "Each visit by the way that is cheapest for it: "
                                + ways.values().stream()
                                        .map(of -> of.stream()
                                                .map(ShortLine::truck)
                                                .distinct()
                                                .collect(Collectors.joining(", ")))
                                        .collect(Collectors.joining("; "))
                                + ".",
                        new Answer.Several(answers)));
    }

    private static double money(ShortAdvice advice, List<ShortLine> lines) {
        return switch (advice) {
            case EXPEDITE, TRANSFER -> express(lines);
            case MOVE -> sum(lines, line -> line.postponementCost().doubleValue());
            default -> 0;
        };
    }

    private Map<ShortAdvice, Option> options(String part, List<ShortLine> lines, double missing) {
        Map<ShortAdvice, Option> options = new LinkedHashMap<>();
        List<Shipment> transfers = transfers(part, lines);
        if (!transfers.isEmpty()) {
            options.put(ShortAdvice.TRANSFER, transfer(transfers, lines));
        }
        order(part, lines, missing, true).ifPresent(option -> options.put(ShortAdvice.EXPEDITE, option));
        order(part, lines, missing, false).ifPresent(option -> options.put(ShortAdvice.ORDER_TODAY, option));
        options.put(ShortAdvice.MOVE, move(lines));
        return options;
    }

    private List<Shipment> transfers(String part, List<ShortLine> lines) {
        Set<String> trucks = lines.stream().map(ShortLine::truck).collect(Collectors.toSet());
        return plan.plan().parts().transfers().stream()
                .filter(each -> each.depot().equals(plan.depot())
                        && trucks.contains(each.truck())
                        && each.pieces().containsKey(part))
                .toList();
    }

    private Option transfer(List<Shipment> shipments, List<ShortLine> lines) {
        double cost = shipments.stream().mapToDouble(Shipment::cost).sum();
        String from = shipments.stream().map(Shipment::from).distinct().collect(Collectors.joining(", "));
        LocalDate ready = shipments.stream()
                .map(Shipment::readyOn)
                .max(LocalDate::compareTo)
                .orElse(plan.today());
        return Option.of(
                "Transfer from " + from,
                DisplayFormat.more(cost),
                NO_HOURS,
                "no change",
                stays(shipments, lines) + " Arrives by " + DisplayFormat.day(ready) + ".",
                new Answer.Transfer(
                        shipments.stream()
                                .map(each -> new Answer.Sent(each.truck(), each.from(), each.pieces(), each.readyOn()))
                                .toList(),
                        plan.today()));
    }

    private java.util.Optional<Option> order(String part, List<ShortLine> lines, double missing, boolean express) {
        Part sold = plan.fleet().findPart(part).orElse(null);
        if (sold == null) {
            return java.util.Optional.empty();
        }
        List<OrderLine> advised = plan.plan().parts().orders().stream()
                .filter(line -> line.depot().equals(plan.depot())
                        && line.part().equals(part)
                        && line.now()
                        && line.express() == express)
                .toList();
        if (express && advised.isEmpty()) {
            return java.util.Optional.empty(); // not in time, or dearer than anything else: the plan ships nothing
        }
        double quantity = Math.max(
                packs(missing, sold),
                advised.stream().mapToDouble(OrderLine::quantity).sum());
        ShortLine first = lines.get(0);
        LocalDate due = advised.stream()
                .map(OrderLine::thereBy)
                .max(LocalDate::compareTo)
                .orElse(first.latestArrival());
        String pieces = DisplayFormat.pieces(quantity);
        Answer answer = new Answer.Order(
                sold.supplier(),
                List.of(new NewLine(part, plan.depot(), quantity, due)),
                express ? "Please send by express: " + pieces + " " + part + " for " + plan.depot() + "." : "",
                plan.today());
        String parts = DisplayFormat.money(sold.price().doubleValue() * quantity) + " for the parts either way.";
        return java.util.Optional.of(
                express ? byExpress(pieces, lines, due, parts, answer) : asUsual(pieces, lines, parts, answer));
    }

    private Option byExpress(String pieces, List<ShortLine> lines, LocalDate due, String parts, Answer answer) {
        return Option.of(
                "Express " + pieces + (lines.size() > 1 ? " for all" : ""),
                DisplayFormat.more(express(lines)),
                NO_HOURS,
                "no change",
                stays(lines) + " Arrives by " + DisplayFormat.day(due) + ". " + parts,
                answer);
    }

    private Option asUsual(String pieces, List<ShortLine> lines, String parts, Answer answer) {
        ShortLine first = lines.get(0);
        return Option.of(
                "Order " + pieces + " as usual",
                DisplayFormat.more(sum(lines, line -> line.waitingCost().doubleValue())),
                NO_HOURS,
                risk.words(visits(lines), first.usualArrival()),
                "Arrives " + DisplayFormat.day(first.usualArrival()) + ", at the latest "
                        + DisplayFormat.day(first.latestArrival())
                        + "; the money is what waiting costs on average. " + parts,
                answer);
    }

    private static double packs(double missing, Part part) {
        double least = Math.max(missing, part.minimumOrder());
        return Math.ceil(least / part.pack() - 1e-9) * part.pack();
    }

    private Option move(List<ShortLine> lines) {
        Map<String, IsoWeek> weeks = new TreeMap<>();
        lines.forEach(line ->
                weeks.merge(line.truck(), line.moveTo(), (one, other) -> one.compareTo(other) < 0 ? other : one));
        double overtime = 0;
        Map<IsoWeek, Double> hours = new TreeMap<>();
        for (Visit visit : visits(lines)) {
            IsoWeek to = weeks.get(visit.truck());
            if (to != null && !to.equals(visit.week())) {
                hours.merge(to, visit.labourHours(), Double::sum);
            }
        }
        for (Map.Entry<IsoWeek, Double> week : hours.entrySet()) {
            double free = plan.findLoad(week.getKey())
                    .map(load -> Math.max(0, load.availableHours() - load.labourHours()))
                    .orElse(0.0);
            overtime += Math.max(0, week.getValue() - free);
        }
        IsoWeek last = weeks.values().stream().max(IsoWeek::compareTo).orElseThrow();
        String to = weeks.values().stream().distinct().map(DisplayFormat::week).collect(Collectors.joining(", "));
        return Option.of(
                "Move " + (weeks.size() == 1 ? weeks.keySet().iterator().next() : "all " + weeks.size()) + " to " + to,
                DisplayFormat.more(sum(lines, line -> line.postponementCost().doubleValue())),
                overtime < 0.05 ? NO_HOURS : DisplayFormat.moreTenth(overtime) + " beyond plain hours",
                risk.words(visits(lines), last.monday()),
                "Pinned to the first week in which the parts are there whatever happens; other visits may give way.",
                new Answer.Move(weeks));
    }

    private Option leave(List<ShortLine> lines, double waiting) {
        return Option.of(
                "Leave",
                DisplayFormat.more(waiting),
                NO_HOURS,
                risk.words(visits(lines), lines.get(0).latestArrival()),
                "Nothing is ordered or moved here: at least what waiting costs on average. Not asked again until the plan changes it.",
                new Answer.Leave());
    }

    private List<Visit> visits(List<ShortLine> lines) {
        Map<String, Visit> visits = new LinkedHashMap<>();
        lines.forEach(line -> plan.visits().stream()
                .filter(visit ->
                        visit.truck().equals(line.truck()) && visit.week().equals(line.week()) && !visit.diagnosis())
                .findFirst()
                .ifPresent(visit -> visits.put(line.truck() + line.week(), visit)));
        return List.copyOf(visits.values());
    }

    private String lead(List<ShortLine> lines) {
        ShortLine first = lines.get(0);
        String visits = lines.stream()
                .limit(4)
                .map(line -> line.truck() + ", " + DisplayFormat.week(line.week()))
                .collect(Collectors.joining("; "));
        int more = lines.size() - 4;
        return visits + (more > 0 ? "; and " + more + " more" : "") + ". Ordered today it arrives "
                + DisplayFormat.day(first.usualArrival()) + ", at the latest "
                + DisplayFormat.day(first.latestArrival())
                + ".";
    }

    /** Which visits the shipments are for, where not for all. */
    private static String stays(List<Shipment> shipments, List<ShortLine> lines) {
        Set<String> sent = shipments.stream().map(Shipment::truck).collect(Collectors.toCollection(TreeSet::new));
        Set<String> waits = lines.stream().map(ShortLine::truck).collect(Collectors.toCollection(TreeSet::new));
        waits.removeAll(sent);
        return waits.isEmpty()
                ? stays(lines)
                : String.join(", ", sent) + (sent.size() == 1 ? " stays" : " stay") + " as planned; "
                        + String.join(", ", waits) + " still " + (waits.size() == 1 ? "waits." : "wait.");
    }

    private static String stays(List<ShortLine> lines) {
        return lines.size() == 1 ? "The visit stays." : "All stay as planned.";
    }

    /** A visit's shipment holds all that it misses, so it counts once. */
    private static double express(List<ShortLine> lines) {
        Map<String, Double> visits = new TreeMap<>();
        lines.forEach(line -> visits.put(
                line.truck() + " " + line.week(), line.expeditePrice().doubleValue()));
        return visits.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    private static double sum(List<ShortLine> lines, java.util.function.ToDoubleFunction<ShortLine> money) {
        Map<String, Double> visits = new TreeMap<>();
        lines.forEach(line -> visits.put(line.truck() + " " + line.week(), money.applyAsDouble(line)));
        return visits.values().stream().mapToDouble(Double::doubleValue).sum();
    }
}
