package dev.injectorplanner.imports.table;

import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.units.Units;
import org.jspecify.annotations.Nullable;

/** Rules as files name them: those of the engine, and distances in miles. */
enum RuleName {
    AGE_MONTHS,
    DISTANCE_KM,
    DISTANCE_MI,
    ENGINE_HOURS,
    FAULTS,
    BALANCE,
    RETURN_FLOW,
    RISK,
    WARRANTY,
    SAFETY;

    static Rule rule(@Nullable String family, RuleName name, double limit, @Nullable Integer windowDays) {
        return name == DISTANCE_MI
                ? new Rule(family, RuleKind.DISTANCE_KM, Units.milesToKm(limit), windowDays)
                : new Rule(family, RuleKind.valueOf(name.name()), limit, windowDays);
    }
}
