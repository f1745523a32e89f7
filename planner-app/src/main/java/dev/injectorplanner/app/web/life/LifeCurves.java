package dev.injectorplanner.app.web.life;

import dev.injectorplanner.app.web.chart.Chart;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.history.Clock;
import dev.injectorplanner.core.history.LifeHistory;
import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.history.Span;
import dev.injectorplanner.core.history.UnitLife;
import dev.injectorplanner.core.life.KaplanMeier;
import dev.injectorplanner.core.life.LifeRecords;
import dev.injectorplanner.core.life.NoEstimateException;
import dev.injectorplanner.core.life.WeibullFit;
import dev.injectorplanner.core.life.WeibullLife;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.core.usage.FleetUsage;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Kaplan-Meier steps of the depots shown beside the life in use, one curve a part and origin. */
final class LifeCurves {
    private static final double NORMAL_95 = 1.959964;
    private static final int LEAST_FOR_BAND = 5;

    private final List<DepotPlan> plans;
    private final SiteUnits units;
    private final List<UnitLife> lives = new ArrayList<>();

    LifeCurves(List<DepotPlan> plans, Policy policy, SiteUnits units) {
        this.units = units;
        this.plans = plans;
        for (DepotPlan plan : plans) {
            FleetUsage usage = new FleetUsage(plan.fleet(), policy.usageWindowDays(), plan.today());
            new LifeHistory(plan.fleet(), usage, plan.today())
                    .units().stream()
                            .filter(unit -> plan.trucks().contains(unit.truck()))
                            .forEach(lives::add);
        }
    }

    /** A curve with its heading and what it rests on. */
    record Curve(String letter, String title, String about, Chart.Both picture) {}

    List<Curve> curves() {
        Set<String> seen = new HashSet<>();
        List<Curve> curves = new ArrayList<>();
        for (DepotPlan plan : plans) {
            for (PartLife life : plan.plan().lives()) {
                if (seen.add(life.part() + "\n" + life.origin())) {
                    curves.add(curve(String.valueOf((char) ('A' + curves.size() % 26)), life));
                }
            }
        }
        return curves;
    }

    private Curve curve(String letter, PartLife life) {
        LifeRecords records = records(life);
        KaplanMeier steps = KaplanMeier.of(records);
        double most = Math.max(
                life.life().quantile(0.5),
                steps.points().stream()
                        .mapToDouble(KaplanMeier.Point::age)
                        .max()
                        .orElse(0));
        boolean km = life.clock() == Clock.DISTANCE;
        WeibullFit fit = fit(records);
        LifeChart.Band band = fit == null
                ? null
                : new LifeChart.Band(age -> bound(life.life(), fit, age, -1), age -> bound(life.life(), fit, age, 1));
        BestAge best = BestAge.of(plans, life);
        LifeChart chart = new LifeChart(
                steps, life::survival, band, most, km ? units.ofKm(1) : 1, best == null ? null : best.age());
        String title = life.part() + ", " + life.origin().name().toLowerCase(Locale.ROOT);
        String unit = km ? units.distanceUnit() : life.clock().unit();
        List<List<String>> rows = new ArrayList<>();
        for (double age : chart.told()) {
            rows.add(List.of(
                    Figures.whole(age * (km ? units.ofKm(1) : 1)),
                    records.size() == 0 || age > most ? "" : DisplayFormat.chance(steps.survival(age)),
                    DisplayFormat.chance(life.survival(age)),
                    band == null
                            ? ""
                            : DisplayFormat.chance(band.lower().applyAsDouble(age)) + " to "
                                    + DisplayFormat.chance(band.upper().applyAsDouble(age)),
                    atRisk(records, age)));
        }
        List<String> heads = List.of("Age, " + unit, "Steps", "Line", "Band", "Number at risk");
        return new Curve(
                letter,
                title,
                about(life) + (best == null ? "" : " " + units.sentence(best.words(unitOf(life)))),
                chart.both(title, unit, new Chart.Figures(heads, rows)));
    }

    private static String unitOf(PartLife life) {
        return life.clock().unit();
    }

    private String about(PartLife life) {
        return units.sentence(String.format(
                        Locale.ROOT,
                        "Shape %.2f, scale %,.0f %s: ",
                        life.life().shape(),
                        life.life().scale(),
                        life.clock().unit())
                + life.source().words() + (life.prior().isEmpty() ? "" : " (" + life.prior() + ")") + ". "
                + Figures.count(life.failures(), "failure", "failures") + ", " + life.worn() + " removed worn, "
                + life.suspensions() + " still working when last seen. One in ten has failed by "
                + Figures.whole(life.life().quantile(0.1)) + " " + life.clock().unit() + ".");
    }

    /** Failed or found worn counts as an event at the age it came out. */
    private LifeRecords records(PartLife life) {
        List<Span> spans = new ArrayList<>();
        List<Boolean> ends = new ArrayList<>();
        for (UnitLife unit : lives) {
            Span span = unit.on(life.clock());
            if (span != null && unit.part().equals(life.part()) && unit.origin() == life.origin()) {
                spans.add(span);
                ends.add(unit.failedOrWould());
            }
        }
        double[] entries = spans.stream().mapToDouble(Span::entry).toArray();
        double[] exits = spans.stream().mapToDouble(Span::exit).toArray();
        boolean[] events = new boolean[exits.length];
        for (int at = 0; at < events.length; at++) {
            events[at] = ends.get(at);
        }
        return LifeRecords.of(entries, exits, events, null);
    }

    private static @Nullable WeibullFit fit(LifeRecords records) {
        if (records.eventCount() < LEAST_FOR_BAND) {
            return null;
        }
        try {
            return WeibullFit.of(records);
        } catch (NoEstimateException e) {
            return null;
        }
    }

    /**
     * A bound of the survival at an age: delta method on the logarithm of the cumulative hazard, whose variance is
     * ln(t/scale)^2 var(shape) + (shape/scale)^2 var(scale) - 2 ln(t/scale) (shape/scale) cov (Meeker and Escobar 1998,
     * chapter 8, from memory). Variances are those of the records' own fit, the middle is the life in use.
     *
     * @param side -1 for the upper, 1 for the lower bound
     */
    static double bound(WeibullLife life, WeibullFit fit, double age, int side) {
        double log = Math.log(age / fit.scale());
        double ratio = fit.shape() / fit.scale();
        double variance = log * log * fit.shapeStdErr() * fit.shapeStdErr()
                + ratio * ratio * fit.scaleStdErr() * fit.scaleStdErr()
                - 2 * log * ratio * fit.covariance();
        double hazard = life.cumulativeHazard(age) * Math.exp(side * NORMAL_95 * Math.sqrt(Math.max(0, variance)));
        return Math.exp(-hazard);
    }

    private static String atRisk(LifeRecords records, double age) {
        long count = 0;
        for (int row = 0; row < records.size(); row++) {
            count += records.entry(row) < age && age <= records.exit(row) ? 1 : 0;
        }
        return String.valueOf(count);
    }
}
