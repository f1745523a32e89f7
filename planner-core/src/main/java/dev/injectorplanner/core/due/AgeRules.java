package dev.injectorplanner.core.due;

import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.InjectorAge;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** Limits on months, km and engine hours since fitting. */
final class AgeRules {
    private AgeRules() {}

    static void apply(TruckCheck truck, InjectorAge age) {
        truck.rule(RuleKind.AGE_MONTHS).ifPresent(rule -> months(truck, age, rule));
        truck.rule(RuleKind.DISTANCE_KM)
                .ifPresent(rule -> meter(truck, age, rule, DueKind.DISTANCE_KM, age.km(), age.kmPerWeek(), "km"));
        truck.rule(RuleKind.ENGINE_HOURS)
                .ifPresent(rule ->
                        meter(truck, age, rule, DueKind.ENGINE_HOURS, age.hours(), age.hoursPerWeek(), "engine hours"));
    }

    private static void months(TruckCheck truck, InjectorAge age, DueRule rule) {
        LocalDate by = age.fittedOn().plusMonths(Math.round(rule.limit()));
        if (!truck.inHorizon(by)) {
            return;
        }
        truck.due(
                age.cylinder(),
                DueKind.AGE_MONTHS,
                null,
                DueAction.REPLACE,
                age.fittingKnown()
                        ? Figures.count(age.months(), "month", "months") + " " + age.sinceWords()
                        : "at least " + Figures.count(age.months(), "month", "months")
                                + ": fitted before the records began on " + age.fittedOn(),
                Figures.whole(rule.limit()) + " months since fitting",
                rule.source(),
                by);
    }

    private static void meter(
            TruckCheck truck,
            InjectorAge age,
            DueRule rule,
            DueKind kind,
            @Nullable Double now,
            double perWeek,
            String unit) {
        if (now == null) {
            return;
        }
        LocalDate by = truck.dayAt(rule.limit(), now, perWeek);
        if (by != null && truck.inHorizon(by)) {
            truck.due(
                    age.cylinder(),
                    kind,
                    null,
                    DueAction.REPLACE,
                    Figures.whole(now) + " " + unit + " " + age.sinceWords() + ", " + Figures.whole(perWeek) + " "
                            + unit + " a week",
                    Figures.whole(rule.limit()) + " " + unit + " since fitting",
                    rule.source(),
                    by);
        }
    }
}
