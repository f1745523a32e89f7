package dev.injectorplanner.reports.bay;

import dev.injectorplanner.core.coolant.CoolantNeed;
import dev.injectorplanner.core.coolant.CoolantNeeds;
import dev.injectorplanner.core.coolant.CoolantRules;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueRule;
import dev.injectorplanner.core.due.RuleBook;
import dev.injectorplanner.core.due.TestRules;
import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.parts.OrderRules;
import dev.injectorplanner.core.parts.PartNeeds;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.schedule.days.DayPlan;
import dev.injectorplanner.core.units.SiteForm.DateForm;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.reports.workbook.Words;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Makes the bay sheets of a plan's visits. */
public final class BaySheetMaker {
    private static final DateTimeFormatter START = DateTimeFormatter.ofPattern("EEE d MMM yyyy, HH:mm", Locale.ENGLISH);

    private final FleetIndex index;
    private final List<DepotDays> days;
    private final List<CoolantNeed> coolant;
    private final PartNeeds parts;
    private final SiteUnits units;

    /**
     * @param index index of the fleet that the plan was made for
     * @param units in which people of the site read
     */
    public BaySheetMaker(FleetIndex index, Plan plan, SiteUnits units) {
        this(index, plan.today(), plan.parts().rules(), units, plan.days(), plan.coolantNeeds());
    }

    /** For jobs alone, without a plan. */
    public BaySheetMaker(FleetIndex index, LocalDate today, OrderRules rules, SiteUnits units) {
        this(index, today, rules, units, List.of(), List.of());
    }

    private BaySheetMaker(
            FleetIndex index,
            LocalDate today,
            OrderRules rules,
            SiteUnits units,
            List<DepotDays> days,
            List<CoolantNeed> coolant) {
        this.units = units;
        this.index = index;
        this.days = days;
        this.coolant = coolant;
        this.parts = new PartNeeds(index, today, rules);
    }

    /** What is due in words, the strongest first and nothing left out. */
    public List<String> evidence(List<DueItem> dueItems) {
        return Evidence.of(dueItems, units);
    }

    /**
     * The sheet of a visit.
     *
     * @param bound injectors bound to its cylinders; cylinders without one get lines to write on
     */
    public BaySheet of(Visit visit, Map<Integer, CodedInjector> bound) {
        Optional<DayPlan.Laid> place = DepotDays.find(days, visit);
        List<CoolantNeed> needs = coolant.stream()
                .filter(need ->
                        need.truck().equals(visit.truck()) && need.week().equals(visit.week()))
                .toList();
        return sheet(
                visit,
                bound,
                place.map(laid -> laid.start().format(START)).orElse("week " + visit.week()),
                place.map(DayPlan.Laid::bay).orElse(null),
                Evidence.of(visit.dueItems(), units),
                needs);
    }

    /**
     * The sheet of a job that nobody planned.
     *
     * @param start when it was started, in words
     * @param seen what was seen, the strongest first
     * @param rules how the site handles coolant
     */
    public BaySheet ofJob(
            Visit visit, Map<Integer, CodedInjector> bound, String start, List<String> seen, CoolantRules rules) {
        return sheet(visit, bound, start, null, seen, CoolantNeeds.of(index, List.of(visit), rules));
    }

    private BaySheet sheet(
            Visit visit,
            Map<Integer, CodedInjector> bound,
            String start,
            @Nullable Integer bay,
            List<String> seen,
            List<CoolantNeed> needs) {
        boolean tested = visit.inspection();
        return new BaySheet(
                visit.truck(),
                visit.depot(),
                visit.family(),
                visit.week().toString(),
                start,
                bay,
                work(visit),
                hours(visit.labourHours()),
                drawing(visit),
                seen,
                visit.tasks(),
                steps(visit),
                cylinders(visit, bound),
                kit(visit),
                visit.drainedLitres() > 0 ? coolant(needs) : List.of(),
                tested ? readings(visit.family()) : List.of(),
                tested ? frontToRear(visit.family()) : List.of(),
                visit.diagnosis() ? diagnosis(visit) : List.of());
    }

    private static List<String> diagnosis(Visit visit) {
        return Diagnoses.of(visit.dueItems()).lines().stream()
                .map(DateForm.WORDS::sentence)
                .toList();
    }

    private List<Integer> frontToRear(String family) {
        return index.family(family).banks().stream()
                .flatMap(bank -> bank.cylinders().stream())
                .toList();
    }

    /** What an injector test of a family reads, with the limits in force. */
    public List<BaySheet.Reading> readings(String family) {
        RuleBook rules = new RuleBook(index.fleet());
        return List.of(
                reading(
                        TestKind.BALANCE,
                        "Balance",
                        TestRules.BALANCE_UNIT,
                        "within ±",
                        rules.find(family, RuleKind.BALANCE)),
                reading(
                        TestKind.RETURN_FLOW,
                        "Return flow",
                        TestRules.RETURN_FLOW_UNIT,
                        "at most ",
                        rules.find(family, RuleKind.RETURN_FLOW)),
                new BaySheet.Reading(TestKind.CONTRIBUTION, "Contribution", "%", "no limit set", null));
    }

