package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.condition.FleetSigns;
import dev.injectorplanner.core.condition.Sign;
import dev.injectorplanner.core.condition.SignEffect;
import dev.injectorplanner.core.defect.DefectBook;
import dev.injectorplanner.core.defect.FailurePath;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.history.LifeBook;
import dev.injectorplanner.core.history.LifeEnd;
import dev.injectorplanner.core.history.LifeHistory;
import dev.injectorplanner.core.history.UnitLife;
import dev.injectorplanner.core.life.PredictiveLife;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** What signs mean for the next twelve weeks, told of a typical injector: halfway through its life, with nothing shown before. */
final class SignEffects {
    private static final int WEEKS = 12;
    private static final double HALFWAY = 0.5;

    private SignEffects() {}

    static List<SignEffect> of(DefectBook book, LifeBook lives, LifeHistory history, FleetSigns signs) {
        Map.Entry<String, DefectBook.Entry> most = book.entries().entrySet().stream()
                .max(Comparator.comparingLong(entry -> entry.getValue().model().failures()))
                .orElse(null);
        List<SignEffect> effects = new ArrayList<>();
        if (most == null) {
            return effects;
        }
        DefectBook.Entry entry = most.getValue();
        PredictiveLife life = lives.predictive(lives.of(most.getKey(), Origin.NEW));
        double age = HALFWAY * lives.of(most.getKey(), Origin.NEW).life().scale();
        double usual = entry.model().usual(life, age);
        boolean told = entry.model().failures() >= DefectEstimate.ENOUGH;
        for (Sign sign : Sign.values()) {
            double odds = usual / (1 - usual) * entry.model().likelihoodRatio(sign);
            double ratio = failing(entry, life, age, odds / (1 + odds)) / failing(entry, life, age, usual);
            effects.add(new SignEffect(
                    sign, ratio, told ? SignEffect.FITTED : SignEffect.DEFAULT, failuresWith(sign, history, signs)));
        }
        return effects;
    }

    private static double failing(DefectBook.Entry entry, PredictiveLife life, double age, double defective) {
        FailurePath path = new FailurePath(entry.model(), life, age, defective, 0);
        for (int week = 0; week < WEEKS; week++) {
            path.goOn(entry.perWeek());
        }
        return path.failed();
    }

    private static long failuresWith(Sign sign, LifeHistory history, FleetSigns signs) {
        long with = 0;
        for (UnitLife unit : history.units()) {
            if (unit.end() == LifeEnd.FAILED) {
                LocalDate before = unit.exitOn().minusDays(1);
                with += signs.of(unit.truck())
                                .on(unit.cylinder(), unit.fittedOn(), before)
                                .contains(sign)
                        ? 1
                        : 0;
            }
        }
        return with;
    }
}
