package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.check.Require;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Locale;

/**
 * Figures of the planning that no record tells and no person need know: chosen by replay on the fleet's own learned lives
 * ({@code core.replay.calibrate}), or set by the site. Together they span the simple rules: the margin moves the age at which an
 * injector is renewed anywhere on its life, the access share the age from which others go along, and with tests and signs at
 * nothing only ages are left.
 *
 * @param accessShare part of its share of a visit that a cylinder bears in its planned cost, 0 to 1: some visits are paid by another
 *     cylinder that fails
 * @param renewalMargin what each further use of an injector is worth, as a multiple of the long-run cost rate of new ones; above 1 keeps
 *     injectors longer, below 1 renews them earlier; 0.1 to 10
 * @param testWorth what a test is taken to be worth, as a multiple of what its result would change; 0 plans none; 0 to 5
 * @param signWeight how far faults and tests are believed, as an exponent of their likelihood ratio; 0 not at all, 1 as the records say; 0
 *     to 2
 */
@RecordBuilder
@RecordBuilder.Options(addClassRetainedGenerated = true)
public record PlanningFigures(double accessShare, double renewalMargin, double testWorth, double signWeight)
        implements PlanningFiguresBuilder.With {
    /** Half the even share, by replay; the rest as the models say. */
    public static final PlanningFigures STANDARD = new PlanningFigures(0.5, 1, 1, 1);

    public PlanningFigures {
        Require.within("access_share", accessShare, 0, 1);
        Require.within("renewal_margin", renewalMargin, 0.1, 10);
        Require.within("test_worth", testWorth, 0, 5);
        Require.within("sign_weight", signWeight, 0, 2);
    }

    /** In words, such as "access share 0.50, renewal margin 1.40, test worth 1.00, sign weight 1.00". */
    public String words() {
        return String.format(
                Locale.ROOT,
                "access share %.2f, renewal margin %.2f, test worth %.2f, sign weight %.2f",
                accessShare,
                renewalMargin,
                testWorth,
                signWeight);
    }
}
