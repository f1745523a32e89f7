package dev.injectorplanner.reports.work;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.parts.PartNeeds;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.schedule.days.DayPlan;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.reports.workbook.Book;
import dev.injectorplanner.reports.workbook.Format;
import dev.injectorplanner.reports.workbook.SheetColumn;
import dev.injectorplanner.reports.workbook.TableSheet;
import dev.injectorplanner.reports.workbook.Words;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Workbook {@code work-list} of one depot and ISO week, for the mechanic: the list, then a page a truck. */
public final class WorkListBook {
    private static final DateTimeFormatter START = DateTimeFormatter.ofPattern("EEE yyyy-MM-dd HH:mm", Locale.ENGLISH);

    private static final int SHOWN = 2;

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

    public void write(OutputStream out) throws IOException {
        String title = "Work list, " + depot + ", week " + week;
        String remark = "Monday " + week.monday() + " to Sunday " + week.sunday() + ". Plan of " + plan.today() + ".";
        try (Book book = new Book(title)) {
            list(book, title, remark);
            PartNeeds parts = new PartNeeds(index, plan.today(), plan.parts().rules());
            visits().forEach(visit -> new TruckPage(index, parts, visit).write(book, remark));
            book.write(out);
        }
    }

    private void list(Book book, String title, String remark) {
        TableSheet sheet = book.table(
                "Work list",
                title,
                remark,
                List.of(
                        SheetColumn.of("Start", Format.TEXT, 17),
                        SheetColumn.of("Bay", Format.WHOLE, 5),
                        SheetColumn.of("Truck", Format.TEXT, 10),
                        SheetColumn.of("Family", Format.TEXT, 12),
                        SheetColumn.of("Cylinders", Format.TEXT, 16),
                        SheetColumn.summed("Injectors", Format.WHOLE, 10),
                        SheetColumn.of("Also done", Format.WRAPPED, 26),
                        SheetColumn.summed("Labour, h", Format.ONE_DECIMAL, 10),
                        SheetColumn.summed("Coolant drained, l", Format.ONE_DECIMAL, 12),
                        SheetColumn.of("Evidence", Format.WRAPPED, 60),
                        SheetColumn.of("Done on", Format.DATE, 12),
                        SheetColumn.of("By", Format.TEXT, 14)));
        for (Visit visit : visits()) {
            Optional<DayPlan.Laid> place = DepotDays.find(plan.days(), visit);
            sheet.row(
                    place.map(laid -> laid.start().format(START)).orElse(""),
                    place.map(DayPlan.Laid::bay).orElse(null),
                    visit.truck(),
                    visit.family(),
                    Words.cylinders(visit.cylinders()),
                    visit.cylinders().size(),
                    Words.along(visit),
                    visit.labourHours(),
                    visit.drainedLitres(),
                    inShort(visit),
                    null,
                    null);
        }
        sheet.finish();
    }

    /** The first two things; the truck's own page has them all. */
    private static String inShort(Visit visit) {
        String first =
                visit.dueItems().stream().limit(SHOWN).map(WorkListBook::seen).collect(Collectors.joining("; "));
        int more = visit.dueItems().size() - SHOWN;
        return more > 0 ? first + "; " + more + " more on its page" : first;
    }

    static String seen(DueItem item) {
        String subject = item.cylinder() != null ? "cylinder " + item.cylinder() : item.task();
        return (subject == null ? "" : subject + ": ") + item.evidence();
    }
}
