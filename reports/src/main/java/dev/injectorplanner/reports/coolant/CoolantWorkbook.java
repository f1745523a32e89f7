package dev.injectorplanner.reports.coolant;

import dev.injectorplanner.core.coolant.CoolantMix;
import dev.injectorplanner.core.coolant.CoolantNeed;
import dev.injectorplanner.core.coolant.CoolantRules;
import dev.injectorplanner.core.coolant.CoolantWeek;
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
import java.util.List;

/**
 * Workbook {@code coolant}, for the storeman: what to draw and what to collect, by week and by visit, the mixing table,
 * waste. A strength, a drain or a container that is changed changes the rest.
 */
public final class CoolantWorkbook {
    private static final String CAUTION =
            " Glycol is poisonous: collect every litre, keep it off the ground and away from animals. Open no hot system.";
    private static final int FIRST = TableSheet.firstRow();

    private final Plan plan;
    private final CoolantRules rules;
    private final String remark;
    private final MixingTable mixing;

    public CoolantWorkbook(Plan plan) {
        this.plan = plan;
        this.rules = plan.coolant().rules();
        this.remark = Words.planOf(plan) + "." + CAUTION;
        this.mixing = new MixingTable(Words.planOf(plan));
    }

    public void write(OutputStream out) throws IOException {
        try (Book book = new Book("Coolant")) {
            byWeek(book);
            byVisit(book);
            mixing.write(book);
            waste(book);
            containers(book);
            book.assumptions(plan.assumptions(), Words.planOf(plan));
            book.write(out);
        }
    }

    private void byWeek(Book book) {
        TableSheet sheet = book.table(
                "By week",
                "Coolant to draw and to collect, by week",
                remark,
                List.of(
                        SheetColumn.of("Depot and week", Format.TEXT, 24),
                        SheetColumn.of("Depot", Format.TEXT, 13),
                        SheetColumn.of("Week", Format.TEXT, 11),
                        SheetColumn.of("Monday", Format.DATE, 12),
                        SheetColumn.summed("Drained, l", Format.ONE_DECIMAL, 10),
                        SheetColumn.summed("Concentrate to draw, l", Format.ONE_DECIMAL, 12),
                        SheetColumn.summed("Water to draw, l", Format.ONE_DECIMAL, 10),
                        SheetColumn.summed("Old coolant to collect, l", Format.ONE_DECIMAL, 12),
                        SheetColumn.summed("Containers of concentrate", Format.WHOLE, 11),
                        SheetColumn.summed("Containers of water", Format.WHOLE, 11),
                        SheetColumn.summed("Waste containers", Format.WHOLE, 11)));
        for (CoolantWeek week : plan.coolant().weeks()) {
            sheet.row(
                    week.depot() + " " + week.week(),
                    week.depot(),
                    week.week(),
                    week.week().monday(),
                    sum("E", week.drainedLitres()),
                    sum("J", week.concentrateLitres()),
                    sum("K", week.waterLitres()),
                    sum("I", week.wasteLitres()),
                    whole("F", 0, week.concentrateContainers()),
                    whole("G", 1, week.waterContainers()),
                    whole("H", 2, week.wasteContainers()));
        }
        sheet.finish();
        sheet.chart(new BarChart("Coolant by week", "litres", 0, List.of(4, 5, 6)));
    }

    private Formula sum(String column, double value) {
        return new Formula("SUMIFS(" + visits(column) + "," + visits("A") + ",B#," + visits("B") + ",C#)", value);
    }

    private String visits(String column) {
        int last = FIRST + Math.max(1, plan.coolantNeeds().size()) - 1;
        return "'By visit'!$" + column + "$" + FIRST + ":$" + column + "$" + last;
    }

    private static Formula whole(String litres, int container, int value) {
        return new Formula("ROUNDUP(ROUND(" + litres + "#/Containers!$B$" + (FIRST + container) + ",6),0)", value);
    }

    private void byVisit(Book book) {
        TableSheet sheet = book.table(
                "By visit",
                "Coolant to draw and to collect, by visit",
                remark,
                List.of(
                        SheetColumn.of("Depot", Format.TEXT, 13),
                        SheetColumn.of("Week", Format.TEXT, 11),
                        SheetColumn.of("Truck", Format.TEXT, 10),
                        SheetColumn.of("System holds, l", Format.ONE_DECIMAL, 10),
                        SheetColumn.summed("Drained, l", Format.ONE_DECIMAL, 9),
                        SheetColumn.of("Glycol now, %", Format.ONE_DECIMAL, 13),
                        SheetColumn.of("Target, %", Format.ONE_DECIMAL, 10),
                        SheetColumn.of("Mixed to, %", Format.ONE_DECIMAL, 10),
                        SheetColumn.summed("Old coolant to collect, l", Format.ONE_DECIMAL, 13),
                        SheetColumn.summed("Concentrate, l", Format.TWO_DECIMALS, 12),
                        SheetColumn.summed("Water, l", Format.TWO_DECIMALS, 9),
                        SheetColumn.summed("Put back, l", Format.ONE_DECIMAL, 9),
                        SheetColumn.of("Glycol after, %", Format.ONE_DECIMAL, 12),
                        SheetColumn.of("Freezes at, C", Format.ONE_DECIMAL, 11),
                        SheetColumn.of("Remark", Format.WRAPPED, 44)));
        plan.coolantNeeds().forEach(need -> visit(sheet, need));
        sheet.finish();
    }

