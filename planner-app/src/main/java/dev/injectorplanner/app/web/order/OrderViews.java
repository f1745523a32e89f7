package dev.injectorplanner.app.web.order;

import dev.injectorplanner.app.web.office.Address;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.office.TablesView;
import dev.injectorplanner.app.web.office.TablesView.Field;
import dev.injectorplanner.app.web.office.TablesView.Rows;
import dev.injectorplanner.core.coolant.CoolantNeed;
import dev.injectorplanner.core.coolant.CoolantWeek;
import dev.injectorplanner.core.parts.OrderLine;
import dev.injectorplanner.core.parts.ShortLine;
import dev.injectorplanner.core.parts.UnplannedNeed;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.coolant.CoolantColumns;
import dev.injectorplanner.reports.parts.NeedColumns;
import dev.injectorplanner.reports.parts.OrderColumns;
import dev.injectorplanner.reports.parts.ShortColumns;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Fills the pages of buyer and storeman as the workbooks have them. */
final class OrderViews {
    private static final String NOT_SHOWN = "";
    private static final String NOTHING_DRAINED = "No visit of the plan drains coolant.";

    private final ChosenDepots chosen;
    private final SiteUnits units;

    OrderViews(ChosenDepots chosen) {
        this.chosen = chosen;
        this.units = chosen.units();
    }

    private <T> List<T> all(Function<DepotPlan, List<T>> rows, Function<T, String> depot) {
        return chosen.plans().stream()
                .map(plan -> rows.apply(plan).stream()
                        .filter(row -> depot.apply(row).equals(plan.depot()))
                        .toList())
                .flatMap(Collection::stream)
                .toList();
    }

    TablesView order() {
        List<OrderLine> lines = all(plan -> plan.plan().parts().orders(), OrderLine::depot);
        List<OrderLine> now = lines.stream().filter(OrderLine::now).toList();
        List<OrderLine> later = lines.stream().filter(line -> !line.now()).toList();
        List<ShortLine> shorts = all(DepotPlan::shortList, ShortLine::depot);
        return new TablesView(
                "Parts to order",
                "What to order, by when, from whom, and for which visits",
                "/order",
                List.of(
                        new Field("To order now", String.valueOf(now.size())),
                        new Field("Order value", DisplayFormat.money(sum(now, OrderLine::value))),
                        new Field("Deposits", DisplayFormat.money(sum(now, OrderLine::deposits))),
                        new Field("Short", String.valueOf(shorts.size()))),
                List.of(new Field("Parts workbook", "/sheets/parts-needs.xlsx")),
                List.of(
                        shorts(shorts),
                        Rows.of("C", "Order later", units, OrderColumns.PAGE, later, line -> "")
                                .section(
                                        later.size() + " lines",
                                        NOT_SHOWN,
                                        "Nothing else needs to be ordered in the plan’s weeks."),
                        reserve()));
    }

    private TablesView.Section shorts(List<ShortLine> lines) {
        return Rows.of("B", "Short", units, ShortColumns.page(lines), lines, line -> Address.truck(line.truck()))
                .section(
                        lines.size() + " lines",
                        "Parts that an order placed today may not bring in time, and the visits affected.",
                        "Every planned visit gets its parts in time.");
    }

    private TablesView.Section reserve() {
        return Rows.of(
                        "D",
                        "Safety stock for unplanned failures",
                        units,
                        NeedColumns.SAFETY_STOCK,
                        all(plan -> plan.plan().parts().unplannedNeeds(), UnplannedNeed::depot),
                        need -> "")
                .section(
                        NOT_SHOWN,
                        "Until an order placed at the next review arrives.",
                        "No safety stock is needed for these weeks.");
    }

    TablesView coolant() {
        List<CoolantNeed> needs = all(plan -> plan.plan().coolantNeeds(), CoolantNeed::depot);
        List<CoolantWeek> weeks = all(plan -> plan.plan().coolant().weeks(), CoolantWeek::depot);
        return new TablesView(
                "Coolant",
                "Concentrate and water to draw, waste to collect; ethylene glycol, percent by volume",
                "/coolant",
                List.of(
                        new Field("Drained", litres(needs, CoolantNeed::drainedLitres)),
                        new Field("Waste", litres(needs, CoolantNeed::wasteLitres))),
                List.of(new Field("Coolant workbook", "/sheets/coolant.xlsx")),
                List.of(
                        Rows.of("A", "By week", units, CoolantColumns.BY_WEEK, weeks, week -> "")
                                .section(
                                        NOT_SHOWN,
                                        "Coolant is poisonous and hot: collect all of it, following local rules.",
                                        NOTHING_DRAINED),
                        Rows.of(
                                        "B",
                                        "By visit",
                                        units,
                                        CoolantColumns.BY_VISIT,
                                        needs,
                                        need -> Address.truck(need.truck()))
                                .section(
                                        NOT_SHOWN,
                                        "Measure the strength before refilling; the engine maker’s manual decides what goes in.",
                                        NOTHING_DRAINED)));
    }

    private static <T> double sum(List<T> rows, Function<T, BigDecimal> amount) {
        return rows.stream().map(amount).mapToDouble(BigDecimal::doubleValue).sum();
    }

    private String litres(List<CoolantNeed> needs, ToDoubleFunction<CoolantNeed> amount) {
        double litres = needs.stream().mapToDouble(amount).sum();
        boolean metric = units.volume() == SiteUnits.Volume.LITRES;
        return (metric ? DisplayFormat.tenth(litres) : units.volumeFigure(litres)) + " " + units.volumeUnit();
    }
}
