package dev.injectorplanner.core.schedule.exact;

import dev.injectorplanner.core.schedule.GroupCapacity;
import dev.injectorplanner.core.schedule.ScheduleRequest;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import dev.injectorplanner.core.schedule.WeekCapacity;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Small made-up requests in which every kind of limit bites now and then. */
final class SmallRequests {
    private SmallRequests() {}

    /** Up to {@code mostTrucks} trucks of one or two depots, up to four weeks, up to three options a truck. */
    static ScheduleRequest of(Random random, int mostTrucks) {
        int weeks = 1 + random.nextInt(4);
        int depots = 1 + random.nextInt(2);
        double hourGrain = new double[] {1, 0.5, 0.1, 0.25, 0.01}[random.nextInt(5)];
        double costGrain = new double[] {1, 0.01}[random.nextInt(2)];
        List<WeekCapacity> capacity = new ArrayList<>();
        List<GroupCapacity> groups = new ArrayList<>();
        for (int week = 0; week < weeks; week++) {
            for (int depot = 0; depot < depots; depot++) {
                double overtime = random.nextBoolean() ? 0 : grained(random, 6, hourGrain);
                capacity.add(new WeekCapacity(
                        "D" + depot,
                        week,
                        grained(random, 25, hourGrain) + (random.nextInt(4) == 0 ? 0.37 : 0),
                        overtime,
                        random.nextInt(4) * 10,
                        random.nextBoolean() ? 100 : grained(random, 6, 0.5)));
            }
            groups.add(new GroupCapacity("G", week, grained(random, 5, 0.25)));
        }
        List<TruckOptions> trucks = new ArrayList<>();
        int count = 1 + random.nextInt(mostTrucks);
        for (int t = 0; t < count; t++) {
            trucks.add(truck(random, t, weeks, depots, hourGrain, costGrain));
        }
        return new ScheduleRequest(weeks, trucks, capacity, groups);
    }

    private static TruckOptions truck(
            Random random, int number, int weeks, int depots, double hourGrain, double costGrain) {
        List<VisitOption> options = new ArrayList<>();
        for (int o = random.nextInt(4); o > 0; o--) {
            double days = 0.25 * (1 + random.nextInt(8));
            double cost = grained(random, 600, costGrain) - 500;
            options.add(new VisitOption(
                    random.nextInt(weeks), List.of(o), grained(random, 16, hourGrain), days, tidy(cost)));
        }
        boolean wishes = random.nextInt(3) == 0;
        return new TruckOptions(
                "T" + number,
                "D" + random.nextInt(depots),
                random.nextBoolean() ? "G" : null,
                options,
                wishes && random.nextBoolean() ? Integer.valueOf(random.nextInt(weeks)) : null,
                wishes && random.nextBoolean() ? Integer.valueOf(random.nextInt(weeks)) : null);
    }

    private static double grained(Random random, double most, double grain) {
        return tidy(random.nextInt((int) Math.round(most / grain) + 1) * grain);
    }

    private static double tidy(double value) {
        return Math.rint(value * 100) / 100;
    }
}
