package dev.injectorplanner.app.web.life;

import dev.injectorplanner.core.life.KaplanMeier;
import dev.injectorplanner.core.units.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;

/** Share still working against age, in a frame of 620 by 330. */
final class LifeChart {
    private static final double LEFT = 60;
    private static final double RIGHT = 600;
    private static final double TOP = 16;
    private static final double FLOOR = 280;
    private static final int PARTS = 80;

    private final double most;
    private final double shownPerUnit;

    /**
     * @param least the age that must be on it, above 0
     * @param shownPerUnit what people read for an age of 1: 1, or the miles in a km
     */
    LifeChart(double least, double shownPerUnit) {
        double shown = least * shownPerUnit;
        double step = Math.pow(10, Math.floor(Math.log10(shown)));
        this.most = Math.ceil(shown / step * 2) / 2 * step / shownPerUnit;
        this.shownPerUnit = shownPerUnit;
    }

    double shownPerUnit() {
        return shownPerUnit;
    }

    /** Age at the right edge. */
    double most() {
        return most;
    }

    private String at(double age, double survival) {
        return String.format(
                Locale.ROOT,
                "%.1f %.1f",
                LEFT + (RIGHT - LEFT) * Math.min(1, age / most),
                FLOOR - (FLOOR - TOP) * survival);
    }

    String steps(KaplanMeier curve) {
        if (curve.points().isEmpty()) {
            return "";
        }
        StringBuilder path = new StringBuilder("M").append(at(0, 1));
        double before = 1;
        for (KaplanMeier.Point point : curve.points()) {
            if (point.events() > 0) {
                path.append('L').append(at(point.age(), before)).append('L').append(at(point.age(), point.survival()));
                before = point.survival();
            }
        }
        double last = curve.points().get(curve.points().size() - 1).age();
        return path.append('L').append(at(last, before)).toString();
    }

    String line(DoubleUnaryOperator survival) {
        StringBuilder path = new StringBuilder("M").append(at(0, 1));
        for (int part = 1; part <= PARTS; part++) {
            double age = most * part / PARTS;
            path.append('L').append(at(age, survival.applyAsDouble(age)));
        }
        return path.toString();
    }

    String band(DoubleUnaryOperator upper, DoubleUnaryOperator lower) {
        StringBuilder path = new StringBuilder(line(upper));
        for (int part = PARTS; part >= 1; part--) {
            double age = most * part / PARTS;
            path.append('L').append(at(age, lower.applyAsDouble(age)));
        }
        return path.append('Z').toString();
    }

    List<LifeCurves.Tick> across() {
        List<LifeCurves.Tick> ticks = new ArrayList<>();
        for (int part = 0; part <= 4; part++) {
            ticks.add(new LifeCurves.Tick(
                    LEFT + (RIGHT - LEFT) * part / 4, Figures.whole(most * part / 4 * shownPerUnit)));
        }
        return ticks;
    }

    List<LifeCurves.Tick> down() {
        List<LifeCurves.Tick> ticks = new ArrayList<>();
        for (int part = 0; part <= 4; part++) {
            ticks.add(new LifeCurves.Tick(FLOOR - (FLOOR - TOP) * part / 4, 25 * part + " %"));
        }
        return ticks;
    }
}
