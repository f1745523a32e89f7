package dev.injectorplanner.app.web.outlook;

import dev.injectorplanner.app.web.chart.MonthPicture;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.replay.outlook.AvailableHours;
import dev.injectorplanner.core.replay.outlook.Band;
import dev.injectorplanner.core.replay.outlook.Outlook;
import dev.injectorplanner.core.replay.outlook.Outlook.Month;
import dev.injectorplanner.core.replay.outlook.Outlook.PartMonth;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.units.SiteUnits;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** An outlook in words and pictures. */
public final class OutlookView {
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM uuuu", Locale.UK);
    private static final int SOON = 3;
    /** Hours available stand in the picture where a month may need a third of them. */
    private static final double NEAR = 3;

    private static final int MOST_LEFT_OUT = 8;

    private final Outlook outlook;
    private final ChosenDepots chosen;
    private final SiteUnits units;
    private final List<YearMonth> months;
    private final Map<YearMonth, Double> available = new HashMap<>();

    OutlookView(Outlook outlook, ChosenDepots chosen) {
        this.outlook = outlook;
        this.chosen = chosen;
        this.units = chosen.units();
        this.months = outlook.months().stream().map(Month::month).toList();
        for (DepotPlan plan : chosen.plans()) {
            hours(plan).forEach((month, hours) -> available.merge(month, hours, Double::sum));
        }
    }

    private Map<YearMonth, Double> hours(DepotPlan plan) {
        Map<YearMonth, Double> hours = new HashMap<>();
        for (YearMonth month : months) {
            hours.put(month, AvailableHours.of(plan.site(), plan.fleet().fleet().capacity(), month, outlook.today()));
        }
        return hours;
    }

    /** A figure with its band. */
    public record Figure(String name, String middle, String unit, String band) {}

    /** A row of months or of depots. */
    public record Row(String name, List<Cell> cells) {}

    /** A figure of a row: its middle value and its band. */
    public record Cell(String middle, String band) {}

    /** One part, with its months as a small picture. */
    public record PartRow(
            String part, String description, Cell soon, Cell whole, String onHand, String onOrder, MonthSpark months) {}

    /** What stands at the top. */
    public List<Figure> head() {
        Month whole = outlook.totalOf(null);
        return List.of(
                figure("Injectors", whole.injectors(), "", Figures::whole),
                figure("Hours", whole.hours(), "", Figures::whole),
                figure("Money", whole.money(), "", DisplayFormat::money),
                figure("Road failures", whole.failures(), "", Figures::whole),
                figure("Coolant", whole.coolantLitres(), units.volumeUnit(), this::volume));
    }

    private static Figure figure(String name, Band band, String unit, DoubleFunction<String> words) {
        return new Figure(name, words.apply(band.median()), unit, range(band, words));
    }

    private static String range(Band band, DoubleFunction<String> words) {
        return words.apply(band.low()) + " to " + words.apply(band.high());
    }

    private String volume(double litres) {
        return Figures.whole(units.ofLitres(litres));
    }

    /** Which months, from how many runs. */
    public String about() {
        return months.size() + " months, " + MONTH.format(months.get(0)) + " to "
                + MONTH.format(months.get(months.size() - 1)) + ". " + Figures.whole(outlook.runs()) + " runs.";
    }

    /** Which months run short of hours. */
    public String answer() {
        List<String> tight = new ArrayList<>();
        for (Month month : outlook.months()) {
            double hours = available.getOrDefault(month.month(), 0.0);
            if (month.hours().median() > hours) {
                tight.add(MONTH.format(month.month()) + " ("
                        + Figures.whole(month.hours().median()) + " h of " + Figures.whole(hours) + ")");
            }
        }
        return tight.isEmpty()
                ? "Hours fit in every month in the middle case."
                : "Hours run short in " + String.join(", ", tight) + ".";
    }

    /** The pictures. */
    public List<MonthPicture.Panel> panels() {
        return List.of(
                panel("Injectors", "pieces", Month::injectors, Figures::whole),
                hours(),
                panel("Money", "road failures and downtime included", Month::money, DisplayFormat::money),
                panel("Road failures", "trucks stranded", Month::failures, OutlookView::few),
                panel("Coolant", units.volumeUnit() + " drained", Month::coolantLitres, this::volume),
                panel("Trucks in", "visits and repairs", Month::visits, Figures::whole));
    }

    private static String few(double value) {
        return Figures.tenths(value);
    }

    /** With the hours available each month, where they are near enough to stand in one picture. */
    private MonthPicture.Panel hours() {
        Band total = outlook.totalOf(null).hours();
        boolean near = outlook.months().stream()
                .anyMatch(month -> NEAR * month.hours().high() >= available.getOrDefault(month.month(), 0.0));
        return new MonthPicture(
                        "Hours",
                        near ? "labour; line: available" : "labour; far more is available",
                        "available",
                        outlook.months().stream()
                                .map(month -> hours(month, near))
                                .toList(),
                        Figures::whole)
                .panel(Figures.whole(total.median()), range(total, Figures::whole));
    }

    private MonthPicture.Month hours(Month month, boolean near) {
        MonthPicture.Month bar = picture(month.month(), month.hours(), outlook.planEnds());
        return near ? bar.held(available.getOrDefault(month.month(), 0.0)) : bar;
    }

    private MonthPicture.Panel panel(
            String title, String unit, Function<Month, Band> figure, DoubleFunction<String> words) {
        Band total = figure.apply(outlook.totalOf(null));
        return new MonthPicture(
                        title,
                        unit,
                        "",
                        outlook.months().stream()
                                .map(month -> picture(month.month(), figure.apply(month), outlook.planEnds()))
                                .toList(),
                        words)
                .panel(words.apply(total.median()), range(total, words));
    }

