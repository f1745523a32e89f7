package dev.injectorplanner.reports.work;

import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.Unplanned;
import dev.injectorplanner.core.schedule.WeekLoad;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.reports.workbook.BarChart;
import dev.injectorplanner.reports.workbook.Book;
import dev.injectorplanner.reports.workbook.Format;
import dev.injectorplanner.reports.workbook.Formula;
import dev.injectorplanner.reports.workbook.SheetColumn;
import dev.injectorplanner.reports.workbook.TableSheet;
import dev.injectorplanner.reports.workbook.Words;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

    public void write(OutputStream out) throws IOException {
        try (Book book = new Book("Upcoming work")) {
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
        TableSheet sheet = book.table(
                "Visits",
                "Upcoming work",
                remark,
                List.of(
                        SheetColumn.of("Week", Format.TEXT, 11),
                        SheetColumn.of("Depot", Format.TEXT, 13),
                        SheetColumn.of("Truck", Format.TEXT, 9),
                        SheetColumn.of("Cylinders", Format.TEXT, 16),
                        SheetColumn.summed("Injectors", Format.WHOLE, 10),
                        SheetColumn.of("Also done", Format.WRAPPED, 24),
                        SheetColumn.summed("Labour, h", Format.ONE_DECIMAL, 9),
                        SheetColumn.summed("Coolant drained, l", Format.ONE_DECIMAL, 10),
                        SheetColumn.of("Due by", Format.DATE, 12),
                        SheetColumn.of("Why", Format.WRAPPED, 70),
                        SheetColumn.of("Monday", Format.DATE, 12),
                        SheetColumn.of("Family", Format.TEXT, 12),
                        SheetColumn.of("VIN", Format.TEXT, 21)));
        for (Visit visit : plan.visits()) {
            sheet.row(
                    visit.week(),
                    visit.depot(),
                    visit.truck(),
                    Words.cylinders(visit.cylinders()),
                    visit.cylinders().size(),
                    Words.along(visit),
                    visit.labourHours(),
                    visit.drainedLitres(),
                    visit.dueItems().stream()
                            .map(DueItem::by)
                            .min(LocalDate::compareTo)
                            .orElse(null),
                    visit.why(),
                    visit.week().monday(),
                    visit.family(),
                    vin(visit.truck()));
        }
        sheet.finish().printing(10);
    }

    private @Nullable String vin(String name) {
        Truck truck = trucks.get(name);
        return truck == null ? null : truck.vin().text();
    }

    private void dueItems(Book book) {
        Map<DueItem, String> answered = new LinkedHashMap<>();
        plan.visits()
                .forEach(visit -> visit.dueItems()
                        .forEach(item -> answered.put(item, visit.week().toString())));
        TableSheet sheet = book.table(
                "Due",
                "What is due, and why",
                remark,
                List.of(
                        SheetColumn.of("Due by", Format.DATE, 12),
                        SheetColumn.of("Depot", Format.TEXT, 14),
                        SheetColumn.of("Truck", Format.TEXT, 12),
                        SheetColumn.of("Cylinder", Format.WHOLE, 9),
                        SheetColumn.of("Rule", Format.TEXT, 14),
                        SheetColumn.of("Action", Format.TEXT, 10),
                        SheetColumn.of("Evidence", Format.WRAPPED, 60),
                        SheetColumn.of("Limit", Format.WRAPPED, 34),
                        SheetColumn.of("Source of the limit", Format.TEXT, 16),
                        SheetColumn.of("Fails in 12 weeks, %", Format.ONE_DECIMAL, 11),
                        SheetColumn.of("Visit", Format.TEXT, 12)));
        for (DueItem item : plan.dueItems()) {
            sheet.row(
                    item.by(),
                    item.depot(),
                    item.truck(),
                    item.cylinder(),
                    item.task() == null ? Words.of(item.kind()) : item.task(),
                    Words.of(item.action()),
                    item.evidence(),
                    item.limit(),
                    item.limitSource(),
                    risk.percent12(item.truck(), item.cylinder()),
                    answered.getOrDefault(item, "none"));
        }
        sheet.finish();
    }

    private void hours(Book book) {
        TableSheet sheet = book.table(
                "Hours",
                "Hours booked and available",
                remark,
                List.of(
                        SheetColumn.of("Depot and week", Format.TEXT, 26),
                        SheetColumn.of("Depot", Format.TEXT, 14),
                        SheetColumn.of("Week", Format.TEXT, 11),
                        SheetColumn.summed("Visits", Format.WHOLE, 8),
                        SheetColumn.summed("Booked, h", Format.ONE_DECIMAL, 10),
                        SheetColumn.summed("Available, h", Format.ONE_DECIMAL, 11),
                        SheetColumn.summed("Overtime, h", Format.ONE_DECIMAL, 11),
                        SheetColumn.summed("Free, h", Format.ONE_DECIMAL, 10),
                        SheetColumn.summed("Bay-days booked", Format.ONE_DECIMAL, 10),
                        SheetColumn.summed("Bay-days available", Format.ONE_DECIMAL, 11)));
        for (WeekLoad load : plan.loads()) {
            sheet.row(
                    load.depot() + " " + load.week(),
                    load.depot(),
                    load.week(),
                    load.visits(),
                    load.labourHours(),
                    load.availableHours(),
                    load.overtimeHours(),
                    new Formula("MAX(0,F#-E#)", Math.max(0, load.availableHours() - load.labourHours())),
                    load.bayDays(),
                    load.availableBayDays());
        }
        sheet.finish();
        sheet.chart(new BarChart("Hours booked and available", "hours", 0, List.of(4, 5)));
    }

    private void unplanned(Book book) {
        TableSheet sheet = book.table(
                "No visit",
                "Due, but no visit planned",
                remark,
                List.of(
                        SheetColumn.of("Depot", Format.TEXT, 14),
                        SheetColumn.of("Truck", Format.TEXT, 12),
                        SheetColumn.of("What is due", Format.WRAPPED, 70),
                        SheetColumn.of("Why no visit is planned", Format.WRAPPED, 60)));
        for (Unplanned each : plan.unplanned()) {
            String due = String.join(
                    "; ",
                    each.dueItems().stream().map(UpcomingWorkbook::inShort).toList());
            sheet.row(each.depot(), each.truck(), due, each.reason());
        }
        sheet.finish();
    }

    private void everyTruck(Book book) {
        TableSheet sheet = book.table(
                "Every truck",
                "Why each truck comes in when it does, or not at all",
                remark,
                List.of(
                        SheetColumn.of("Truck", Format.TEXT, 12),
                        SheetColumn.of("Visit", Format.TEXT, 12),
                        SheetColumn.of("Why", Format.WRAPPED, 120)));
        plan.reasons()
                .forEach(reason ->
                        sheet.row(reason.truck(), reason.week() == null ? "none" : reason.week(), reason.words()));
        sheet.finish();
    }

    private static String inShort(DueItem item) {
        return WorkListBook.seen(item);
    }
}
