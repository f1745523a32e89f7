package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.access.AccessModel;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.history.LifeBook;
import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.replace.AgeReplacement;
import dev.injectorplanner.core.replace.AgeReplacementPolicy;
import dev.injectorplanner.core.replace.DeferralCost;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Costs of replacing injectors, the long-run cost rates that follow, and what waiting costs. The core deposit is paid and
 * comes back with the old unit, failed or not, so that it is no cost; a deposit that is lost is the deadline's matter, not
 * age's. The long-run rate is that of new units: an injector's condition never enters it.
 */
public final class ReplacementCosts {
    private static final double LEAST = 0.01;

    private final FleetIndex index;
    private final LifeBook lives;
    private final Map<String, Double> accessShareHours;
    private final Map<String, UnitCosts> costs = new LinkedHashMap<>();
    private final Map<String, AgeReplacementPolicy> policies = new LinkedHashMap<>();

    /** With the first run's share of access labour: the full set's divided by its cylinders. */
    public ReplacementCosts(FleetIndex index, LifeBook lives) {
        this(index, lives, Map.of());
    }

    /** @param accessShareHours hours of shared access labour that a cylinder bears, by family; the first run's share where missing */
    public ReplacementCosts(FleetIndex index, LifeBook lives, Map<String, Double> accessShareHours) {
        this.index = index;
        this.lives = lives;
        this.accessShareHours = Map.copyOf(accessShareHours);
    }

    /** Hours of shared access labour that a cylinder of a family bears. */
    public double accessShareHours(String family) {
        Double given = accessShareHours.get(family);
        if (given != null) {
            return given;
        }
        EngineFamily engine = index.family(family);
        List<Integer> all = engine.allCylinders();
        return new AccessModel(engine, index.accessOf(family)).accessHours(all) / all.size();
    }

    /** Costs of an injector part in a truck: at its depot's labour rate, with its family's own labour and share of access labour. */
    public UnitCosts costsOf(Truck truck, String part) {
        return costs.computeIfAbsent(key(truck, part), key -> {
            EngineFamily family = index.family(truck.family());
            double price = index.findPart(part)
                    .map(Part::price)
                    .map(Number::doubleValue)
                    .orElse(0.0);
            double labour = index.depot(truck.depot()).labourPerHour().doubleValue();
            double hours = family.cylinderHours() + accessShareHours(family.family());
            double planned = Math.max(LEAST, price + hours * labour);
            return new UnitCosts(planned, planned + family.roadFailureCost().doubleValue());
        });
    }

    private static String key(Truck truck, String part) {
        return truck.depot() + "\n" + truck.family() + "\n" + part;
    }

    /**
     * The best policy for new units of a part and origin in trucks like this one: age and cost rate are in the unit of the
     * part's clock.
     */
    public AgeReplacementPolicy policyOf(Truck truck, String part, Origin origin) {
        String key = key(truck, part) + "\n" + origin;
        AgeReplacementPolicy known = policies.get(key);
        if (known == null) {
            UnitCosts unit = costsOf(truck, part);
            known = AgeReplacement.best(lives.of(part, origin).life(), unit.planned(), unit.failure());
            policies.put(key, known);
        }
        return known;
    }

    /**
     * What waiting costs for a fitted injector, with its condition's multiplier on its own life, against the long-run rate
     * of a new unit of its part. Ages are in the unit of {@link InjectorRisk#clock}.
     */
    public DeferralCost deferralOf(Truck truck, InjectorRisk risk) {
        return deferralOf(truck, risk, Origin.NEW);
    }

    /** The same with a replacement of another origin. */
    public DeferralCost deferralOf(Truck truck, InjectorRisk risk, Origin replacement) {
        PartLife own = lives.of(risk.part(), risk.origin());
        UnitCosts unit = costsOf(truck, risk.part());
        double rate = policyOf(truck, risk.part(), replacement).costRate();
        return new DeferralCost(own.life(), risk.multiplier(), unit.planned(), unit.failure(), rate);
    }
}
