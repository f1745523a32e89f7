package dev.injectorplanner.app.web.truck;

import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.option.VisitReason;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.plan.RecordsState;
import dev.injectorplanner.core.plan.TruckReason;
import dev.injectorplanner.core.plan.Unplanned;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Fills a truck's file from the plan in force and its records. */
public final class TruckFile {
    private static final int MOST_NAMED = 3;

    private final DepotPlan plan;
    private final Truck truck;
    private final EngineFamily family;

    private final Policy policy;

    TruckFile(DepotPlan plan, Truck truck, Policy policy) {
        this.policy = policy;
        this.plan = plan;
        this.truck = truck;
        this.family = plan.fleet().family(truck.family());
    }

    /**
     * A truck's file.
     *
     * @param records what its records lack, a sentence each
     */
    public record View(
            String truck,
            String depot,
            Head head,
            Coming visit,
            List<String> unplanned,
            String closedOut,
            List<Finding> dueItems,
            EngineView.Drawing engine,
            TimeLinePictures.View timeLine,
            List<CylinderTests.Row> tests,
            List<Row> history,
            List<Integer> cylinders,
            List<String> records) {}

    /**
     * What stands at the top.
     *
     * @param odometer the newest reading, or "not known"
     * @param chance of the worst cylinder to fail within 12 weeks
     */
    public record Head(
            String about, String odometer, String hours, String perWeek, String chance, String chanceAbout) {}

    /**
     * Its visit, or that there is none.
     *
     * @param week ISO week, or empty where it has none
     * @param facts label and value
     * @param left cylinders the visit leaves, with what doing them too would cost
     * @param weeks the same work in the weeks around it
     */
    public record Coming(
            String week,
            String when,
            List<Pair> facts,
            String why,
            List<String> left,
            List<AnotherWeek.Row> weeks,
            String weeksAnswer,
            Bill bill) {}

    public record Pair(String label, String value) {}

    /** What the visit is expected to cost; without lines where none is planned. */
    public record Bill(List<VisitBill.Line> lines, String sum, String deposits) {}

    public record Finding(String what, String evidence, String limit, String by, boolean overdue) {}

    /** A line of the history: day, what happened, with the day to sort by. */
    public record Row(LocalDate day, String on, String what, String detail) {}

    View view() {
        CylinderTests tests = new CylinderTests(plan, truck, family);
        return new View(
                truck.truck(),
                plan.depot(),
                head(tests),
                plan.findVisit(truck.truck()).map(this::coming).orElseGet(this::noVisit),
                plan.unplanned().stream()
                        .filter(each -> each.truck().equals(truck.truck()))
                        .map(this::leftToLater)
                        .toList(),
                closedOut(),
                plan.dueItems().stream()
                        .filter(each -> each.truck().equals(truck.truck()))
                        .map(this::item)
                        .toList(),
                new EngineView(plan, truck, family, tests.riskLimit().orElse(null)).draw(),
                new TimeLinePictures(plan, truck, family, tests).view(),
                tests.rows(),
                new TruckTimeLine(plan, truck).rows(),
                family.allCylinders(),
                records());
    }

    private Head head(CylinderTests tests) {
        List<Reading> readings = plan.fleet().readingsOf(truck.truck());
        String limit = tests.riskLimit()
                .map(most -> "; limit " + DisplayFormat.chance(most))
                .orElse("");
        return new Head(
                about(),
                newest(readings, Reading::odometerKm, plan.units()::distance),
                newest(readings, Reading::engineHours, hours -> Figures.whole(hours) + " h"),
                perWeek(),
                worst().map(each -> DisplayFormat.chance(each.chance12())).orElse("not known"),
                worst().map(each -> "cylinder " + each.cylinder()).orElse("") + limit);
    }

    private String about() {
        LocalDate warranty = truck.warrantyUntil();
        return plan.depot() + ". " + (truck.dutyGroup() == null ? "" : "Duty group: " + truck.dutyGroup() + ". ")
                + "Engine family " + family.family() + ", " + family.cylinders() + " cylinders. VIN "
                + (truck.vin() == null ? "not recorded" : truck.vinText()) + ". Truck warranty "
                + (warranty == null ? "not recorded" : "to " + DisplayFormat.shortDate(warranty)) + ".";
    }

    private Coming coming(Visit visit) {
        Optional<TruckReason> reason = plan.findReason(truck.truck());
        VisitBill bill = new VisitBill(plan, truck, visit, policy);
        List<AnotherWeek.Row> weeks = new AnotherWeek(plan, truck.truck(), bill.sum()).rows();
        return new Coming(
                visit.week().toString(),
                when(visit),
                facts(visit, reason, bill),
                why(),
                reason.map(TruckReason::reason).map(TruckFile::left).orElse(List.of()),
                weeks,
                AnotherWeek.answer(weeks, visit),
                bill(bill));
    }

    private Coming noVisit() {
        Bill none = new Bill(List.of(), "", "");
        return new Coming("", "none planned", List.of(), why(), List.of(), List.of(), "", none);
    }

    private String why() {
        return plan.findReason(truck.truck()).map(TruckReason::words).orElse("Nothing is due within the plan.");
    }

