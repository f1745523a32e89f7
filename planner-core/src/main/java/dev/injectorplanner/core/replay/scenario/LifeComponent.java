package dev.injectorplanner.core.replay.scenario;

import dev.injectorplanner.core.check.Require;

/**
 * One of the ways in which injectors of a family truly end. A life is drawn from a component with the chance of its weight,
 * and is Weibull in km of wear.
 *
 * @param weight weighed against the family's other components, above 0
 * @param shape no unit: below 1 for early failures, 1 for chance, above 1 for wear
 * @param scaleKm km by which 63.2 % have failed, above 0
 * @param delayKm mean km from a defect that can be seen to the failure, 0 or more
 * @param suddenShare share that fails without a sign, 0 to 1
 */
public record LifeComponent(double weight, double shape, double scaleKm, double delayKm, double suddenShare) {
    public LifeComponent {
        Require.positive("weight", weight);
        Require.positive("shape", shape);
        Require.positive("scale_km", scaleKm);
        Require.notNegative("delay_km", delayKm);
        Require.within("sudden_share", suddenShare, 0, 1);
    }
}
