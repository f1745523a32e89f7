package dev.injectorplanner.app.web.settings;

import dev.injectorplanner.app.site.SiteRow;
import dev.injectorplanner.app.site.SiteTable;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.imports.table.Column;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Rows of small tables as fields in the site's units, and back. */
final class RowForm {
    private static final String DISTANCE_RULE = "distance_km";
    private static final Pattern RANGE = Pattern.compile("from (\\d+(?:\\.\\d+)?) to (\\d+(?:\\.\\d+)?)");

    private final SiteTable table;
    private final SiteUnits units;
    private final List<String> families;

    /** @param families names of the families there are */
    RowForm(SiteTable table, SiteUnits units, List<String> families) {
        this.table = table;
        this.units = units;
        this.families = families;
    }

    /**
     * The fields of a row.
     *
     * @param row the row to change, or null to add one
     * @param sent what was typed, or empty for what is stored
     * @param wrong sentences by column
     */
    List<RowField> fields(@Nullable SiteRow row, Map<String, String> sent, Map<String, String> wrong) {
        List<RowField> fields = new ArrayList<>();
        for (Column<?> column : table.table().columns()) {
            boolean fixed = row != null && table.table().keyColumns().contains(column.name());
            String stored = row == null ? "" : shown(column, row);
            String typed = fixed ? stored : sent.getOrDefault("v." + column.name(), stored);
            fields.add(new RowField(
                    column.name(),
                    label(column),
                    DisplayFormat.sentence(column.description()) + hint(column),
                    fixed ? List.of() : options(column),
                    fixed && typed.isEmpty() ? "all" : typed,
                    fixed,
                    column.required(),
                    Objects.requireNonNullElse(wrong.get(column.name()), "")));
        }
        return fields;
    }

    private static boolean isVolume(Column<?> column) {
        return column.headings().contains(column.base() + "_gal");
    }

    private String label(Column<?> column) {
        String words = DisplayFormat.sentence(column.base().replace('_', ' '));
        return words.replace(" percent", ", %") + (isVolume(column) ? ", " + units.volumeUnit() : "");
    }

    private String hint(Column<?> column) {
        return column.name().equals("limit") && units.distance() == SiteUnits.Distance.MILES
                ? "; a distance in " + units.distanceUnit()
                : "";
    }

    private String shown(Column<?> column, SiteRow row) {
        String cell = row.cells().getOrDefault(column.name(), "");
        if (cell.isEmpty()) {
            return cell;
        }
        if (isVolume(column)) {
            return SiteUnits.asTyped(units.ofLitres(Double.parseDouble(cell)));
        }
        return column.name().equals("limit") && DISTANCE_RULE.equals(row.cells().get("rule"))
                ? SiteUnits.asTyped(units.ofKm(Double.parseDouble(cell)))
                : cell;
    }

    private List<RowField.Option> options(Column<?> column) {
        if (column.name().equals("rule")) {
            return Stream.of(RuleKind.values())
                    .map(kind -> kind.name().toLowerCase(Locale.ROOT))
                    .map(name -> new RowField.Option(name, units.sentence(name.replace('_', ' '))))
                    .toList();
        }
        if (column.name().equals("family") && table != SiteTable.FAMILIES) {
            Stream<RowField.Option> all =
                    table == SiteTable.RULES ? Stream.of(new RowField.Option("all", "all families")) : Stream.empty();
            return Stream.concat(all, families.stream().map(family -> new RowField.Option(family, family)))
                    .toList();
        }
        return List.of();
    }

    /**
     * What was typed, by column, in km and litres for the intake; a figure that was not touched stays as it is stored.
     *
     * @throws InvalidValueException where a figure that must be converted is none
     */
    Map<String, String> cells(Map<String, String> sent, @Nullable SiteRow row) {
        Map<String, String> cells = new LinkedHashMap<>();
        String rule = rule(sent, row);
        for (Column<?> column : table.table().columns()) {
            String typed = sent.getOrDefault("v." + column.name(), "").strip();
            if (row != null && !typed.isEmpty() && typed.equals(shown(column, row))) {
                typed = row.cells().getOrDefault(column.name(), typed);
            } else if (isVolume(column) && units.volume() != SiteUnits.Volume.LITRES) {
                typed = converted(column, typed, units::toLitres);
            } else if (column.name().equals("limit")
                    && rule.equals(DISTANCE_RULE)
                    && units.distance() != SiteUnits.Distance.KM) {
                typed = converted(column, typed, units::toKm);
            }
            cells.put(column.name(), typed);
        }
        return cells;
    }

    private static String converted(Column<?> column, String typed, DoubleUnaryOperator convert) {
        if (!typed.isEmpty() && !typed.matches("\\d{1,9}(\\.\\d{1,6})?")) {
            throw new InvalidValueException(column.name(), typed, "is not a number", "write it as 12.5");
        }
        return typed.isEmpty() ? typed : Require.plain(convert.applyAsDouble(Double.parseDouble(typed)));
    }

    private static String rule(Map<String, String> sent, @Nullable SiteRow row) {
        return row == null ? sent.getOrDefault("v.rule", "") : row.cells().getOrDefault("rule", "");
    }

    /** What the intake says of figures in km and litres, said of those that were typed, with their unit. */
    Map<String, String> asTyped(Map<String, String> wrong, Map<String, String> sent, @Nullable SiteRow row) {
        Map<String, String> said = new LinkedHashMap<>(wrong);
        for (Column<?> column : table.table().columns()) {
            boolean distance = column.name().equals("limit") && rule(sent, row).equals(DISTANCE_RULE);
            if (isVolume(column) || distance) {
                DoubleUnaryOperator shown = distance ? units::ofKm : units::ofLitres;
                String unit = " " + (distance ? units.distanceUnit() : units.volumeUnit());
                String typed = "“" + sent.getOrDefault("v." + column.name(), "").strip() + unit + "”";
                said.computeIfPresent(
                        column.name(),
                        (name, words) ->
                                inUnit(words.replaceFirst("^“[^”]*”", Matcher.quoteReplacement(typed)), shown, unit));
            }
        }
        return said;
    }

    private static String inUnit(String words, DoubleUnaryOperator shown, String unit) {
        return RANGE.matcher(words)
                .replaceAll(range ->
                        "from " + figure(range.group(1), shown) + " to " + figure(range.group(2), shown) + unit);
    }

    private static String figure(String stored, DoubleUnaryOperator shown) {
        return SiteUnits.asTyped(shown.applyAsDouble(Double.parseDouble(stored)));
    }
}
