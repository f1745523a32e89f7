package dev.injectorplanner.core.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.generate.GeneratedFleet;
import dev.injectorplanner.core.generate.InjectorTruth;
import dev.injectorplanner.core.generate.TrueLife;
import dev.injectorplanner.core.history.Clock;
import dev.injectorplanner.core.history.LifeSource;
import dev.injectorplanner.core.history.PartLife;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Forecasts against what a made-up fleet, whose truth is known, then did. The fleet is made until 24 May 2026 and its tables
 * are cut back to 1 March, so that the planner knows nothing of the twelve weeks between. An injector in service on 1 March
 * counts as failed where its true life is used up by the km its truck had run on 24 May, whether or not the workshop took it
 * out before. The weeks are those in which the made-up trucks run their year's average.
 */
class F01_CalibrationTest {
    private static final LocalDate END = LocalDate.of(2026, 5, 24);
    private static final LocalDate DAY = END.minusDays(84);
    private static final GeneratedFleet MADE = Forecasted.made(2_000, 11, END);
    private static final Forecasted NOW = Forecasted.on(Cut.at(MADE.snapshot(), DAY), DAY);

    private record Case(InjectorRisk risk, boolean failed) {}

    private static List<Case> cases() {
        Map<String, InjectorTruth> units = new HashMap<>();
        Map<String, Double> ranKm = new HashMap<>();
        for (InjectorTruth unit : MADE.truth().injectors()) {
            units.put(unit.truck() + "/" + unit.cylinder() + "/" + unit.fittedOn(), unit);
            if (unit.end() == InjectorTruth.End.RUNNING) {
                ranKm.put(unit.truck(), unit.fittedKm() + unit.endKm());
            }
        }
        List<Case> cases = new ArrayList<>();
        NOW.ages()
                .forEach(age -> NOW.risk().find(age.truck(), age.cylinder()).ifPresent(risk -> {
                    InjectorTruth unit = units.get(age.truck() + "/" + age.cylinder() + "/" + age.fittedOn());
                    cases.add(new Case(risk, unit.fittedKm() + unit.lifeKm() <= ranKm.get(age.truck())));
                }));
        cases.sort(Comparator.comparingDouble(one -> one.risk().chance12()));
        return cases;
    }

    /** Ten bins by chance; within 3.3 binomial errors each (one bin in a thousand is outside by luck alone). */
    @Test
    void chancesWithinTwelveWeeksMatchWhatHappened() {
        List<Case> cases = cases();
        assertThat(cases).hasSizeGreaterThan(10_000);
        double chiSquare = 0;
        double expectedInAll = 0;
        double seenInAll = 0;
        for (int bin = 0; bin < 10; bin++) {
            double expected = 0;
            double variance = 0;
            double seen = 0;
            for (Case one : cases.subList(bin * cases.size() / 10, (bin + 1) * cases.size() / 10)) {
                double chance = one.risk().chance12();
                expected += chance;
                variance += chance * (1 - chance);
                seen += one.failed() ? 1 : 0;
            }
            assertThat(Math.abs(seen - expected))
                    .as("bin %d: expected %.1f, seen %.0f", bin, expected, seen)
                    .isLessThan(3.3 * Math.sqrt(variance) + 0.5);
            chiSquare += (seen - expected) * (seen - expected) / variance;
            expectedInAll += expected;
            seenInAll += seen;
        }
        // 0.999 quantile of chi-square with 10 degrees of freedom: 29.6, from printed tables
        assertThat(chiSquare).isLessThan(29.6);
        assertThat(seenInAll / expectedInAll).isBetween(0.85, 1.15);
        assertThat(seenInAll).isGreaterThan(150);
    }

    /** Those that show something fail far more often than those of the same fleet that do not, as the forecast says. */
    @Test
    void signsTellTheOnesThatFail() {
        double shown = share(true);
        double silent = share(false);
        assertThat(shown).isGreaterThan(10 * silent);
    }

    private static double share(boolean shown) {
        List<Case> cases = cases().stream()
                .filter(one -> one.risk().condition().contains("several") == shown)
                .toList();
        return cases.stream().filter(Case::failed).count() / (double) cases.size();
    }

    /**
     * Shape and scale near the truth. The fit sees a removal as worn, not the failure it forestalled, and stands in half a
     * mean delay for what was left: worth some percent, beside the sampling error of the fit.
     */
    @Test
    void fittedLivesAreNearTheTruth() {
        for (TrueLife truth : MADE.truth().lives()) {
            PartLife life = NOW.risk().lives().of(truth.part(), truth.origin());
            assertThat(life.source()).as(life.toString()).isEqualTo(LifeSource.FITTED);
            assertThat(life.clock()).as(life.toString()).isEqualTo(Clock.DISTANCE);
            assertThat(life.life().shape()).as(life.toString()).isCloseTo(truth.shape(), within(0.15 * truth.shape()));
            double tolerance = truth.origin() == Origin.NEW ? 0.1 : 0.15;
            assertThat(life.life().scale())
                    .as(life.toString())
                    .isCloseTo(truth.scaleKm(), within(tolerance * truth.scaleKm()));
        }
    }

    /**
     * The generator's defects last 2,000 km and 18,000 more on average, show a fault each 2,200 km, so that hardly one in ten
     * comes without any, and a test finds nearly all but the first.
     */
    @Test
    void theBehaviourOfDefectsIsNearTheTruth() {
        for (DefectEstimate estimate : NOW.risk().defects()) {
            assertThat(estimate.delaySource()).isEqualTo(DefectEstimate.RECORDS);
            assertThat(estimate.meanDelayKm()).as(estimate.toString()).isBetween(15_000.0, 26_000.0);
            assertThat(estimate.sensitivity()).as(estimate.toString()).isBetween(0.7, 0.98);
            assertThat(estimate.silentShare()).as(estimate.toString()).isBetween(0.02, 0.2);
        }
    }

    /** What the old way, counting those found worn as merely not seen to fail, would make of the same records. */
    @Test
    void countingWornOnesAsNotSeenToFailWouldMakeLivesLookLonger() {
        for (TrueLife truth : MADE.truth().lives()) {
            double scale = CensoredWorn.scale(NOW, truth.part(), truth.origin());
            assertThat(scale)
                    .as(truth.toString())
                    .isGreaterThan(NOW.risk()
                            .lives()
                            .of(truth.part(), truth.origin())
                            .life()
                            .scale());
        }
    }
}
