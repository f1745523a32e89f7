package dev.injectorplanner.core.allocation;

import dev.injectorplanner.core.calendar.IsoWeek;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * The kit of one visit.
 *
 * @param truck its truck
 * @param depot where
 * @param week its ISO week
 * @param by the last day on which its kit can be complete and the visit still fit into its week
 * @param asked whether the visit was asked for (a pin, a safety date): it takes before the others
 * @param pieces pieces by part
 */
public record KitNeed(
        String truck, String depot, IsoWeek week, LocalDate by, boolean asked, Map<String, Double> pieces) {
    public KitNeed {
        pieces = Collections.unmodifiableMap(new TreeMap<>(pieces));
    }

    /** One visit of one truck and week. */
    String key() {
        return truck + "\n" + week;
    }
}