    private static BaySheet.Reading reading(
            TestKind test, String name, String unit, String before, Optional<DueRule> rule) {
        return new BaySheet.Reading(
                test,
                name,
                unit,
                rule.map(each -> before + Words.quantity(each.limit()) + ", " + each.source())
                        .orElse("no limit set"),
                rule.map(DueRule::limit).orElse(null));
    }

    private static String work(Visit visit) {
        if (visit.cylinders().isEmpty()) {
            return Stream.concat(
                            visit.inspection() ? Stream.of("injector test") : Stream.empty(), visit.tasks().stream())
                    .collect(Collectors.joining(", "));
        }
        return (visit.cylinders().size() == 1 ? "cylinder " : "cylinders ") + Words.cylinders(visit.cylinders());
    }

    private @Nullable String drawing(Visit visit) {
        return visit.cylinders().isEmpty()
                ? null
                : EngineDrawing.of(index.family(visit.family()).banks(), visit.cylinders());
    }

    private List<BaySheet.Step> steps(Visit visit) {
        List<BaySheet.Step> steps = new ArrayList<>();
        for (AccessStep step : index.accessOf(visit.family())) {
            if (visit.steps().contains(step.step())) {
                List<Integer> served =
                        visit.cylinders().stream().filter(step::serves).toList();
                steps.add(new BaySheet.Step(
                        steps.size() + 1,
                        step.step(),
                        hours(step.hours()),
                        served.size() == visit.cylinders().size() ? "all" : Words.cylinders(served),
                        step.cautions()));
            }
        }
        return steps;
    }

    /** With a tenth at least, so that a column of hours lines up: {@code 1.0}. */
    private static String hours(double hours) {
        String words = Words.quantity(hours);
        return words.contains(".") ? words : words + ".0";
    }

    private List<BaySheet.CylinderWork> cylinders(Visit visit, Map<Integer, CodedInjector> bound) {
        EngineFamily family = index.family(visit.family());
        return family.banks().stream()
                .flatMap(bank -> bank.cylinders().stream()
                        .filter(visit.cylinders()::contains)
                        .map(cylinder -> new BaySheet.CylinderWork(
                                cylinder,
                                bank.name(),
                                fitted(visit.truck(), cylinder),
                                family.injectorPart(),
                                bound.get(cylinder))))
                .toList();
    }

    private String fitted(String truck, int cylinder) {
        Optional<FittedInjector> now = index.injectorsOf(truck).stream()
                .filter(injector -> injector.cylinder() == cylinder && injector.removedOn() == null)
                .findFirst();
        return now.map(injector -> injector.part() + (injector.serial() == null ? "" : ", serial " + injector.serial())
                        + ", fitted " + DateForm.WORDS.sentence(injector.fittedWords()))
                .orElse("no record of the fitted injector");
    }

    private List<BaySheet.Pick> kit(Visit visit) {
        List<BaySheet.Pick> kit = new ArrayList<>();
        parts.kitOf(visit).forEach((number, pieces) -> {
            double spare = pieces.pieces() - pieces.expected();
            kit.add(new BaySheet.Pick(
                    number,
                    index.findPart(number).map(Part::description).orElse("not in the table of parts"),
                    Words.quantity(pieces.pieces()),
                    spare > 0.005 ? "may break: about " + Words.quantity(pieces.expected()) + " used" : ""));
        });
        return kit;
    }

    private List<String> coolant(List<CoolantNeed> needs) {
        return needs.stream()
                .filter(need -> need.drainedLitres() > 0)
                .flatMap(need -> lines(need).stream())
                .toList();
    }

    private List<String> lines(CoolantNeed need) {
        List<String> lines = new ArrayList<>();
        lines.add("Drain " + litres(need.drainedLitres()) + " of " + litres(need.capacityLitres()) + " "
                + units.volumeUnit() + "; collect " + litres(need.wasteLitres()) + " " + units.volumeUnit()
                + " as waste.");
        if (need.mix() != null) {
            lines.add("Put back " + litres(need.putBackLitres()) + " " + units.volumeUnit() + ", pour "
                    + litres(need.concentrateLitres()) + " " + units.volumeUnit() + " concentrate and "
                    + litres(need.waterLitres()) + " " + units.volumeUnit() + " demineralised water: "
                    + Words.quantity(need.mix().afterPercent()) + " % glycol by volume.");
        }
        if (!need.remark().isEmpty()) {
            lines.add(DateForm.WORDS.sentence(units.sentence(need.remark())));
        }
        return lines;
    }

    private String litres(double litres) {
        return units.volume() == SiteUnits.Volume.LITRES ? Words.quantity(litres) : units.volumeFigure(litres);
    }
}