    private void visit(TableSheet sheet, CoolantNeed need) {
        CoolantMix mix = need.mix();
        Double freezing = mix == null ? null : mix.freezingPointC();
        boolean reached = need.remark().isEmpty();
        sheet.row(
                need.depot(),
                need.week(),
                need.truck(),
                need.capacityLitres(),
                need.drainedLitres(),
                need.nowPercent(),
                need.targetPercent(),
                mix == null ? null : reached ? new Formula("G#", need.targetPercent()) : need.nowPercent(),
                rules.renew() ? new Formula("E#", need.wasteLitres()) : need.wasteLitres(),
                mix == null
                        ? null
                        : new Formula("MIN(I#,MAX(0,ROUND((D#*H#-(D#-I#)*F#)/100,4)))", mix.concentrateLitres()),
                mix == null ? null : new Formula("ROUND(I#-J#,4)", mix.waterLitres()),
                mix == null ? null : new Formula("ROUND(E#-I#,4)", mix.putBackLitres()),
                mix == null ? null : new Formula("ROUND(((D#-I#)*F#+100*J#)/D#,4)", mix.afterPercent()),
                freezing == null ? null : new Formula(mixing.freezing("M#"), freezing),
                need.remark());
    }

    private void waste(Book book) {
        TableSheet sheet = book.table(
                "Waste",
                "Old coolant for collection",
                remark,
                List.of(
                        SheetColumn.of("Depot", Format.TEXT, 14),
                        SheetColumn.of("Week", Format.TEXT, 11),
                        SheetColumn.of("Monday", Format.DATE, 12),
                        SheetColumn.summed("Litres", Format.ONE_DECIMAL, 10),
                        SheetColumn.summed("Kg at 20 C", Format.ONE_DECIMAL, 10),
                        SheetColumn.summed("Containers", Format.WHOLE, 11),
                        SheetColumn.of("Collected on", Format.DATE, 13),
                        SheetColumn.of("By", Format.TEXT, 22),
                        SheetColumn.summed("Still to collect, l", Format.ONE_DECIMAL, 11)));
        int row = FIRST;
        for (CoolantWeek week : plan.coolant().weeks()) {
            sheet.row(
                    week.depot(),
                    week.week(),
                    week.week().monday(),
                    new Formula("'By week'!H" + row, week.wasteLitres()),
                    week.wasteKg(),
                    new Formula("'By week'!K" + row, week.wasteContainers()),
                    null,
                    null,
                    new Formula("IF(G#=\"\",D#,0)", week.wasteLitres()));
            row++;
        }
        sheet.finish();
    }

    private void containers(Book book) {
        TableSheet sheet = book.table(
                "Containers",
                "What the containers hold",
                Words.planOf(plan) + ". Change a size; the weeks update themselves.",
                List.of(
                        SheetColumn.of("Container of", Format.TEXT, 24),
                        SheetColumn.of("Holds, l", Format.ONE_DECIMAL, 10),
                        SheetColumn.of("Needed in total", Format.WHOLE, 11)));
        List<CoolantWeek> weeks = plan.coolant().weeks();
        sheet.row(
                "concentrate",
                rules.concentrateContainerLitres(),
                total(
                        "I",
                        weeks.stream()
                                .mapToInt(CoolantWeek::concentrateContainers)
                                .sum()));
        sheet.row(
                "demineralised water",
                rules.waterContainerLitres(),
                total("J", weeks.stream().mapToInt(CoolantWeek::waterContainers).sum()));
        sheet.row(
                "old coolant",
                rules.wasteContainerLitres(),
                total("K", weeks.stream().mapToInt(CoolantWeek::wasteContainers).sum()));
        sheet.finish();
    }

    private Formula total(String column, int value) {
        int last = FIRST + Math.max(1, plan.coolant().weeks().size()) - 1;
        return new Formula("SUM('By week'!" + column + FIRST + ":" + column + last + ")", value);
    }
}
