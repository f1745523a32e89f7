package dev.injectorplanner.core.replay.run;

import dev.injectorplanner.core.replay.world.TruckWorld;
import dev.injectorplanner.core.replay.world.TrueUnit;
import java.util.Arrays;

/** One cylinder of one truck while a replay runs: what sits in it, and what is known of it. */
final class Position {
    final int cylinder;
    TrueUnit unit;
    int n;
    int fittedDay;
    double fittedKm;
    int failDay;
    /** First day on which the defect can be seen. */
    int defectDay;
    /** Days on which the defect stores a fault, ascending. */
    int[] faultDays = {};

    int testsOver;
    boolean bothOver;

    Position(TruckWorld truck, int cylinder) {
        this.cylinder = cylinder;
        unit = truck.firstUnit(cylinder);
        put(truck, unit, truck.firstFittedDay(cylinder), truck.firstFittedKm(cylinder));
    }

    private Position(Position other) {
        cylinder = other.cylinder;
        unit = other.unit;
        n = other.n;
        fittedDay = other.fittedDay;
        fittedKm = other.fittedKm;
        failDay = other.failDay;
        defectDay = other.defectDay;
        faultDays = other.faultDays;
        testsOver = other.testsOver;
        bothOver = other.bothOver;
    }

    Position copy() {
        return new Position(this);
    }

    /** The next injector of this cylinder goes in. */
    void renew(TruckWorld truck, int day) {
        n++;
        put(truck, truck.unit(cylinder, n), day, truck.kmOn(day));
    }

    private void put(TruckWorld truck, TrueUnit fitted, int day, double km) {
        unit = fitted;
        fittedDay = day;
        fittedKm = km;
        int fails = truck.dayAt(km + truck.kmOfWear(unit.lifeKm()));
        failDay = Math.max(day + 1, fails);
        int begins = truck.dayAt(km + truck.kmOfWear(unit.defectKm()));
        defectDay = unit.defectKm() >= unit.lifeKm() ? TruckWorld.NEVER : Math.max(day + 1, begins);
        faultDays = Arrays.stream(unit.faultsKm())
                .mapToInt(at -> Math.max(day + 1, truck.dayAt(km + truck.kmOfWear(at))))
                .distinct()
                .toArray();
        testsOver = 0;
        bothOver = false;
    }

    boolean hasDefect(int day) {
        return day >= defectDay;
    }

    /** Whether the injector itself stored a fault on a day. */
    boolean isOwnFault(int day) {
        return Arrays.stream(faultDays).anyMatch(own -> own == day);
    }

    /** Days with a fault since fitting, from one day to another, both included. */
    int countFaultDays(TruckWorld truck, int from, int to) {
        int first = Math.max(from, fittedDay + 1);
        int count = truck.countFalseDays(cylinder, first, to);
        for (int day : faultDays) {
            count += day >= first && day <= to ? 1 : 0;
        }
        return count;
    }

    /** Those days themselves, ascending, each once. */
    int[] listFaultDays(TruckWorld truck, int from, int to) {
        int first = Math.max(from, fittedDay + 1);
        int[] strays = truck.falseDaysBetween(cylinder, first, to);
        int[] own = Arrays.stream(faultDays)
                .filter(day -> day >= first && day <= to)
                .toArray();
        int[] all = Arrays.copyOf(strays, strays.length + own.length);
        System.arraycopy(own, 0, all, strays.length, own.length);
        return Arrays.stream(all).sorted().distinct().toArray();
    }
}
