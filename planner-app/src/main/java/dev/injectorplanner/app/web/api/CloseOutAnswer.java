package dev.injectorplanner.app.web.api;

import dev.injectorplanner.app.closeout.CloseOut;
import dev.injectorplanner.app.closeout.CloseOutEntry;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Close-outs as other programs read them. */
final class CloseOutAnswer {
    private CloseOutAnswer() {}

    static Map<String, Object> of(CloseOut row) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("close_out", row.id());
        fields.put("truck", row.truck());
        fields.put("depot", row.depot());
        fields.put("week", row.week());
        fields.put("done_on", row.doneOn().toString());
        fields.put("finished_at", row.finishedAt().toString());
        fields.put("version", row.version());
        fields.put("corrects", row.corrects());
        fields.put("corrected_by", row.correctedBy());
        fields.put("why", row.why());
        fields.put("labour_hours", row.labourHours());
        fields.put("odometer_km", row.odometerKm());
        fields.put("engine_hours", row.engineHours());
        fields.put("meter_replaced", row.meterReplaced());
        fields.put("extras", row.extras());
        fields.put("tasks", row.tasks());
        fields.put("recheck_on", text(row.recheckOn()));
        fields.put(
                "cylinders",
                row.cylinders().stream().map(CloseOutAnswer::cylinder).toList());
        fields.put("used", row.used().stream().map(CloseOutAnswer::used).toList());
        fields.put("tests", row.tests().stream().map(CloseOutAnswer::test).toList());
        fields.put("remarks", row.remarks());
        fields.put("made_at", row.madeAt().toString());
        fields.put("made_by", row.madeBy());
        CloseOut.Voided voided = row.voided();
        fields.put("voided_at", voided == null ? null : voided.at().toString());
        fields.put("voided_by", voided == null ? null : voided.by());
        fields.put("void_reason", voided == null ? null : voided.why());
        return fields;
    }

    private static @Nullable String text(@Nullable Object value) {
        return value == null ? null : value.toString();
    }

    private static Map<String, Object> cylinder(CloseOut.Done row) {
        Map<String, Object> fields = new LinkedHashMap<>();
        Found found = row.found();
        Origin origin = row.origin();
        fields.put("cylinder", row.cylinder());
        fields.put("fitted", row.fitted());
        fields.put("found", found == null ? null : JsonFields.word(found));
        fields.put("old_serial", row.oldSerial());
        fields.put("part", row.part());
        fields.put("serial", row.serial());
        fields.put("code", row.code());
        fields.put("origin", origin == null ? null : JsonFields.word(origin));
        fields.put("programmed", row.programmed());
        fields.put("read_back", JsonFields.word(row.readBack()));
        fields.put("reason", row.reason());
        fields.put("failed_first", row.failedFirst());
        return fields;
    }

    private static Map<String, Object> used(CloseOut.Taken row) {
        return Map.of("part", row.part(), "pieces", row.used(), "taken_from_stock", row.taken());
    }

    private static Map<String, Object> test(CloseOutEntry.Test row) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("cylinder", row.cylinder());
        fields.put("test", JsonFields.word(row.test()));
        fields.put("value", row.value());
        fields.put("unit", row.unit());
        fields.put("engine_state", row.engineState());
        return fields;
    }

    /** A page of a truck's, all versions, in the order in which they came in. */
    static Map<String, Object> page(List<CloseOut> rows, Cursor cursor) {
        List<CloseOut> after = rows.stream()
                .filter(row -> row.id() > cursor.after())
                .sorted(java.util.Comparator.comparingLong(CloseOut::id))
                .toList();
        List<CloseOut> shown = after.subList(0, Math.min(cursor.most(), after.size()));
        Map<String, Object> page = new LinkedHashMap<>();
        page.put("items", shown.stream().map(CloseOutAnswer::of).toList());
        page.put(
                "next",
                shown.size() < after.size()
                        ? Cursor.text(shown.get(shown.size() - 1).id())
                        : null);
        return page;
    }
}
