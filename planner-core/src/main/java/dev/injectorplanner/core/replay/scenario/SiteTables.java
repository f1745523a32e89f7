package dev.injectorplanner.core.replay.scenario;

import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.CapacityOverride;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.fleet.JobPart;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.Rule;
import java.util.List;

/**
 * The tables of a site that do not change while a replay runs.
 *
 * @param depots table depots
 * @param capacity table capacity
 * @param families table engine_families
 * @param access table access
 * @param parts table parts
 * @param jobParts table job_parts
 * @param intervals table intervals
 * @param rules table rules
 */
public record SiteTables(
        List<Depot> depots,
        List<CapacityOverride> capacity,
        List<EngineFamily> families,
        List<AccessStep> access,
        List<Part> parts,
        List<JobPart> jobParts,
        List<IntervalTask> intervals,
        List<Rule> rules) {
    public SiteTables {
        depots = List.copyOf(depots);
        capacity = List.copyOf(capacity);
        families = List.copyOf(families);
        access = List.copyOf(access);
        parts = List.copyOf(parts);
        jobParts = List.copyOf(jobParts);
        intervals = List.copyOf(intervals);
        rules = List.copyOf(rules);
    }

    /** Those of a fleet, without its interval tasks: a replay has injectors only. */
    public static SiteTables of(FleetSnapshot fleet) {
        return new SiteTables(
                fleet.depots(),
                fleet.capacity(),
                fleet.engineFamilies(),
                fleet.access(),
                fleet.parts(),
                fleet.jobParts(),
                List.of(),
                fleet.rules());
    }

    /** The family of a name. */
    public EngineFamily family(String name) {
        return families.stream()
                .filter(family -> family.family().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no family " + name + " in " + families));
    }
}
