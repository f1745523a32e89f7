package dev.injectorplanner.app.command.schedule;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.schedule.ScheduleRequest;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import dev.injectorplanner.core.schedule.WeekCapacity;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tools.jackson.core.JacksonException;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Reads an instance: {@code weeks}, {@code capacity_tenths} and {@code overtime_tenths} (hours times ten, one a week),
 * {@code overtime_cost_per_tenth}, and {@code trucks}, each with its name and {@code options} of week, hours times ten and
 * cost against no visit. One depot; bays and duty groups do not limit it.
 */
final class InstanceFile {
    /** Hours in tenths become hours. */
    static final double TENTHS = 10;

    private static final String DEPOT = "depot";
    private static final int MOST_WEEKS = 520;
    private static final double MOST_TENTHS = 1e6;
    private static final int OPTION_PARTS = 3;

    private final String name;

    private InstanceFile(String name) {
        this.name = name;
    }

    static ScheduleRequest read(Path file) throws InstanceRefusedException {
        String name = String.valueOf(file.getFileName());
        return new InstanceFile(name).request(tree(file, name));
    }

    private static JsonNode tree(Path file, String name) throws InstanceRefusedException {
        try {
            return JsonMapper.shared().readTree(Files.readString(file, StandardCharsets.UTF_8));
        } catch (NoSuchFileException e) {
            throw new InstanceRefusedException(name + ": no such file. Fix: check the name and the folder.");
        } catch (IOException e) {
            throw new InstanceRefusedException(
                    name
                            + ": cannot be read as text in UTF-8. Fix: check what it is and whether you have permission to read it.");
        } catch (JacksonException e) {
            TokenStreamLocation at = e.getLocation();
            String where = at == null ? "" : ", line " + at.getLineNr() + ", column " + at.getColumnNr();
            throw new InstanceRefusedException(
                    name + where + ": is not JSON from there on. Fix: write the file again, or repair it there.");
        }
    }

    private ScheduleRequest request(JsonNode root) throws InstanceRefusedException {
        if (!root.isObject()) {
            throw refused("", "is not one JSON object", "put weeks, capacity_tenths and trucks inside { }");
        }
        double weeks = number(root.path("weeks"), "weeks", 1, MOST_WEEKS);
        if (weeks != Math.rint(weeks)) {
            throw refused("weeks", "is not a whole number: " + weeks, "give the number of weeks");
        }
        int count = (int) weeks;
        double[] plain = perWeek(root, "capacity_tenths", count);
        double[] overtime = root.has("overtime_tenths") ? perWeek(root, "overtime_tenths", count) : new double[count];
        double premium = root.has("overtime_cost_per_tenth")
                ? number(root.path("overtime_cost_per_tenth"), "overtime_cost_per_tenth", 0, 1e9)
                : 0;
        List<TruckOptions> trucks = trucks(root.path("trucks"), count);
        List<WeekCapacity> capacity = new ArrayList<>();
        for (int week = 0; week < count; week++) {
            capacity.add(new WeekCapacity(
                    DEPOT, week, plain[week] / TENTHS, overtime[week] / TENTHS, premium * TENTHS, trucks.size()));
        }
        return new ScheduleRequest(count, trucks, capacity, List.of());
    }

    private double[] perWeek(JsonNode root, String field, int weeks) throws InstanceRefusedException {
        JsonNode list = root.path(field);
        if (!list.isArray() || list.size() != weeks) {
            String what = list.isArray() ? "has " + list.size() + " numbers" : "is not a list of numbers";
            throw refused(field, what, "give one number for each of the " + weeks + " weeks");
        }
        double[] values = new double[weeks];
        for (int week = 0; week < weeks; week++) {
            values[week] = number(list.get(week), field + ", week " + week, 0, MOST_TENTHS);
        }
        return values;
    }

    private List<TruckOptions> trucks(JsonNode list, int weeks) throws InstanceRefusedException {
        if (!list.isArray()) {
            throw refused("trucks", "is not a list", "give a list of trucks with their options");
        }
        List<TruckOptions> trucks = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (JsonNode row : list) {
            String where = "truck " + (trucks.size() + 1);
            JsonNode truck = row.path("truck");
            if (!truck.isString() || truck.stringValue().isBlank()) {
                throw refused(where, "has no name", "give it one under \"truck\"");
            }
            String called = truck.stringValue();
            if (!names.add(called)) {
                throw refused(where, "is called \"" + called + "\" like one before", "give each truck once");
            }
            trucks.add(new TruckOptions(
                    called, DEPOT, null, options(row.path("options"), "truck \"" + called + "\"", weeks), null));
        }
        return trucks;
    }

    private List<VisitOption> options(JsonNode list, String where, int weeks) throws InstanceRefusedException {
        if (!list.isArray()) {
            throw refused(where, "has no list of options", "give [] where it has none");
        }
        List<VisitOption> options = new ArrayList<>();
        for (JsonNode option : list) {
            String which = where + ", option " + (options.size() + 1);
            if (!option.isArray() || option.size() != OPTION_PARTS) {
                throw refused(which, "is not [week, hours x 10, cost]", "give three numbers");
            }
            double week = number(option.get(0), which + ", week", 0, weeks - 1);
            double tenths = number(option.get(1), which + ", hours x 10", 0, MOST_TENTHS);
            double cost = number(option.get(2), which + ", cost", -1e12, 1e12);
            if (week != Math.rint(week)) {
                throw refused(which, "has a week that is not a whole number: " + week, "count weeks from 0");
            }
            options.add(option(which, (int) week, tenths, cost));
        }
        return options;
    }

    private VisitOption option(String which, int week, double tenths, double cost) throws InstanceRefusedException {
        try {
            return new VisitOption(week, List.of(), tenths / TENTHS, 1, cost);
        } catch (InvalidValueException e) {
            throw refused(which, e.reason(), e.fix());
        }
    }

    private double number(JsonNode node, String where, double least, double most) throws InstanceRefusedException {
        if (!node.isNumber()) {
            String what = node.isMissingNode() ? "is missing" : "is not a number: " + node;
            throw refused(where, what, "give a number");
        }
        double value = node.doubleValue();
        if (!(value >= least && value <= most)) {
            throw refused(
                    where,
                    "is " + node + ", outside " + plain(least) + " to " + plain(most),
                    "give a number within these limits");
        }
        return value;
    }

    private static String plain(double value) {
        return Require.plain(value);
    }

    private InstanceRefusedException refused(String where, String what, String fix) {
        String place = where.isEmpty() ? "" : ", " + where;
        return new InstanceRefusedException(name + place + ": " + what + ". Fix: " + fix + ".");
    }
}
