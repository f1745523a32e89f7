package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.history.Clock;
import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.inspection.DefectRate;
import dev.injectorplanner.core.inspection.Delay;
import dev.injectorplanner.core.inspection.DelayTimeModel;
import dev.injectorplanner.core.inspection.InspectionCosts;
import dev.injectorplanner.core.inspection.InspectionPolicy;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The cheapest distance between tests for an engine family, by the delay-time model, with new injectors replaced at their
 * best age.
 *
 * @param family the family
 * @param clock what the interval is counted in
 * @param policy interval and cost rates in the clock's unit, for one truck
 * @param defects what is known of its defects
 */
public record FamilyInspection(String family, Clock clock, InspectionPolicy policy, DefectEstimate defects) {
    /** A truck that is tested stands for at least an eighth of a day. */
    private static final double STANDS_DAYS = 0.125;

    /** One for each family with trucks, in order; costs are those at the depot of its first truck. */
    public static List<FamilyInspection> of(
            FleetIndex index, FleetRisk risk, ReplacementCosts costs, double inspectionHours) {
        List<FamilyInspection> rows = new ArrayList<>();
        for (EngineFamily family : index.fleet().engineFamilies()) {
            index.fleet().trucks().stream()
                    .filter(truck -> truck.family().equals(family.family()))
                    .findFirst()
                    .ifPresent(truck -> rows.add(one(index, risk, costs, family, truck, inspectionHours)));
        }
        return rows;
    }

    private static FamilyInspection one(
            FleetIndex index,
            FleetRisk risk,
            ReplacementCosts costs,
            EngineFamily family,
            Truck truck,
            double inspectionHours) {
        String part = family.injectorPart();
        PartLife model = risk.lives().of(part, Origin.NEW);
        DefectEstimate defects = risk.defectsOf(part);
        UnitCosts unit = costs.costsOf(truck, part);
        Double best = costs.policyOf(truck, part, Origin.NEW).age();
        DefectRate all =
                DefectRate.longRun(model.life(), family.cylinders(), best == null ? Double.POSITIVE_INFINITY : best);
        double delay = defects.meanDelay(model.clock());
        double labour = index.depot(truck.depot()).labourPerHour().doubleValue();
        double inspect = inspectionHours * labour + STANDS_DAYS * downtime(index, truck);
        InspectionPolicy policy = new DelayTimeModel(Delay.exponential(delay), defects.sensitivity())
                .bestInterval(
                        age -> defects.silentShare() * all.at(age),
                        new InspectionCosts(inspect, unit.planned(), unit.failure()),
                        model.life().scale());
        return new FamilyInspection(family.family(), model.clock(), policy, defects);
    }

    private static double downtime(FleetIndex index, Truck truck) {
        return index.fleet().dutyGroups().stream()
                .filter(group -> Objects.equals(group.dutyGroup(), truck.dutyGroup()))
                .map(DutyGroup::downtimePerDay)
                .mapToDouble(Number::doubleValue)
                .findFirst()
                .orElse(0);
    }
}
