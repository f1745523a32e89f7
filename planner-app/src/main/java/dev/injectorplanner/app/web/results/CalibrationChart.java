package dev.injectorplanner.app.web.results;

import dev.injectorplanner.app.forecast.Calibration;
import dev.injectorplanner.app.web.chart.Axis;
import dev.injectorplanner.app.web.chart.Chart;
import dev.injectorplanner.app.web.chart.Chart.Frame;
import dev.injectorplanner.app.web.chart.Ink;
import dev.injectorplanner.app.web.chart.Plot;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.units.Figures;
import java.util.List;

/** Share that failed against the chance that was forecast, with its interval; on the line, forecasts hold. */
final class CalibrationChart {
    private static final double POINT = 4.5;
    private static final double STRIP = 0.05;

    private final Calibration calibration;

    CalibrationChart(Calibration calibration) {
        this.calibration = calibration;
    }

    Chart.Both both() {
        List<List<String>> rows = calibration.bands().stream()
                .map(band -> List.of(
                        DisplayFormat.chance(band.forecast()),
                        DisplayFormat.chance(band.happened()),
                        DisplayFormat.chance(band.least()) + " to " + DisplayFormat.chance(band.most()),
                        Figures.whole(band.count())))
                .toList();
        return new Chart.Both(
                draw(Frame.WIDE),
                draw(Frame.NARROW),
                new Chart.Figures(List.of("Forecast, mean", "Happened", "90 % interval", "Forecasts"), rows));
    }

    private Chart draw(Frame frame) {
        Plot plot = new Plot(frame, Axis.chances(), Axis.chances())
                .line(Ink.LIMIT, List.of(new Plot.Spot(0, 0), new Plot.Spot(1, 1)));
        for (Calibration.Band band : calibration.bands()) {
            plot.upright(Ink.INTERVAL, band.forecast(), band.least(), band.most());
            plot.dot(band.forecast(), band.happened(), POINT);
            plot.tell(
                    band.forecast(),
                    STRIP,
                    "forecast " + DisplayFormat.chance(band.forecast()) + ", happened "
                            + DisplayFormat.chance(band.happened()) + ", "
                            + Figures.count(band.count(), "forecast", "forecasts"),
                    List.of());
            plot.label(band.forecast(), band.most(), false, band.failures() + " of " + Figures.whole(band.count()));
        }
        return plot.legend(Ink.DOT, "share that failed")
                .legend(Ink.INTERVAL, "90 % interval")
                .legend(Ink.LIMIT, "forecasts hold; both axes spread small chances (square roots)")
                .across("chance forecast for 12 weeks")
                .chart("Happened against forecast", "The figures are in the table below");
    }
}