    /** A month with its band; what begins after the plan ends is expected. */
    static MonthPicture.Month picture(YearMonth month, Band band, LocalDate planEnds) {
        return MonthPicture.Month.band(
                month, band.median(), band.low(), band.high(), month.atDay(1).isAfter(planEnds));
    }

    /** One row a depot, all months together. */
    public List<Row> depots() {
        List<Row> rows = new ArrayList<>();
        for (DepotPlan plan : chosen.plans()) {
            outlook.totals().stream()
                    .filter(total -> plan.depot().equals(total.depot()))
                    .forEach(total -> rows.add(new Row(plan.depot(), depotCells(plan, total))));
        }
        return rows;
    }

    private List<Cell> depotCells(DepotPlan plan, Month total) {
        Map<YearMonth, Double> hours = hours(plan);
        double all = hours.values().stream().mapToDouble(Double::doubleValue).sum();
        String tight = outlook.monthsOf(plan.depot()).stream()
                .filter(month -> month.hours().median() > hours.getOrDefault(month.month(), 0.0))
                .map(month -> MONTH.format(month.month()))
                .findFirst()
                .orElse("none");
        return List.of(
                cell(total.hours(), Figures::whole),
                new Cell(Figures.whole(all), ""),
                new Cell(tight, ""),
                cell(total.injectors(), Figures::whole),
                cell(total.failures(), Figures::whole),
                cell(total.money(), DisplayFormat::money));
    }

    private static Cell cell(Band band, DoubleFunction<String> words) {
        return new Cell(words.apply(band.median()), range(band, words));
    }

    /** Parts, the dearest first. */
    public List<PartRow> parts() {
        Map<String, Part> known = new HashMap<>();
        Map<String, Double> onHand = new HashMap<>();
        Map<String, Double> onOrder = new HashMap<>();
        for (DepotPlan plan : chosen.plans()) {
            plan.fleet().fleet().parts().forEach(part -> known.putIfAbsent(part.part(), part));
            plan.fleet().fleet().stock().stream()
                    .filter(line -> line.depot().equals(plan.depot()))
                    .forEach(line -> onHand.merge(line.part(), line.onHand(), Double::sum));
            plan.fleet().fleet().purchaseLines().stream()
                    .filter(line -> line.openQuantity() > 0 && line.depot().equals(plan.depot()))
                    .forEach(line -> onOrder.merge(line.part(), line.openQuantity(), Double::sum));
        }
        return outlook.partTotals().stream()
                .filter(total -> total.depot() == null)
                .sorted(Comparator.comparingDouble((PartMonth total) -> -value(known.get(total.part()), total)))
                .map(total -> new PartRow(
                        total.part(),
                        known.containsKey(total.part())
                                ? known.get(total.part()).description()
                                : "",
                        new Cell(Figures.whole(soon(total.part())), "mean"),
                        cell(total.pieces(), Figures::whole),
                        DisplayFormat.pieces(onHand.getOrDefault(total.part(), 0.0)),
                        DisplayFormat.pieces(onOrder.getOrDefault(total.part(), 0.0)),
                        spark(total.part())))
                .toList();
    }

    private static double value(@Nullable Part part, PartMonth total) {
        return (part == null ? 0 : part.price().doubleValue()) * total.pieces().mean();
    }

    private MonthSpark spark(String part) {
        Map<YearMonth, Double> pieces = new HashMap<>();
        outlook.partsOf(null).stream()
                .filter(row -> row.part().equals(part))
                .forEach(row -> pieces.put(row.month(), row.pieces().median()));
        return MonthSpark.of(
                outlook.months().stream().map(Outlook.Month::month).toList(), month -> pieces.getOrDefault(month, 0.0));
    }

    private double soon(String part) {
        return outlook.partsOf(null).stream()
                .filter(row -> row.part().equals(part) && months.indexOf(row.month()) < SOON)
                .mapToDouble(row -> row.pieces().mean())
                .sum();
    }

    /** The figures of the pictures. */
    public List<Row> figures() {
        return outlook.months().stream()
                .map(month -> new Row(
                        MONTH.format(month.month()),
                        List.of(
                                cell(month.injectors(), Figures::whole),
                                cell(month.hours(), Figures::whole),
                                new Cell(Figures.whole(available.getOrDefault(month.month(), 0.0)), ""),
                                cell(month.coolantLitres(), this::volume),
                                cell(month.failures(), OutlookView::few),
                                cell(month.money(), DisplayFormat::money))))
                .toList();
    }

    public String volumeUnit() {
        return units.volumeUnit();
    }

    /** What it stands on. */
    public List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add("The plan's visits are carried out to " + DisplayFormat.date(outlook.planEnds())
                + ", with what new faults ask for; after that, by rule: " + units.sentence(outlook.rules()) + ".");
        if (!outlook.leftOut().isEmpty()) {
            int more = outlook.leftOut().size() - MOST_LEFT_OUT;
            notes.add("Not counted, since their usage or the part of their injectors is not known: "
                    + String.join(
                            ", ",
                            outlook.leftOut().stream().limit(MOST_LEFT_OUT).toList())
                    + (more > 0 ? " and " + more + " more" : "") + ".");
        }
        if (outlook.assumedAges() > 0) {
            notes.add(Figures.count(outlook.assumedAges(), "injector", "injectors")
                    + " of unknown age are taken to be as old as the others of their truck.");
        }
        notes.add("Trucks that join the fleet later are not in it; those that leave, leave on their day.");
        return notes;
    }
}
