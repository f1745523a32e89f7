package dev.injectorplanner.app.site;

import java.util.Arrays;
import java.util.Map;

/** Whether rows that refer to a row still fit it when it has changed, where the intake of files does not ask. */
final class RowFit {
    private RowFit() {}

    /** @return what does not fit, by column; empty where all does */
    static Map<String, String> check(SiteRows rows, SiteTable table, Map<String, String> row) {
        String cylinders = row.getOrDefault("cylinders", "").strip();
        if (table != SiteTable.FAMILIES || !cylinders.matches("\\d{1,2}")) {
            return Map.of();
        }
        int most = Integer.parseInt(cylinders);
        return rows.list(SiteTable.ACCESS).stream()
                .filter(step ->
                        String.valueOf(row.get("family")).equals(step.cells().get("family")))
                .filter(step -> Arrays.stream(
                                step.cells().getOrDefault("cylinders", "").split("\\D+", -1))
                        .anyMatch(cylinder -> !cylinder.isEmpty() && Integer.parseInt(cylinder) > most))
                .findFirst()
                .map(step -> Map.of(
                        "cylinders",
                        "“" + cylinders + "”: access step " + step.cells().get("step")
                                + " serves cylinders above that. Fix: correct the step first."))
                .orElse(Map.of());
    }
}
