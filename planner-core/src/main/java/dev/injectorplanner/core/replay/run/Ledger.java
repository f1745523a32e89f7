package dev.injectorplanner.core.replay.run;

import java.util.Arrays;
import java.util.Collection;

/** What one family of one fleet cost and did under one policy while planning ran. */
public final class Ledger {
    private final double[] cost = new double[CostKind.values().length];

    /** Failures in service. */
    public int roadFailures;
    /** Visits that replaced injectors before they failed. */
    public int plannedVisits;
    /** Tests of a truck. */
    public int tests;
    /** Tests that a truck came in for and nothing else. */
    public int testsAlone;
    /** Injectors replaced, failed ones counted. */
    public int replaced;
    /** Injectors with a defect replaced before they failed. */
    public int caught;
    /** Labour hours. */
    public double hours;
    /** Coolant drained, litres. */
    public double coolantLitres;
    /** Km that injectors replaced before they failed would still have run. */
    public double thrownAwayKm;
    /** Km driven. */
    public double km;

    /** Adds money spent. */
    public void add(CostKind kind, double amount) {
        cost[kind.ordinal()] += amount;
    }

    /** Money spent on one kind. */
    public double cost(CostKind kind) {
        return cost[kind.ordinal()];
    }

    /** Money spent on all kinds together. */
    public double cost() {
        return Arrays.stream(cost).sum();
    }

    /** Money spent per 1,000 km driven. */
    public double costPer1000Km() {
        return 1_000 * cost() / km;
    }

    /** All of some ledgers together. */
    public static Ledger sum(Collection<Ledger> ledgers) {
        Ledger sum = new Ledger();
        ledgers.forEach(sum::add);
        return sum;
    }

    /** Adds another's figures to these. */
    public void add(Ledger other) {
        for (int i = 0; i < cost.length; i++) {
            cost[i] += other.cost[i];
        }
        roadFailures += other.roadFailures;
        plannedVisits += other.plannedVisits;
        tests += other.tests;
        testsAlone += other.testsAlone;
        replaced += other.replaced;
        caught += other.caught;
        hours += other.hours;
        coolantLitres += other.coolantLitres;
        thrownAwayKm += other.thrownAwayKm;
        km += other.km;
    }

    /** A copy that goes its own way. */
    Ledger copy() {
        Ledger copy = new Ledger();
        copy.add(this);
        return copy;
    }
}
