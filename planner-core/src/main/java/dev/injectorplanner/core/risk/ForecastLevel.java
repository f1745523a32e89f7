package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.defect.DefectBook;
import dev.injectorplanner.core.defect.DefectModel;
import dev.injectorplanner.core.defect.FailurePath;
import dev.injectorplanner.core.history.LifeBook;
import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.life.PredictiveLife;
import dev.injectorplanner.core.usage.FleetUsage;
import dev.injectorplanner.core.usage.InjectorAge;
import dev.injectorplanner.core.usage.MeterUsage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Brings defects to the level of lives: over all fitted injectors of a part the chances to fail within 12 weeks add up to
 * what their lives alone let expect. Signs say which injector fails, lives how many do; a delay that is not exponential would else
 * be paid for in the number (by replay: see Decisions).
 */
final class ForecastLevel {
    private static final double WEEKS = 12;
    private static final int STEPS = 3;
    private static final int MOST = 1_500;
    private static final int ROUNDS = 2;
    private static final double FURTHEST = 1.6;

    private final LifeBook lives;
    private final FleetUsage usage;
    private final DefectChances chances;

    ForecastLevel(LifeBook lives, FleetUsage usage, DefectChances chances) {
        this.lives = lives;
        this.usage = usage;
        this.chances = chances;
    }

    /** The book with the rate at which defects arise brought to the level, part by part. */
    DefectBook level(DefectBook book, List<InjectorAge> ages) {
        Map<String, List<InjectorAge>> byPart = new TreeMap<>();
        ages.forEach(age ->
                byPart.computeIfAbsent(age.part(), part -> new ArrayList<>()).add(age));
        DefectBook levelled = book;
        for (Map.Entry<String, List<InjectorAge>> part : byPart.entrySet()) {
            DefectModel model = book.of(part.getKey()).model();
            double factor = 1;
            for (int round = 0; round < ROUNDS; round++) {
                factor *= ratio(model.withArrivals(factor), part.getValue());
                factor = Math.max(1 / FURTHEST, Math.min(FURTHEST, factor));
            }
            levelled = levelled.with(part.getKey(), model.withArrivals(factor));
        }
        return levelled;
    }

    private double ratio(DefectModel model, List<InjectorAge> ages) {
        double byLife = 0;
        double byDefects = 0;
        int every = 1 + ages.size() / MOST;
        for (int i = 0; i < ages.size(); i += every) {
            InjectorAge age = ages.get(i);
            PartLife part = lives.of(age.part(), age.origin(), age.fittedOn());
            Double now = part.clock().of(age);
            MeterUsage meter = part.clock().of(usage.of(age.truck()));
            if (now != null && meter.known()) {
                PredictiveLife life = lives.predictive(part, age.truck());
                byLife += life.conditionalFailure(now, WEEKS * meter.perWeek(), 1);
                byDefects += fails(model, life, now, chances.of(age, now, meter, model, life), meter.perWeek());
            }
        }
        return byDefects > 0 && byLife > 0 ? byLife / byDefects : 1;
    }

    private static double fails(DefectModel model, PredictiveLife life, double age, double defective, double perWeek) {
        FailurePath path = new FailurePath(model, life, age, defective, 0);
        for (int step = 0; step < STEPS; step++) {
            path.goOn(WEEKS / STEPS * perWeek);
        }
        return path.failed();
    }
}
