package dev.injectorplanner.app.web.outlook;

import dev.injectorplanner.app.web.chart.MonthPicture;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.replay.outlook.Band;
import dev.injectorplanner.core.replay.outlook.Outlook;
import dev.injectorplanner.core.replay.outlook.Outlook.PartMonth;
import dev.injectorplanner.core.units.Figures;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Needs by part and month.
 *
 * @param months headings of the months
 * @param panels pictures of the parts that cost most
 * @param rows a row a part, the dearest first
 * @param value middle value of all parts together
 * @param suppliers the same by supplier
 */
public record PartsAheadView(
        List<String> months,
        List<MonthPicture.Panel> panels,
        List<Row> rows,
        String value,
        List<SupplierRow> suppliers) {
    private static final int MOST_PANELS = 6;
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM uu", Locale.UK);

    /** A figure with its 10 to 90 %. */
    public record Cell(String middle, String band) {}

    /** A part. */
    public record Row(String part, String description, String supplier, List<Cell> months, Cell year, String value) {}

    /** What a supplier sells in a year, in the middle case. */
    public record SupplierRow(String supplier, int parts, String value) {}

    static PartsAheadView of(Outlook outlook, ChosenDepots chosen) {
        return new Filler(outlook, chosen).fill();
    }

    /** Gathers the view. */
    private static final class Filler {
        private final Outlook outlook;
        private final Map<String, Part> parts = new HashMap<>();
        private final Map<String, Map<YearMonth, Band>> byPart = new HashMap<>();
        private final List<YearMonth> months;
        private final List<Row> rows = new ArrayList<>();
        private final List<MonthPicture.Panel> panels = new ArrayList<>();
        private final Map<String, double[]> suppliers = new HashMap<>();
        private double sum;

        Filler(Outlook outlook, ChosenDepots chosen) {
            this.outlook = outlook;
            for (DepotPlan plan : chosen.plans()) {
                plan.fleet().fleet().parts().forEach(part -> parts.putIfAbsent(part.part(), part));
            }
            outlook.partsOf(null)
                    .forEach(row -> byPart.computeIfAbsent(row.part(), part -> new HashMap<>())
                            .put(row.month(), row.pieces()));
            this.months = outlook.months().stream().map(Outlook.Month::month).toList();
        }

        PartsAheadView fill() {
            outlook.partTotals().stream()
                    .filter(total -> total.depot() == null && total.pieces().high() > 0)
                    .sorted(Comparator.comparingDouble(
                                    (PartMonth total) -> -value(parts.get(total.part()), total.pieces()))
                            .thenComparing(PartMonth::part))
                    .forEach(this::add);
            return new PartsAheadView(
                    months.stream()
                            .map(month -> MONTH.format(month).replace("Sept", "Sep"))
                            .toList(),
                    panels,
                    rows,
                    DisplayFormat.money(sum),
                    suppliers.entrySet().stream()
                            .sorted(Comparator.comparingDouble(
                                    (Map.Entry<String, double[]> each) -> -each.getValue()[1]))
                            .map(each -> new SupplierRow(
                                    each.getKey(), (int) each.getValue()[0], DisplayFormat.money(each.getValue()[1])))
                            .toList());
        }

        private void add(PartMonth total) {
            Part part = parts.get(total.part());
            String supplier = part == null ? "not known" : part.supplier();
            String description = part == null ? "" : part.description();
            List<Band> bands = months.stream()
                    .map(month -> byPart.getOrDefault(total.part(), Map.of()).getOrDefault(month, Band.NONE))
                    .toList();
            double value = value(part, total.pieces());
            sum += value;
            double[] ofSupplier = suppliers.computeIfAbsent(supplier, none -> new double[2]);
            ofSupplier[0]++;
            ofSupplier[1] += value;
            rows.add(new Row(
                    total.part(),
                    description,
                    supplier,
                    bands.stream().map(PartsAheadView::cell).toList(),
                    cell(total.pieces()),
                    DisplayFormat.money(value)));
            if (panels.size() < MOST_PANELS) {
                List<MonthPicture.Month> bars = new ArrayList<>();
                for (int month = 0; month < months.size(); month++) {
                    bars.add(OutlookView.picture(months.get(month), bands.get(month), outlook.planEnds()));
                }
                panels.add(new MonthPicture(
                                total.part(),
                                description.isEmpty() ? "pieces" : description + ", pieces",
                                "",
                                bars,
                                Figures::tenths)
                        .panel(
                                Figures.whole(total.pieces().median()),
                                Figures.whole(total.pieces().low()) + " to "
                                        + Figures.whole(total.pieces().high())));
            }
        }
    }

    private static double value(@Nullable Part part, Band pieces) {
        return part == null ? 0 : part.price().doubleValue() * pieces.median();
    }

    private static Cell cell(Band band) {
        return new Cell(
                Figures.whole(Math.rint(band.median())),
                Figures.whole(Math.floor(band.low())) + " to " + Figures.whole(Math.ceil(band.high())));
    }
}
