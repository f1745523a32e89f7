package dev.injectorplanner.reports.work;

import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.reports.table.SheetTable;
import dev.injectorplanner.reports.table.TableColumn;
import dev.injectorplanner.reports.table.Unit;
import dev.injectorplanner.reports.workbook.Book;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Workbook {@code trucks}: the worklist as it was filtered and sorted on its page. */
public final class TruckListBook {
    private static final List<TableColumn<WorklistLine>> COLUMNS = List.of(
            TableColumn.text("Truck", 12, WorklistLine::truck),
            TableColumn.text("Depot", 14, WorklistLine::depot),
            TableColumn.text("Duty group", 16, WorklistLine::dutyGroup),
            TableColumn.text("Engine family", 14, WorklistLine::family),
            TableColumn.text("VIN", 20, WorklistLine::vin),
            TableColumn.figure("12-week chance", Unit.PERCENT, 11, line -> percent(line.chance())),
            TableColumn.count("Cylinder", 9, WorklistLine::cylinder),
            TableColumn.count("Open faults", 9, WorklistLine::faults),
            TableColumn.count("Since fitting, km", 12, WorklistLine::sinceKm),
            TableColumn.count("Odometer, km", 12, WorklistLine::odometerKm),
            TableColumn.count("Engine hours", 11, WorklistLine::engineHours),
            TableColumn.count("A week, km", 10, WorklistLine::kmPerWeek),
            TableColumn.text("Next visit", 11, WorklistLine::visit),
            TableColumn.date("Day", 12, WorklistLine::day),
            TableColumn.wrapped("Work", 34, WorklistLine::work),
            TableColumn.figure("Labour", Unit.HOURS, 9, WorklistLine::hours),
            TableColumn.text("State", 22, WorklistLine::state));

    private final List<WorklistLine> lines;
    private final String remark;

    /** @param remark which trucks it lists and in what order, in words */
    public TruckListBook(List<WorklistLine> lines, String remark) {
        this.lines = List.copyOf(lines);
        this.remark = remark;
    }

    private static @Nullable Object percent(@Nullable Double chance) {
        return chance == null ? null : Double.valueOf(100 * chance);
    }

    /** In a site's units, dates and paper. */
    public void write(OutputStream out, SiteForm form) throws IOException {
        try (Book book = new Book("Trucks", form)) {
            SheetTable.add(book, "Trucks", "Trucks", remark, COLUMNS, lines);
            book.write(out);
        }
    }
}
