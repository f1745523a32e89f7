package dev.injectorplanner.core.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Digits from coxph of R survival 3.5-3, Efron ties, unless a closed form is named. */
class A07_ProportionalHazardsTest {

    private static EffectRecords records(DataTable table, String... names) {
        double[][] covariates = new double[names.length][];
        for (int j = 0; j < names.length; j++) {
            covariates[j] = table.column(names[j]);
        }
        return EffectRecords.of(
                table.has("start") ? table.column("start") : null,
                table.column("stop"),
                table.flags("event"),
                table.has("id") ? table.texts("id") : null,
                List.of(names),
                covariates);
    }

    private static void effect(EffectsFit.Effect effect, double value, double stdErr) {
        assertThat(effect.value()).isCloseTo(value, withinPercentage(1e-5));
        assertThat(effect.stdErr()).isCloseTo(stdErr, withinPercentage(1e-4));
    }

    private static void baseline(EffectsFit fit, String name) {
        DataTable expected = DataTable.table(name);
        assertThat(fit.baseline()).hasSize(expected.size());
        for (int i = 0; i < expected.size(); i++) {
            assertThat(fit.baseline().get(i).time()).isEqualTo(expected.column("time")[i]);
            assertThat(fit.baseline().get(i).cumulativeHazard())
                    .isCloseTo(expected.column("cumulative_hazard")[i], withinPercentage(1e-4));
        }
    }

    @Test
    void heartTransplantsOfCrowleyAndHu1977() {
        EffectsFit fit = ProportionalHazards.fit(
                records(DataTable.table("heart-transplant"), "age", "year", "surgery", "transplant"));
        effect(fit.effects().get(0), 0.0271666409576767, 0.0137141152103185);
        effect(fit.effects().get(1), -0.146346345674196, 0.0704679795188561);
        effect(fit.effects().get(2), -0.637209889966967, 0.367225996180325);
        effect(fit.effects().get(3), -0.0102507724090828, 0.313754798337491);
        assertThat(fit.covariance()[2][1]).isCloseTo(-0.00528235489004937, withinPercentage(1e-4));
        assertThat(fit.logLikelihoodNull()).isCloseTo(-298.121355672984, within(1e-6));
        assertThat(fit.logLikelihood()).isCloseTo(-290.565616218489, within(1e-6));
        // 2,873 pairs agree, 1,646 disagree, none tied
        assertThat(fit.concordance()).isCloseTo(2873 / (2873 + 1646.0), within(1e-9));
        baseline(fit, "heart-transplant-baseline");
        // coxph(..., id = id, cluster = id) of the same version
        double[] robust = {0.013891892924081, 0.073079859239364, 0.358210202384426, 0.316882349062490};
        for (int j = 0; j < robust.length; j++) {
            assertThat(fit.effects().get(j).robustStdErr()).isCloseTo(robust[j], withinPercentage(1e-4));
        }
    }

    @Test
    void ovarianCancerOfEdmunson1979() {
        EffectsFit fit = ProportionalHazards.fit(records(DataTable.table("ovarian"), "age", "ecog.ps", "rx"));
        effect(fit.effects().get(0), 0.146989256211902, 0.0463020480369044);
        effect(fit.effects().get(1), 0.103179602127612, 0.606377104738059);
        effect(fit.effects().get(2), -0.814584764008128, 0.634161024896107);
        assertThat(fit.effects().get(0).robustStdErr()).isNull();
        assertThat(fit.logLikelihoodNull()).isCloseTo(-34.9849403711626, within(1e-6));
        assertThat(fit.logLikelihood()).isCloseTo(-27.0273583257535, within(1e-6));
        assertThat(fit.concordance()).isCloseTo(0.798165137614679, within(1e-9));
        baseline(fit, "ovarian-baseline");
    }

    private static EffectRecords sixRows(String... ids) {
        return EffectRecords.of(
                null,
                new double[] {9, 1, 1, 6, 6, 8},
                new boolean[] {true, true, false, true, true, false},
                ids.length == 0 ? null : ids,
                List.of("x"),
                new double[][] {{0, 1, 1, 1, 0, 0}});
    }

    /**
     * Therneau and Grambsch (2000), Modeling Survival Data, appendix E.1, test data 1: with r = exp(coefficient) the
     * Efron estimate solves a closed form, as printed in the test files of the survival package.
     */
    @Test
    void sixRowsInClosedForm() {
        EffectsFit fit = ProportionalHazards.fit(sixRows());
        assertThat(fit.effects().get(0).value()).isCloseTo(1.6768574855929, within(1e-10));
        assertThat(fit.effects().get(0).stdErr()).isCloseTo(1.27761557627883, within(1e-10));
        assertThat(fit.logLikelihoodNull()).isCloseTo(-4.27666611901606, within(1e-10));
        assertThat(fit.logLikelihood()).isCloseTo(-3.35897484026335, within(1e-10));
        assertThat(fit.baselineHazard(1)).isCloseTo(0.052504012711488, within(1e-10));
        assertThat(fit.baselineHazard(6)).isCloseTo(0.365543432544049, within(1e-10));
        assertThat(fit.baselineHazard(9)).isCloseTo(1.36554343254405, within(1e-10));
        assertThat(fit.baselineHazard(0.5)).isEqualTo(0);
        assertThat(fit.relativeHazard(new double[] {1})).isCloseTo(Math.exp(1.6768574855929), within(1e-8));
    }

