package dev.injectorplanner.reports.parts;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.parts.StockWeek;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.reports.workbook.BarChart;
import dev.injectorplanner.reports.workbook.Book;
import dev.injectorplanner.reports.workbook.Format;
import dev.injectorplanner.reports.workbook.Formula;
import dev.injectorplanner.reports.workbook.SheetColumn;
import dev.injectorplanner.reports.workbook.TableSheet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Sheets {@code Stock of one} (a chosen part at a chosen depot, with its chart), {@code Shelves} (one line each) and
 * {@code Stock by week}, which follows the quantities of the order sheets.
 */
final class StockSheets {
    private static final List<SheetColumn> WEEK_COLUMNS = List.of(
            SheetColumn.of("Depot and part", Format.TEXT, 24),
            SheetColumn.of("Depot", Format.TEXT, 13),
            SheetColumn.of("Part", Format.TEXT, 13),
            SheetColumn.of("Week", Format.TEXT, 10),
            SheetColumn.of("Description", Format.WRAPPED, 30),
            SheetColumn.of("Arrivals after", Format.DATE, 12),
            SheetColumn.of("Until", Format.DATE, 12),
            SheetColumn.of("Before", Format.QUANTITY, 9),
            SheetColumn.summed("Arriving", Format.QUANTITY, 9),
            SheetColumn.summed("Proposed orders", Format.QUANTITY, 9),
            SheetColumn.summed("To have for visits", Format.QUANTITY, 12),
            SheetColumn.of("Left at the end of the week", Format.QUANTITY, 12));

    private static final String WEEKS = "Stock by week";
    private static final String SHELVES = "Shelves";

    private final Plan plan;
    private final String remark;
    private final Descriptions descriptions;
    private final OrderSheets orders;
    private final Map<String, List<StockWeek>> byShelf = new LinkedHashMap<>();
    private final List<StockWeek> shown = new ArrayList<>();
    private final int first = TableSheet.firstRow();

    StockSheets(Plan plan, String remark, Descriptions descriptions, OrderSheets orders) {
        this.plan = plan;
        this.remark = remark;
        this.descriptions = descriptions;
        this.orders = orders;
        plan.parts()
                .stockWeeks()
                .forEach(week -> byShelf.computeIfAbsent(key(week), shelf -> new ArrayList<>())
                        .add(week));
        byShelf.values().removeIf(weeks -> weeks.stream().allMatch(week -> week.start() == 0 && !moves(week)));
        byShelf.values().forEach(weeks -> shown.addAll(shown(weeks)));
    }

    private static boolean moves(StockWeek week) {
        return week.arriving() != 0 || week.ordered() != 0 || week.required() != 0;
    }

    /** The first week, and those in which something comes or goes: in all others a shelf stays as it is. */
    private static List<StockWeek> shown(List<StockWeek> weeks) {
        StockWeek start = weeks.get(0);
        return weeks.stream().filter(week -> moves(week) || week == start).toList();
    }

    private static String key(StockWeek week) {
        return week.depot() + ", " + week.part();
    }

    void write(Book book) {
        if (!byShelf.isEmpty()) {
            one(book);
        }
        shelves(book);
        weeks(book);
    }

    /** The shelf that falls lowest, or else needs most. */
    private List<StockWeek> worst() {
        return byShelf.values().stream()
                .min(Comparator.<List<StockWeek>>comparingDouble(weeks -> Math.min(0, least(weeks)))
                        .thenComparingDouble(weeks -> -sum(weeks, StockWeek::required)))
                .orElse(List.of());
    }

    private static double least(List<StockWeek> weeks) {
        return weeks.stream().mapToDouble(StockWeek::end).min().orElse(0);
    }

    private static double sum(List<StockWeek> weeks, ToDoubleFunction<StockWeek> pieces) {
        return weeks.stream().mapToDouble(pieces).sum();
    }

