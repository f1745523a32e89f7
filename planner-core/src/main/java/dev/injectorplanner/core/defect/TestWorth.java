package dev.injectorplanner.core.defect;

import dev.injectorplanner.core.fleet.TestKind;
import java.util.Set;

/**
 * What the result of a test is worth for one injector: the cost of the better of two decisions, replace or leave, before the
 * test, less the same after it, averaged over what the test may show. Never below zero, and zero where no result would change
 * the decision. Source: preposterior analysis, Raiffa and Schlaifer (1961), Applied Statistical Decision Theory, chapter 4.
 */
public final class TestWorth {
    private final StateSigns sound;
    private final StateSigns defective;
    private final Set<TestKind> kinds;
    private final double leaveSound;
    private final double leaveDefective;
    private final double replace;

    /**
     * @param kinds tests that are made at a time
     * @param leaveSound cost of leaving a sound injector, against replacing it in a typical visit
     * @param leaveDefective cost of leaving one with a defect
     * @param replace cost of replacing it in a visit of its own
     */
    public TestWorth(DefectModel model, Set<TestKind> kinds, double leaveSound, double leaveDefective, double replace) {
        this.sound = model.sound();
        this.defective = model.defective();
        this.kinds = Set.copyOf(kinds);
        this.leaveSound = leaveSound;
        this.leaveDefective = leaveDefective;
        this.replace = replace;
    }

    /** Worth of testing an injector that has a defect with this chance, 0..1. */
    public double at(double chance) {
        double after = 0;
        for (int balance = 0; balance <= StateSigns.BANDS.length; balance++) {
            double ofSound = shown(sound, TestKind.BALANCE, balance);
            double ofDefective = shown(defective, TestKind.BALANCE, balance);
            for (int flow = 0; flow <= StateSigns.BANDS.length; flow++) {
                after += least(
                        (1 - chance) * ofSound * shown(sound, TestKind.RETURN_FLOW, flow),
                        chance * ofDefective * shown(defective, TestKind.RETURN_FLOW, flow));
            }
        }
        return Math.max(0, least(1 - chance, chance) - after);
    }

    /** Chance of a band; of a test that is not made all of it lies in the first. */
    private double shown(StateSigns state, TestKind kind, int band) {
        return kinds.contains(kind) ? state.test(kind, band) : band == 0 ? 1 : 0;
    }

    private double least(double sounds, double defects) {
        return Math.min(sounds * leaveSound + defects * leaveDefective, (sounds + defects) * replace);
    }
}
