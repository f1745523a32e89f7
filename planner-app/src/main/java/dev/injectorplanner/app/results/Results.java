package dev.injectorplanner.app.results;

import dev.injectorplanner.app.closeout.CloseOut;
import dev.injectorplanner.app.closeout.CloseOuts;
import dev.injectorplanner.app.forecast.Calibration;
import dev.injectorplanner.app.forecast.ForecastBook;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.history.PartLife;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Results of depots by month. */
public final class Results {
    /** Months told of, the present one among them. */
    public static final int MONTHS = 13;

    private final PlannedWeeks planned;
    private final CloseOuts closeOuts;
    private final ForecastBook forecasts;

    public Results(Store store) {
        this.planned = new PlannedWeeks(store.dataSource());
        this.closeOuts = new CloseOuts(store);
        this.forecasts = new ForecastBook(store.dataSource());
    }

    /** A depot's months and its forecasts with their outcomes. */
    public record OfDepot(List<MonthResult> months, List<Calibration.Outcome> outcomes) {
        public OfDepot {
            months = List.copyOf(months);
            outcomes = List.copyOf(outcomes);
        }
    }

    /**
     * Of one depot.
     *
     * @param lives by which the life left in an injector is priced
     */
    public OfDepot of(FleetIndex fleet, String depot, List<PartLife> lives, LocalDate today) {
        YearMonth last = YearMonth.from(today);
        YearMonth first = last.minusMonths(MONTHS - 1L);
        Map<IsoWeek, PlannedWeeks.Week> weeks =
                planned.of(depot, IsoWeek.of(first.atDay(1)), IsoWeek.of(today).plus(-1));
        List<CloseOut> closed = closeOuts.listSince(
                depot,
                first.atDay(1).atStartOfDay(fleet.depot(depot).timeZone()).toInstant());
        return new OfDepot(
                new DepotResults(fleet, depot, lives, first, last).months(weeks, closed),
                forecasts.outcomes(fleet, depot, today));
    }

    /** Depots together, month by month. */
    public static List<MonthResult> together(List<OfDepot> depots) {
        List<MonthResult> months = new ArrayList<>();
        for (int at = 0; at < MONTHS; at++) {
            int month = at;
            months.add(MonthResult.sum(
                    depots.stream().map(each -> each.months().get(month)).toList()));
        }
        return months;
    }

    /** Forecasts of depots together. */
    public static Calibration calibration(List<OfDepot> depots) {
        return Calibration.of(
                depots.stream().flatMap(each -> each.outcomes().stream()).toList());
    }

    public ForecastBook forecasts() {
        return forecasts;
    }
}
