package dev.injectorplanner.core.defect;

import dev.injectorplanner.core.condition.SignTrack;
import dev.injectorplanner.core.fleet.TestKind;

/** Expected counts of what was seen in each state, and of the steps between them. */
final class Tally {
    private static final int BANDS = StateSigns.BANDS.length + 1;

    final double[][] faultDays = new double[2][SignTrack.MOST_FAULT_DAYS + 1];
    final double[][] circuit = new double[2][2];
    final double[][] rail = new double[2][2];
    final double[][] balance = new double[2][BANDS];
    final double[][] returnFlow = new double[2][BANDS];
    final double[][] worn = new double[2][2];
    double arrivals;
    double arrivalsExpected;
    double sudden;
    double suddenExpected;
    double failuresOfDefects;
    double defectiveUse;

    void week(SignTrack track, int week, double sound, double defective) {
        faultDays[0][track.faultDays(week)] += sound;
        faultDays[1][track.faultDays(week)] += defective;
        int begun = track.circuit(week) ? 1 : 0;
        circuit[0][begun] += sound;
        circuit[1][begun] += defective;
        int railed = track.rail(week) ? 1 : 0;
        rail[0][railed] += sound;
        rail[1][railed] += defective;
    }

    void test(SignTrack.Seen test, double sound, double defective) {
        double[][] bands = test.kind() == TestKind.BALANCE ? balance : returnFlow;
        int band = StateSigns.band(test.ratio());
        bands[0][band] += sound;
        bands[1][band] += defective;
    }

    void takenOut(boolean calledWorn, double sound, double defective) {
        worn[0][calledWorn ? 1 : 0] += sound;
        worn[1][calledWorn ? 1 : 0] += defective;
    }
}
