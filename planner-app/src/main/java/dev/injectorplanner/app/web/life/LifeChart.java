package dev.injectorplanner.app.web.life;

import dev.injectorplanner.app.web.chart.Axis;
import dev.injectorplanner.app.web.chart.Chart;
import dev.injectorplanner.app.web.chart.Chart.Frame;
import dev.injectorplanner.app.web.chart.Ink;
import dev.injectorplanner.app.web.chart.Plot;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.life.KaplanMeier;
import dev.injectorplanner.core.units.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/** Share still working against age: steps of the records, the life in use, its band. */
final class LifeChart {
    private static final int PARTS = 80;

    /** Steps of fewer than this many say little: a planner default. */
    private static final int FEW = 10;

    private static final double FEW_HIGH = 0.1;
    private static final double BEST_AT = 0.96;
    private static final int TOLD = 8;
    private static final int STEPS = 4;
    private static final int FEW_STEPS = 3;

    private final KaplanMeier steps;
    private final DoubleUnaryOperator life;
    private final @Nullable Band band;
    private final double shownPerUnit;
    private final double most;
    private final @Nullable Double bestAge;

    /** Bounds of the life at an age. */
    record Band(DoubleUnaryOperator upper, DoubleUnaryOperator lower) {}

    /**
     * @param least the age that must be on it, above 0
     * @param shownPerUnit what people read for an age of 1: 1, or the miles in a km
     * @param band bounds of the life, or null where too few failures tell of them
     * @param bestAge age at which replacing is cheapest, or null where it never is by age alone
     */
    LifeChart(
            KaplanMeier steps,
            DoubleUnaryOperator life,
            @Nullable Band band,
            double least,
            double shownPerUnit,
            @Nullable Double bestAge) {
        this.bestAge = bestAge;
        this.steps = steps;
        this.life = life;
        this.band = band;
        this.shownPerUnit = shownPerUnit;
        this.most = ages(least * shownPerUnit, STEPS).to() / shownPerUnit;
    }

    private static Axis ages(double shown, int most) {
        return Axis.even(0, shown, most, true, Figures::whole);
    }

    /** Age at the right edge. */
    double most() {
        return most;
    }

    /** Ages that the table tells, evenly to the right edge. */
    List<Double> told() {
        List<Double> ages = new ArrayList<>();
        for (int part = 1; part <= TOLD; part++) {
            ages.add(most * part / TOLD);
        }
        return ages;
    }

    Chart.Both both(String title, String unit, Chart.Figures figures) {
        return new Chart.Both(
                draw(Frame.WIDE, STEPS, title, unit), draw(Frame.NARROW, FEW_STEPS, title, unit), figures);
    }

    private Chart draw(Frame frame, int most, String title, String unit) {
        Plot plot = new Plot(
                frame,
                ages(this.most * shownPerUnit, most),
                Axis.even(0, 1, STEPS, false, share -> Math.round(100 * share) + "\u00a0%"));
        Band bounds = band;
        if (bounds != null) {
            plot.band(line(bounds.upper()), line(bounds.lower())).legend(Ink.BAND, "95 % band of the line");
        }
        plot.line(Ink.MODEL, line(life)).legend(Ink.MODEL, "life curve used in the plan");
        List<Plot.Spot> records = stepSpots();
        plot.steps(Ink.LINE, records);
        if (!records.isEmpty()) {
            plot.legend(Ink.LINE, "steps from the records (Kaplan-Meier)");
        }
        if (!records.isEmpty()) {
            Plot.Spot end = records.get(records.size() - 1);
            plot.label(end.x(), end.y(), true, "records");
        }
        steps.points().stream()
                .filter(point -> point.atRisk() < FEW)
                .findFirst()
                .ifPresent(point -> {
                    plot.upright(Ink.EVENT, point.age() * shownPerUnit, 0, FEW_HIGH);
                    plot.label(point.age() * shownPerUnit, FEW_HIGH, false, "fewer than ten left");
                });
        Double best = bestAge;
        if (best != null && best <= this.most) {
            plot.upright(Ink.EVENT, best * shownPerUnit, 0, 1);
            plot.label(best * shownPerUnit, BEST_AT, true, "best age " + Figures.whole(best * shownPerUnit));
        }
        plot.label(this.most * shownPerUnit, life.applyAsDouble(this.most), true, "plan");
        for (double age : told()) {
            tell(plot, age, unit);
        }
        return plot.across(unit + " since fitting")
                .chart(title + ", share still working", "The figures are in the table below");
    }

    private void tell(Plot plot, double age, String unit) {
        double share = life.applyAsDouble(age);
        String line = DisplayFormat.chance(share);
        boolean seen = age <= lastSeen();
        plot.tell(
                age * shownPerUnit,
                most * shownPerUnit / TOLD,
                Figures.whole(age * shownPerUnit) + " " + unit + ": line " + line
                        + (seen ? ", steps " + DisplayFormat.chance(steps.survival(age)) : ""),
                List.of(new Plot.Value(share, line)));
    }

    private double lastSeen() {
        int size = steps.points().size();
        return size == 0 ? 0 : steps.points().get(size - 1).age();
    }

    private List<Plot.Spot> stepSpots() {
        List<Plot.Spot> spots = new ArrayList<>();
        if (steps.points().isEmpty()) {
            return spots;
        }
        spots.add(new Plot.Spot(0, 1));
        double share = 1;
        for (KaplanMeier.Point point : steps.points()) {
            if (point.events() > 0) {
                share = point.survival();
                spots.add(new Plot.Spot(point.age() * shownPerUnit, share));
            }
        }
        spots.add(new Plot.Spot(lastSeen() * shownPerUnit, share));
        return spots;
    }

    private List<Plot.Spot> line(DoubleUnaryOperator survival) {
        List<Plot.Spot> spots = new ArrayList<>();
        for (int part = 0; part <= PARTS; part++) {
            double age = most * part / PARTS;
            spots.add(new Plot.Spot(age * shownPerUnit, part == 0 ? 1 : survival.applyAsDouble(age)));
        }
        return spots;
    }
}
