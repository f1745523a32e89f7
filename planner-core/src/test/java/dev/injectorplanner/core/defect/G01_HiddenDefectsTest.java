package dev.injectorplanner.core.defect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.life.EarlyFailures;
import dev.injectorplanner.core.life.PredictiveLife;
import dev.injectorplanner.core.life.WeibullLife;
import dev.injectorplanner.core.replace.AgeReplacement;
import dev.injectorplanner.core.replace.AgeReplacementPolicy;
import dev.injectorplanner.core.replace.DeferralCost;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What comes of a hidden defect: chances, prices and the worth of a test, against hand work, closed forms and plain draws. */
class G01_HiddenDefectsTest {
    private static final double[] SOUND_BANDS = {0.9, 0, 0, 0.1, 0};
    private static final double[] DEFECT_BANDS = {0.2, 0, 0, 0.8, 0};

    private static DefectModel model(double delay, double sudden, double arrivals) {
        return new DefectModel(
                delay,
                sudden,
                arrivals,
                new StateSigns(new double[] {0.97, 0.02, 0.01}, 0.001, 0.003, SOUND_BANDS, SOUND_BANDS, 0.1),
                new StateSigns(new double[] {0.7, 0.2, 0.1}, 0.001, 0.01, DEFECT_BANDS, DEFECT_BANDS, 0.8),
                0);
    }

    private static PredictiveLife life(double shape, double scale) {
        return PredictiveLife.certain(new WeibullLife(shape, scale));
    }

    @Test
    void whatHappensAddsUpWhateverTheSteps() {
        FailurePath fine = new FailurePath(model(12_000, 0.1, 0.9), life(2.5, 400_000), 150_000, 0.2, 1e-5);
        FailurePath coarse = new FailurePath(model(12_000, 0.1, 0.9), life(2.5, 400_000), 150_000, 0.2, 1e-5);
        for (int step = 0; step < 200; step++) {
            fine.goOn(250);
        }
        for (int step = 0; step < 10; step++) {
            coarse.goOn(5_000);
        }
        assertThat(fine.failed() + fine.takenOut() + fine.alive()).isCloseTo(1, within(1e-12));
        assertThat(coarse.failed() + coarse.takenOut() + coarse.alive()).isCloseTo(1, within(1e-12));
        assertThat(coarse.failed()).isCloseTo(fine.failed(), within(2e-4));
        assertThat(coarse.aliveUse()).isCloseTo(fine.aliveUse(), within(60.0));
    }

    /** 200,000 lives drawn one by one: sound for an exponential time, then an exponential delay, or a sudden end. Seed 7. */
    @Test
    void chancesAreThoseOfTheDraws() {
        Random random = new Random(7);
        double hazard = 1 / 100_000.0;
        int failed = 0;
        int draws = 200_000;
        for (int i = 0; i < draws; i++) {
            double sudden = -Math.log(1 - random.nextDouble()) / (0.2 * hazard);
            double arises = -Math.log(1 - random.nextDouble()) / (0.8 * hazard);
            double fails = arises - 20_000 * Math.log(1 - random.nextDouble());
            failed += sudden <= arises && sudden <= 50_000 || arises < sudden && fails <= 50_000 ? 1 : 0;
        }
        FailurePath path = new FailurePath(model(20_000, 0.2, 0.8), life(1, 100_000), 0, 0, 0);
        path.goOn(50_000);
        double chance = failed / (double) draws;
        assertThat(path.failed()).isCloseTo(chance, within(4 * Math.sqrt(chance * (1 - chance) / draws)));
    }

    /** With a delay of next to nothing, and signs that nobody watches, it is age replacement (Barlow and Hunter 1960). */
    @Test
    void withoutSignsItIsAgeReplacement() {
        AgeReplacementPolicy published = AgeReplacement.best(new WeibullLife(4, 300_000), 800, 5_300);
        AgeReplacementPolicy ours = WatchedReplacement.best(model(1, 0, 1), life(4, 300_000), 800, 1_200, 5_300, 0);
        assertThat(ours.costRate()).isCloseTo(published.costRate(), within(0.02 * published.costRate()));
        Double age = published.age();
        Double oursAge = ours.age();
        assertThat(age).isNotNull();
        assertThat(oursAge).isNotNull();
        assertThat(oursAge).isCloseTo(age, within(0.05 * age));
    }

    @Test
    void aConstantHazardOrACheapFailureNeverReplacesOnAge() {
        assertThat(WatchedReplacement.best(model(1, 0, 1), life(1, 300_000), 800, 1_200, 5_300, 0)
                        .age())
                .isNull();
        assertThat(WatchedReplacement.best(model(1, 0, 1), life(3, 300_000), 800, 800, 800, 0)
                        .age())
                .isNull();
    }

    /** Signs that show a defect in time let injectors run longer, at less cost. */
    @Test
    void watchedSignsLetInjectorsRunLonger() {
        AgeReplacementPolicy blind =
                WatchedReplacement.best(model(15_000, 0.1, 0.9), life(3, 400_000), 800, 1_200, 5_300, 0);
        AgeReplacementPolicy seen =
                WatchedReplacement.best(model(15_000, 0.1, 0.9), life(3, 400_000), 800, 1_200, 5_300, 1 / 5_000.0);
        assertThat(seen.costRate()).isLessThan(blind.costRate());
        assertThat(seen.age()).isGreaterThan(blind.age());
    }

    private static CostOfDeferring.Terms terms(double rate, double leaves) {
        return new CostOfDeferring.Terms(800, 800, 5_300, rate, new WeibullLife(3, 400_000)::hazard, 1_500, leaves);
    }

