package dev.injectorplanner.app.command.schedule;

import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.schedule.VisitOption;
import dev.injectorplanner.core.units.Figures;
import java.io.StringWriter;
import java.util.Locale;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** A schedule for people, or as one JSON object. */
final class SchedulePrinter {
    private static final double PERCENT = 100;

    private SchedulePrinter() {}

    static String json(Schedule schedule, double seconds) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = JsonFactory.builder().build().createGenerator(ObjectWriteContext.empty(), text)) {
            json.writeStartObject();
            number(json, "objective", schedule.cost());
            number(json, "bound", bound(schedule));
            number(json, "gap", gap(schedule));
            number(json, "seconds", Math.rint(seconds * 1_000) / 1_000);
            json.writeName("stop");
            json.writeString(schedule.stop().name().toLowerCase(Locale.ROOT).replace('_', ' '));
            json.writeName("choices");
            json.writeStartArray();
            for (Schedule.Choice choice : schedule.choices()) {
                VisitOption option = choice.option();
                json.writeStartObject();
                json.writeName("truck");
                json.writeString(choice.truck());
                json.writeName("week");
                json.writeNumber(option.week());
                number(json, "tenths", tenths(option));
                number(json, "cost", option.cost());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        return text.toString();
    }

    /** Whole numbers without a decimal point, null for what is not known. */
    private static void number(JsonGenerator json, String name, double value) {
        json.writeName(name);
        if (!Double.isFinite(value)) {
            json.writeNull();
        } else if (value == Math.rint(value) && Math.abs(value) < 1e15) {
            json.writeNumber((long) value);
        } else {
            json.writeNumber(value);
        }
    }

    static String text(String name, Schedule schedule, double seconds) {
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                "Schedule of %s: %s placed, %,d not%n"
                        + "Cost compared with no visit %,.2f; lower bound %,.2f; gap %.3f %%; %.1f s; %s%n%n",
                name,
                Figures.count(schedule.choices().size(), "truck", "trucks"),
                schedule.notPlaced().size(),
                schedule.cost(),
                bound(schedule),
                PERCENT * gap(schedule),
                seconds,
                ended(schedule.stop())));
        text.append(String.format(Locale.ROOT, "%-20s %5s %8s %12s", "truck", "week", "hours", "cost"));
        for (Schedule.Choice choice : schedule.choices()) {
            VisitOption option = choice.option();
            text.append(String.format(
                    Locale.ROOT,
                    "%n%-20s %5d %8.2f %,12.2f",
                    choice.truck(),
                    option.week(),
                    option.labourHours(),
                    option.cost()));
        }
        return text.toString();
    }

    private static String ended(Schedule.Stop stop) {
        return switch (stop) {
            case PROVEN -> "stopped: the gap is small enough";
            case WORK_LIMIT -> "stopped: work limit reached";
            case CLOCK -> "stopped: time limit reached";
            case RULE -> "planned by a fixed rule";
        };
    }

    private static double tenths(VisitOption option) {
        return Math.rint(option.labourHours() * InstanceFile.TENTHS * 1e6) / 1e6;
    }

    private static double bound(Schedule schedule) {
        Double bound = schedule.bound();
        return bound == null ? Double.NaN : bound;
    }

    private static double gap(Schedule schedule) {
        Double gap = schedule.gap();
        return gap == null ? Double.NaN : gap;
    }
}