    private static Bill bill(VisitBill bill) {
        return new Bill(
                bill.lines(),
                DisplayFormat.money(bill.sum()),
                bill.deposits() < 0.5 ? "" : DisplayFormat.money(bill.deposits()));
    }

    private Optional<InjectorRisk> worst() {
        return plan.risksOf(truck.truck()).stream().max(Comparator.comparingDouble(InjectorRisk::chance12));
    }

    /** What its records lack: a chance beside it is worth no more than they are. */
    private List<String> records() {
        RecordsState state = plan.records();
        List<String> lines = new ArrayList<>();
        plan.risksOf(truck.truck()).stream()
                .map(InjectorRisk::part)
                .distinct()
                .flatMap(part -> state.questionOf(part).stream())
                .forEach(question -> lines.add(plan.units().sentence(question.words() + " " + question.meanwhile())));
        lines.addAll(state.sentencesOf(truck.truck()));
        if (plan.fleet().accessOf(family.family()).isEmpty()) {
            lines.add("No access steps for " + family.family() + ": visits count no labour to reach the cylinders.");
        }
        return lines;
    }

    private interface Meter {
        @Nullable
        Double of(Reading reading);
    }

    private static String newest(List<Reading> readings, Meter meter, DoubleFunction<String> words) {
        for (int at = readings.size() - 1; at >= 0; at--) {
            Double value = meter.of(readings.get(at));
            if (value != null) {
                return words.apply(value);
            }
        }
        return "not known";
    }

    private String perWeek() {
        return plan.plan().injectors().stream()
                .filter(age -> age.truck().equals(truck.truck()))
                .findFirst()
                .map(age -> plan.units().distance(age.kmPerWeek()))
                .orElse("not known");
    }

    private String when(Visit visit) {
        return DepotDays.find(plan.plan().days(), visit)
                .map(laid -> DisplayFormat.dayAndTime(laid.start()) + ", bay " + laid.bay())
                .orElse("in " + visit.week());
    }

    private List<Pair> facts(Visit visit, Optional<TruckReason> reason, VisitBill bill) {
        List<Pair> facts = new ArrayList<>();
        facts.add(new Pair("Work", plan.work(visit)));
        facts.add(new Pair("When", visit.week() + ": " + when(visit)));
        String hours = bill.hours();
        facts.add(new Pair("Hours", DisplayFormat.tenth(visit.labourHours()) + (hours.isEmpty() ? "" : ": " + hours)));
        if (!visit.steps().isEmpty()) {
            facts.add(new Pair("Access", String.join(", ", visit.steps())));
        }
        facts.add(new Pair(
                "Coolant",
                visit.drainedLitres() == 0 ? "none drained" : plan.units().volume(visit.drainedLitres()) + " drained"));
        facts.add(new Pair("Bill", DisplayFormat.money(bill.sum())));
        reason.map(TruckReason::reason).ifPresent(figures -> {
            facts.add(new Pair("Compared with no visit", DisplayFormat.costs(-figures.saves())));
            if (figures.otherWeeks().isEmpty()) {
                move("A week earlier", figures.weekEarlier(), figures.earlierLimit(), facts);
                move("A week later", figures.weekLater(), figures.laterLimit(), facts);
            }
        });
        return facts;
    }

    private static void move(String label, @Nullable Double cost, @Nullable String limit, List<Pair> facts) {
        if (cost != null) {
            facts.add(new Pair(
                    label, DisplayFormat.costs(cost) + (limit == null ? "" : ", but is not possible: " + limit)));
        }
    }

    private static List<String> left(VisitReason reason) {
        return reason.left().stream()
                .map(each -> "Cylinder " + each.cylinder() + ": adding it " + DisplayFormat.costs(each.otherWayCosts())
                        + ".")
                .toList();
    }

    private String closedOut() {
        LocalDate on = plan.done().get(truck.truck());
        return on == null
                ? ""
                : "Closed out on " + DisplayFormat.shortDate(on)
                        + ", after this plan was made: codes and history are current; ages, chances, proposal and due"
                        + " items are from the plan. Replan on the Plan page to update them.";
    }

    /** What no visit answers, and why. */
    private String leftToLater(Unplanned unplanned) {
        String what = unplanned.dueItems().stream()
                .map(each -> item(each).what().replace(": ", ", "))
                .limit(MOST_NAMED)
                .collect(Collectors.joining("; "));
        int more = unplanned.dueItems().size() - MOST_NAMED;
        return DisplayFormat.sentence(what) + (more > 0 ? "; " + more + " more" : "") + ": " + unplanned.reason() + ".";
    }

    private Finding item(DueItem item) {
        String kind = plan.units()
                .sentence(item.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        String task = item.task();
        Integer cylinder = item.cylinder();
        return new Finding(
                (cylinder == null ? "truck" : "cylinder " + cylinder) + ": " + (task == null ? kind : task),
                item.evidence(),
                item.limit() + " (" + item.limitSource() + ")",
                DisplayFormat.shortDate(item.by()),
                item.by().isBefore(plan.today()));
    }
}
