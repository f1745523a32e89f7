package dev.injectorplanner.core.replay.run;

import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.JobPart;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.replay.scenario.SiteTables;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What work truly takes and costs at one depot for one family: counted step by step, apart from the engine's own pricing.
 */
final class WorkCosts {
    /** What a truck that stands costs a day. */
    static final double DOWNTIME_PER_DAY = 420;

    /** Use of a bay a visit. */
    static final double BAY = 60;

    private static final double COOLANT_PER_LITRE = 3;
    private static final double HOURS_A_DAY = 8;
    private static final double SHORTEST_STAY_DAYS = 0.125;

    final EngineFamily engine;
    final double labourPerHour;
    final double overtimeExtra;
    final double roadFailure;
    private final List<AccessStep> steps;
    private final int[] served;
    private final List<JobPart> jobParts;
    private final Map<String, Double> prices = new HashMap<>();
    private final double injectorPrice;
    private final double downtimePerDay;
    private final int[] banks;

    WorkCosts(SiteTables site, Depot depot, EngineFamily engine, double downtimePerDay) {
        this.engine = engine;
        this.downtimePerDay = downtimePerDay;
        labourPerHour = depot.labourPerHour().doubleValue();
        overtimeExtra = depot.overtimePerHour().doubleValue() - labourPerHour;
        roadFailure = engine.roadFailureCost().doubleValue();
        steps = site.access().stream()
                .filter(step -> step.family().equals(engine.family()))
                .toList();
        served = steps.stream().mapToInt(step -> maskOf(engine, step)).toArray();
        jobParts = site.jobParts().stream()
                .filter(job -> job.family().equals(engine.family()))
                .toList();
        for (Part part : site.parts()) {
            prices.put(part.part(), part.price().doubleValue());
        }
        injectorPrice = prices.getOrDefault(engine.injectorPart(), 0.0);
        banks = engine.banks().stream()
                .mapToInt(bank ->
                        bank.cylinders().stream().mapToInt(c -> 1 << (c - 1)).sum())
                .toArray();
    }

    private static int maskOf(EngineFamily engine, AccessStep step) {
        return engine.allCylinders().stream()
                .filter(step::serves)
                .mapToInt(c -> 1 << (c - 1))
                .sum();
    }

    double hours(int mask) {
        double hours = Integer.bitCount(mask) * engine.cylinderHours();
        for (int i = 0; i < served.length; i++) {
            hours += (served[i] & mask) != 0 ? steps.get(i).hours() : 0;
        }
        return hours;
    }

    double litres(int mask) {
        double percent = 0;
        for (int i = 0; i < served.length; i++) {
            percent = (served[i] & mask) != 0 ? Math.max(percent, steps.get(i).drainsCoolantPercent()) : percent;
        }
        return engine.coolantLitres() * percent / 100;
    }

    double coolant(double litres) {
        return litres * COOLANT_PER_LITRE;
    }

    /** What injectors and what goes in with them cost. */
    double parts(int mask) {
        double sum = Integer.bitCount(mask) * injectorPrice;
        for (JobPart job : jobParts) {
            sum += pieces(job, mask) * prices.getOrDefault(job.part(), 0.0);
        }
        return sum;
    }

    /** Pieces by part that a set of cylinders needs, those of uncertain need by their chance; none for no cylinder. */
    Map<String, Double> pieces(int mask) {
        Map<String, Double> pieces = new TreeMap<>();
        if (mask != 0) {
            pieces.put(engine.injectorPart(), (double) Integer.bitCount(mask));
            jobParts.forEach(job -> pieces.merge(job.part(), pieces(job, mask), Double::sum));
        }
        return pieces;
    }

    private double pieces(JobPart job, int mask) {
        double times = switch (job.per()) {
            case CYLINDER -> Integer.bitCount(mask);
            case BANK -> banksTouched(mask);
            case VISIT -> 1;
            case STEP -> stepDone(job.step(), mask) ? 1 : 0;
            case TASK -> 0; // the replay does no scheduled services
        };
        return times * job.quantity() * job.chance();
    }

    private int banksTouched(int mask) {
        int touched = 0;
        for (int bank : banks) {
            touched += (bank & mask) != 0 ? 1 : 0;
        }
        return touched;
    }

    private boolean stepDone(@Nullable String step, int mask) {
        for (int i = 0; i < served.length; i++) {
            if ((served[i] & mask) != 0 && steps.get(i).step().equals(step)) {
                return true;
            }
        }
        return false;
    }

    double downtime(double hours) {
        return downtimePerDay * Math.max(SHORTEST_STAY_DAYS, hours / HOURS_A_DAY);
    }

    double downtimeDays(double days) {
        return downtimePerDay * days;
    }
}
