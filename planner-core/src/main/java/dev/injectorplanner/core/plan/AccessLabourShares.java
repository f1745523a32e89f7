package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.visit.Visit;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;

/** What a cylinder bears of the shared access labour of its visit, as visits really paid it. */
public final class AccessLabourShares {
    private AccessLabourShares() {}

    /**
     * Hours of access labour a cylinder by family, the mean over the cylinders of all visits, for {@link Policy#withAccessShareHours}.
     * Families without a visit that replaces injectors are left out. Give it the visits of the last few plans, so that one
     * unusual plan does not swing the next.
     *
     * @param fleet has the access steps that the visits name; a step it no longer has counts nothing
     */
    public static Map<String, Double> of(FleetSnapshot fleet, Collection<Visit> visits) {
        Map<String, Double> hoursOfStep = new HashMap<>();
        for (AccessStep step : fleet.access()) {
            hoursOfStep.put(step.family() + "\n" + step.step(), step.hours());
        }
        Map<String, Double> hours = new TreeMap<>();
        Map<String, Integer> cylinders = new TreeMap<>();
        for (Visit visit : visits) {
            if (!visit.cylinders().isEmpty()) {
                double sharedCost = visit.steps().stream()
                        .mapToDouble(step -> hoursOfStep.getOrDefault(visit.family() + "\n" + step, 0.0))
                        .sum();
                hours.merge(visit.family(), sharedCost, Double::sum);
                cylinders.merge(visit.family(), visit.cylinders().size(), Integer::sum);
            }
        }
        hours.replaceAll((family, sum) -> sum / cylinders.getOrDefault(family, 1));
        return Collections.unmodifiableMap(hours);
    }
}
