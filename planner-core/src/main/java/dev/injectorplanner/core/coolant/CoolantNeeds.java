package dev.injectorplanner.core.coolant;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.visit.Visit;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Coolant of planned visits. A target that the visit's drain cannot reach is refused with the drain that would do it,
 * and the strength there is is kept; where that is not allowed either, nothing is mixed.
 */
public final class CoolantNeeds {
    private static final double ROUNDING = 1e-6;

    private CoolantNeeds() {}

    /** Needs of the visits that drain, in their order. */
    public static List<CoolantNeed> of(FleetIndex index, List<Visit> visits, CoolantRules rules) {
        return visits.stream()
                .filter(visit -> visit.drainedLitres() > 0)
                .map(visit -> need(index.family(visit.family()), visit, rules))
                .toList();
    }

    private static CoolantNeed need(EngineFamily family, Visit visit, CoolantRules rules) {
        double now = family.glycolPercent();
        double target = target(family, visit, rules);
        CoolantMix mix = null;
        String remark = "";
        try {
            mix = mix(family, visit, rules, target);
        } catch (InvalidValueException refused) {
            remark = String.valueOf(refused.getMessage());
            mix = kept(family, visit, rules, target);
            remark += mix == null ? " No mix is calculated." : " Until then the current strength is kept.";
        }
        return new CoolantNeed(
                visit.depot(),
                visit.week(),
                visit.truck(),
                family.coolantLitres(),
                visit.drainedLitres(),
                now,
                target,
                mix,
                remark);
    }

    /** To four decimals upwards, so that it still protects and is still within reach. */
    private static double target(EngineFamily family, Visit visit, CoolantRules rules) {
        Double protectToC = rules.protectToC();
        if (protectToC == null) {
            return family.glycolPercent();
        }
        double target = mixer(family, visit, rules).targetToProtect(protectToC, !rules.renew());
        return Math.ceil(target * 10_000 - ROUNDING) / 10_000;
    }

    private static CoolantMixer mixer(EngineFamily family, Visit visit, CoolantRules rules) {
        return new CoolantMixer(
                family.coolantLitres(), visit.drainedLitres(), family.glycolPercent(), rules.anyStrength());
    }

    private static @Nullable CoolantMix kept(EngineFamily family, Visit visit, CoolantRules rules, double target) {
        if (target == family.glycolPercent()) {
            return null;
        }
        try {
            return mix(family, visit, rules, family.glycolPercent());
        } catch (InvalidValueException refusedToo) {
            return null;
        }
    }

    private static CoolantMix mix(EngineFamily family, Visit visit, CoolantRules rules, double target) {
        CoolantMixer mixer = mixer(family, visit, rules);
        CoolantMix mix = rules.renew() ? mixer.renew(target) : mixer.reuse(target, rules.lostShare());
        return tidied(mix, target);
    }

    /** To four decimals, each figure worked out from those before it, as a person with the sheet would. */
    private static CoolantMix tidied(CoolantMix mix, double target) {
        double capacity = mix.capacityLitres();
        double now = mix.nowPercent();
        double exchanged = Figures.tidy(mix.wasteLitres());
        double wanted = Figures.tidy((capacity * target - (capacity - exchanged) * now) / 100);
        double concentrate = Math.min(exchanged, Math.max(0, wanted));
        double after = Figures.tidy(((capacity - exchanged) * now + 100 * concentrate) / capacity);
        OptionalDouble freezing = GlycolWater.findFreezingPointC(after);
        return new CoolantMix(
                capacity,
                mix.drainedLitres(),
                now,
                concentrate,
                Figures.tidy(exchanged - concentrate),
                Figures.tidy(mix.drainedLitres() - exchanged),
                exchanged,
                Figures.tidy(exchanged * GlycolWater.kgPerLitre(now)),
                after,
                freezing.isPresent() ? Double.valueOf(Figures.tidy(freezing.getAsDouble())) : null);
    }
}