    @Test
    void robustErrorSumsTheRowsOfOneUnit() {
        // coxph(Surv(t, s) ~ x, cluster = c(1, 2, 3, 4, 4, 5)) of R survival 3.5-3
        EffectsFit fit = ProportionalHazards.fit(sixRows("1", "2", "3", "4", "4", "5"));
        assertThat(fit.effects().get(0).robustStdErr()).isCloseTo(0.99720398637664, within(1e-9));
    }

    @Test
    void splittingRowsChangesNothing() {
        DataTable table = DataTable.table("ovarian");
        EffectsFit whole = ProportionalHazards.fit(records(table, "age", "rx"));
        long seed = 77;
        SplittableRandom random = new SplittableRandom(seed);
        List<double[]> rows = new ArrayList<>();
        for (int i = 0; i < table.size(); i++) {
            double stop = table.column("stop")[i];
            double cut = Math.rint(random.nextDouble(0.1, 0.9) * stop);
            double age = table.column("age")[i];
            double rx = table.column("rx")[i];
            rows.add(new double[] {0, cut, 0, age, rx});
            rows.add(new double[] {cut, stop, table.column("event")[i], age, rx});
        }
        boolean[] events = new boolean[rows.size()];
        for (int i = 0; i < events.length; i++) {
            events[i] = rows.get(i)[2] == 1;
        }
        EffectsFit split = ProportionalHazards.fit(
                EffectRecords.of(column(rows, 0), column(rows, 1), events, null, List.of("age", "rx"), new double[][] {
                    column(rows, 3), column(rows, 4)
                }));
        for (int j = 0; j < 2; j++) {
            assertThat(split.effects().get(j).value())
                    .as("seed %d", seed)
                    .isCloseTo(whole.effects().get(j).value(), within(1e-9));
            assertThat(split.effects().get(j).stdErr())
                    .isCloseTo(whole.effects().get(j).stdErr(), within(1e-9));
        }
        assertThat(split.concordance()).isCloseTo(whole.concordance(), within(1e-12));
        assertThat(split.logLikelihood()).isCloseTo(whole.logLikelihood(), within(1e-9));
    }

    private static double[] column(List<double[]> rows, int at) {
        return rows.stream().mapToDouble(row -> row[at]).toArray();
    }

    private static EffectRecords three(double[] first, double[] second) {
        return EffectRecords.of(
                null,
                new double[] {1, 2, 3, 4, 5, 6},
                new boolean[] {true, true, true, true, true, true},
                null,
                List.of("faults", "drift"),
                new double[][] {first, second});
    }

    @Test
    void refusesInWordsWhatHasNoEstimate() {
        double[] mixed = {2, 1, 4, 1, 3, 2};
        assertThatThrownBy(() -> ProportionalHazards.fit(three(mixed, new double[] {5, 5, 5, 5, 5, 5})))
                .isInstanceOf(NoEstimateException.class)
                .hasMessageContaining("drift is 5 in every row");
        assertThatThrownBy(() -> ProportionalHazards.fit(three(mixed, new double[] {5, 3, 9, 3, 7, 5})))
                .isInstanceOf(NoEstimateException.class)
                .hasMessageContaining("drift says nothing that faults");
        assertThatThrownBy(() -> ProportionalHazards.fit(three(mixed, new double[] {1, 1, 1, 0, 0, 0})))
                .isInstanceOf(NoEstimateException.class)
                .hasMessageContaining("separate perfectly along covariate drift");
        assertThatThrownBy(() -> ProportionalHazards.fit(EffectRecords.of(
                        null, new double[] {1, 2}, new boolean[2], null, List.of("x"), new double[][] {{1, 2}})))
                .isInstanceOf(NoEstimateException.class)
                .hasMessageContaining("no failure among the 2 rows");
    }

    @Test
    void aLargeCovariateDoesNotOverflow() {
        double[] mixed = {2, 1, 4, 1, 3, 2};
        double[] large = new double[6];
        for (int i = 0; i < 6; i++) {
            large[i] = 1e7 + 1e5 * mixed[i];
        }
        double small = ProportionalHazards.fit(three(mixed, new double[] {1, 0, 0, 1, 0, 1}))
                .effects()
                .get(0)
                .value();
        EffectsFit fit = ProportionalHazards.fit(three(large, new double[] {1, 0, 0, 1, 0, 1}));
        assertThat(fit.effects().get(0).value() * 1e5).isCloseTo(small, withinPercentage(1e-6));
        assertThat(fit.baselineHazard(6)).isFinite();
    }
}
