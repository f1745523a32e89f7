package dev.injectorplanner.app.web.api;

import dev.injectorplanner.app.closeout.CloseOut;
import dev.injectorplanner.app.closeout.CloseOutEntry;
import dev.injectorplanner.app.entry.EntryProblem;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.TestKind;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A close-out as another program sent it.
 *
 * @param entry what was done
 * @param corrects number of the close-out it corrects, or null where it is a new one
 * @param why why it is corrected or voided, else empty
 * @param voids number of the close-out that it voids, or null; nothing else of the entry counts then
 */
record SentCloseOut(
        CloseOutEntry entry,
        @Nullable Long corrects,
        String why,
        @Nullable Long voids) {
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private static final Set<String> FIELDS = Set.of(
            "truck",
            "week",
            "done_on",
            "labour_hours",
            "odometer_km",
            "engine_hours",
            "meter_replaced",
            "extras",
            "tasks",
            "recheck_on",
            "cylinders",
            "used",
            "tests",
            "corrects",
            "voids",
            "why",
            "finished_at");
    private static final Set<String> OF_CYLINDER = Set.of(
            "cylinder",
            "fitted",
            "found",
            "serial",
            "code",
            "origin",
            "programmed",
            "read_back",
            "compared",
            "reason",
            "failed_first");
    private static final Set<String> OF_PART = Set.of("part", "pieces");
    private static final Set<String> OF_TEST = Set.of("cylinder", "test", "value", "unit", "engine_state");

    /** Our forms' fields and where they stand in what was sent. */
    private static final Map<String, String> PLACES = Map.of(
            "doneOn", "/done_on",
            "labourHours", "/labour_hours",
            "odometer", "/odometer_km",
            "engineHours", "/engine_hours",
            "recheckOn", "/recheck_on",
            "engineState", "/tests",
            "readBack", "read_back",
            "failedFirst", "failed_first",
            "finishedAt", "/finished_at",
            "task", "/tasks");

    /**
     * Reads a body.
     *
     * @param formKey names the sending
     * @throws ApiRefusal where it is not what it should be
     */
    static SentCloseOut of(String body, String formKey) {
        JsonNode sent = SentJson.read(JSON, body, "send {\"truck\": ..., \"cylinders\": [{...}]}");
        JsonFields fields = new JsonFields(sent, "", FIELDS);
        String week = fields.text("week").strip();
        CloseOutEntry entry = new CloseOutEntry(
                formKey,
                fields.required("truck"),
                week.isEmpty() ? null : week,
                fields.day("done_on"),
                fields.number("labour_hours"),
                fields.number("odometer_km"),
                fields.number("engine_hours"),
                fields.yes("meter_replaced"),
                fields.text("extras"),
                fields.texts("tasks"),
                fields.day("recheck_on"),
                fields.objects("cylinders", OF_CYLINDER).stream()
                        .map(SentCloseOut::cylinder)
                        .toList(),
                fields.objects("used", OF_PART).stream().map(SentCloseOut::used).toList(),
                fields.objects("tests", OF_TEST).stream()
                        .map(SentCloseOut::test)
                        .toList(),
                hour(fields.text("finished_at").strip()));
        return new SentCloseOut(entry, fields.whole("corrects"), fields.text("why"), fields.whole("voids"));
    }

    private static @Nullable LocalTime hour(String text) {
        try {
            return text.isEmpty() ? null : LocalTime.parse(text);
        } catch (DateTimeParseException e) {
            throw ApiRefusal.badRequest("finished_at \"" + text
                    + "\" is not an hour of the day. Fix: send it as \"14:30\", in the depot's time.");
        }
    }

    private static CloseOutEntry.Cylinder cylinder(JsonFields fields) {
        return new CloseOutEntry.Cylinder(
                fields.cylinder("cylinder"),
                fields.yes("fitted"),
                fields.constant(Found.class, "found"),
                fields.text("serial").strip(),
                fields.text("code").strip(),
                fields.constant(Origin.class, "origin"),
                fields.yes("programmed"),
                fields.text("read_back").strip(),
                fields.yes("compared"),
                fields.text("reason").strip(),
                fields.text("failed_first").strip());
    }

    private static CloseOutEntry.Used used(JsonFields fields) {
        Double pieces = fields.number("pieces");
        return new CloseOutEntry.Used(fields.required("part"), pieces == null ? 1 : pieces);
    }

    private static CloseOutEntry.Test test(JsonFields fields) {
        int cylinder = fields.cylinder("cylinder");
        fields.required("test");
        TestKind kind = Objects.requireNonNull(fields.constant(TestKind.class, "test"));
        Double value = fields.number("value");
        if (value == null) {
            throw ApiRefusal.badRequest("A test of cylinder " + cylinder + " has no value. Fix: send the number.");
        }
        return new CloseOutEntry.Test(
                cylinder,
                kind,
                value,
                fields.required("unit"),
                fields.text("engine_state").strip());
    }

    /** Whether a kept close-out is what was sent here. */
    boolean isOf(CloseOut kept) {
        return Objects.equals(corrects, kept.corrects())
                && Objects.equals(entry.doneOn(), kept.doneOn())
                && Objects.equals(entry.week(), kept.week())
                && Objects.equals(entry.labourHours(), kept.labourHours())
                && Objects.equals(entry.odometerKm(), kept.odometerKm())
                && entry.extras().equals(kept.extras())
                && Set.copyOf(entry.tasks()).equals(Set.copyOf(kept.tasks()))
                && entry.cylinders().stream()
                        .map(each -> each.cylinder() + " " + each.fitted() + " " + each.found())
                        .collect(Collectors.toSet())
                        .equals(kept.cylinders().stream()
                                .map(each -> each.cylinder() + " " + each.fitted() + " " + each.found())
                                .collect(Collectors.toSet()));
    }

    /** A problem with its place in what was sent, as a JSON pointer (RFC 6901). */
    Map<String, Object> problem(EntryProblem problem) {
        return Map.of("field", place(problem.field()), "detail", problem.words());
    }

    private String place(String field) {
        int dot = field.indexOf('.');
        if (dot < 0) {
            return PLACES.getOrDefault(field, "/" + field);
        }
        String row = field.substring(0, dot);
        String rest = field.substring(dot + 1);
        List<String> rows = switch (row.charAt(0)) {
            case 'c' ->
                entry.cylinders().stream().map(each -> "c" + each.cylinder()).toList();
            case 't' ->
                entry.tests().stream()
                        .map(each -> "t" + each.cylinder() + "." + each.test())
                        .toList();
            default -> entry.used().stream().map(each -> "used." + each.part()).toList();
        };
        return row.charAt(0) == 'c'
                ? "/cylinders/" + rows.indexOf(row) + "/" + PLACES.getOrDefault(rest, rest)
                : (row.charAt(0) == 't' ? "/tests/" : "/used/") + rows.indexOf(field);
    }
}
