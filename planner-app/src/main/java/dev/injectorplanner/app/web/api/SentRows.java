package dev.injectorplanner.app.web.api;

import dev.injectorplanner.imports.table.Column;
import dev.injectorplanner.imports.table.Table;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Rows of one table as they were sent: {@code {"rows": [{...}]}}, fields named as the table's columns.
 *
 * @param headings columns that some row has
 * @param rows cells in their order, empty where a row has none
 */
record SentRows(List<String> headings, List<List<String>> rows) {
    /** Rows that one request may bring. */
    static final int MOST = 1_000;

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    SentRows {
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
    }

    /** @throws ApiRefusal where the text is not that, or a field is no column of the table */
    static SentRows of(Table<?> table, String body) {
        List<JsonNode> objects = objects(body);
        Set<String> known = new LinkedHashSet<>();
        for (Column<?> column : table.columns()) {
            known.addAll(column.headings());
        }
        Set<String> used = new LinkedHashSet<>();
        for (int i = 0; i < objects.size(); i++) {
            for (Map.Entry<String, JsonNode> field : objects.get(i).properties()) {
                if (!known.contains(field.getKey())) {
                    throw ApiRefusal.badRequest(
                            "Row " + (i + 1) + ": field \"" + shortened(field.getKey()) + "\" is not a column of table "
                                    + table.name() + ". Fix: use " + String.join(", ", known) + ".");
                }
                used.add(field.getKey());
            }
        }
        table.columns().stream().filter(Column::required).map(Column::name).forEach(used::add);
        List<String> headings = known.stream().filter(used::contains).toList();
        return new SentRows(
                headings, objects.stream().map(row -> cells(row, headings)).toList());
    }

    private static List<JsonNode> objects(String body) {
        JsonNode rows = SentJson.read(JSON, body, "send {\"rows\": [{...}]}").path("rows");
        if (!rows.isArray() || rows.isEmpty()) {
            throw ApiRefusal.badRequest("The body has no rows. Fix: send {\"rows\": [{...}]} with at least one row.");
        }
        if (rows.size() > MOST) {
            throw ApiRefusal.badRequest("The body has " + rows.size() + " rows, at most " + MOST
                    + " go in one request. Fix: send them in several.");
        }
        List<JsonNode> objects = new ArrayList<>();
        for (JsonNode row : rows) {
            if (!row.isObject()) {
                throw ApiRefusal.badRequest(
                        "Row " + (objects.size() + 1) + " is not an object. Fix: send {\"rows\": [{...}]}.");
            }
            objects.add(row);
        }
        return objects;
    }

    private static List<String> cells(JsonNode row, List<String> headings) {
        return headings.stream()
                .map(heading -> cell(heading, row.path(heading)))
                .toList();
    }

    private static String cell(String heading, JsonNode value) {
        if (value.isMissingNode() || value.isNull()) {
            return "";
        }
        if (value.isBoolean()) {
            return value.booleanValue() ? "yes" : "no";
        }
        if (value.isNumber()) {
            return value.decimalValue().toPlainString();
        }
        if (value.isString()) {
            return value.stringValue();
        }
        throw ApiRefusal.badRequest("Field \"" + heading + "\" is neither text nor a number. Fix: send one of them.");
    }

    private static String shortened(String text) {
        return text.length() <= 60 ? text : text.substring(0, 57) + "...";
    }
}
