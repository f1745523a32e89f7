package dev.injectorplanner.app.web.stock;

import dev.injectorplanner.app.web.chart.Axis;
import dev.injectorplanner.app.web.chart.Chart;
import dev.injectorplanner.app.web.chart.Chart.Frame;
import dev.injectorplanner.app.web.chart.Ink;
import dev.injectorplanner.app.web.chart.Plot;
import dev.injectorplanner.app.web.office.DisplayFormat;
import java.util.ArrayList;
import java.util.List;

/** Pieces left week by week as steps, the line at nothing and that of the safety stock, the first short week marked. */
final class StockChart {
    private static final int STEPS = 5;
    private static final int FEW_WEEKS = 5;
    private static final int MANY_WEEKS = 10;

    private StockChart() {}

    static Chart.Both of(Shelf shelf) {
        List<List<String>> rows = shelf.weeks().stream()
                .map(week -> List.of(week.week().toString(), pieces(week.end()), pieces(shelf.safety())))
                .toList();
        return new Chart.Both(
                draw(shelf, Frame.WIDE, MANY_WEEKS),
                draw(shelf, Frame.NARROW, FEW_WEEKS),
                new Chart.Figures(List.of("Week", "Pieces left", "Safety stock"), rows));
    }

    private static Chart draw(Shelf shelf, Frame frame, int most) {
        List<Shelf.Week> weeks = shelf.weeks();
        double least =
                Math.min(0, weeks.stream().mapToDouble(Shelf.Week::end).min().orElse(0));
        double highest = Math.max(
                Math.max(shelf.onHand(), shelf.safety()),
                Math.max(1, weeks.stream().mapToDouble(Shelf.Week::end).max().orElse(1)));
        int each = Math.max(1, (int) Math.ceil(weeks.size() / (double) most));
        List<String> names = new ArrayList<>();
        for (int week = 0; week < weeks.size(); week++) {
            names.add(week % each == 0 ? DisplayFormat.week(weeks.get(week).week()) : "");
        }
        Plot plot = new Plot(frame, Axis.places(names), Axis.even(least, highest, STEPS, true, StockChart::pieces));
        plot.limit(Ink.EVENT, 0, "");
        if (shelf.safety() > 0) {
            plot.limit(Ink.LIMIT, shelf.safety(), "safety stock " + pieces(shelf.safety()));
        }
        List<Plot.Spot> spots = new ArrayList<>();
        for (int week = 0; week < weeks.size(); week++) {
            double end = weeks.get(week).end();
            spots.add(new Plot.Spot(week - 0.5, end));
            plot.tell(
                    week,
                    1,
                    weeks.get(week).week() + ": " + pieces(end) + " left",
                    List.of(new Plot.Value(end, pieces(end))));
        }
        if (!weeks.isEmpty()) {
            spots.add(new Plot.Spot(
                    weeks.size() - 0.5, weeks.get(weeks.size() - 1).end()));
        }
        plot.steps(Ink.LINE, spots);
        shortage(plot, shelf);
        return plot.legend(Ink.LINE, "pieces left at the end of the week")
                .legend(Ink.LIMIT, "safety stock")
                .chart("Pieces of " + shelf.part() + " left week by week", words(shelf));
    }

    private static void shortage(Plot plot, Shelf shelf) {
        shelf.shortage().ifPresent(week -> {
            int place = shelf.weeks().indexOf(week);
            String words = DisplayFormat.week(week.week()) + ", " + DisplayFormat.pieces(-week.end()) + " short";
            plot.upright(Ink.RANGE, place, 0, week.end());
            plot.label(place, 0, true, words);
            plot.legend(Ink.RANGE, "first short week");
        });
    }

    private static String pieces(double value) {
        return DisplayFormat.pieces(value).replace('-', '\u2212');
    }

    private static String words(Shelf shelf) {
        String end = shelf.shortage()
                .map(week -> "the first short week is " + DisplayFormat.week(week.week()) + ", with "
                        + DisplayFormat.pieces(-week.end()) + " missing")
                .orElse("no week is short");
        return DisplayFormat.pieces(shelf.onHand()) + " on hand now, and " + end
                + ". The figures are in the table below.";
    }
}
