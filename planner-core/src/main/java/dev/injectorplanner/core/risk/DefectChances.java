package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.condition.FleetSigns;
import dev.injectorplanner.core.defect.DefectModel;
import dev.injectorplanner.core.life.PredictiveLife;
import dev.injectorplanner.core.usage.InjectorAge;
import dev.injectorplanner.core.usage.MeterUsage;
import java.time.LocalDate;

/**
 * Chance that a fitted injector has a defect today, from what it showed since it went in.
 *
 * @param signs what the fleet's injectors showed
 * @param today the day it is asked for
 */
record DefectChances(FleetSigns signs, LocalDate today) {
    /** Weeks back that faults and tests count for the chance of a defect today. */
    private static final int WEEKS_BACK = 104;

    /**
     * The chance, 0..1.
     *
     * @param now its age today, in the unit of the meter
     * @param meter the meter of its truck that its part's clock goes by
     */
    double of(InjectorAge age, double now, MeterUsage meter, DefectModel model, PredictiveLife life) {
        LocalDate after = today.minusWeeks(WEEKS_BACK);
        LocalDate first = meter.track().firstDay();
        after = first != null && first.isAfter(after) ? first : after;
        after = age.fittedOn().isAfter(after) ? age.fittedOn() : after;
        long days = today.toEpochDay() - after.toEpochDay();
        if (days <= 0) {
            return now > 0 ? model.usual(life, now) : 0;
        }
        double weeks = days / 7.0;
        Double then = meter.meterOn(after);
        Double meterNow = meter.meterOn(today);
        double had = then == null || meterNow == null ? weeks * meter.perWeek() : meterNow - then;
        double begun = age.fittingKnown() && after.equals(age.fittedOn()) ? 0 : Math.max(0, now - had);
        int full = (int) Math.ceil(weeks - 1e-9);
        return model.chanceDefective(
                life,
                begun,
                Math.max(0, now - begun) / weeks,
                signs.of(age.truck()).track(age.cylinder(), after, today, full));
    }
}
