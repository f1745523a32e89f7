package dev.injectorplanner.app.site;

import java.util.Map;

/**
 * A row of a small table as stored.
 *
 * @param key what tells it from the others, as people read it
 * @param cells its cells by column, in km and litres
 * @param mark changes with the row: whoever changes it says which one he saw
 */
public record SiteRow(String key, Map<String, String> cells, String mark) {}
