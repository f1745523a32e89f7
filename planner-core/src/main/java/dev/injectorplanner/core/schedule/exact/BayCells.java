package dev.injectorplanner.core.schedule.exact;

import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import dev.injectorplanner.core.schedule.WeekCapacity;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Weeks in which bays run out before plain hours do, whatever is chosen: with at most h hours a bay-day in any visit, visits
 * that fit the bays take at most h times the bay-days there are. Where that is no more than the plain hours, hours bind
 * nothing and no overtime is paid, so that the week is a knapsack of bay-days: counted as h hours each, it is as exact, and
 * its bound as sharp, as one of hours.
 */
final class BayCells {
    private static final double ROUNDING = 1e-9;

    private final Map<String, Double> mostHoursADay = new TreeMap<>();
    private final Map<String, WeekCapacity> capacity = new TreeMap<>();

    BayCells(List<TruckOptions> trucks, List<WeekCapacity> depots) {
        for (TruckOptions truck : trucks) {
            for (VisitOption option : truck.options()) {
                mostHoursADay.merge(
                        key(truck.depot(), option.week()), option.labourHours() / option.truckDays(), Math::max);
            }
        }
        depots.forEach(row -> capacity.put(key(row.depot(), row.week()), row));
    }

    private static String key(String depot, int week) {
        return depot + "\n" + week;
    }

    /** Hours that a bay-day counts as; 0 where hours are counted as they are. */
    private double hoursADay(String key) {
        WeekCapacity row = capacity.get(key);
        double most = mostHoursADay.getOrDefault(key, 0.0);
        return row != null && most * row.bayDays() <= row.labourHours() + ROUNDING ? most : 0;
    }

    boolean isOfBays(WeekCapacity row) {
        return hoursADay(key(row.depot(), row.week())) > 0;
    }

    /** What a visit takes of its week, in hours or in bay-days counted as hours. */
    double weight(String depot, VisitOption option) {
        double hoursADay = hoursADay(key(depot, option.week()));
        return hoursADay > 0 ? option.truckDays() * hoursADay : option.labourHours();
    }

    /** What there is to take. */
    WeekCapacity counted(WeekCapacity row) {
        double hoursADay = hoursADay(key(row.depot(), row.week()));
        return hoursADay > 0
                ? new WeekCapacity(row.depot(), row.week(), row.bayDays() * hoursADay, 0, 0, row.bayDays())
                : row;
    }
}
