package dev.injectorplanner.reports.coolant;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.coolant.CoolantNeed;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.reports.workbook.BarChart;
import dev.injectorplanner.reports.workbook.Book;
import dev.injectorplanner.reports.workbook.Format;
import dev.injectorplanner.reports.workbook.Formula;
import dev.injectorplanner.reports.workbook.SheetColumn;
import dev.injectorplanner.reports.workbook.TableSheet;
import dev.injectorplanner.reports.workbook.Words;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/** Workbook {@code coolant}, for the storeman: what to draw and what to collect, by week and by visit. */
public final class CoolantWorkbook {
    private static final String CAUTION =
            " Glycol is poisonous: collect every litre, keep it off the ground and away from animals. Open no hot system.";

    private final Plan plan;
    private final String remark;

    public CoolantWorkbook(Plan plan) {
        this.plan = plan;
        this.remark = Words.planOf(plan) + "." + CAUTION;
    }

    private record DepotWeek(String depot, IsoWeek week) implements Comparable<DepotWeek> {
        @Override
        public int compareTo(DepotWeek other) {
            return Comparator.comparing(DepotWeek::depot)
                    .thenComparing(DepotWeek::week)
                    .compare(this, other);
        }
    }

    public void write(OutputStream out) throws IOException {
        try (Book book = new Book("Coolant")) {
            byWeek(book);
            byVisit(book);
            book.assumptions(plan.assumptions(), Words.planOf(plan));
            book.write(out);
        }
    }

    private void byWeek(Book book) {
        Map<DepotWeek, List<CoolantNeed>> needs = new TreeMap<>();
        plan.coolantNeeds()
                .forEach(need -> needs.computeIfAbsent(
                                new DepotWeek(need.depot(), need.week()), key -> new ArrayList<>())
                        .add(need));
        TableSheet sheet = book.table(
                "By week",
                "Coolant to draw and to collect, by week",
                remark,
                List.of(
                        SheetColumn.of("Depot and week", Format.TEXT, 24),
                        SheetColumn.of("Depot", Format.TEXT, 14),
                        SheetColumn.of("Week", Format.TEXT, 11),
                        SheetColumn.of("Monday", Format.DATE, 12),
                        SheetColumn.summed("Drained, l", Format.ONE_DECIMAL, 11),
                        SheetColumn.summed("Concentrate to draw, l", Format.ONE_DECIMAL, 13),
                        SheetColumn.summed("Water to draw, l", Format.ONE_DECIMAL, 11),
                        SheetColumn.summed("Old coolant to collect, l", Format.ONE_DECIMAL, 13)));
        needs.forEach((key, list) -> sheet.row(
                key.depot() + " " + key.week(),
                key.depot(),
                key.week(),
                key.week().monday(),
                sum("G", list, CoolantNeed::drainedLitres),
                sum("I", list, CoolantNeed::concentrateLitres),
                sum("J", list, CoolantNeed::waterLitres),
                sum("K", list, CoolantNeed::wasteLitres)));
        sheet.finish();
        sheet.chart(new BarChart("Coolant by week", "litres", 0, List.of(4, 5, 6)));
    }

    private Formula sum(String column, List<CoolantNeed> needs, ToDoubleFunction<CoolantNeed> litres) {
        int first = TableSheet.firstRow();
        int last = first + Math.max(1, plan.coolantNeeds().size()) - 1;
        String formula =
                "SUMIFS('By visit'!$%1$s$%2$d:$%1$s$%3$d,'By visit'!$A$%2$d:$A$%3$d,B#,'By visit'!$B$%2$d:$B$%3$d,C#)"
                        .formatted(column, first, last);
        return new Formula(formula, needs.stream().mapToDouble(litres).sum());
    }

    private void byVisit(Book book) {
        TableSheet sheet = book.table(
                "By visit",
                "Coolant to draw and to collect, by visit",
                remark,
                List.of(
                        SheetColumn.of("Depot", Format.TEXT, 14),
                        SheetColumn.of("Week", Format.TEXT, 11),
                        SheetColumn.of("Truck", Format.TEXT, 12),
                        SheetColumn.of("System holds, l", Format.ONE_DECIMAL, 11),
                        SheetColumn.of("Glycol, % by volume", Format.ONE_DECIMAL, 11),
                        SheetColumn.of("Drained coolant", Format.TEXT, 16),
                        SheetColumn.summed("Drained, l", Format.ONE_DECIMAL, 11),
                        SheetColumn.summed("To pour, l", Format.ONE_DECIMAL, 11),
                        SheetColumn.summed("Concentrate to draw, l", Format.ONE_DECIMAL, 13),
                        SheetColumn.summed("Water to draw, l", Format.ONE_DECIMAL, 11),
                        SheetColumn.summed("Old coolant to collect, l", Format.ONE_DECIMAL, 13)));
        for (CoolantNeed need : plan.coolantNeeds()) {
            sheet.row(
                    need.depot(),
                    need.week(),
                    need.truck(),
                    need.capacityLitres(),
                    need.glycolPercent(),
                    need.reused() ? "goes back in" : "is replaced",
                    need.drainedLitres(),
                    new Formula("I#+J#", need.concentrateLitres() + need.waterLitres()),
                    need.concentrateLitres(),
                    need.waterLitres(),
                    need.wasteLitres());
        }
        sheet.finish();
    }
}
