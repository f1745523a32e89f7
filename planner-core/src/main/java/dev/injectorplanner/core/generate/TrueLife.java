package dev.injectorplanner.core.generate;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.Origin;

/**
 * How injectors of one part and origin truly wear out: Weibull in km since fitting.
 *
 * @param part part number
 * @param origin new or reman
 * @param shape no unit, above 1 where they wear
 * @param scaleKm km by which 63.2 % have failed
 */
public record TrueLife(String part, Origin origin, double shape, double scaleKm) {
    public TrueLife {
        Require.positive("shape", shape);
        Require.positive("scale_km", scaleKm);
    }
}
