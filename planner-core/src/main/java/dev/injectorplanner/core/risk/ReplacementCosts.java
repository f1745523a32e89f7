package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.defect.CostOfDeferring;
import dev.injectorplanner.core.defect.DefectBook;
import dev.injectorplanner.core.defect.FailurePath;
import dev.injectorplanner.core.defect.WatchedReplacement;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.life.PredictiveLife;
import dev.injectorplanner.core.replace.AgeReplacementPolicy;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Costs of replacing injectors, the long-run cost rates that follow, and what waiting costs. The core deposit is paid and
 * comes back with the old unit, failed or not, so that it is no cost; a deposit that is lost is the deadline's matter, not
 * age's. The long-run rate is that of new units: an injector's condition never enters it.
 */
public final class ReplacementCosts {
    private static final double LEAST = 0.01;

    private final FleetIndex index;
    private final FleetRisk risk;
    private final VisitCosts visits;
    private final double renewalMargin;
    private final Map<String, UnitCosts> costs = new ConcurrentHashMap<>();
    private final Map<String, AgeReplacementPolicy> policies = new ConcurrentHashMap<>();

    /**
     * @param visits what visits cost beyond parts and own labour
     * @param renewalMargin keeping an injector is held against this multiple of the long-run rate
     */
    public ReplacementCosts(FleetIndex index, FleetRisk risk, VisitCosts visits, double renewalMargin) {
        this.index = index;
        this.risk = risk;
        this.visits = visits;
        this.renewalMargin = renewalMargin;
    }

    /**
     * Costs of an injector part in a truck: at its depot's labour rate, with its family's own labour and share of a visit.
     *
     * @throws InvalidValueException where the parts table lacks the part, since nothing can be priced without its price
     */
    public UnitCosts costsOf(Truck truck, String part) {
        return costs.computeIfAbsent(key(truck, part), key -> {
            EngineFamily family = index.family(truck.family());
            double price = priceOf(truck, part);
            double own = price
                    + family.cylinderHours()
                            * index.depot(truck.depot()).labourPerHour().doubleValue();
            double share = visits.share(truck);
            double planned = Math.max(LEAST, own + share);
            double alone = Math.max(planned, own + visits.alone(truck));
            return new UnitCosts(
                    planned,
                    Math.min(share, planned),
                    alone,
                    alone + family.roadFailureCost().doubleValue());
        });
    }

    /**
     * Price of an injector part.
     *
     * @throws InvalidValueException where the parts table lacks it
     */
    public double priceOf(Truck truck, String part) {
        return index.findPart(part)
                .map(Part::price)
                .map(Number::doubleValue)
                .orElseThrow(() -> new InvalidValueException(
                        "injector_part",
                        part,
                        "of family " + truck.family() + " is not in the parts table, so it has no price",
                        "load it with the parts, or correct the family's injector part"));
    }

    private static String key(Truck truck, String part) {
        return truck.depot() + "\n" + truck.family() + "\n" + truck.dutyGroup() + "\n" + part;
    }

    /**
     * The best policy for new units of a part and origin in trucks like this one, whose signs are watched: age and cost rate
     * are in the unit of the part's clock.
     */
    public AgeReplacementPolicy policyOf(Truck truck, String part, Origin origin) {
        String key = key(truck, part) + "\n" + origin + "\n"
                + risk.lives().wearOf(part).of(truck.truck());
        AgeReplacementPolicy known = policies.get(key);
        if (known == null) {
            UnitCosts unit = costsOf(truck, part);
            DefectBook.Entry defects = risk.defectModelOf(part);
            known = WatchedReplacement.best(
                    defects.model(),
                    risk.lives().predictive(risk.lives().of(part, origin), truck.truck()),
                    unit.planned(),
                    unit.alone(),
                    unit.failure(),
                    defects.showsPerUse());
            policies.put(key, known);
        }
        return known;
    }

    /** What waiting is held against for an injector of a truck, replaced by a new one. */
    CostOfDeferring.Terms termsOf(Truck truck, InjectorRisk injector, double perWeek, double leavesInWeeks) {
        UnitCosts unit = costsOf(truck, injector.part());
        PredictiveLife renewed =
                risk.lives().predictive(risk.lives().of(injector.part(), Origin.NEW), injector.truck());
        return new CostOfDeferring.Terms(
                unit.planned(),
                unit.alone(),
                unit.failure(),
                renewalMargin * policyOf(truck, injector.part(), Origin.NEW).costRate(),
                renewed::hazard,
                perWeek,
                leavesInWeeks);
    }

    /** An injector from today on, its signs watched. */
    FailurePath pathOf(InjectorRisk injector, double defectChance) {
        DefectBook.Entry defects = risk.defectModelOf(injector.part());
        PredictiveLife life = risk.lives().predictive(risk.lifeOf(injector), injector.truck());
        return new FailurePath(defects.model(), life, injector.age(), defectChance, defects.showsPerUse());
    }
}
