package dev.injectorplanner.reports.work;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.parts.PartNeeds;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.schedule.days.DayPlan;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.reports.table.SheetTable;
import dev.injectorplanner.reports.table.TableColumn;
import dev.injectorplanner.reports.workbook.Book;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;

/** Workbook {@code work-list} of one depot and ISO week, for the mechanic: the list, then a page a truck. */
public final class WorkListBook {
    private final FleetIndex index;
    private final Plan plan;
    private final String depot;
    private final IsoWeek week;

    /** @param index index of the fleet that the plan was made for */
    public WorkListBook(FleetIndex index, Plan plan, String depot, IsoWeek week) {
        this.index = index;
        this.plan = plan;
        this.depot = depot;
        this.week = week;
    }

    /** Visits of that depot and week. */
    public List<Visit> visits() {
        return plan.visits().stream()
                .filter(visit -> visit.depot().equals(depot) && visit.week().equals(week))
                .sorted(Comparator.comparing((Visit visit) -> DepotDays.find(plan.days(), visit)
                                .map(DayPlan.Laid::start)
                                .orElse(LocalDateTime.MAX))
                        .thenComparing(Visit::truck))
                .toList();
    }

    /** In km, litres and degrees C. */
    public void write(OutputStream out) throws IOException {
        write(out, SiteForm.STANDARD);
    }

    /** In a site's units, currency, dates and paper. */
    public void write(OutputStream out, SiteForm form) throws IOException {
        String title = "Work list, " + depot + ", week " + week;
        String remark = "Monday " + week.monday() + " to Sunday " + week.sunday() + ". Plan of " + plan.today() + ".";
        try (Book book = new Book(title, form)) {
            list(book, title, remark);
            PartNeeds parts = new PartNeeds(index, plan.today(), plan.parts().rules());
            visits().forEach(visit -> new TruckPage(index, parts, visit).write(book, remark));
            book.write(out);
        }
    }

    private void list(Book book, String title, String remark) {
        SheetTable.add(
                book,
                "Work list",
                title,
                remark,
                List.of(
                        VisitColumns.start(plan, ""),
                        VisitColumns.bay(plan),
                        VisitColumns.TRUCK.wide(10),
                        VisitColumns.FAMILY,
                        VisitColumns.CYLINDERS,
                        VisitColumns.INJECTORS,
                        VisitColumns.ALSO.wide(26),
                        VisitColumns.LABOUR.wide(10),
                        VisitColumns.DRAINED.wide(12),
                        VisitColumns.EVIDENCE,
                        TableColumn.date("Done on", 12, visit -> null),
                        TableColumn.text("By", 14, visit -> null)),
                visits());
    }
}
