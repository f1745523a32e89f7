package dev.injectorplanner.app.stock;

import dev.injectorplanner.core.fleet.Origin;
import java.util.List;

/**
 * Injectors of one part received together.
 *
 * @param depot that receives them
 * @param part their part
 * @param origin new or reman
 * @param units each with its serial and code
 */
public record GoodsIn(String depot, String part, Origin origin, List<Unit> units) {
    public GoodsIn {
        units = List.copyOf(units);
    }

    /**
     * One injector.
     *
     * @param serial as typed or scanned
     * @param code calibration code as typed or scanned, empty where the part has none
     */
    public record Unit(String serial, String code) {}
}
