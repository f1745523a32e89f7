package dev.injectorplanner.core.replay;

import dev.injectorplanner.core.replay.run.CostKind;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * What one policy came to, over all fleets.
 *
 * @param policy its name
 * @param settings its figures in words; empty where it has none
 * @param costPer1000Km cost per 1,000 km driven, in the site's currency
 * @param costKinds the same by kind; the kinds add up to it
 * @param difference cost per 1,000 km above that of the policy it is held against (in a replay the best fixed interval), mean over fleets
 * @param low lower end of its 95 % interval over fleets, paired
 * @param high upper end
 * @param roadFailures failures in service, a fleet
 * @param plannedVisits visits that replaced injectors before they failed, a fleet
 * @param tests tests of a truck, a fleet
 * @param testsAlone of these, those that the truck came in for
 * @param replaced injectors replaced, a fleet
 * @param caught of these, with a defect and not yet failed
 * @param hours labour hours, a fleet
 * @param coolantLitres coolant drained, a fleet, litres
 * @param thrownAwayKm km that an injector replaced before it failed would still have run, mean
 * @param thousandKm thousands of km driven, a fleet
 */
public record PolicyResult(
        String policy,
        String settings,
        double costPer1000Km,
        Map<CostKind, Double> costKinds,
        double difference,
        double low,
        double high,
        double roadFailures,
        double plannedVisits,
        double tests,
        double testsAlone,
        double replaced,
        double caught,
        double hours,
        double coolantLitres,
        double thrownAwayKm,
        double thousandKm) {
    public PolicyResult {
        costKinds = Collections.unmodifiableMap(new TreeMap<>(costKinds));
    }
}
