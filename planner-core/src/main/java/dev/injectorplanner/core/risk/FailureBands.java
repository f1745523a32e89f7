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
            for (int weeks : WEEKS) {
                double[] counts = counts(injectors, weeks);
                bands.add(new FailureBand(
                        key.substring(0, cut),
                        key.substring(cut + 1),
                        weeks,
                        injectors.size(),
                        FailureCounts.mean(counts),
                        FailureCounts.quantile(counts, LOW),
                        FailureCounts.quantile(counts, HIGH)));
            }
        });
        return bands;
    }

    private double[] counts(List<InjectorRisk> injectors, int weeks) {
        double[] mixed = {};
        for (int i = 0; i < FACTORS.length; i++) {
            mixed = added(mixed, counts(injectors, weeks, FACTORS[i]), FACTOR_WEIGHTS[i]);
        }
        return mixed;
    }

    private static double[] added(double[] sum, double[] more, double weight) {
        double[] all = Arrays.copyOf(sum, Math.max(sum.length, more.length));
        for (int k = 0; k < more.length; k++) {
            all[k] += weight * more[k];
        }
        return all;
    }

    private double[] counts(List<InjectorRisk> injectors, int weeks, double factor) {
        Map<PartLife, FailureCounts> byLife = new LinkedHashMap<>();
        for (InjectorRisk injector : injectors) {
            PartLife model = risk.lifeOf(injector);
            PredictiveLife life = risk.lives().predictive(model);
            byLife.computeIfAbsent(model, key -> new FailureCounts(weights(life)))
                    .add(chances(injector, model, life, weeks, factor));
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

    private double[] chances(InjectorRisk injector, PartLife model, PredictiveLife life, int weeks, double factor) {
        double perWeek = model.clock().of(usage.of(injector.truck())).perWeek();
        FailurePath path = new FailurePath(
                risk.defectModelOf(injector.part()).model(), life, injector.age(), injector.defectChance(), 0);
        for (double gone = 0; gone < weeks; gone += STEP_WEEKS) {
            path.goOn(Math.min(STEP_WEEKS, weeks - gone) * perWeek);
        }
        double[] chances = new double[life.size()];
        for (int pair = 0; pair < chances.length; pair++) {
            chances[pair] = Math.min(1, factor * path.failed(pair));
        }
        return chances;
    }
}
