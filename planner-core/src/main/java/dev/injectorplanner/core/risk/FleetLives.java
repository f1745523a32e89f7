package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.condition.SignEffect;
import dev.injectorplanner.core.defect.DefectBook;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.history.FailureQuestion;
import dev.injectorplanner.core.history.LifeBook;
import java.util.List;
import java.util.Set;

/**
 * What a whole fleet's records say of lives and defects, to judge the injectors of a part of it by: one depot's own
 * failures are too few to learn from. The same records give the same lives wherever they are learned, so that nodes that
 * share a fleet's depots may each learn them, or one may and hand them on within its process.
 */
public final class FleetLives {
    final LifeBook lives;
    final DefectBook defects;
    final Set<TestKind> testKinds;
    final List<SignEffect> signEffects;
    final List<FailureQuestion> questions;

    /** Those that a fleet's risk was judged by. */
    FleetLives(
            LifeBook lives,
            DefectBook defects,
            Set<TestKind> testKinds,
            List<SignEffect> signEffects,
            List<FailureQuestion> questions) {
        this.lives = lives;
        this.defects = defects;
        this.testKinds = testKinds;
        this.signEffects = List.copyOf(signEffects);
        this.questions = List.copyOf(questions);
    }
}
