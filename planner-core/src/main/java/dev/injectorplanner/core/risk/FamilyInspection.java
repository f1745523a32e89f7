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
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The cheapest distance between tests for an engine family, by the delay-time model, at the mean rate at which silent defects
 * arise in the injectors it has today.
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
        DefectRate silent = DefectRate.constant(defects.silentShare() * hazard(index, risk, family, model.clock()));
        double delay = defects.meanDelay(model.clock());
        double labour = index.depot(truck.depot()).labourPerHour().doubleValue();
        double inspect = inspectionHours * labour + STANDS_DAYS * downtime(index, truck);
        InspectionPolicy policy = new DelayTimeModel(Delay.exponential(delay), defects.sensitivity())
                .bestInterval(
                        silent,
                        new InspectionCosts(inspect, unit.planned(), unit.failure()),
                        model.life().scale());
        return new FamilyInspection(family.family(), model.clock(), policy, defects);
    }

    /** Failures that a truck of the family is heading for, a unit of the clock, mean over its trucks with known risk. */
    private static double hazard(FleetIndex index, FleetRisk risk, EngineFamily family, Clock clock) {
        double sum = 0;
        int injectors = 0;
        Set<String> trucks = index.fleet().trucks().stream()
                .filter(truck -> truck.family().equals(family.family()))
                .map(Truck::truck)
                .collect(Collectors.toSet());
        for (InjectorRisk one : risk.risks()) {
            if (one.clock() == clock && trucks.contains(one.truck())) {
                double hazard = risk.lifeOf(one).life().hazard(Math.max(1, one.age()));
                sum += hazard;
                injectors++;
            }
        }
        return injectors == 0 ? 0 : family.cylinders() * sum / injectors;
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
