package dev.injectorplanner.app.web.settings;

import dev.injectorplanner.app.site.SiteRow;
import dev.injectorplanner.app.site.SiteTable;
import dev.injectorplanner.core.units.SiteUnits;
import java.util.ArrayList;
import java.util.List;

/** Rows of a small table in brief. */
final class RowList {
    private final SiteTable table;
    private final SiteUnits units;

    RowList(SiteTable table, SiteUnits units) {
        this.table = table;
        this.units = units;
    }

    /**
     * A list.
     *
     * @param columns names of its columns; those of figures first say so
     */
    record Listed(List<Head> columns, List<Line> lines) {}

    record Head(String name, boolean figure) {}

    /** A line with what tells its row from others. */
    record Line(String key, List<String> cells) {}

    Listed of(List<SiteRow> rows) {
        List<Line> lines = new ArrayList<>();
        rows.forEach(row -> lines.add(new Line(row.key(), cells(row))));
        return new Listed(columns(), lines);
    }

    private List<Head> columns() {
        return switch (table) {
            case FAMILIES ->
                heads(
                        "Family",
                        "#Cylinders",
                        "Firing order",
                        "#Hours a cylinder",
                        "#Coolant, " + units.volumeUnit(),
                        "#Glycol, %",
                        "Injector",
                        "#Road failure");
            case ACCESS -> heads("Family", "#Order", "Step", "#Hours", "Serves cylinders", "#Drains, %");
            case RULES -> heads("Rule", "Family", "#Limit", "Unit", "#Window, days");
            case DEPOTS ->
                heads(
                        "Depot",
                        "#Bays",
                        "#Hours a day",
                        "Work days",
                        "#Cost an hour",
                        "#Overtime an hour",
                        "#Overtime h a week");
        };
    }

    private static List<Head> heads(String... names) {
        return List.of(names).stream()
                .map(name -> name.startsWith("#") ? new Head(name.substring(1), true) : new Head(name, false))
                .toList();
    }

    private List<String> cells(SiteRow row) {
        return switch (table) {
            case FAMILIES ->
                List.of(
                        cell(row, "family"),
                        cell(row, "cylinders"),
                        cell(row, "firing_order"),
                        cell(row, "cylinder_hours"),
                        units.volumeFigure(number(row, "coolant_l")),
                        cell(row, "glycol_percent"),
                        cell(row, "injector_part"),
                        cell(row, "road_failure_cost"));
            case ACCESS ->
                List.of(
                        cell(row, "family"),
                        cell(row, "order"),
                        cell(row, "step"),
                        cell(row, "hours"),
                        cell(row, "cylinders"),
                        cell(row, "drains_coolant_percent"));
            case RULES -> rule(row);
            case DEPOTS ->
                List.of(
                        cell(row, "depot"),
                        cell(row, "bays"),
                        cell(row, "labour_hours_per_day"),
                        cell(row, "work_days"),
                        cell(row, "labour_per_hour"),
                        cell(row, "overtime_per_hour"),
                        cell(row, "overtime_hours_per_week"));
        };
    }

    private List<String> rule(SiteRow row) {
        String rule = cell(row, "rule");
        boolean distance = rule.equals("distance_km");
        String unit = switch (rule) {
            case "age_months" -> "months";
            case "distance_km" -> units.distanceUnit();
            case "engine_hours" -> "hours";
            case "faults" -> "faults";
            case "balance" -> "mm3/stroke";
            case "return_flow" -> "ml/min";
            case "risk" -> "%";
            default -> "days";
        };
        double limit = number(row, "limit");
        return List.of(
                units.sentence(rule.replace('_', ' ')),
                cell(row, "family").isEmpty() ? "all" : cell(row, "family"),
                shown(distance ? units.ofKm(limit) : limit),
                unit,
                cell(row, "window_days"));
    }

    private static String cell(SiteRow row, String column) {
        return row.cells().getOrDefault(column, "");
    }

    private static double number(SiteRow row, String column) {
        String cell = cell(row, column);
        return cell.isEmpty() ? 0 : Double.parseDouble(cell);
    }

    private static String shown(double value) {
        return dev.injectorplanner.core.units.Figures.tenths(value);
    }
}
