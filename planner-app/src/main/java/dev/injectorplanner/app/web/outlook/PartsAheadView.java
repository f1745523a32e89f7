package dev.injectorplanner.app.web.outlook;

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
        List<String> months, List<MonthChart.Panel> panels, List<Row> rows, String value, List<SupplierRow> suppliers) {
    private static final int MOST_PANELS = 6;
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM uu", Locale.UK);

    /** A figure with its 10 to 90 %. */
    public record Cell(String middle, String band) {}

    /** A part. */
    public record Row(String part, String description, String supplier, List<Cell> months, Cell year, String value) {}

    /** What a supplier sells in a year, in the middle case. */
    public record SupplierRow(String supplier, int parts, String value) {}

    static PartsAheadView of(Outlook outlook, ChosenDepots chosen) {
        Map<String, Part> parts = new HashMap<>();
        for (DepotPlan plan : chosen.plans()) {
            plan.fleet().fleet().parts().forEach(part -> parts.putIfAbsent(part.part(), part));
        }
        List<YearMonth> months =
                outlook.months().stream().map(Outlook.Month::month).toList();
        int planned = (int) months.stream()
                .filter(month -> !month.atDay(1).isAfter(outlook.planEnds()))
                .count();
        List<PartMonth> totals = outlook.partTotals().stream()
                .filter(total -> total.depot() == null && total.pieces().high() > 0)
                .sorted(Comparator.comparingDouble((PartMonth total) -> -value(parts.get(total.part()), total.pieces()))
                        .thenComparing(PartMonth::part))
                .toList();
        Map<String, Map<YearMonth, Band>> byPart = new HashMap<>();
        outlook.partsOf(null)
                .forEach(row -> byPart.computeIfAbsent(row.part(), part -> new HashMap<>())
                        .put(row.month(), row.pieces()));
        List<Row> rows = new ArrayList<>();
        List<MonthChart.Panel> panels = new ArrayList<>();
        Map<String, double[]> suppliers = new HashMap<>();
        double sum = 0;
        for (PartMonth total : totals) {
            Part part = parts.get(total.part());
            List<Band> bands = months.stream()
                    .map(month -> byPart.getOrDefault(total.part(), Map.of()).getOrDefault(month, Band.NONE))
                    .toList();
            double value = value(part, total.pieces());
            sum += value;
            double[] ofSupplier =
                    suppliers.computeIfAbsent(part == null ? "not known" : part.supplier(), none -> new double[2]);
            ofSupplier[0]++;
            ofSupplier[1] += value;
            rows.add(new Row(
                    total.part(),
                    part == null ? "" : part.description(),
                    part == null ? "" : part.supplier(),
                    bands.stream().map(PartsAheadView::cell).toList(),
                    cell(total.pieces()),
                    DisplayFormat.money(value)));
            if (panels.size() < MOST_PANELS) {
                panels.add(MonthChart.panel(
                        total.part(),
                        part == null ? "pieces" : part.description() + ", pieces",
                        months,
                        bands,
                        total.pieces(),
                        planned,
                        Figures::tenths));
            }
        }
        return new PartsAheadView(
                months.stream()
                        .map(month -> MONTH.format(month).replace("Sept", "Sep"))
                        .toList(),
                panels,
                rows,
                DisplayFormat.money(sum),
                suppliers.entrySet().stream()
                        .sorted(Comparator.comparingDouble((Map.Entry<String, double[]> each) -> -each.getValue()[1]))
                        .map(each -> new SupplierRow(
                                each.getKey(), (int) each.getValue()[0], DisplayFormat.money(each.getValue()[1])))
                        .toList());
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
