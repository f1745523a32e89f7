package dev.injectorplanner.reports.coolant;

import static dev.injectorplanner.reports.coolant.CoolantColumns.*;
import static dev.injectorplanner.reports.table.Unit.CELSIUS;
import static dev.injectorplanner.reports.table.Unit.LITRES;
import static dev.injectorplanner.reports.table.Unit.NONE;
import static dev.injectorplanner.reports.table.Unit.PERCENT;

import dev.injectorplanner.core.coolant.CoolantMix;
import dev.injectorplanner.core.coolant.CoolantNeed;
import dev.injectorplanner.core.coolant.CoolantRules;
import dev.injectorplanner.core.coolant.CoolantWeek;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.reports.table.SheetTable;
import dev.injectorplanner.reports.table.TableColumn;
import dev.injectorplanner.reports.table.Unit;
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
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

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

    /** In km, litres and degrees C. */
    public void write(OutputStream out) throws IOException {
        write(out, SiteForm.STANDARD);
    }

    /** In a site's units, currency, dates and paper. */
    public void write(OutputStream out, SiteForm form) throws IOException {
        try (Book book = new Book("Coolant", form)) {
            byWeek(book);
            byVisit(book);
            mixing.write(book, form.units());
            waste(book);
            containers(book);
            book.assumptions(plan.assumptions(), Words.planOf(plan));
            book.write(out);
        }
    }

    private void byWeek(Book book) {
        SheetTable.add(
                        book,
                        "By week",
                        "Coolant to draw and to collect, by week",
                        remark,
                        List.of(
                                DEPOT_AND_WEEK,
                                WEEKS_DEPOT,
                                WEEK,
                                MONDAY,
                                DRAINED.valued(week -> sum("E", week.drainedLitres())),
                                CONCENTRATE.valued(week -> sum("J", week.concentrateLitres())),
                                WATER.valued(week -> sum("K", week.waterLitres())),
                                WASTE.valued(week -> sum("I", week.wasteLitres())),
                                CONCENTRATE_CONTAINERS.valued(week -> whole("F", 0, week.concentrateContainers())),
                                WATER_CONTAINERS.valued(week -> whole("G", 1, week.waterContainers())),
                                WASTE_CONTAINERS.valued(week -> whole("H", 2, week.wasteContainers()))),
                        plan.coolant().weeks())
                .chart(new BarChart("Coolant by week", "litres", 0, List.of(4, 5, 6)));
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
        SheetTable.add(
                book,
                "By visit",
                "Coolant to draw and to collect, by visit",
                remark,
                List.of(
                        DEPOT,
                        VISIT_WEEK,
                        TRUCK,
                        CAPACITY,
                        VISIT_DRAINED,
                        NOW,
                        TARGET,
                        mixed(
                                "Mixed to",
                                PERCENT,
                                10,
                                (need, mix) -> need.remark().isEmpty()
                                        ? new Formula("G#", need.targetPercent())
                                        : need.nowPercent()),
                        VISIT_WASTE.valued(
                                need -> rules.renew() ? new Formula("E#", need.wasteLitres()) : need.wasteLitres()),
                        VISIT_CONCENTRATE
                                .written(Format.TWO_DECIMALS)
                                .valued(mixed((need, mix) -> new Formula(
                                        "MIN(I#,MAX(0,ROUND((D#*H#-(D#-I#)*F#)/100,4)))", mix.concentrateLitres()))),
                        VISIT_WATER
                                .written(Format.TWO_DECIMALS)
                                .valued(mixed((need, mix) -> new Formula("ROUND(I#-J#,4)", mix.waterLitres()))),
                        PUT_BACK.valued(mixed((need, mix) -> new Formula("ROUND(E#-I#,4)", mix.putBackLitres()))),
                        mixed(
                                "Glycol after",
                                PERCENT,
                                12,
                                (need, mix) -> new Formula("ROUND(((D#-I#)*F#+100*J#)/D#,4)", mix.afterPercent())),
                        mixed("Freezes at", CELSIUS, 11, (need, mix) -> freezing(mix.freezingPointC())),
                        REMARK),
                plan.coolantNeeds());
    }

    private @Nullable Formula freezing(@Nullable Double celsius) {
        return celsius == null ? null : new Formula(mixing.freezing("M#"), celsius);
    }

    private static TableColumn<CoolantNeed> mixed(String heading, Unit unit, int width, OfMix value) {
        return TableColumn.figure(heading, unit, width, mixed(value));
    }

    private static Function<CoolantNeed, @Nullable Object> mixed(OfMix value) {
        return need -> {
            CoolantMix mix = need.mix();
            return mix == null ? null : value.of(need, mix);
        };
    }

    private interface OfMix {
        @Nullable
        Object of(CoolantNeed need, CoolantMix mix);
    }

    private void waste(Book book) {
        SheetTable.add(
                book,
                "Waste",
                "Old coolant for collection",
                remark,
                List.of(
                        TableColumn.text("Depot", 14, CoolantWeek::depot),
                        WEEK,
                        MONDAY,
                        TableColumn.<CoolantWeek>figure("Litres", NONE, 10, week -> byWeek("H", week.wasteLitres()))
                                .summed(),
                        TableColumn.<CoolantWeek>figure("Kg at 20 C", NONE, 10, CoolantWeek::wasteKg)
                                .summed(),
                        TableColumn.<CoolantWeek>count("Containers", 11, week -> byWeek("K", week.wasteContainers()))
                                .summed(),
                        TableColumn.date("Collected on", 13, week -> null),
                        TableColumn.text("By", 22, week -> null),
                        TableColumn.<CoolantWeek>figure(
                                        "Still to collect",
                                        LITRES,
                                        11,
                                        week -> new Formula("IF(G#=\"\",D#,0)", week.wasteLitres()))
                                .summed()),
                plan.coolant().weeks());
    }

    private static Formula byWeek(String column, double value) {
        return new Formula("'By week'!" + column + "#", value); // both sheets have a row a week, in one order
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
