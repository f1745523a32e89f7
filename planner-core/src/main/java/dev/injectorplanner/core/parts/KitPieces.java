package dev.injectorplanner.core.parts;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * The pieces of one kit.
 *
 * @param certain pieces that are used for certain, by part
 * @param whole pieces to put into the kit, those that break by their chance included, by part
 */
public record KitPieces(Map<String, Double> certain, Map<String, Double> whole) {
    /** Of a visit that replaces nothing. */
    public static final KitPieces NONE = new KitPieces(Map.of(), Map.of());

    public KitPieces {
        certain = Collections.unmodifiableMap(new TreeMap<>(certain));
        whole = Collections.unmodifiableMap(new TreeMap<>(whole));
    }
}
