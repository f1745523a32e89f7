package dev.injectorplanner.app.web.life;

import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.replace.AgeReplacement;
import dev.injectorplanner.core.units.Figures;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The age at which replacing a new unit is cheapest by age alone (Barlow and Hunter 1960), as if nothing was tested: the whole
 * set at once, so that a cylinder bears its share of the access, against one that fails on the road and is done alone.
 *
 * @param age in the unit of the part's clock; null where no age is cheaper than running to failure
 * @param planned cost of a planned replacement of one cylinder
 * @param failure cost of one that failed on the road
 */
record BestAge(@Nullable Double age, String family, double planned, double failure) {
    /** By the first depot shown whose trucks carry the part; nothing for reman units, and where it has no price or no family. */
    static @Nullable BestAge of(List<DepotPlan> plans, PartLife life) {
        if (life.origin() != Origin.NEW) {
            return null; // the price at hand is that of a new unit
        }
        for (DepotPlan plan : plans) {
            Optional<EngineFamily> family = plan.fleet().fleet().engineFamilies().stream()
                    .filter(each -> each.injectorPart().equals(life.part()))
                    .findFirst();
            Optional<Part> part = plan.fleet().findPart(life.part());
            if (family.isPresent() && part.isPresent()) {
                return of(plan, family.get(), part.get(), life);
            }
        }
        return null;
    }

    private static @Nullable BestAge of(DepotPlan plan, EngineFamily family, Part part, PartLife life) {
        double rate = plan.site().labourPerHour().doubleValue();
        double own = part.price().doubleValue() + family.cylinderHours() * rate;
        double access = rate
                * plan.fleet().accessOf(family.family()).stream()
                        .mapToDouble(AccessStep::hours)
                        .sum();
        double planned = own + access / family.cylinders();
        double failure = own + access + family.roadFailureCost().doubleValue();
        return planned > 0
                ? new BestAge(
                        AgeReplacement.best(life.life(), planned, failure).age(), family.family(), planned, failure)
                : null;
    }

    /** In a sentence. */
    String words(String unit) {
        String costs = "Counting the injector, labour and the road failure alone, with "
                + Figures.whole(Math.rint(planned)) + " for a cylinder done in a set of " + family + ", and "
                + Figures.whole(Math.rint(failure)) + " for one that fails on the road, ";
        return costs
                + (age == null
                        ? "replacing by age alone never pays."
                        : "replacing by age alone is cheapest at " + Figures.whole(age) + " " + unit
                                + "; the plan also weighs other parts, coolant, time off the road, tests and signs.");
    }
}
