package dev.injectorplanner.core.condition;

import dev.injectorplanner.core.fleet.AnsweredFaults;
import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.fleet.Truck;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** What faults and tests said of one truck's cylinders on any day, by the clock of its depot. */
public final class TruckSigns {
    static final int FAULT_DAYS = 60;
    static final int TEST_DAYS = 180;

    /** A circuit fault that comes again within as many days belongs to the same spell: a planner default. */
    private static final int SPELL_DAYS = 7;

    private static final int CYLINDERS = EngineFamily.MOST_CYLINDERS + 1;

    private record Tested(long day, TestKind kind, double ratio) {
        boolean over() {
            return ratio > 1;
        }
    }

    private final List<TreeSet<Long>> faults = new ArrayList<>();
    private final List<TreeSet<Long>> circuits = new ArrayList<>();
    private final List<List<Tested>> balance = new ArrayList<>();
    private final List<List<Tested>> flow = new ArrayList<>();
    private final TreeSet<Long> rail = new TreeSet<>();
    private final ZoneId zone;

    public TruckSigns(FleetIndex index, Truck truck, TestLimit limits) {
        zone = index.depot(truck.depot()).timeZone();
        for (int cylinder = 0; cylinder < CYLINDERS; cylinder++) {
            faults.add(new TreeSet<>());
            circuits.add(new TreeSet<>());
            balance.add(new ArrayList<>());
            flow.add(new ArrayList<>());
        }
        AnsweredFaults answered = new AnsweredFaults(index.repairsOf(truck.truck()));
        for (Fault fault : index.faultsOf(truck.truck())) {
            Integer cylinder = fault.cylinder();
            if (answered.covers(fault, LocalDate.ofEpochDay(day(fault.until())))) {
                continue; // the wiring's, not the injector's
            }
            if (cylinder != null) {
                addDays((fault.code().electrical() ? circuits : faults).get(cylinder), fault);
            } else if (fault.code().meaning().isFuelEvent()) {
                addDays(rail, fault);
            }
        }
        for (CylinderTest test : index.testsOf(truck.truck())) {
            if (test.test() != TestKind.CONTRIBUTION) {
                List<List<Tested>> kind = test.test() == TestKind.BALANCE ? balance : flow;
                kind.get(test.cylinder())
                        .add(new Tested(day(test.testedAt()), test.test(), limits.ratio(truck.family(), test)));
            }
        }
    }

    /** Kinds of tests on record that can be held against a limit. */
    Set<TestKind> testKinds() {
        Set<TestKind> kinds = EnumSet.noneOf(TestKind.class);
        Stream.of(balance, flow)
                .flatMap(List::stream)
                .flatMap(List::stream)
                .filter(test -> !Double.isNaN(test.ratio))
                .forEach(test -> kinds.add(test.kind));
        return kinds;
    }

    /** An episode is seen on each of its days. */
    private void addDays(TreeSet<Long> days, Fault fault) {
        long last = day(fault.until());
        for (long day = Math.max(day(fault.seenAt()), last - FAULT_DAYS); day <= last; day++) {
            days.add(day);
        }
    }

    private long day(Instant moment) {
        return moment.atZone(zone).toLocalDate().toEpochDay();
    }

    /**
     * The signs against an injector that has been in a cylinder since {@code fittedOn}, on a day, that day included. What was
     * seen up to the day of fitting, and on it, belongs to the injector before.
     */
    public Set<Sign> on(int cylinder, LocalDate fittedOn, LocalDate day) {
        Set<Sign> signs = EnumSet.noneOf(Sign.class);
        long now = day.toEpochDay();
        long first = fittedOn.toEpochDay() + 1;
        long from = Math.max(now - FAULT_DAYS + 1, first);
        int faultDays = seen(faults.get(cylinder), from, now);
        if (faultDays > 0) {
            signs.add(faultDays == 1 ? Sign.ONE_FAULT : Sign.FAULTS);
        }
        if (seen(circuits.get(cylinder), from, now) > 0) {
            signs.add(Sign.CIRCUIT);
        }
        long since = Math.max(now - TEST_DAYS + 1, first);
        if (lastIsOver(balance.get(cylinder), since, now) || lastIsOver(flow.get(cylinder), since, now)) {
            signs.add(Sign.TEST);
        }
        if (seen(rail, from, now) > 0) {
            signs.add(Sign.RAIL);
        }
        return signs;
    }

    private static int seen(TreeSet<Long> days, long from, long until) {
        return from > until ? 0 : days.subSet(from, until + 1).size();
    }

    /** Days of circuit faults that begin a spell: none was seen in the {@link #SPELL_DAYS} before. */
    private TreeSet<Long> spells(int cylinder, long first, long end) {
        TreeSet<Long> begun = new TreeSet<>();
        long last = Long.MIN_VALUE / 2;
        for (long day : circuits.get(cylinder).subSet(first, end)) {
            if (day - last > SPELL_DAYS) {
                begun.add(day);
            }
            last = day;
        }
        return begun;
    }

    private static boolean lastIsOver(List<Tested> tests, long from, long until) {
        for (int i = tests.size() - 1; i >= 0; i--) {
            Tested test = tests.get(i);
            if (test.day <= until) {
                return test.day >= from && test.over();
            }
        }
        return false;
    }

    /**
     * What a cylinder's injector showed week by week.
     *
     * @param after the day it came under observation; what was seen on it is left out
     * @param until last day counted
     * @param weeks weeks on the track; what comes later than they reach is left out
     */
    public SignTrack track(int cylinder, LocalDate after, LocalDate until, int weeks) {
        byte[] faultDays = new byte[weeks];
        boolean[] circuit = new boolean[weeks];
        boolean[] railed = new boolean[weeks];
        long first = after.toEpochDay() + 1;
        long end = Math.min(until.toEpochDay() + 1, first + 7L * weeks);
        if (end > first) {
            for (long day : faults.get(cylinder).subSet(first, end)) {
                int week = (int) ((day - first) / 7);
                faultDays[week] = (byte) Math.min(SignTrack.MOST_FAULT_DAYS, faultDays[week] + 1);
            }
            for (long day : spells(cylinder, first, end)) {
                circuit[(int) ((day - first) / 7)] = true;
            }
            for (long day : rail.subSet(first, end)) {
                railed[(int) ((day - first) / 7)] = true;
            }
        }
        List<SignTrack.Seen> tests = new ArrayList<>();
        for (List<Tested> kind : List.of(balance.get(cylinder), flow.get(cylinder))) {
            for (Tested test : kind) {
                if (test.day >= first && test.day < end && !Double.isNaN(test.ratio)) {
                    tests.add(new SignTrack.Seen((int) ((test.day - first) / 7), test.kind, test.ratio));
                }
            }
        }
        tests.sort(Comparator.comparingInt(SignTrack.Seen::week));
        return new SignTrack(faultDays, circuit, railed, tests);
    }

    /** Days on which a cylinder's balance or return flow was tested in {@code from..until}, ascending. */
    public List<LocalDate> testDays(int cylinder, LocalDate from, LocalDate until) {
        TreeSet<Long> days = new TreeSet<>();
        for (List<Tested> tests : List.of(balance.get(cylinder), flow.get(cylinder))) {
            for (Tested test : tests) {
                if (test.day >= from.toEpochDay() && test.day <= until.toEpochDay()) {
                    days.add(test.day);
                }
            }
        }
        return Collections.unmodifiableList(
                days.stream().map(LocalDate::ofEpochDay).toList());
    }
}
