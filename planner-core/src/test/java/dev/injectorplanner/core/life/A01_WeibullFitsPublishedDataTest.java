package dev.injectorplanner.core.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** Maximum likelihood, errors and intervals on published data; digits from R 4.2.2 (survreg, optim then Newton). */
class A01_WeibullFitsPublishedDataTest {

    private static void near(double value, double expected, double relative) {
        assertThat(value).isCloseTo(expected, withinPercentage(100 * relative));
    }

    private static void interval(WeibullIntervals.Interval interval, double low, double high) {
        near(interval.low(), low, 1e-6);
        near(interval.high(), high, 1e-6);
    }

    @Test
    void generatorFansOfNelson1982() {
        WeibullFit fit = WeibullFit.of(DataTable.table("generator-fans").lives());
        assertThat(fit.events()).isEqualTo(12);
        assertThat(fit.suspensions()).isEqualTo(58);
        // 1.0584 and 26.2968 thousand hours are printed in SciPy's test of fits to censored data
        near(fit.shape(), 1.0584, 1e-4);
        near(fit.scale(), 26296.8, 1e-4);
        near(fit.shape(), 1.05844584994376, 1e-8);
        near(fit.scale(), 26296.8451748205, 1e-8);
        assertThat(fit.logLikelihood()).isCloseTo(-135.152719943356, within(1e-7));
        near(fit.shapeStdErr(), 0.26825096567118, 1e-8);
        near(fit.scaleStdErr(), 12251.4282849668, 1e-8);
        near(fit.covariance(), -2664.46190667509, 1e-7);
        near(fit.life().meanLife(), 25715.6100499784, 1e-8);
        near(fit.b10(), 3137.24077789284, 1e-8);
        near(fit.quantileStdErr(0.1), 993.790228832471, 1e-7);
        near(fit.life().quantile(0.5), 18600.2378782245, 1e-8);
        near(fit.quantileStdErr(0.5), 7404.17494866325, 1e-7);
        near(fit.life().quantile(0.01), 340.722587587983, 1e-8);
        WeibullIntervals intervals = fit.intervals(0.95);
        interval(intervals.shape().fisher(), 0.644082311524927, 1.73938578535207);
        interval(intervals.scale().fisher(), 10552.0696944163, 65534.448328597);
        interval(intervals.b10().fisher(), 1686.20737203932, 5836.93314456945);
        interval(intervals.shape().profile(), 0.60597418951158, 1.65794085650245);
        interval(intervals.scale().profile(), 13631.2390286837, 106086.920503276);
    }

    @Test
    void handbookExampleOfNist() {
        // NIST/SEMATECH e-Handbook 8.4.1.3; 1.7207 and 606.5280 are the digits it printed for a first failure at 54 h
        WeibullFit fit = WeibullFit.of(DataTable.table("handbook-20-units").lives());
        near(fit.shape(), 1.7207, 1e-4);
        near(fit.scale(), 606.528, 1e-4);
        near(fit.shape(), 1.72079726080136, 1e-8);
        near(fit.scale(), 606.527558003572, 1e-8);
        assertThat(fit.logLikelihood()).isCloseTo(-75.1346181644749, within(1e-7));
        near(fit.shapeStdErr(), 0.50215060349478, 1e-8);
        near(fit.scaleStdErr(), 124.910656204035, 1e-8);
        WeibullIntervals intervals = fit.intervals(0.95);
        interval(intervals.shape().fisher(), 0.971266101954016, 3.04874555677806);
        interval(intervals.scale().fisher(), 405.089293532956, 908.134785319494);
        interval(intervals.b10().fisher(), 83.8751295254904, 320.754919082434);
        interval(intervals.shape().profile(), 0.905645358752194, 2.88573786574124);
        interval(intervals.scale().profile(), 437.556745394058, 1118.87762469858);
    }

    @Test
    void handbookExampleWithFirstFailureAt55() {
        // the variant distributed with the R package EstimationTools, which cites the same page
        DataTable table = DataTable.table("handbook-20-units");
        double[] exits = table.column("exit");
        assertThat(exits[0]).isEqualTo(54);
        exits[0] = 55;
        WeibullFit fit = WeibullFit.of(LifeRecords.of(exits, table.flags("event")));
        near(fit.shape(), 1.72562575313705, 1e-8);
        near(fit.scale(), 606.004797955717, 1e-8);
        assertThat(fit.logLikelihood()).isCloseTo(-75.1218456335304, within(1e-7));
        near(fit.shapeStdErr(), 0.503406595848151, 1e-8);
        near(fit.scaleStdErr(), 124.431743668335, 1e-8);
        interval(fit.intervals(0.95).shape().profile(), 0.908349486986964, 2.89342457972794);
        interval(fit.intervals(0.95).scale().profile(), 437.578638929805, 1115.80109669008);
    }

    @Test
    void lateEntriesInKilometres() {
        // likelihood of Klein and Moeschberger (2003), section 3.5
        WeibullFit fit = WeibullFit.of(DataTable.table("late-entry-km").lives());
        near(fit.shape(), 2.22132388934108, 1e-8);
        near(fit.scale(), 415880.507275135, 1e-8);
        assertThat(fit.logLikelihood()).isCloseTo(-372.035023448878, within(1e-7));
        near(fit.shapeStdErr(), 0.372041047545222, 1e-8);
        near(fit.scaleStdErr(), 36388.2932592587, 1e-8);
        near(fit.covariance(), -1892.80841954192, 1e-7);
        WeibullIntervals intervals = fit.intervals(0.95);
        interval(intervals.shape().fisher(), 1.59973259729962, 3.08444038065269);
        interval(intervals.scale().fisher(), 350341.020549378, 493680.688776341);
        interval(intervals.b10().fisher(), 106176.822603245, 214764.149404516);
        interval(intervals.shape().profile(), 1.55254623568142, 3.01069622350767);
        interval(intervals.scale().profile(), 353586.013909962, 508562.517062204);
    }

    @Test
    void leavingTheEntriesOutGivesAClearlyDifferentFit() {
        DataTable table = DataTable.table("late-entry-km");
        WeibullFit fit = WeibullFit.of(LifeRecords.of(table.column("exit"), table.flags("event")));
        near(fit.shape(), 2.46303261181752, 1e-8);
        near(fit.scale(), 434639.185386286, 1e-8);
    }
}
