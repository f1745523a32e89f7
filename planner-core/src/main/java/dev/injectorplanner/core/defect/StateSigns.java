package dev.injectorplanner.core.defect;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.condition.SignTrack;
import dev.injectorplanner.core.fleet.TestKind;

/**
 * What an injector in one state, sound or with a defect, is likely to show.
 *
 * @param faultDays chance of a week with 0, 1, or 2 and more days with faults of the cylinder, those of its circuit apart; adds up to 1
 * @param circuit chance of a week in which a spell of circuit faults begins
 * @param rail chance of a week with a fuel pressure, leak or water fault of the engine
 * @param balance chance of a balance test in each band of {@link #BANDS}; adds up to 1
 * @param returnFlow the same for return flow
 * @param worn chance that it is called worn when it is taken out
 */
record StateSigns(double[] faultDays, double circuit, double rail, double[] balance, double[] returnFlow, double worn) {
    /** Upper ends of the bands of a test's value over its limit; the last band is open. */
    static final double[] BANDS = {0.5, 0.75, 1, 1.5};

    StateSigns {
        Require.within("chance of a circuit fault", circuit, 0, 1);
        Require.within("chance of a rail fault", rail, 0, 1);
        Require.within("chance of being called worn", worn, 0, 1);
        faultDays = faultDays.clone();
        balance = balance.clone();
        returnFlow = returnFlow.clone();
    }

    /** The band of a test's value over its limit. */
    static int band(double ratio) {
        int band = 0;
        while (band < BANDS.length && ratio > BANDS[band]) {
            band++;
        }
        return band;
    }

    double test(TestKind kind, int band) {
        return kind == TestKind.BALANCE ? balance[band] : returnFlow[band];
    }

    /** Chance of what a track shows in a week but for its tests. */
    double week(SignTrack track, int week) {
        return faultDays[track.faultDays(week)]
                * (track.circuit(week) ? circuit : 1 - circuit)
                * (track.rail(week) ? rail : 1 - rail);
    }

    /**
     * What an injector with a defect shows if each likelihood ratio against these signs of a sound one is raised to a power: 0 leaves
     * nothing that tells the two apart, 1 changes nothing. What is called worn when it is taken out stays.
     */
    StateSigns withRatiosTo(double power, StateSigns sound) {
        return new StateSigns(
                raised(faultDays, sound.faultDays, power),
                raised(circuit, sound.circuit, power),
                raised(rail, sound.rail, power),
                raised(balance, sound.balance, power),
                raised(returnFlow, sound.returnFlow, power),
                worn);
    }

    private static double raised(double defective, double sound, double power) {
        return raised(new double[] {defective, 1 - defective}, new double[] {sound, 1 - sound}, power)[0];
    }

    private static double[] raised(double[] defective, double[] sound, double power) {
        double[] raised = new double[defective.length];
        double sum = 0;
        for (int i = 0; i < raised.length; i++) {
            raised[i] = sound[i] > 0 ? sound[i] * Math.pow(defective[i] / sound[i], power) : 0;
            sum += raised[i];
        }
        for (int i = 0; i < raised.length; i++) {
            raised[i] /= sum;
        }
        return raised;
    }

    /** Chance of a week without a fault of the cylinder or its circuit. */
    double quiet() {
        return faultDays[0] * (1 - circuit);
    }

    /** Chance that one of the two tests is over its limit. */
    double over() {
        return 1 - (1 - overOf(balance)) * (1 - overOf(returnFlow));
    }

    private static double overOf(double[] bands) {
        return bands[bands.length - 1] + bands[bands.length - 2];
    }
}
