package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.option.CylinderPrice;
import dev.injectorplanner.core.option.UnplannedVisit;
import dev.injectorplanner.core.parts.PartNeeds;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What to do along while a truck is open: after a failure, or for another repair that opened the same access. */
public final class Advisor {
    private Advisor() {}

    /**
     * Advice for a truck in the bay.
     *
     * @param truck the truck
     * @param options the sets worth looking at, the best first
     * @param best cylinders of the best
     * @param why the answer in words
     */
    public record Advice(String truck, List<Option> options, List<Integer> best, String why) {
        public Advice {
            options = List.copyOf(options);
            best = List.copyOf(best);
        }
    }

    /**
     * One set.
     *
     * @param name what a person calls it
     * @param cylinders all that are done, ascending
     * @param cost cost against doing only what must be done, in the site's currency; below zero it saves
     * @param hours labour of the whole visit
     * @param coolantLitres coolant that comes out
     * @param parts pieces to pick, by part number
     * @param sharedCost cost of what must be opened in addition
     * @param downtime cost of standing longer
     * @param gains cost of doing the others now against leaving them
     * @param chanceLeft chance that one of the cylinders left fails within 12 weeks, 0 to 1
     */
    public record Option(
            String name,
            List<Integer> cylinders,
            double cost,
            double hours,
            double coolantLitres,
            Map<String, Double> parts,
            double sharedCost,
            double downtime,
            double gains,
            double chanceLeft) {
        public Option {
            cylinders = List.copyOf(cylinders);
            parts = Collections.unmodifiableMap(new TreeMap<>(parts));
        }
    }

    /**
     * Advises.
     *
     * @param truck name of the truck
     * @param failed cylinders that must be done; may be empty where {@code opened} names steps
     * @param opened access steps that another repair has opened
     * @throws InvalidValueException where truck, cylinder or step is not known
     */
    public static Advice advise(
            FleetSnapshot fleet,
            Policy policy,
            LocalDate today,
            String truck,
            Collection<Integer> failed,
            Collection<String> opened) {
        Truck found = fleet.trucks().stream()
                .filter(each -> each.truck().equals(truck))
                .findFirst()
                .orElseThrow(() -> new InvalidValueException("truck", truck, "is not known", "check its name"));
        Learned learned = Learned.of(fleet, policy, today);
        EngineFamily family = learned.index().family(found.family());
        List<AccessStep> steps = learned.index().accessOf(family.family());
        check(family, steps, failed, opened);
        TruckPricing pricing = learned.pricing();
        List<DueItem> dueItems = learned.dueItems().stream()
                .filter(item -> item.truck().equals(truck))
                .toList();
        List<CylinderPrice> prices = pricing.pricesOf(found, dueItems).stream()
                .filter(price -> !failed.contains(price.cylinder()))
                .toList();
        if (prices.isEmpty()) {
            throw new InvalidValueException(
                    "truck",
                    truck,
                    "has no other injector whose age is known",
                    "load its injectors and readings first");
        }
        UnplannedVisit visit = new UnplannedVisit(family, steps, pricing.ratesOf(found), prices);
        List<Option> options = new ArrayList<>();
        for (UnplannedVisit.Choice choice : visit.choices(failed, opened)) {
            options.add(option(learned, found, visit, choice));
        }
        return new Advice(truck, options, options.get(0).cylinders(), why(options));
    }

    private static void check(
            EngineFamily family, List<AccessStep> steps, Collection<Integer> failed, Collection<String> opened) {
        for (int cylinder : failed) {
            if (!family.allCylinders().contains(cylinder)) {
                throw new InvalidValueException(
                        "cylinder",
                        cylinder,
                        "family " + family.family() + " has cylinders 1 to " + family.cylinders(),
                        "name one of them");
            }
        }
        for (String step : opened) {
            if (steps.stream().noneMatch(each -> each.step().equals(step))) {
                throw new InvalidValueException(
                        "step",
                        step,
                        "is not an access step of family " + family.family(),
                        "choose from " + steps.stream().map(AccessStep::step).collect(Collectors.joining(", ")));
            }
        }
    }

    private static Option option(Learned learned, Truck truck, UnplannedVisit visit, UnplannedVisit.Choice choice) {
        double alive = 1;
        for (InjectorRisk risk : learned.risk().risks()) {
            if (risk.truck().equals(truck.truck()) && !choice.cylinders().contains(risk.cylinder())) {
                alive *= 1 - risk.chance12();
            }
        }
        double hours = visit.labourHours(choice.cylinders());
        double litres = visit.drainedLitres(choice.cylinders());
        return new Option(
                choice.name(),
                choice.cylinders(),
                Figures.tidy(choice.cost()),
                Figures.tidy(hours),
                Figures.tidy(litres),
                parts(learned, truck, choice, hours, litres),
                Figures.tidy(choice.sharedCost()),
                Figures.tidy(choice.downtime()),
                Figures.tidy(choice.gains()),
                1 - alive);
    }

    private static Map<String, Double> parts(
            Learned learned, Truck truck, UnplannedVisit.Choice choice, double hours, double litres) {
        List<String> steps = learned.index().accessOf(truck.family()).stream()
                .filter(step -> choice.cylinders().stream().anyMatch(step::serves))
                .map(AccessStep::step)
                .toList();
        Visit visit = new Visit(
                truck.truck(),
                truck.depot(),
                truck.family(),
                IsoWeek.of(learned.today()),
                choice.cylinders(),
                steps,
                List.of(),
                false,
                hours,
                litres,
                List.of(),
                "");
        Map<String, Double> pieces = new TreeMap<>();
        new PartNeeds(learned.index(), learned.today(), learned.policy().orders())
                .kitOf(visit)
                .forEach((part, kit) -> pieces.put(part, kit.pieces()));
        return pieces;
    }

    private static String why(List<Option> options) {
        Option best = options.get(0);
        if (best.cost() >= 0) {
            return "Do only what must be done: every other set costs more now than later.";
        }
        return "Doing cylinders "
                + best.cylinders().stream().map(String::valueOf).collect(Collectors.joining(" "))
                + " while it is open saves " + Figures.whole(-best.cost())
                + " compared with doing only what must be done: the extra access costs "
                + Figures.whole(best.sharedCost())
                + ", the longer downtime " + Figures.whole(best.downtime())
                + ", and doing them later would cost "
                + Figures.whole(-best.gains()) + ".";
    }
}
