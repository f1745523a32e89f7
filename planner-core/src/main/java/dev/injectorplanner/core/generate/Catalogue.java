package dev.injectorplanner.core.generate;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.CapacityOverride;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.fleet.JobPart;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.Rule;
import java.util.List;

/**
 * What a made-up fleet is made of: its site tables, how its engines are used, and how its injectors truly wear.
 *
 * @param depots table depots; trucks are spread over them by bays
 * @param capacity table capacity
 * @param families table engine_families
 * @param access table access
 * @param parts table parts
 * @param jobParts table job_parts
 * @param intervals table intervals
 * @param rules table rules
 * @param uses how each family is used
 * @param lives true life of each injector part and origin
 */
public record Catalogue(
        List<Depot> depots,
        List<CapacityOverride> capacity,
        List<EngineFamily> families,
        List<AccessStep> access,
        List<Part> parts,
        List<JobPart> jobParts,
        List<IntervalTask> intervals,
        List<Rule> rules,
        List<EngineUse> uses,
        List<TrueLife> lives) {
    public Catalogue {
        depots = List.copyOf(depots);
        capacity = List.copyOf(capacity);
        families = List.copyOf(families);
        access = List.copyOf(access);
        parts = List.copyOf(parts);
        jobParts = List.copyOf(jobParts);
        intervals = List.copyOf(intervals);
        rules = List.copyOf(rules);
        uses = List.copyOf(uses);
        lives = List.copyOf(lives);
    }

    EngineFamily family(String name) {
        return families.stream()
                .filter(family -> family.family().equals(name))
                .findFirst()
                .orElseThrow(() -> new InvalidValueException("family", name, "is not in the catalogue", "add it"));
    }

    Part part(String number) {
        return parts.stream()
                .filter(part -> part.part().equals(number))
                .findFirst()
                .orElseThrow(() -> new InvalidValueException("part", number, "is not in the catalogue", "add it"));
    }

    /** @throws InvalidValueException where no life is given for the part and origin */
    public TrueLife life(String part, Origin origin) {
        return lives.stream()
                .filter(life -> life.part().equals(part) && life.origin() == origin)
                .findFirst()
                .orElseThrow(() -> new InvalidValueException(
                        "part", part + " " + origin, "has no true life in the catalogue", "add its shape and scale"));
    }
}
