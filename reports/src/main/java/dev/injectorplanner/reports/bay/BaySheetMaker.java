package dev.injectorplanner.reports.bay;

import dev.injectorplanner.core.coolant.CoolantNeed;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.parts.PartNeeds;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.schedule.days.DayPlan;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.reports.workbook.Words;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Makes the bay sheets of a plan's visits. */
public final class BaySheetMaker {
    private static final DateTimeFormatter START = DateTimeFormatter.ofPattern("EEE d MMM yyyy, HH:mm", Locale.ENGLISH);

    private final FleetIndex index;
    private final Plan plan;
    private final PartNeeds parts;
    private final SiteUnits units;

    /**
     * @param index index of the fleet that the plan was made for
     * @param units in which people of the site read
     */
    public BaySheetMaker(FleetIndex index, Plan plan, SiteUnits units) {
        this.units = units;
        this.index = index;
        this.plan = plan;
        this.parts = new PartNeeds(index, plan.today(), plan.parts().rules());
    }

    /**
     * The sheet of a visit.
     *
     * @param bound injectors bound to its cylinders; cylinders without one get lines to write on
     */
    public BaySheet of(Visit visit, Map<Integer, CodedInjector> bound) {
        Optional<DayPlan.Laid> place = DepotDays.find(plan.days(), visit);
        return new BaySheet(
                visit.truck(),
                visit.depot(),
                visit.family(),
                visit.week().toString(),
                place.map(laid -> laid.start().format(START)).orElse("week " + visit.week()),
                place.map(DayPlan.Laid::bay).orElse(null),
                work(visit),
                Words.quantity(visit.labourHours()),
                drawing(visit),
                seen(visit),
                visit.tasks(),
                steps(visit),
                cylinders(visit, bound),
                kit(visit),
                coolant(visit));
    }

    private static String work(Visit visit) {
        if (visit.cylinders().isEmpty()) {
            return visit.inspection() ? "injector test" : String.join(", ", visit.tasks());
        }
        return (visit.cylinders().size() == 1 ? "cylinder " : "cylinders ") + Words.cylinders(visit.cylinders());
    }

    private @Nullable String drawing(Visit visit) {
        return visit.cylinders().isEmpty()
                ? null
                : EngineDrawing.of(index.family(visit.family()).banks(), visit.cylinders());
    }

    /** What is most pressing of each cylinder, or of the truck, and how much more there is. */
    private List<String> seen(Visit visit) {
        Map<String, List<DueItem>> bySubject = visit.dueItems().stream()
                .collect(Collectors.groupingBy(BaySheetMaker::subject, LinkedHashMap::new, Collectors.toList()));
        return bySubject.entrySet().stream()
                .map(each -> each.getKey() + ": " + seen(each.getValue().get(0)) + more(each.getValue()))
                .toList();
    }

    private static String subject(DueItem item) {
        String task = item.task();
        return item.cylinder() != null ? "Cylinder " + item.cylinder() : task != null ? task : "Truck";
    }

    private String seen(DueItem item) {
        return units.sentence(item.evidence())
                + (item.kind() == DueKind.COST
                        ? " (worth doing while it's open)"
                        : " (limit " + units.sentence(item.limit()) + ", " + item.limitSource() + ")");
    }

    private static String more(List<DueItem> dueItems) {
        return dueItems.size() == 1 ? "" : " and " + (dueItems.size() - 1) + " more";
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
                        Words.quantity(step.hours()),
                        served.size() == visit.cylinders().size() ? "all" : Words.cylinders(served),
                        step.cautions()));
            }
        }
        return steps;
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
                        + ", fitted " + injector.fittedWords())
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

    private List<String> coolant(Visit visit) {
        return plan.coolantNeeds().stream()
                .filter(need -> need.truck().equals(visit.truck())
                        && need.week().equals(visit.week())
                        && need.drainedLitres() > 0)
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
            lines.add(units.sentence(need.remark()));
        }
        return lines;
    }

    private String litres(double litres) {
        return units.volume() == SiteUnits.Volume.LITRES ? Words.quantity(litres) : units.volumeFigure(litres);
    }
}