    private void one(Book book) {
        List<StockWeek> worst = worst();
        TableSheet sheet = book.table(
                "Stock of one",
                "One part at one depot, week by week",
                remark + ". Choose another in the cell below; the chart updates itself.",
                List.of(
                        SheetColumn.of("Week", Format.TEXT, 22),
                        SheetColumn.of("Before", Format.QUANTITY, 26),
                        SheetColumn.of("Arriving", Format.QUANTITY, 10),
                        SheetColumn.of("Proposed orders", Format.QUANTITY, 10),
                        SheetColumn.of("To have for visits", Format.QUANTITY, 12),
                        SheetColumn.of("Left at the end of the week", Format.QUANTITY, 12)));
        sheet.choice("Depot and part", "'" + SHELVES + "'!$A$" + first + ":$A$" + lastShelf(), key(worst.get(0)));
        int row = first;
        for (StockWeek week : worst) {
            Formula start = row == first ? pick("H", week.start()) : new Formula("F" + (row - 1), week.start());
            sheet.row(
                    week.week(),
                    start,
                    pick("I", week.arriving()),
                    pick("J", week.ordered()),
                    pick("K", week.required()),
                    new Formula("B#+C#+D#-E#", week.end()));
            row++;
        }
        sheet.finish();
        sheet.chart(new BarChart("Pieces left at the end of the week", "pieces", 0, List.of(5, 4), false));
    }

    private int lastShelf() {
        return first + byShelf.size() - 1;
    }

    private Formula pick(String column, double value) {
        return new Formula("SUMIFS(" + column(column) + "," + column("A") + ",$B$3," + column("D") + ",A#)", value);
    }

    private String column(String letter) {
        int last = first + Math.max(1, shown.size()) - 1;
        return "'" + WEEKS + "'!$" + letter + "$" + first + ":$" + letter + "$" + last;
    }

    private void shelves(Book book) {
        TableSheet sheet = book.table(
                SHELVES,
                "Every part at every depot",
                remark,
                List.of(
                        SheetColumn.of("Depot and part", Format.TEXT, 24),
                        SheetColumn.of("Depot", Format.TEXT, 13),
                        SheetColumn.of("Part", Format.TEXT, 13),
                        SheetColumn.of("Description", Format.WRAPPED, 34),
                        SheetColumn.of("On hand", Format.QUANTITY, 9),
                        SheetColumn.summed("Arriving", Format.QUANTITY, 9),
                        SheetColumn.summed("Proposed orders", Format.QUANTITY, 9),
                        SheetColumn.summed("To have for visits", Format.QUANTITY, 12),
                        SheetColumn.of("Lowest", Format.QUANTITY, 9),
                        SheetColumn.of("Left at the end", Format.QUANTITY, 11)));
        int row = first;
        for (Map.Entry<String, List<StockWeek>> shelf : byShelf.entrySet()) {
            List<StockWeek> weeks = shelf.getValue();
            int last = row + shown(weeks).size() - 1;
            sheet.row(
                    shelf.getKey(),
                    weeks.get(0).depot(),
                    weeks.get(0).part(),
                    descriptions.of(weeks.get(0).part()),
                    weeks.get(0).start(),
                    over("SUM", "I", row, last, sum(weeks, StockWeek::arriving)),
                    over("SUM", "J", row, last, sum(weeks, StockWeek::ordered)),
                    over("SUM", "K", row, last, sum(weeks, StockWeek::required)),
                    over("MIN", "L", row, last, least(weeks)),
                    over("SUM", "L", last, last, weeks.get(weeks.size() - 1).end()));
            row = last + 1;
        }
        sheet.finish();
    }

    private static Formula over(String function, String column, int from, int to, double value) {
        return new Formula(
                function + "('" + WEEKS + "'!$" + column + "$" + from + ":$" + column + "$" + to + ")", value);
    }

    private void weeks(Book book) {
        TableSheet sheet = book.table(
                WEEKS,
                "Stock by week, if the order list is followed",
                remark + ". Weeks in which nothing comes or goes are left out. Below zero: see the short list.",
                WEEK_COLUMNS);
        int row = first;
        for (List<StockWeek> all : byShelf.values()) {
            List<StockWeek> weeks = shown(all);
            LocalDate after = plan.today().minusDays(1);
            for (StockWeek week : weeks) {
                LocalDate until = ready(week.week());
                Object start = week == weeks.get(0) ? week.start() : new Formula("L" + (row - 1), week.start());
                sheet.row(
                        key(week),
                        week.depot(),
                        week.part(),
                        week.week(),
                        descriptions.of(week.part()),
                        after,
                        until,
                        start,
                        week.arriving(),
                        new Formula(orders.arriving("C#", "B#", "F#", "G#"), week.ordered()),
                        week.required(),
                        new Formula("H#+I#+J#-K#", week.end()));
                after = until;
                row++;
            }
        }
        sheet.finish();
    }

    private LocalDate ready(IsoWeek week) {
        return week.monday().isBefore(plan.today()) ? plan.today() : week.monday();
    }
}
