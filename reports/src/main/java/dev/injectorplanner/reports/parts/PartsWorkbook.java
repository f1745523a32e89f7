package dev.injectorplanner.reports.parts;

import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.parts.PartNeed;
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
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Workbook {@code parts-needs}, for the parts buyer: what to order by when, what every week needs, and the pieces by
 * part. A quantity that is changed changes the sums.
 */
public final class PartsWorkbook {
    private final Plan plan;
    private final Map<String, Part> parts = new HashMap<>();
    private final String remark;

    public PartsWorkbook(FleetSnapshot fleet, Plan plan) {
        this.plan = plan;
        fleet.parts().forEach(part -> parts.put(part.part(), part));
        this.remark = Words.planOf(plan);
    }

    public void write(OutputStream out) throws IOException {
        try (Book book = new Book("Parts needs")) {
            toOrder(book);
            byWeek(book);
            byPart(book);
            book.assumptions(plan.assumptions(), remark);
            book.write(out);
        }
    }

    private void toOrder(Book book) {
        TableSheet sheet = book.table(
                "To order",
                "Missing parts, by the day to order them",
                remark,
                List.of(
                        SheetColumn.of("Order by", Format.DATE, 12),
                        SheetColumn.of("Supplier", Format.TEXT, 24),
                        SheetColumn.of("Part", Format.TEXT, 16),
                        SheetColumn.of("Description", Format.WRAPPED, 34),
                        SheetColumn.of("Depot", Format.TEXT, 14),
                        SheetColumn.of("For week", Format.TEXT, 11),
                        SheetColumn.summed("Missing", Format.TWO_DECIMALS, 10),
                        SheetColumn.of("Pack", Format.WHOLE, 7),
                        SheetColumn.of("Least order", Format.WHOLE, 8),
                        SheetColumn.summed("Quantity to order", Format.WHOLE, 10),
                        SheetColumn.of("Price", Format.TWO_DECIMALS, 10),
                        SheetColumn.of("Core deposit", Format.TWO_DECIMALS, 10),
                        SheetColumn.summed("Order value", Format.TWO_DECIMALS, 12),
                        SheetColumn.summed("Deposits", Format.TWO_DECIMALS, 12),
                        SheetColumn.of("For trucks", Format.WRAPPED, 40)));
        plan.partNeeds().stream()
                .filter(need -> need.missing() > 0)
                .sorted(Comparator.comparing(PartNeed::orderBy, Comparator.nullsFirst(Comparator.naturalOrder())))
                .forEach(need -> orderLine(sheet, need));
        sheet.finish();
    }

    private void orderLine(TableSheet sheet, PartNeed need) {
        Part part = parts.get(need.part());
        int pack = part == null ? 1 : part.pack();
        int least = part == null ? 0 : part.minimumOrder();
        double quantity = Math.ceil(round(Math.max(need.missing(), least) / pack)) * pack;
        double price = number(part == null ? null : part.price());
        double deposit = number(part == null ? null : part.coreDeposit());
        sheet.row(
                need.orderBy(),
                part == null ? "not in the table of parts" : part.supplier(),
                need.part(),
                part == null ? "" : part.description(),
                need.depot(),
                need.week(),
                round(need.missing()),
                pack,
                least,
                new Formula("CEILING(MAX(G#,I#),H#)", quantity),
                price,
                deposit,
                new Formula("J#*K#", quantity * price),
                new Formula("J#*L#", quantity * deposit),
                String.join(", ", need.trucks()));
    }

    private void byWeek(Book book) {
        TableSheet sheet = book.table(
                "By week",
                "What each week's visits need, against what there will be",
                remark,
                List.of(
                        SheetColumn.of("Week", Format.TEXT, 11),
                        SheetColumn.of("Monday", Format.DATE, 12),
                        SheetColumn.of("Depot", Format.TEXT, 14),
                        SheetColumn.of("Part", Format.TEXT, 16),
                        SheetColumn.of("Description", Format.WRAPPED, 34),
                        SheetColumn.summed("Needed", Format.TWO_DECIMALS, 10),
                        SheetColumn.of("On the shelf before", Format.TWO_DECIMALS, 11),
                        SheetColumn.of("Of that arriving that week", Format.TWO_DECIMALS, 12),
                        SheetColumn.summed("Missing", Format.TWO_DECIMALS, 10),
                        SheetColumn.of("Left after", Format.TWO_DECIMALS, 10),
                        SheetColumn.of("Order by", Format.DATE, 12),
                        SheetColumn.of("For trucks", Format.WRAPPED, 40)));
        for (PartNeed need : plan.partNeeds()) {
            sheet.row(
                    need.week(),
                    need.week().monday(),
                    need.depot(),
                    need.part(),
                    description(need.part()),
                    round(need.needed()),
                    round(need.onHandBefore()),
                    round(need.arriving()),
                    new Formula("MAX(0,F#-G#)", Math.max(0, round(need.needed()) - round(need.onHandBefore()))),
                    new Formula("MAX(0,G#-F#)", Math.max(0, round(need.onHandBefore()) - round(need.needed()))),
                    need.orderBy(),
                    String.join(", ", need.trucks()));
        }
        sheet.finish();
    }

    private void byPart(Book book) {
        Map<String, List<PartNeed>> needs = new TreeMap<>();
        plan.partNeeds()
                .forEach(need -> needs.computeIfAbsent(need.part(), part -> new ArrayList<>())
                        .add(need));
        TableSheet sheet = book.table(
                "By part",
                "Pieces by part over all depots and weeks",
                remark,
                List.of(
                        SheetColumn.of("Part", Format.TEXT, 16),
                        SheetColumn.of("Description", Format.WRAPPED, 40),
                        SheetColumn.summed("Needed", Format.TWO_DECIMALS, 10),
                        SheetColumn.summed("Missing", Format.TWO_DECIMALS, 10)));
        int last = TableSheet.firstRow() + Math.max(1, plan.partNeeds().size()) - 1;
        needs.forEach((part, rows) -> sheet.row(
                part,
                description(part),
                sumIf(
                        "F",
                        last,
                        rows.stream().mapToDouble(need -> round(need.needed())).sum()),
                sumIf(
                        "I",
                        last,
                        rows.stream().mapToDouble(need -> round(need.missing())).sum())));
        sheet.finish();
        sheet.chart(new BarChart("Pieces needed and missing", "pieces", 0, List.of(2, 3)));
    }

    private static Formula sumIf(String column, int last, double value) {
        int first = TableSheet.firstRow();
        return new Formula(
                "SUMIF('By week'!$D$" + first + ":$D$" + last + ",A#,'By week'!$" + column + "$" + first + ":$" + column
                        + "$" + last + ")",
                value);
    }

    private String description(String number) {
        Part part = parts.get(number);
        return part == null ? "not in the table of parts" : part.description();
    }

    private static double number(@Nullable BigDecimal money) {
        return money == null ? 0 : money.doubleValue();
    }

    /** Expected pieces to a thousandth: what a sheet shows is what it calculates with. */
    private static double round(double pieces) {
        return Math.rint(pieces * 1_000) / 1_000;
    }
}
