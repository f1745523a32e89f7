package dev.injectorplanner.app.web.truck;

import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.option.Rates;
import dev.injectorplanner.core.parts.Kit;
import dev.injectorplanner.core.parts.PartNeeds;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.plan.TruckRates;
import dev.injectorplanner.core.schedule.days.ShiftBook;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.visit.Visit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** What a visit is expected to cost the site: parts, labour, coolant, standing. Core deposits come back and are told apart. */
final class VisitBill {
    private static final double HAIR = 1e-9;

    private final DepotPlan plan;
    private final Truck truck;
    private final Visit visit;
    private final Policy policy;
    private final List<Line> lines = new ArrayList<>();
    private double sum;
    private double deposits;

    VisitBill(DepotPlan plan, Truck truck, Visit visit, Policy policy) {
        this.plan = plan;
        this.truck = truck;
        this.visit = visit;
        this.policy = policy;
        parts();
        labour();
        rest();
    }

    /** An item with its quantity, the price of one and the sum. */
    public record Line(String item, String remark, String quantity, String each, String sum) {}

    List<Line> lines() {
        return List.copyOf(lines);
    }

    double sum() {
        return sum;
    }

    /** Deposits paid until the old units are back. */
    double deposits() {
        return deposits;
    }

    /** Hours by kind in words: {@code shared access 4.9, cylinders 4 × 0.9, services 0.5}. */
    String hours() {
        double access = accessHours();
        double own = ownHours();
        double others = visit.labourHours() - access - own;
        List<String> words = new ArrayList<>();
        if (access > HAIR) {
            words.add("shared access labour " + DisplayFormat.tenth(access));
        }
        if (own > HAIR) {
            words.add("cylinders " + visit.cylinders().size() + " × " + Figures.tenths(family().cylinderHours()));
        }
        if (others > HAIR) {
            words.add((words.isEmpty() ? "" : "other work ") + DisplayFormat.tenth(others));
        }
        return String.join(", ", words);
    }

    private EngineFamily family() {
        return plan.fleet().family(visit.family());
    }

    double accessHours() {
        return plan.fleet().accessOf(visit.family()).stream()
                .filter(step -> visit.steps().contains(step.step()))
                .mapToDouble(AccessStep::hours)
                .sum();
    }

    private double ownHours() {
        return visit.cylinders().size() * family().cylinderHours();
    }

    private void add(String item, String remark, double quantity, String unit, double each) {
        if (quantity > HAIR && each > 0) {
            sum += quantity * each;
            lines.add(new Line(
                    item,
                    remark,
                    Figures.tenths(quantity) + unit,
                    DisplayFormat.cents(BigDecimal.valueOf(each)),
                    DisplayFormat.cents(BigDecimal.valueOf(quantity * each))));
        }
    }

    private void parts() {
        new PartNeeds(plan.fleet(), plan.today(), policy.orders())
                .kitOf(visit)
                .forEach((number, kit) -> plan.fleet().findPart(number).ifPresent(part -> part(part, kit)));
    }

    private void part(Part part, Kit kit) {
        boolean byChance = kit.pieces() - kit.expected() > HAIR;
        deposits += kit.expected() * part.coreDeposit().doubleValue();
        add(
                part.description().isEmpty() ? part.part() : part.description() + ", " + part.part(),
                byChance
                        ? "breaks by chance: " + Figures.tenths(kit.pieces()) + " in the kit, these used on average"
                        : "",
                kit.expected(),
                "",
                part.price().doubleValue());
    }

    private void labour() {
        double rate = plan.site().labourPerHour().doubleValue();
        add("Labour, shared access", "", accessHours(), " h", rate);
        add("Labour, " + Figures.count(visit.cylinders().size(), "cylinder", "cylinders"), "", ownHours(), " h", rate);
        add(
                "Labour, " + (visit.inspection() ? "injector test" : "services")
                        + (visit.inspection() && !visit.tasks().isEmpty() ? " and services" : ""),
                "",
                visit.labourHours() - accessHours() - ownHours(),
                " h",
                rate);
    }

    private void rest() {
        Rates rates = rates();
        String unit = "\u00a0" + plan.units().volumeUnit();
        double litres = plan.units().ofLitres(1);
        add(
                "Coolant",
                "what is lost, and its handling",
                visit.drainedLitres() * litres,
                unit,
                rates.coolantPerLitre() / litres);
        add("Bay", "moving the truck in and out, paperwork", 1, "", rates.bayPerVisit());
        add(
                "Off the road",
                truck.dutyGroup() == null ? "" : "duty group " + truck.dutyGroup(),
                rates.truckDays(visit.labourHours()),
                " days",
                rates.downtimePerDay());
    }

    private Rates rates() {
        ShiftBook shifts = new ShiftBook(plan.fleet(), policy.bayHoursPerDay());
        return new TruckRates(plan.fleet(), policy, shifts).of(truck);
    }
}
