package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.condition.ConditionModel;
import dev.injectorplanner.core.history.LifeBook;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a whole fleet's records say of lives, signs and defects, to judge the injectors of a part of it by: one depot's own
 * failures are too few to learn from. The same records give the same lives wherever they are learned, so that nodes that
 * share a fleet's depots may each learn them, or one may and hand them on within its process.
 */
public final class FleetLives {
    final LifeBook lives;
    final ConditionModel conditions;
    final Map<String, DefectEstimate> defects;

    private FleetLives(LifeBook lives, ConditionModel conditions, Map<String, DefectEstimate> defects) {
        this.lives = lives;
        this.conditions = conditions;
        this.defects = Collections.unmodifiableMap(new TreeMap<>(defects));
    }

    /** Those that a fleet's risk was judged by. */
    static FleetLives of(FleetRisk risk) {
        Map<String, DefectEstimate> defects = new TreeMap<>();
        risk.defects().forEach(estimate -> defects.put(estimate.part(), estimate));
        return new FleetLives(risk.lives(), risk.conditions(), defects);
    }
}
