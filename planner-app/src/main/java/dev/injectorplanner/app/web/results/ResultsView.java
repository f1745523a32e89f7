package dev.injectorplanner.app.web.results;

import dev.injectorplanner.app.forecast.Calibration;
import dev.injectorplanner.app.results.MonthResult;
import dev.injectorplanner.app.web.chart.Chart;
import dev.injectorplanner.app.web.chart.MonthPicture;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.units.SiteForm;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** Results as they are shown, in the site's units and currency. */
public final class ResultsView {
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM uuuu", Locale.UK);
    private static final String NONE = "\u2013";

    private final List<MonthResult> months;
    private final Calibration calibration;
    private final SiteForm form;

    ResultsView(List<MonthResult> months, Calibration calibration, SiteForm form) {
        this.months = List.copyOf(months);
        this.calibration = calibration;
        this.form = form;
    }

    /** A label with its value and a remark. */
    public record Fact(String label, String value, String remark) {}

    /** A month as cells. */
    public record Row(String month, List<String> cells) {}

    /** A band of forecasts. */
    public record BandRow(
            String chance,
            String count,
            String expected,
            String happened,
            String share,
            String interval,
            boolean holds) {}

    public String about() {
        return month(months.get(0)) + " to " + month(months.get(months.size() - 1)) + "; the last month is not over";
    }

    private static String month(MonthResult each) {
        return MONTH.format(each.month());
    }

    private double perDistance(MonthResult each) {
        double distance = form.units().ofKm(each.km());
        return distance < 1000 ? Double.NaN : each.cost() / distance * 1000;
    }

    public String distanceUnit() {
        return form.units().distanceUnit();
    }

    private MonthResult all() {
        return MonthResult.sum(months);
    }

    /** Months with a plan, and those before. */
    private List<MonthResult> with(boolean plan) {
        return months.stream().filter(each -> each.hasPlan() == plan).toList();
    }

