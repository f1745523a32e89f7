package dev.injectorplanner.core.life;

import dev.injectorplanner.core.check.Require;

/**
 * What is believed of a part's Weibull life before its own records speak: shape and scale independent and log-normal.
 *
 * @param shape most believed shape (median), 0.1 to 50
 * @param shapeFactor the shape lies within a factor of this, up or down, with a chance of 68 %; 1.001 to 20
 * @param scale most believed scale (median), in the unit of the ages
 * @param scaleFactor the same for the scale, 1.001 to 1000
 */
public record WeibullPrior(double shape, double shapeFactor, double scale, double scaleFactor) {
    public WeibullPrior {
        Require.within("prior shape", shape, 0.1, 50);
        Require.within("prior shape factor", shapeFactor, 1.001, 20);
        Require.positive("prior scale", scale);
        Require.within("prior scale factor", scaleFactor, 1.001, 1000);
    }
}
