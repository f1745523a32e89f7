package dev.injectorplanner.app.stock;

import dev.injectorplanner.core.fleet.Origin;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Injectors of one part received together.
 *
 * @param depot that receives them
 * @param part their part
 * @param origin new or reman
 * @param units each with its serial and code
 * @param order the purchase order they came with, or null where they came without one
 * @param counted whether they are counted among the pieces on hand already and only get their serials
 */
public record GoodsIn(
        String depot,
        String part,
        Origin origin,
        List<Unit> units,
        @Nullable String order,
        boolean counted) {
    public GoodsIn {
        units = List.copyOf(units);
        order = order == null || order.isBlank() ? null : order.strip();
    }

    /** Received now. */
    public GoodsIn(String depot, String part, Origin origin, List<Unit> units, @Nullable String order) {
        this(depot, part, origin, units, order, false);
    }

    /** Received without an order. */
    public GoodsIn(String depot, String part, Origin origin, List<Unit> units) {
        this(depot, part, origin, units, null);
    }

    /**
     * One injector.
     *
     * @param serial as typed or scanned
     * @param code calibration code as typed or scanned, empty where the part has none
     */
    public record Unit(String serial, String code) {}
}
