package dev.injectorplanner.core.schedule.exact;

import dev.injectorplanner.core.schedule.ScheduleRequest;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import dev.injectorplanner.core.schedule.WeekCapacity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads well-formed instances of the {@code schedule} command's format, for benchmarks; the command itself checks them. */
final class InstanceText {
    private static final Pattern TRUCK = Pattern.compile(
            "\"truck\"\\s*:\\s*\"([^\"]*)\"\\s*,\\s*\"options\"\\s*:\\s*\\[((?:\\s*\\[[^\\]]*\\]\\s*,?)*)\\s*\\]");
    private static final Pattern OPTION = Pattern.compile("\\[([^\\]]*)\\]");

    private InstanceText() {}

    static ScheduleRequest read(String text) {
        double[] plain = list(text, "capacity_tenths");
        double[] overtime = list(text, "overtime_tenths");
        double premium = Double.parseDouble(group(text, "\"overtime_cost_per_tenth\"\\s*:\\s*([-0-9.]+)"));
        List<TruckOptions> trucks = new ArrayList<>();
        Matcher truck = TRUCK.matcher(text);
        while (truck.find()) {
            List<VisitOption> options = new ArrayList<>();
            Matcher option = OPTION.matcher(truck.group(2));
            while (option.find()) {
                double[] parts = numbers(option.group(1));
                options.add(new VisitOption((int) parts[0], List.of(), parts[1] / 10, 1, parts[2]));
            }
            trucks.add(new TruckOptions(truck.group(1), "depot", null, options, null));
        }
        List<WeekCapacity> weeks = new ArrayList<>();
        for (int week = 0; week < plain.length; week++) {
            weeks.add(new WeekCapacity(
                    "depot", week, plain[week] / 10, overtime[week] / 10, premium * 10, trucks.size()));
        }
        return new ScheduleRequest(plain.length, trucks, weeks, List.of());
    }

    private static double[] list(String text, String name) {
        return numbers(group(text, "\"" + name + "\"\\s*:\\s*\\[([^\\]]*)\\]"));
    }

    private static double[] numbers(String list) {
        return Arrays.stream(list.split(","))
                .mapToDouble(part -> Double.parseDouble(part.strip()))
                .toArray();
    }

    private static String group(String text, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        if (!matcher.find()) {
            throw new IllegalArgumentException("the instance has no " + pattern);
        }
        return matcher.group(1);
    }
}
