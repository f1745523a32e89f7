package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.defect.FailurePath;
import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.life.PredictiveLife;
import dev.injectorplanner.core.usage.FleetUsage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Bands of the failures to expect, by depot and part. */
public final class FailureBands {
    private static final int[] WEEKS = {4, 12, 26};
    private static final double STEP_WEEKS = 4;
    /**
     * What the records get wrong (failures noted as something else, trucks that wear faster than others) moves all chances of
     * a part together: spread of the logarithm, a planner default chosen by replay so that the bands hold what they promise.
     */
    private static final double RECORDS_SPREAD = 0.15;

    private static final double[] FACTORS = {
        Math.exp(-Math.sqrt(3) * RECORDS_SPREAD), 1, Math.exp(Math.sqrt(3) * RECORDS_SPREAD)
    };
    private static final double[] FACTOR_WEIGHTS = {1 / 6.0, 2 / 3.0, 1 / 6.0};
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;

    private final FleetRisk risk;
    private final FleetUsage usage;

    private FailureBands(FleetRisk risk, FleetUsage usage) {
        this.risk = risk;
        this.usage = usage;
    }

    /** One a depot, part and number of weeks: 4, 12 and 26. */
    public static List<FailureBand> of(FleetRisk risk, FleetUsage usage) {
        return new FailureBands(risk, usage).list();
    }

    private List<FailureBand> list() {
        Map<String, List<InjectorRisk>> groups = new TreeMap<>();
        for (InjectorRisk injector : risk.risks()) {
            groups.computeIfAbsent(injector.depot() + "\n" + injector.part(), key -> new ArrayList<>())
                    .add(injector);
        }
        List<FailureBand> bands = new ArrayList<>();
        groups.forEach((key, injectors) -> {
            int cut = key.indexOf('\n');
            List<Prospect> prospects = injectors.stream().map(this::prospect).toList();
            for (int i = 0; i < WEEKS.length; i++) {
                double[] counts = counts(prospects, i);
                bands.add(new FailureBand(
                        key.substring(0, cut),
                        key.substring(cut + 1),
                        WEEKS[i],
                        injectors.size(),
                        FailureCounts.mean(counts),
                        FailureCounts.quantile(counts, LOW),
                        FailureCounts.quantile(counts, HIGH)));
            }
        });
        return bands;
    }

    /** An injector's chances to fail within each number of weeks, by the pairs of its life. */
    private record Prospect(PartLife model, PredictiveLife life, double[][] chances) {}

    private Prospect prospect(InjectorRisk injector) {
        PartLife model = risk.lifeOf(injector);
        PredictiveLife life = risk.lives().predictive(model, injector.truck());
        double perWeek = model.clock().of(usage.of(injector.truck())).perWeek();
        FailurePath path = new FailurePath(
                risk.defectModelOf(injector.part()).model(), life, injector.age(), injector.defectChance(), 0);
        double[][] chances = new double[WEEKS.length][life.size()];
        double gone = 0;
        for (int i = 0; i < WEEKS.length; i++) {
            while (gone < WEEKS[i]) {
                double step = Math.min(STEP_WEEKS, WEEKS[i] - gone);
                path.goOn(step * perWeek);
                gone += step;
            }
            for (int pair = 0; pair < life.size(); pair++) {
                chances[i][pair] = path.failed(pair);
            }
        }
        return new Prospect(model, life, chances);
    }

    /** Chances of each number of failures, mixed over what the records may get wrong. */
    private static double[] counts(List<Prospect> prospects, int weeks) {
        double[] mixed = {};
        for (int i = 0; i < FACTORS.length; i++) {
            double[] here = counts(prospects, weeks, FACTORS[i]);
            mixed = Arrays.copyOf(mixed, Math.max(mixed.length, here.length));
            for (int k = 0; k < here.length; k++) {
                mixed[k] += FACTOR_WEIGHTS[i] * here[k];
            }
        }
        return mixed;
    }

    private static double[] counts(List<Prospect> prospects, int weeks, double factor) {
        Map<PartLife, FailureCounts> byLife = new LinkedHashMap<>();
        for (Prospect each : prospects) {
            double[] chances = each.chances()[weeks].clone();
            for (int pair = 0; pair < chances.length; pair++) {
                chances[pair] = Math.min(1, factor * chances[pair]);
            }
            byLife.computeIfAbsent(each.model(), key -> new FailureCounts(weights(each.life())))
                    .add(chances);
        }
        return byLife.values().stream().map(FailureCounts::mixed).reduce(new double[] {1}, FailureCounts::sum);
    }

    private static double[] weights(PredictiveLife life) {
        double[] weights = new double[life.size()];
        for (int pair = 0; pair < weights.length; pair++) {
            weights[pair] = life.weight(pair);
        }
        return weights;
    }
}
