package dev.injectorplanner.core.replay.scenario;

import dev.injectorplanner.core.check.Require;

/**
 * How the shop and its trucks truly behave.
 *
 * @param youngestYears years in service of the youngest truck when planning begins
 * @param oldestYears and of the oldest
 * @param truckSpread spread of lives from truck to truck, standard deviation of the logarithm
 * @param idlerShare share of trucks that idle half their hours and wear faster by the km
 * @param replacedMeterShare share of trucks whose odometer was replaced within the records
 * @param wrongFoundShare share of removals whose "found" is noted wrong
 * @param lateShare share of planned visits that do not come about in their week
 * @param soldPerYear share of trucks sold a year; the day is known half a year before
 * @param testEveryKm km between the tests that the shop makes so far
 * @param hoursPerTruckWeek labour hours of the depot, a truck and week; 0 leaves them as the tables of depots say
 * @param shelfSets injectors that the shop keeps, as sets of a whole engine for ten trucks
 */
public record ShopTruth(
        double youngestYears,
        double oldestYears,
        double truckSpread,
        double idlerShare,
        double replacedMeterShare,
        double wrongFoundShare,
        double lateShare,
        double soldPerYear,
        double testEveryKm,
        double hoursPerTruckWeek,
        double shelfSets) {
    public ShopTruth {
        Require.notNegative("youngest_years", youngestYears);
        Require.within("oldest_years", oldestYears, youngestYears, 40);
        Require.within("truck_spread", truckSpread, 0, 2);
        Require.within("idler_share", idlerShare, 0, 1);
        Require.within("replaced_meter_share", replacedMeterShare, 0, 1);
        Require.within("wrong_found_share", wrongFoundShare, 0, 1);
        Require.within("late_share", lateShare, 0, 0.9);
        Require.within("sold_per_year", soldPerYear, 0, 1);
        Require.positive("test_every_km", testEveryKm);
        Require.notNegative("hours_per_truck_week", hoursPerTruckWeek);
        Require.notNegative("shelf_sets", shelfSets);
    }

    /** An ordinary shop: a few idlers, replaced meters, wrong entries and late visits. */
    public static ShopTruth ordinary() {
        return new ShopTruth(1.5, 9, 0.12, 0.1, 0.05, 0.08, 0.1, 0, 45_000, 0.75, 1);
    }

    ShopTruth withTrucks(double youngest, double oldest, double sold) {
        return new ShopTruth(
                youngest,
                oldest,
                truckSpread,
                idlerShare,
                replacedMeterShare,
                wrongFoundShare,
                lateShare,
                sold,
                testEveryKm,
                hoursPerTruckWeek,
                shelfSets);
    }

    ShopTruth withShelfSets(double sets) {
        return new ShopTruth(
                youngestYears,
                oldestYears,
                truckSpread,
                idlerShare,
                replacedMeterShare,
                wrongFoundShare,
                lateShare,
                soldPerYear,
                testEveryKm,
                hoursPerTruckWeek,
                sets);
    }
}
