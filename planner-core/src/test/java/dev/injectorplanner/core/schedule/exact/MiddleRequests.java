package dev.injectorplanner.core.schedule.exact;

import dev.injectorplanner.core.schedule.GroupCapacity;
import dev.injectorplanner.core.schedule.ScheduleRequest;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import dev.injectorplanner.core.schedule.WeekCapacity;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** One depot with more work than hours, and all limits at once: too large to be proven at once. */
final class MiddleRequests {
    private MiddleRequests() {}

    static ScheduleRequest of(Random random, int trucks, int weeks) {
        List<TruckOptions> list = new ArrayList<>();
        for (int t = 0; t < trucks; t++) {
            List<VisitOption> options = new ArrayList<>();
            double worth = 1_000 + random.nextInt(4_000);
            for (int week = 0; week < weeks; week++) {
                for (int way = 0; way < 3; way++) {
                    double hours = (50 + 20 * way + random.nextInt(40)) / 10.0;
                    double cost = -Math.rint(worth * (0.7 + 0.15 * way) * (1 - 0.03 * week * random.nextDouble()));
                    options.add(new VisitOption(week, List.of(way + 1), hours, 0.25 * Math.ceil(hours / 2), cost));
                }
            }
            Integer pinned = random.nextInt(12) == 0 ? Integer.valueOf(random.nextInt(weeks)) : null;
            Integer latest = random.nextInt(12) == 0 ? Integer.valueOf(random.nextInt(weeks)) : null;
            list.add(new TruckOptions("T" + (100 + t), "D", t % 3 == 0 ? "G" : null, options, latest, pinned));
        }
        List<WeekCapacity> capacity = new ArrayList<>();
        List<GroupCapacity> groups = new ArrayList<>();
        for (int week = 0; week < weeks; week++) {
            capacity.add(new WeekCapacity("D", week, 30, 6, 60, 5));
            groups.add(new GroupCapacity("G", week, 1.5));
        }
        return new ScheduleRequest(weeks, list, capacity, groups);
    }
}
