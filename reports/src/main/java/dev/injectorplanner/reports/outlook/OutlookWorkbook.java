package dev.injectorplanner.reports.outlook;

import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.plan.Assumption;
import dev.injectorplanner.core.replay.outlook.Band;
import dev.injectorplanner.core.replay.outlook.Outlook;
import dev.injectorplanner.core.replay.outlook.Outlook.Month;
import dev.injectorplanner.core.replay.outlook.Outlook.PartMonth;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.reports.workbook.BarChart;
import dev.injectorplanner.reports.workbook.Book;
import dev.injectorplanner.reports.workbook.Format;
import dev.injectorplanner.reports.workbook.SheetColumn;
import dev.injectorplanner.reports.workbook.TableSheet;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Workbook {@code outlook}, for the buyer's year and the manager's budget: each month with its middle value and the band that
 * eight runs in ten stay within, of all depots, by depot, and by part.
 */
public final class OutlookWorkbook {
    private static final String ALL = "all depots";

    private final FleetSnapshot fleet;
    private final Outlook outlook;
    private final String remark;

    public OutlookWorkbook(FleetSnapshot fleet, Outlook outlook) {
        this.fleet = fleet;
        this.outlook = outlook;
        this.remark =
                "Outlook from " + outlook.today() + ", " + outlook.runs() + " runs. Low and high: one run in ten stays"
                        + " below, one goes beyond; bands of months do not add up.";
    }

    /** In km, litres and degrees C. */
    public void write(OutputStream out) throws IOException {
        write(out, SiteForm.STANDARD);
    }

    /** In a site's units, currency, dates and paper. */
    public void write(OutputStream out, SiteForm form) throws IOException {
        try (Book book = new Book("Outlook", form)) {
            TableSheet months = months(book, "By month", "Months ahead, all depots", outlook.months());
            months.chart(new BarChart("Injectors by month", "pieces", 1, List.of(2, 3, 4)));
            months(book, "By depot", "Months ahead, by depot", outlook.depots());
            parts(book);
            book.assumptions(assumptions(), remark);
            book.write(out);
        }
    }

    private TableSheet months(Book book, String name, String title, List<Month> rows) {
        List<SheetColumn> columns = new ArrayList<>();
        columns.add(SheetColumn.of("Depot", Format.TEXT, 14));
        columns.add(SheetColumn.of("Month", Format.TEXT, 10));
        band(columns, "Injectors", Format.WHOLE);
        band(columns, "Road failures", Format.ONE_DECIMAL);
        band(columns, "Trucks in", Format.WHOLE);
        band(columns, "Hours", Format.WHOLE);
        band(columns, "Coolant, l", Format.WHOLE);
        band(columns, book.form().money("Money"), Format.WHOLE);
        TableSheet sheet = book.table(name, title, remark, columns);
        List<Function<Month, Band>> figures = List.of(
                Month::injectors, Month::failures, Month::visits, Month::hours, Month::coolantLitres, Month::money);
        for (Month month : rows) {
            List<Object> cells = new ArrayList<>();
            cells.add(named(month.depot()));
            cells.add(month.month().toString());
            figures.forEach(figure -> add(cells, figure.apply(month)));
            sheet.row(cells.toArray());
        }
        return sheet.finish();
    }

    private static void band(List<SheetColumn> columns, String name, Format format) {
        columns.add(SheetColumn.of(name + ", middle", format, 11));
        columns.add(SheetColumn.of(name + ", low", format, 10));
        columns.add(SheetColumn.of(name + ", high", format, 10));
    }

    private static void add(List<Object> cells, Band band) {
        cells.add(band.median());
        cells.add(band.low());
        cells.add(band.high());
    }

    private static String named(@Nullable String depot) {
        return depot == null ? ALL : depot;
    }

    private void parts(Book book) {
        Map<String, Part> known = new HashMap<>();
        fleet.parts().forEach(part -> known.put(part.part(), part));
        TableSheet sheet = book.table(
                "By part",
                "Pieces by part and month",
                remark + " Parts of uncertain need are counted by their chance.",
                List.of(
                        SheetColumn.of("Depot", Format.TEXT, 14),
                        SheetColumn.of("Part", Format.TEXT, 13),
                        SheetColumn.of("Description", Format.TEXT, 28),
                        SheetColumn.of("Supplier", Format.TEXT, 18),
                        SheetColumn.of("Month", Format.TEXT, 10),
                        SheetColumn.of("Pieces, mean", Format.ONE_DECIMAL, 10),
                        SheetColumn.of("Pieces, middle", Format.ONE_DECIMAL, 10),
                        SheetColumn.of("Pieces, low", Format.ONE_DECIMAL, 10),
                        SheetColumn.of("Pieces, high", Format.ONE_DECIMAL, 10),
                        SheetColumn.of(book.form().money("Value of the mean"), Format.WHOLE, 12)));
        for (PartMonth row : outlook.parts()) {
            Part part = known.get(row.part());
            double price = part == null ? 0 : part.price().doubleValue();
            sheet.row(
                    named(row.depot()),
                    row.part(),
                    part == null ? "" : part.description(),
                    part == null ? "" : part.supplier(),
                    row.month().toString(),
                    row.pieces().mean(),
                    row.pieces().median(),
                    row.pieces().low(),
                    row.pieces().high(),
                    price * row.pieces().mean());
        }
        sheet.finish();
    }

    private List<Assumption> assumptions() {
        List<Assumption> rows = new ArrayList<>();
        rows.add(new Assumption(
                "plan",
                "Its visits are carried out to " + outlook.planEnds() + ", a tenth of them a week late",
                "planner default"));
        rows.add(new Assumption("rules after the plan", outlook.rules(), "chosen on the fleet's learned lives"));
        if (!outlook.leftOut().isEmpty()) {
            rows.add(new Assumption(
                    "not counted",
                    String.join(", ", outlook.leftOut()) + ": usage or injector part not known",
                    "records"));
        }
        if (outlook.assumedAges() > 0) {
            rows.add(new Assumption(
                    "ages",
                    outlook.assumedAges() + " injectors of unknown age are as old as the others of their truck",
                    "planner default"));
        }
        rows.add(new Assumption("fleet", "Trucks that join later are not in it", "planner default"));
        return rows;
    }
}