    public List<Fact> head() {
        MonthResult all = all();
        List<MonthResult> before = with(false);
        List<MonthResult> since = with(true);
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(
                "Cost per 1,000 " + distanceUnit(),
                amount(perDistance(since.isEmpty() ? all : MonthResult.sum(since))),
                since.isEmpty() || before.isEmpty()
                        ? "parts, labour, road failures"
                        : amount(perDistance(MonthResult.sum(before))) + " before"));
        facts.add(new Fact("Road failures", String.valueOf(all.roadFailures()), "in these months"));
        facts.add(new Fact(
                "Done of planned",
                since.isEmpty() || MonthResult.sum(since).planned() == 0
                        ? NONE
                        : Math.round(100.0
                                        * MonthResult.sum(since).doneAsPlanned()
                                        / MonthResult.sum(since).planned()) + "\u00a0%",
                since.isEmpty() ? "no plan was kept yet" : "since the first plan"));
        facts.add(new Fact(
                "Forecast failures",
                calibration.count() == 0 ? NONE : DisplayFormat.tenth(calibration.expected()),
                calibration.count() == 0 ? "none judged yet" : calibration.failures() + " happened"));
        return facts;
    }

    /** The one sentence that the pictures prove. */
    public String answer() {
        List<MonthResult> before = with(false);
        List<MonthResult> since = with(true);
        if (since.isEmpty() || before.isEmpty()) {
            return since.isEmpty()
                    ? "No plan was kept in these months, so they show what injectors cost without one."
                    : "Plans were kept in all of these months: there is nothing before them to compare with.";
        }
        double was = perDistance(MonthResult.sum(before));
        double is = perDistance(MonthResult.sum(since));
        double distance = form.units().ofKm(MonthResult.sum(since).km());
        if (!Double.isFinite(was) || !Double.isFinite(is)) {
            return "Too little was driven on record to compare the months with a plan and those without.";
        }
        double saved = (was - is) * distance / 1000;
        String compared = amount(is) + " per 1,000 " + distanceUnit() + " since the first plan, against " + amount(was)
                + " in the " + Figures.count(before.size(), "month", "months") + " before";
        return (saved >= 0
                        ? "It pays: " + DisplayFormat.money(saved) + " less so far. "
                        : "It has not paid so far: " + DisplayFormat.money(-saved) + " more. ")
                + DisplayFormat.sentence(compared) + ".";
    }

    public List<MonthPicture.Panel> panels() {
        return List.of(
                panel("Cost per 1,000 " + distanceUnit(), "money", this::perDistance, null, "", ResultsView::amount),
                panel("Road failures", "trucks", each -> each.roadFailures(), null, "", Figures::whole),
                panel(
                        "Visits",
                        "bar: done; line: planned",
                        each -> each.done(),
                        each -> each.hasPlan() ? each.planned() : Double.NaN,
                        "planned",
                        Figures::whole),
                panel(
                        "Hours",
                        "bar: worked, planned or not; line: planned",
                        each -> each.workedHours() + each.unplannedHours(),
                        each -> each.hasPlan() ? each.plannedHours() : Double.NaN,
                        "planned",
                        Figures::whole),
                panel("Thrown away early", "money: life left unused", MonthResult::early, null, "", Figures::whole),
                panel(
                        "Cores and warranty",
                        "money: bar credited; line: deposits lost",
                        each -> each.coresCredited() + each.warranty(),
                        each -> each.coresLost() > 0 ? each.coresLost() : Double.NaN,
                        "lost",
                        Figures::whole));
    }

    private MonthPicture.Panel panel(
            String title,
            String unit,
            ToDoubleFunction<MonthResult> value,
            @Nullable ToDoubleFunction<MonthResult> against,
            String againstWords,
            DoubleFunction<String> words) {
        return new MonthPicture(
                        title,
                        unit,
                        againstWords,
                        months.stream()
                                .map(each -> MonthPicture.Month.of(
                                        each.month(), value.applyAsDouble(each), known(against, each)))
                                .toList(),
                        words)
                .since(firstPlanned())
                .panel();
    }

    /** The first month with a plan, where months without one come before it. */
    private @Nullable YearMonth firstPlanned() {
        List<MonthResult> with = with(true);
        return with.isEmpty() || with.size() == months.size()
                ? null
                : with.get(0).month();
    }

    private static @Nullable Double known(@Nullable ToDoubleFunction<MonthResult> against, MonthResult each) {
        double value = against == null ? Double.NaN : against.applyAsDouble(each);
        return Double.isFinite(value) ? Double.valueOf(value) : null;
    }

    /** Column heads of the months' table. */
    public List<String> heads() {
        return List.of(
                "Visits planned",
                "Done as planned",
                "Done, all",
                "Road failures",
                "Hours planned",
                "Worked, planned",
                "Worked, not planned",
                "Thrown away early",
                "Cores credited",
                "Cores lost",
                "Warranty credited",
                "Parts",
                "Labour",
                "Road failures, money",
                "Thousand " + distanceUnit(),
                "Cost per 1,000 " + distanceUnit());
    }

    /** Newest first. */
    public List<Row> rows() {
        List<Row> rows = new ArrayList<>(
                months.stream().map(each -> new Row(month(each), cells(each))).toList());
        Collections.reverse(rows);
        return rows;
    }

    public Row sum() {
        return new Row("All months", cells(all()));
    }

    private List<String> cells(MonthResult each) {
        return List.of(
                each.hasPlan() ? String.valueOf(each.planned()) : NONE,
                String.valueOf(each.doneAsPlanned()),
                String.valueOf(each.done()),
                String.valueOf(each.roadFailures()),
                each.hasPlan() ? Figures.whole(each.plannedHours()) : NONE,
                Figures.whole(each.workedHours()),
                Figures.whole(each.unplannedHours()),
                DisplayFormat.money(each.early()),
                DisplayFormat.money(each.coresCredited()),
                DisplayFormat.money(each.coresLost()),
                DisplayFormat.money(each.warranty()),
                DisplayFormat.money(each.parts()),
                DisplayFormat.money(each.labour()),
                DisplayFormat.money(each.failures()),
                Figures.whole(form.units().ofKm(each.km()) / 1000),
                amount(perDistance(each)));
    }

    private static String amount(double value) {
        return Double.isFinite(value) ? String.format(Locale.ROOT, "%,.2f", value) : NONE;
    }

    public int judged() {
        return calibration.count();
    }

    public String judgedWords() {
        return Figures.whole(calibration.count()) + " forecasts of 12 weeks, from the first plan kept of each week: "
                + DisplayFormat.tenth(calibration.expected()) + " failures expected, " + calibration.failures()
                + " happened.";
    }

    public List<BandRow> bands() {
        return calibration.bands().stream()
                .map(band -> new BandRow(
                        DisplayFormat.chance(band.low()).replace("under", "0 to under") + " to "
                                + DisplayFormat.chance(band.high()),
                        Figures.whole(band.count()),
                        DisplayFormat.tenth(band.expected()),
                        String.valueOf(band.failures()),
                        DisplayFormat.chance(band.happened()),
                        DisplayFormat.chance(band.least()) + " to " + DisplayFormat.chance(band.most()),
                        band.forecast() >= band.least() && band.forecast() <= band.most()))
                .toList();
    }

    /** What happened against what was forecast. */
    public Chart.Both picture() {
        return new CalibrationChart(calibration).both();
    }
}
