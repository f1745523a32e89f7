package dev.injectorplanner.reports.results;

import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.reports.table.SheetTable;
import dev.injectorplanner.reports.table.TableColumn;
import dev.injectorplanner.reports.table.Unit;
import dev.injectorplanner.reports.workbook.BarChart;
import dev.injectorplanner.reports.workbook.Book;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Workbook {@code results}: results by month, the price of each of the site's rules, forecasts and their outcome with counts. */
public final class ResultsWorkbook {
    private final List<ResultsLine> months;
    private final List<RuleLine> rules;
    private final List<ForecastLine> forecasts;
    private final String remark;
    private final String rulesRemark;
    private final String forecastsRemark;

    /**
     * @param rules dearest first; empty where nothing was priced
     * @param remark of which depots and plan, in words
     * @param rulesRemark what the prices are, or why there are none
     * @param forecastsRemark how many forecasts were judged, or from when on
     */
    public ResultsWorkbook(
            List<ResultsLine> months,
            List<RuleLine> rules,
            List<ForecastLine> forecasts,
            String remark,
            String rulesRemark,
            String forecastsRemark) {
        this.months = List.copyOf(months);
        this.rules = List.copyOf(rules);
        this.forecasts = List.copyOf(forecasts);
        this.remark = remark;
        this.rulesRemark = rulesRemark;
        this.forecastsRemark = forecastsRemark;
    }

    /** In a site's units, currency, dates and paper. */
    public void write(OutputStream out, SiteForm form) throws IOException {
        try (Book book = new Book("Results", form)) {
            SheetTable.add(book, "By month", "Results by month", remark, byMonth(form), months)
                    .chart(new BarChart("Cost per 1,000 " + form.units().distanceUnit(), "cost", 0, List.of(1)));
            SheetTable.add(book, "Price of rules", "What each rule of the site costs", rulesRemark, priced(), rules);
            SheetTable.add(book, "Forecasts", "Forecast and outcome of 12 weeks", forecastsRemark, judged(), forecasts);
            book.write(out);
        }
    }

    private static TableColumn<ResultsLine> count(String heading, Function<ResultsLine, @Nullable Object> value) {
        return TableColumn.<ResultsLine>count(heading, 10, value).summed();
    }

    private static TableColumn<ResultsLine> hours(String heading, Function<ResultsLine, @Nullable Object> value) {
        return TableColumn.<ResultsLine>figure(heading, Unit.HOURS, 10, value).summed();
    }

    private static TableColumn<ResultsLine> amount(String heading, Function<ResultsLine, @Nullable Object> value) {
        return TableColumn.<ResultsLine>money(heading, 12, value).summed();
    }

    private static List<TableColumn<ResultsLine>> byMonth(SiteForm form) {
        String distance = form.units().distanceUnit();
        return List.of(
                TableColumn.date("Month from", 12, ResultsLine::month),
                TableColumn.money("Cost per 1,000 " + distance, 12, ResultsLine::costPer1000),
                count("Visits planned", ResultsLine::planned),
                count("Done as planned", ResultsLine::doneAsPlanned),
                count("Done, all", ResultsLine::done),
                count("Road failures", ResultsLine::roadFailures),
                hours("Hours planned", ResultsLine::plannedHours),
                hours("Worked, planned", ResultsLine::workedHours),
                hours("Worked, not planned", ResultsLine::unplannedHours),
                amount("Thrown away early", ResultsLine::early),
                amount("Cores credited", ResultsLine::coresCredited),
                amount("Cores lost", ResultsLine::coresLost),
                amount("Warranty credited", ResultsLine::warranty),
                amount("Parts", ResultsLine::parts),
                amount("Labour", ResultsLine::labour),
                amount("Road failures, money", ResultsLine::failures),
                count("Driven, " + distance, line -> form.units().ofKm(line.km())));
    }

    private static List<TableColumn<RuleLine>> priced() {
        return List.of(
                TableColumn.wrapped("Rule", 44, RuleLine::rule),
                TableColumn.money("Costs", 12, RuleLine::price),
                TableColumn.count("Visits with it", 11, RuleLine::visitsWith),
                TableColumn.count("Visits without it", 11, RuleLine::visitsWithout),
                TableColumn.count("Injectors replaced with it", 12, RuleLine::injectorsWith),
                TableColumn.count("Injectors replaced without it", 12, RuleLine::injectorsWithout));
    }

    private static List<TableColumn<ForecastLine>> judged() {
        return List.of(
                percent("Chance from", ForecastLine::low),
                percent("Chance below", ForecastLine::high),
                TableColumn.<ForecastLine>count("Forecasts", 11, ForecastLine::count)
                        .summed(),
                TableColumn.<ForecastLine>figure("Failures expected", Unit.NONE, 11, ForecastLine::expected)
                        .summed(),
                TableColumn.<ForecastLine>count("Failures happened", 11, ForecastLine::failures)
                        .summed(),
                percent("Share that failed", line -> (double) line.failures() / line.count()),
                percent("90 % interval from", ForecastLine::least),
                percent("to", ForecastLine::most),
                TableColumn.text("Verdict", 10, line -> line.holds() ? "holds" : "off"));
    }

    private interface Chance {
        double of(ForecastLine line);
    }

    private static TableColumn<ForecastLine> percent(String heading, Chance chance) {
        return TableColumn.figure(heading, Unit.PERCENT, 11, line -> 100 * chance.of(line));
    }
}
