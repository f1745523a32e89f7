package dev.injectorplanner.reports.work;

import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.TruckReason;
import dev.injectorplanner.core.plan.Unplanned;
import dev.injectorplanner.core.schedule.WeekLoad;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.reports.table.SheetTable;
import dev.injectorplanner.reports.table.TableColumn;
import dev.injectorplanner.reports.table.Unit;
import dev.injectorplanner.reports.workbook.BarChart;
import dev.injectorplanner.reports.workbook.Book;
import dev.injectorplanner.reports.workbook.Formula;
import dev.injectorplanner.reports.workbook.Words;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Workbook {@code upcoming-work}, for the fleet manager: visits, what is due, hours, what has no visit, risk, assumptions. */
public final class UpcomingWorkbook {
    private final Plan plan;
    private final Map<String, Truck> trucks = new HashMap<>();
    private final RiskSheet risk;
    private final String remark;

    public UpcomingWorkbook(FleetSnapshot fleet, Plan plan) {
        this(fleet.trucks(), plan);
    }

    /** @param ofPlan the plan's trucks: nothing else of the fleet is written */
    public UpcomingWorkbook(Collection<Truck> ofPlan, Plan plan) {
        this.plan = plan;
        this.risk = new RiskSheet(plan);
        ofPlan.forEach(truck -> trucks.put(truck.truck(), truck));
        this.remark = Words.planOf(plan);
    }

    /** In km, litres and degrees C. */
    public void write(OutputStream out) throws IOException {
        write(out, SiteForm.STANDARD);
    }

    /** In a site's units, currency, dates and paper. */
    public void write(OutputStream out, SiteForm form) throws IOException {
        try (Book book = new Book("Upcoming work", form)) {
            visits(book);
            dueItems(book);
            hours(book);
            unplanned(book);
            everyTruck(book);
            risk.write(book, remark);
            book.assumptions(plan.assumptions(), remark);
            book.write(out);
        }
    }

    private void visits(Book book) {
        SheetTable.add(
                        book,
                        "Visits",
                        "Upcoming work",
                        remark,
                        List.of(
                                VisitColumns.WEEK,
                                VisitColumns.DEPOT,
                                VisitColumns.TRUCK,
                                VisitColumns.CYLINDERS,
                                VisitColumns.INJECTORS,
                                VisitColumns.ALSO,
                                VisitColumns.LABOUR,
                                VisitColumns.DRAINED,
                                VisitColumns.DUE_BY,
                                VisitColumns.WHY,
                                VisitColumns.MONDAY,
                                VisitColumns.FAMILY,
                                TableColumn.text("VIN", 21, visit -> vin(visit.truck()))),
                        plan.visits())
                .printing(10);
    }

    private @Nullable String vin(String name) {
        Truck truck = trucks.get(name);
        return truck == null ? null : truck.vinText();
    }

    private void dueItems(Book book) {
        Map<DueItem, String> answered = new LinkedHashMap<>();
        plan.visits()
                .forEach(visit -> visit.dueItems()
                        .forEach(item -> answered.put(item, visit.week().toString())));
        SheetTable.add(
                book,
                "Due",
                "What is due, and why",
                remark,
                List.<TableColumn<DueItem>>of(
                        TableColumn.date("Due by", 12, DueItem::by),
                        TableColumn.text("Depot", 14, DueItem::depot),
                        TableColumn.text("Truck", 12, DueItem::truck),
                        TableColumn.count("Cylinder", 9, DueItem::cylinder),
                        TableColumn.text("Rule", 14, item -> item.task() == null ? Words.of(item.kind()) : item.task()),
                        TableColumn.text("Action", 10, item -> Words.of(item.action())),
                        TableColumn.wrapped("Evidence", 60, DueItem::evidence),
                        TableColumn.wrapped("Limit", 34, DueItem::limit),
                        TableColumn.text("Source of the limit", 16, DueItem::limitSource),
                        TableColumn.figure(
                                "Fails in 12 weeks",
                                Unit.PERCENT,
                                11,
                                item -> risk.percent12(item.truck(), item.cylinder())),
                        TableColumn.text("Visit", 12, item -> answered.getOrDefault(item, "none"))),
                plan.dueItems());
    }

    private void hours(Book book) {
        SheetTable.add(
                        book,
                        "Hours",
                        "Hours booked and available",
                        remark,
                        List.<TableColumn<WeekLoad>>of(
                                TableColumn.text("Depot and week", 26, load -> load.depot() + " " + load.week()),
                                TableColumn.text("Depot", 14, WeekLoad::depot),
                                TableColumn.text("Week", 11, WeekLoad::week),
                                TableColumn.<WeekLoad>count("Visits", 8, WeekLoad::visits)
                                        .summed(),
                                hours("Booked", 10, WeekLoad::labourHours),
                                hours("Available", 11, WeekLoad::availableHours),
                                hours("Overtime", 11, WeekLoad::overtimeHours),
                                hours("Free", 10, UpcomingWorkbook::free),
                                bayDays("Bay-days booked", 10, WeekLoad::bayDays),
                                bayDays("Bay-days available", 11, WeekLoad::availableBayDays)),
                        plan.loads())
                .chart(new BarChart("Hours booked and available", "hours", 0, List.of(4, 5)));
    }

    private static Formula free(WeekLoad load) {
        return new Formula("MAX(0,F#-E#)", Math.max(0, load.availableHours() - load.labourHours()));
    }

    private static TableColumn<WeekLoad> hours(String heading, int width, Function<WeekLoad, @Nullable Object> value) {
        return TableColumn.figure(heading, Unit.HOURS, width, value).summed();
    }

    private static TableColumn<WeekLoad> bayDays(
            String heading, int width, Function<WeekLoad, @Nullable Object> value) {
        return TableColumn.figure(heading, Unit.NONE, width, value).summed();
    }

    private void unplanned(Book book) {
        SheetTable.add(
                book,
                "No visit",
                "Due, but no visit planned",
                remark,
                List.<TableColumn<Unplanned>>of(
                        TableColumn.text("Depot", 14, Unplanned::depot),
                        TableColumn.text("Truck", 12, Unplanned::truck),
                        TableColumn.wrapped(
                                "What is due",
                                70,
                                each -> each.dueItems().stream()
                                        .map(VisitColumns::seen)
                                        .collect(Collectors.joining("; "))),
                        TableColumn.wrapped("Why no visit is planned", 60, Unplanned::reason)),
                plan.unplanned());
    }

    private void everyTruck(Book book) {
        SheetTable.add(
                book,
                "Every truck",
                "Why each truck comes in when it does, or not at all",
                remark,
                List.<TableColumn<TruckReason>>of(
                        TableColumn.text("Truck", 12, TruckReason::truck),
                        TableColumn.text("Visit", 12, reason -> reason.week() == null ? "none" : reason.week()),
                        TableColumn.wrapped("Why", 120, TruckReason::words)),
                plan.reasons());
    }
}
