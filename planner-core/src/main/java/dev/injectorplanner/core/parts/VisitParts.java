package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.JobPart;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;

/** What visits take of each part, by table job_parts. */
final class VisitParts {
    private final FleetIndex index;
    private final LocalDate today;

    VisitParts(FleetIndex index, LocalDate today) {
        this.index = index;
        this.today = today;
    }

    /** So many times a quantity with a chance goes to a part. */
    interface Taker {
        void take(String part, long times, double quantity, double chance);
    }

    void of(Visit visit, Taker taker) {
        EngineFamily family = index.family(visit.family());
        for (int cylinder : visit.cylinders()) {
            taker.take(injectorFor(visit.truck(), family, cylinder), 1, 1, 1);
        }
        for (JobPart job : index.jobPartsOf(family.family())) {
            long times = times(job, visit, family);
            if (times > 0 && job.chance() > 0) {
                taker.take(job.part(), times, job.quantity(), job.chance());
            }
        }
    }

    Map<String, StockDemand> of(Visit visit) {
        Map<String, StockDemand> demands = new TreeMap<>();
        of(
                visit,
                (part, times, quantity, chance) ->
                        demands.computeIfAbsent(part, key -> new StockDemand()).add(times, quantity, chance));
        return demands;
    }

    /** The family's part; the one now fitted where the family's is not among the parts and that one is. */
    String injectorFor(String truck, EngineFamily family, int cylinder) {
        if (index.findPart(family.injectorPart()).isPresent()) {
            return family.injectorPart();
        }
        return index.injectorsOf(truck).stream()
                .filter(injector -> injector.cylinder() == cylinder && injector.fittedAt(today))
                .map(FittedInjector::part)
                .filter(part -> index.findPart(part).isPresent())
                .findFirst()
                .orElse(family.injectorPart());
    }

    private static long times(JobPart job, Visit visit, EngineFamily family) {
        Collection<Integer> cylinders = visit.cylinders();
        return switch (job.per()) {
            case CYLINDER -> cylinders.size();
            case BANK -> cylinders.stream().map(family::bankOf).distinct().count();
            case VISIT -> cylinders.isEmpty() ? 0 : 1;
            case STEP -> visit.steps().contains(String.valueOf(job.step())) ? 1 : 0;
            case TASK -> visit.tasks().contains(String.valueOf(job.task())) ? 1 : 0;
        };
    }
}
