package dev.injectorplanner.core.coolant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.testkit.Published;
import org.junit.jupiter.api.Test;

/** Sources beside the tables: published/glycol.md. */
class E01_PublishedCurvesTest {
    private static double number(String text) {
        return Double.parseDouble(text);
    }

    private static double freezing(double volumePercent) {
        return GlycolWater.findFreezingPointC(volumePercent).orElseThrow();
    }

    @Test
    void melindersFreezingPoints() {
        for (String[] row : Published.rows("glycol_melinder.csv")) {
            double mass = number(row[0]) / 100;
            assertThat(Melinder.freezingC(mass)).as(row[0]).isCloseTo(number(row[1]), within(1e-8));
        }
    }

    @Test
    void ashraesTableRowByRow() {
        for (String[] row : Published.rows("glycol_ashrae.csv")) {
            double volume = number(row[1]);
            assertThat(GlycolWater.ashraeC(volume)).as(row[1]).isCloseTo(number(row[2]), within(1e-12));
            assertThat(GlycolWater.massPercent(volume)).as(row[1]).isCloseTo(number(row[0]), within(1e-12));
            assertThat(GlycolWater.melinderC(volume)).as(row[1]).isCloseTo(number(row[3]), within(1e-6));
            assertThat(freezing(volume))
                    .as(row[1])
                    .isEqualTo(Math.min(0, Math.max(GlycolWater.ashraeC(volume), GlycolWater.melinderC(volume))));
        }
    }

    /** How far the two sources lie apart, by percent of mass: the tolerances stated with the table. */
    @Test
    void theTwoCurvesDifferAsStated() {
        for (String[] row : Published.rows("glycol_ashrae.csv")) {
            double mass = number(row[0]);
            double stated = mass <= 30 ? 0.5 : mass <= 40 ? 1.6 : mass <= 50 ? 2.3 : 3.0;
            double gap = GlycolWater.ashraeC(number(row[1])) - GlycolWater.melinderC(number(row[1]));
            assertThat(gap).as(row[0]).isBetween(-0.001, stated + 0.01);
        }
    }

    @Test
    void aThirdSourceAgreesWithMelinder() {
        for (String[] row : Published.rows("glycol_depression.csv")) {
            assertThat(-Melinder.freezingC(number(row[0]) / 100)).as(row[0]).isCloseTo(number(row[1]), within(0.1));
        }
    }

    @Test
    void densitiesByVolume() {
        for (String[] row : Published.rows("glycol_densities.csv")) {
            assertThat(1_000 * GlycolWater.kgPerLitre(number(row[0])))
                    .as(row[0])
                    .isCloseTo(number(row[1]), within(1e-9));
        }
        // Melinder at 20 C, the second source
        for (String[] row : Published.rows("glycol_melinder.csv")) {
            assertThat(1_000 * GlycolWater.kgPerLitre(number(row[3])))
                    .as(row[0])
                    .isCloseTo(number(row[2]), withinPercentage(0.6));
        }
    }

    /** Ideal mixing of the pure liquids lies within half a percent of the table (stated with it). */
    @Test
    void percentOfVolumeAndOfMass() {
        for (String[] row : Published.rows("glycol_melinder.csv")) {
            assertThat(GlycolWater.massPercent(number(row[3]))).as(row[0]).isCloseTo(number(row[0]), within(0.5));
        }
        assertThat(GlycolWater.massPercent(50)).isCloseTo(52.4, within(0.05));
        assertThat(GlycolWater.massPercent(100)).isCloseTo(100, within(1e-12));
    }

    /** ASTM D3306, table 1, from memory: a 50 percent solution freezes at -36.4 C or below. */
    @Test
    void halfAndHalfMeetsTheStandardsLimit() {
        assertThat(freezing(50)).isBetween(-38.0, -36.4);
        assertThat(GlycolWater.curveUsed(50)).isEqualTo("ASHRAE 2001");
    }

    @Test
    void theStrengthForATemperatureProtectsToItAndNoMoreThanNeeded() {
        for (double c = -48.3; c < -0.5; c += 0.7) {
            double percent = GlycolWater.percentFor(c);
            assertThat(freezing(percent)).isLessThanOrEqualTo(c).isCloseTo(c, within(1e-6));
            assertThat(freezing(percent - 0.01)).isGreaterThan(c);
        }
        assertThat(GlycolWater.percentFor(5)).isZero();
        assertThat(GlycolWater.percentFor(-36.4)).isCloseTo(49.6, within(1e-9));
    }

    @Test
    void moreGlycolNeverFreezesEarlierWithinTheCurves() {
        double before = 1;
        for (double percent = 0; percent <= 60; percent += 0.1) {
            assertThat(freezing(percent)).isLessThanOrEqualTo(before);
            before = freezing(percent);
        }
    }

    @Test
    void beyondTheCurvesNothingIsClaimed() {
        assertThat(freezing(60)).isEqualTo(-48.3);
        assertThat(GlycolWater.findFreezingPointC(60.1)).isEmpty();
        assertThatThrownBy(() -> GlycolWater.percentFor(-50))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("below the range of the published freezing points: -48.3 C at 57.8 % by volume");
        assertThatThrownBy(() -> GlycolWater.percentFor(Double.NaN)).isInstanceOf(InvalidValueException.class);
    }
}