    /** With a delay of next to nothing it is the deferral cost in closed form. */
    @Test
    void deferringASoundOneCostsWhatTheClosedFormSays() {
        double rate =
                AgeReplacement.best(new WeibullLife(3, 400_000), 800, 5_300).costRate();
        DeferralCost closed = new DeferralCost(new WeibullLife(3, 400_000), 1, 800, 5_300, rate);
        for (double age : new double[] {20_000, 150_000, 260_000, 400_000}) {
            FailurePath path = new FailurePath(model(1, 0, 1), life(3, 400_000), age, 0, 0);
            CostOfDeferring ours =
                    CostOfDeferring.of(path, terms(rate, Double.POSITIVE_INFINITY), new double[] {0, 4, 12, 25}, 26);
            assertThat(ours.until()[0]).isZero();
            assertThat(ours.until()[2]).isCloseTo(closed.cost(age, age + 18_000), within(1.5));
            double best = closed.bestMoment(age, age + 39_000).cost();
            assertThat(ours.later()).as("age %f", age).isCloseTo(best, within(2 + 0.01 * Math.abs(best)));
        }
    }

    /** A truck that leaves in two weeks renews nothing, however old; one that stays does. */
    @Test
    void aTruckThatLeavesRenewsNothing() {
        double rate =
                AgeReplacement.best(new WeibullLife(3, 400_000), 800, 5_300).costRate();
        FailurePath leaving = new FailurePath(model(1, 0, 1), life(3, 400_000), 400_000, 0, 0);
        CostOfDeferring soon = CostOfDeferring.of(leaving, terms(rate, 2), new double[] {0, 1}, 26);
        assertThat(soon.until()[0] - soon.later()).isGreaterThan(600);
        FailurePath staying = new FailurePath(model(1, 0, 1), life(3, 400_000), 400_000, 0, 0);
        CostOfDeferring never =
                CostOfDeferring.of(staying, terms(rate, Double.POSITIVE_INFINITY), new double[] {0, 1}, 26);
        assertThat(never.until()[0]).isLessThan(never.later());
    }

    /** Of a truck that leaves in a week, what would fail in the twelve weeks after that costs nobody anything. */
    @Test
    void nothingFailsAfterItsTruckHasLeft() {
        double[] moments = {0, 1, 6, 12};
        FailurePath path = new FailurePath(model(12_000, 0.1, 0.9), life(3, 400_000), 300_000, 0.9, 0);
        CostOfDeferring leaving = CostOfDeferring.of(path, terms(0.005, 1), moments, 13);
        FailurePath week = new FailurePath(model(12_000, 0.1, 0.9), life(3, 400_000), 300_000, 0.9, 0);
        week.goOn(1_500);
        assertThat(leaving.until()[3]).isEqualTo(leaving.until()[1]);
        assertThat(leaving.later()).isCloseTo(4_500 * week.failed() - 800 * week.alive(), within(0.005 * 1_500));
    }

    /** A truck that stands wears nothing out: leaving its injectors in saves their replacement whole. */
    @Test
    void aTruckThatStandsRenewsNothing() {
        FailurePath path = new FailurePath(model(12_000, 0.1, 0.9), life(3, 400_000), 300_000, 0.2, 0);
        CostOfDeferring.Terms standing = new CostOfDeferring.Terms(
                800, 800, 5_300, 0.005, new WeibullLife(3, 400_000)::hazard, 0, Double.POSITIVE_INFINITY);
        CostOfDeferring cost = CostOfDeferring.of(path, standing, new double[] {0, 4}, 13);
        assertThat(cost.until()).containsOnly(0);
        assertThat(cost.later()).isEqualTo(-800);
    }

    /** As many early failures come of defects as the life has, however long the delay; wear hardly plays at this age. */
    @Test
    void noEarlyFailureGetsLostOnItsWay() {
        EarlyFailures early = new EarlyFailures(0.08, 40_000);
        for (double delay : new double[] {1_000, 10_000, 20_000, 60_000}) {
            FailurePath path =
                    new FailurePath(model(delay, 0.1, 0.9), life(6, 4_000_000).with(early), 0, 0, 0);
            for (int step = 0; step < 400; step++) {
                path.goOn(2_000);
            }
            assertThat(path.failed()).as("delay %f", delay).isCloseTo(0.08, within(0.004));
        }
    }

    /**
     * By hand: leaving a sound one costs nothing, one with a defect 1,000, replacing 300; a defect with a chance of 0.2. Without
     * the test leaving is cheaper, 200. The test is over its limit with 0.8 x 0.1 + 0.2 x 0.8 = 0.24: then the chance is two
     * thirds, and it is replaced, 0.24 x 300 = 72; else it is left, 0.2 x 0.2 x 1,000 = 40. Worth 200 - 112 = 88.
     */
    @Test
    void aTestIsWorthWhatItsResultWouldChange() {
        TestWorth worth = new TestWorth(model(1_000, 0, 1), Set.of(TestKind.BALANCE), 0, 1_000, 300);
        assertThat(worth.at(0.2)).isCloseTo(88, within(1e-9));
        assertThat(worth.at(0)).isZero();
        assertThat(worth.at(1)).isZero();
        assertThat(worth.at(0.001)).as("no result would change anything").isZero();
    }

    @Test
    void earlyFailuresStandBesideWear() {
        EarlyFailures early = new EarlyFailures(0.08, 20_000);
        assertThat(early.survival(0)).isEqualTo(1);
        assertThat(early.survival(1e7)).isCloseTo(0.92, within(1e-9));
        assertThat(early.cumulativeHazard(5_000, 30_000))
                .isCloseTo(Math.log(early.survival(5_000) / early.survival(35_000)), within(1e-12));
        PredictiveLife both = life(3, 400_000).with(early);
        assertThat(both.survival(100_000)).isCloseTo(Math.exp(-1 / 64.0) * early.survival(100_000), within(1e-12));
    }
}
