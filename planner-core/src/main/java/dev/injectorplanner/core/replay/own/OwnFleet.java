package dev.injectorplanner.core.replay.own;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.history.Clock;
import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.replay.scenario.FamilyTruth;
import dev.injectorplanner.core.replay.scenario.LifeComponent;
import dev.injectorplanner.core.replay.scenario.Scenario;
import dev.injectorplanner.core.replay.scenario.ShopTruth;
import dev.injectorplanner.core.replay.scenario.SignTruth;
import dev.injectorplanner.core.replay.scenario.SiteTables;
import dev.injectorplanner.core.risk.DefectEstimate;
import dev.injectorplanner.core.risk.FamilyInspection;
import dev.injectorplanner.core.usage.InjectorAge;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * A scenario from a loaded fleet: lives as its plan learned them, usage as its meters tell, its own tables and rules. What
 * records cannot tell (false codes, late visits, wrong entries) is taken from the named scenarios.
 */
public final class OwnFleet {
    /** Name of the scenario. */
    public static final String NAME = "own fleet";

    private static final double PRACTICE_SHARE = 0.6;
    private static final double FAULTS_PER_DELAY = 2.5;
    private static final double KM_BETWEEN_FALSE_CODES = 90_000;
    private static final double BALANCE_LIMIT = 4;
    private static final double BALANCE_NOISE = 1.6;
    private static final double FLOW_NOISE = 12;
    private static final double FLOW_SHIFT = 52;
    private static final double MEAN_SHOWN = 0.7;
    private static final double MOST_SENSITIVITY = 0.98;
    private static final double YEAR = 365.25;

    private final FleetSnapshot fleet;
    private final Plan plan;

    private OwnFleet(FleetSnapshot fleet, Plan plan) {
        this.fleet = fleet;
        this.plan = plan;
    }

    /**
     * The scenario of a fleet, with as many trucks as it has in service.
     *
     * @param plan made of that fleet
     * @throws InvalidValueException where no truck has both a known usage and an injector part in the table of parts
     */
    public static Scenario scenario(FleetSnapshot fleet, Plan plan) {
        return new OwnFleet(fleet, plan).scenario();
    }

    private Scenario scenario() {
        List<FamilyTruth> families = new ArrayList<>();
        double faults = 0;
        double shift = 0;
        for (EngineFamily family : fleet.engineFamilies()) {
            Optional<FamilyTruth> truth = truth(family);
            if (truth.isPresent()) {
                families.add(truth.get());
                DefectEstimate defects = defectsOf(family);
                faults += truth.get().share() * defects.meanDelayKm() / FAULTS_PER_DELAY;
                shift += truth.get().share() * shift(defects.sensitivity());
            }
        }
        if (families.isEmpty()) {
            throw new InvalidValueException(
                    "fleet",
                    "",
                    "has no truck with known usage whose injector part is in the table of parts",
                    "load readings, injectors and parts first");
        }
        double trucks = families.stream().mapToDouble(FamilyTruth::share).sum();
        SignTruth signs = new SignTruth(
                faults / trucks,
                KM_BETWEEN_FALSE_CODES,
                0.1,
                BALANCE_NOISE,
                shift / trucks,
                FLOW_NOISE,
                FLOW_SHIFT,
                SignTruth.Codes.TOLD_APART);
        return new Scenario(
                NAME,
                "the loaded fleet's own tables, usage and learned lives, as of " + plan.today(),
                (int) trucks,
                SiteTables.of(fleet),
                families,
                signs,
                shop(trucks));
    }

    private DefectEstimate defectsOf(EngineFamily family) {
        return plan.inspections().stream()
                .filter(each -> each.family().equals(family.family()))
                .map(FamilyInspection::defects)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the plan knows no family " + family.family()));
    }

    /** How far a defect must shift the balance test for a single test to find it so often. */
    private static double shift(double sensitivity) {
        double beyond = new NormalDistribution().inverseCumulativeProbability(Math.min(MOST_SENSITIVITY, sensitivity));
        return Math.max(0, (BALANCE_LIMIT + BALANCE_NOISE * beyond) / MEAN_SHOWN);
    }

    private Optional<FamilyTruth> truth(EngineFamily family) {
        List<Truck> trucks = fleet.trucks().stream()
                .filter(truck -> truck.family().equals(family.family()) && truck.inServiceAt(plan.today()))
                .toList();
        List<InjectorAge> ages = plan.injectors().stream()
                .filter(age -> age.kmPerWeek() > 0
                        && trucks.stream().anyMatch(truck -> truck.truck().equals(age.truck())))
                .toList();
        boolean bought = fleet.parts().stream().anyMatch(part -> part.part().equals(family.injectorPart()));
        if (ages.isEmpty() || !bought) {
            return Optional.empty();
        }
        double perWeek =
                ages.stream().mapToDouble(InjectorAge::kmPerWeek).average().orElse(0);
        DefectEstimate defects = defectsOf(family);
        double scale = scaleKm(lifeOf(family, Origin.NEW), defects);
        double reman = scaleKm(lifeOf(family, Origin.REMAN), defects);
        LifeComponent life = new LifeComponent(
                1, lifeOf(family, Origin.NEW).life().shape(), scale, defects.meanDelayKm(), defects.silentShare());
        return Optional.of(new FamilyTruth(
                family.family(),
                trucks.size(),
                perWeek,
                defects.kmPerHour(),
                PRACTICE_SHARE * scale,
                List.of(life),
                remanShare(family),
                reman / scale));
    }

    private PartLife lifeOf(EngineFamily family, Origin origin) {
        return plan.lives().stream()
                .filter(life -> life.part().equals(family.injectorPart()) && life.origin() == origin)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the plan has no life of " + family.injectorPart()));
    }

    private static double scaleKm(PartLife life, DefectEstimate defects) {
        return life.clock() == Clock.DISTANCE
                ? life.life().scale()
                : life.life().scale() * defects.kmPerHour();
    }

    /** Share of reman units among those fitted within two years. */
    private double remanShare(EngineFamily family) {
        List<FittedInjector> fitted = fleet.injectors().stream()
                .filter(row -> row.part().equals(family.injectorPart()))
                .filter(row -> row.fittedOn().isAfter(plan.today().minusYears(2)))
                .toList();
        long reman = fitted.stream().filter(row -> row.origin() == Origin.REMAN).count();
        return fitted.isEmpty() ? 0 : (double) reman / fitted.size();
    }

    private ShopTruth shop(double trucks) {
        ShopTruth usual = ShopTruth.ordinary();
        double youngest = Double.POSITIVE_INFINITY;
        double oldest = 0;
        for (Truck truck : fleet.trucks()) {
            if (truck.inServiceAt(plan.today())) {
                double years = ChronoUnit.DAYS.between(truck.inServiceOn(), plan.today()) / YEAR;
                youngest = Math.min(youngest, years);
                oldest = Math.max(oldest, years);
            }
        }
        double hours =
                fleet.depots().stream().mapToDouble(OwnFleet::hoursPerWeek).sum();
        return new ShopTruth(
                Math.min(Math.min(youngest, oldest), 20),
                Math.min(20, Math.max(0.5, oldest)),
                usual.truckSpread(),
                usual.idlerShare(),
                usual.replacedMeterShare(),
                usual.wrongFoundShare(),
                usual.lateShare(),
                0,
                usual.testEveryKm(),
                hours / trucks,
                usual.shelfSets());
    }

    private static double hoursPerWeek(Depot depot) {
        return depot.labourHoursPerDay() * depot.workDays().size();
    }
}
