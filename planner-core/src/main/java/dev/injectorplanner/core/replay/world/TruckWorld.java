package dev.injectorplanner.core.replay.world;

import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.replay.scenario.SignTruth;
import dev.injectorplanner.core.truth.Draws;
import dev.injectorplanner.core.truth.TestTruth;
import dev.injectorplanner.core.truth.TruckClock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One truck as it truly is. Nothing in it depends on who looks after it: the n-th injector of a cylinder is the same
 * whenever it is fitted, a test of a day has the same noise, and false codes come on the same days. Days are days of the
 * epoch; cylinders count from 0.
 */
public final class TruckWorld {
    /** A day that never comes. */
    public static final int NEVER = Integer.MAX_VALUE;

    private static final long UNITS = 11;
    private static final long TESTS = 12;
    private static final int[] EMPTY = {};

    final long seed;
    final int number;
    final Truck truck;
    final EngineFamily engine;
    final int family;
    final TruckClock clock;
    final int firstDay;
    final double[] km;
    final double wear;
    final int soldDay;
    final int soldKnownDay;
    final int[][] falseDays;
    final FirstFit[] firstFits;

    private final UnitMaker maker;
    private final TestTruth shown;
    private final SignTruth.Codes codes;
    private final List<List<TrueUnit>> units = new ArrayList<>();

    /** What sits in a cylinder when the truck is first looked at. */
    record FirstFit(TrueUnit unit, int day, double km) {}

    /** What a truck is made of, so that its maker can name each piece. */
    record Make(
            long seed,
            int number,
            Truck truck,
            EngineFamily engine,
            int family,
            TruckClock clock,
            int firstDay,
            double[] km,
            double wear,
            int soldDay,
            int soldKnownDay,
            int[][] falseDays,
            FirstFit @Nullable [] firstFits,
            UnitMaker maker,
            SignTruth signs) {}

    TruckWorld(Make make) {
        seed = make.seed();
        number = make.number();
        truck = make.truck();
        engine = make.engine();
        family = make.family();
        clock = make.clock();
        firstDay = make.firstDay();
        km = make.km();
        wear = make.wear();
        soldDay = make.soldDay();
        soldKnownDay = make.soldKnownDay();
        falseDays = make.falseDays();
        maker = make.maker();
        shown = make.signs().tests();
        codes = make.signs().codes();
        for (int c = 0; c < engine.cylinders(); c++) {
            units.add(new ArrayList<>());
        }
        FirstFit[] given = make.firstFits();
        firstFits = given != null ? given : fresh();
    }

    private FirstFit[] fresh() {
        FirstFit[] fits = new FirstFit[engine.cylinders()];
        for (int c = 0; c < fits.length; c++) {
            fits[c] = new FirstFit(unit(c, 0), firstDay, kmOn(firstDay));
        }
        return fits;
    }

    /** The truck's row without its sale. */
    public Truck truck() {
        return truck;
    }

    public EngineFamily engine() {
        return engine;
    }

    /** Share of circuit codes among those of a defect, or of strays and the harness. */
    public double circuitCodes(boolean ofDefect) {
        return ofDefect ? codes.ofDefects() : codes.ofOthers();
    }

    /** Place of its family in the scenario's list. */
    public int family() {
        return family;
    }

    public int cylinders() {
        return engine.cylinders();
    }

    public TruckClock clock() {
        return clock;
    }

    public int firstDay() {
        return firstDay;
    }

    /** First day on which it is no longer in the fleet, or {@link #NEVER}. */
    public int soldDay() {
        return soldDay;
    }

    /** Day from which the records say when it leaves. */
    public int soldKnownDay() {
        return soldKnownDay;
    }

    public boolean inServiceOn(int day) {
        return day >= firstDay && day < soldDay;
    }

    /** True km at noon of a day, from its first one; those of the last day that the path holds after it. */
    public double kmOn(int day) {
        return km[Math.max(0, Math.min(km.length - 1, day - firstDay))];
    }

    /** The first day at or beyond true km; {@link #NEVER} where the path ends before. */
    public int dayAt(double trueKm) {
        if (trueKm > km[km.length - 1]) {
            return NEVER;
        }
        int low = 0;
        int high = km.length - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (km[middle] >= trueKm) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return firstDay + low;
    }

    /** Km that the truck drives while an injector wears by a given number of km. */
    public double kmOfWear(double wearKm) {
        return wearKm / wear;
    }

    /** The n-th injector of a cylinder, whenever it is fitted. */
    public TrueUnit unit(int cylinder, int n) {
        List<TrueUnit> made = units.get(cylinder);
        while (made.size() <= n) {
            // of those that are drawn, the first one came with the engine: never reman
            made.add(maker.make(
                    Draws.keyed(seed, UNITS, number, cylinder, made.size()), made.isEmpty() ? Origin.NEW : null, 0, 1));
        }
        return made.get(n);
    }

    /** What is in a cylinder at first. */
    public TrueUnit firstUnit(int cylinder) {
        return firstFits[cylinder].unit();
    }

    public int firstFittedDay(int cylinder) {
        return firstFits[cylinder].day();
    }

    /** True km of the truck when that was fitted; below 0 where it was before the path begins. */
    public double firstFittedKm(int cylinder) {
        return firstFits[cylinder].km();
    }

    /** Days of false codes of a cylinder from one day to another, both included. */
    public int[] falseDaysBetween(int cylinder, int from, int to) {
        int[] days = falseDays[cylinder];
        int first = place(days, from);
        int last = place(days, to + 1);
        return first >= last ? EMPTY : Arrays.copyOfRange(days, first, last);
    }

    /** How many days of false codes lie between two days, both included. */
    public int countFalseDays(int cylinder, int from, int to) {
        int[] days = falseDays[cylinder];
        return Math.max(0, place(days, to + 1) - place(days, from));
    }

    private static int place(int[] days, int day) {
        int at = Arrays.binarySearch(days, day);
        return at >= 0 ? at : -at - 1;
    }

    /** What a balance test of a unit of an age shows on a day, mm3/stroke, tenths. */
    public double balance(int cylinder, TrueUnit unit, double ageWear, int day) {
        Draws draws = Draws.keyed(seed, TESTS, number, cylinder, day);
        return shown.balance(draws, cylinder % 2 == 0 ? 1 : -1, ageWear > unit.defectKm(), unit.progress(ageWear));
    }

    /** What its return-flow test shows, ml/min, tenths. */
    public double flow(int cylinder, TrueUnit unit, double ageWear, int day) {
        Draws draws = Draws.keyed(seed, TESTS + 1, number, cylinder, day);
        return shown.flow(draws, ageWear > unit.defectKm(), unit.progress(ageWear));
    }

    /** Age of a unit in km of wear. */
    public double wearSince(double fittedKm, int day) {
        return Math.max(0, kmOn(day) - fittedKm) * wear;
    }
}
