package dev.injectorplanner.core.schedule.exact;

import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.schedule.ScheduleRequest;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.WeekCapacity;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The cost of choices in hours as they are, overtime included. */
public final class CostOf {
    private static final double ROUNDING = 1e-9;

    private CostOf() {}

    /** Sum of the chosen costs and of overtime, the same whatever the order of the choices. */
    public static double schedule(ScheduleRequest request, List<Schedule.Choice> choices) {
        Map<String, String> depots = new HashMap<>();
        for (TruckOptions truck : request.trucks()) {
            depots.put(truck.truck(), truck.depot());
        }
        Map<String, Double> hours = new HashMap<>();
        double[] costs = new double[choices.size()];
        for (int i = 0; i < costs.length; i++) {
            Schedule.Choice choice = choices.get(i);
            costs[i] = choice.option().cost();
            hours.merge(
                    depots.get(choice.truck()) + "\n" + choice.option().week(),
                    choice.option().labourHours(),
                    Double::sum);
        }
        double sum = sorted(costs);
        for (WeekCapacity week : request.depots()) {
            double booked = hours.getOrDefault(week.depot() + "\n" + week.week(), 0.0);
            double over = booked - week.labourHours();
            sum += over > ROUNDING ? over * week.overtimePremium() : 0;
        }
        return sum;
    }

    /** Adds up in order of size, so that the order of the trucks does not matter. */
    private static double sorted(double[] costs) {
        Arrays.sort(costs);
        double sum = 0;
        for (double cost : costs) {
            sum += cost;
        }
        return sum;
    }
}
