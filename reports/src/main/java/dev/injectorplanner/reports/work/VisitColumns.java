package dev.injectorplanner.reports.work;

import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.schedule.days.DayPlan;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.reports.table.TableColumn;
import dev.injectorplanner.reports.table.Unit;
import dev.injectorplanner.reports.workbook.Words;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What is told of a visit: in the workbooks, in mails, at the terminal. */
public final class VisitColumns {
    static final TableColumn<Visit> WEEK = TableColumn.text("Week", 11, Visit::week);
    static final TableColumn<Visit> DEPOT = TableColumn.text("Depot", 13, Visit::depot);
    static final TableColumn<Visit> TRUCK = TableColumn.text("Truck", 9, Visit::truck);
    static final TableColumn<Visit> FAMILY = TableColumn.text("Family", 12, Visit::family);
    static final TableColumn<Visit> CYLINDERS =
            TableColumn.text("Cylinders", 16, visit -> Words.cylinders(visit.cylinders()));
    static final TableColumn<Visit> INJECTORS = TableColumn.<Visit>count(
                    "Injectors", 10, visit -> visit.cylinders().size())
            .summed();
    static final TableColumn<Visit> ALSO = TableColumn.wrapped("Also done", 24, Words::along);
    static final TableColumn<Visit> LABOUR = TableColumn.<Visit>figure("Labour", Unit.HOURS, 9, Visit::labourHours)
            .summed();
    static final TableColumn<Visit> DRAINED = TableColumn.<Visit>figure(
                    "Coolant drained", Unit.LITRES, 10, Visit::drainedLitres)
            .summed();
    static final TableColumn<Visit> DUE_BY = TableColumn.date("Due by", 12, VisitColumns::dueBy);
    static final TableColumn<Visit> WHY = TableColumn.wrapped("Why", 70, Visit::why);
    static final TableColumn<Visit> MONDAY =
            TableColumn.date("Monday", 12, visit -> visit.week().monday());
    static final TableColumn<Visit> EVIDENCE = TableColumn.wrapped("Evidence", 60, VisitColumns::evidence);

    /** At the terminal: a line a visit. */
    public static final List<TableColumn<Visit>> IN_SHORT = List.of(
            WEEK,
            DEPOT,
            TRUCK,
            CYLINDERS.valued(VisitColumns::workInShort),
            LABOUR.headed("Hours"),
            TableColumn.figure("Coolant", Unit.LITRES, 10, Visit::drainedLitres),
            WHY.valued(VisitColumns::firstEvidence));

    private static final DateTimeFormatter START = DateTimeFormatter.ofPattern("EEE d MMM yyyy HH:mm", Locale.ENGLISH);
    private static final int SHOWN = 2;

    private VisitColumns() {}

    static TableColumn<Visit> start(Plan plan, String notSet) {
        return TableColumn.text(
                "Start",
                17,
                visit -> DepotDays.find(plan.days(), visit)
                        .map(laid -> laid.start().format(START))
                        .orElse(notSet));
    }

    static TableColumn<Visit> bay(Plan plan) {
        return TableColumn.count("Bay", 5, laid(plan, DayPlan.Laid::bay));
    }

    private static Function<Visit, @Nullable Object> laid(Plan plan, Function<DayPlan.Laid, Object> value) {
        return visit -> DepotDays.find(plan.days(), visit).map(value).orElse(null);
    }

    /** In a mail: a depot's visits of a week. */
    public static List<TableColumn<Visit>> workList(Plan plan) {
        return List.of(
                start(plan, "day not set"),
                bay(plan)
                        .valued(visit -> DepotDays.find(plan.days(), visit)
                                .map(laid -> (Object) laid.bay())
                                .orElse("open")),
                TRUCK,
                CYLINDERS.valued(visit -> visit.cylinders().isEmpty() ? "none" : Words.cylinders(visit.cylinders())),
                ALSO,
                LABOUR.headed("Hours"));
    }

    private static @Nullable LocalDate dueBy(Visit visit) {
        return visit.dueItems().stream()
                .map(DueItem::by)
                .min(LocalDate::compareTo)
                .orElse(null);
    }

    /** The first two things; the truck's own page has them all. */
    private static String evidence(Visit visit) {
        String first =
                visit.dueItems().stream().limit(SHOWN).map(VisitColumns::seen).collect(Collectors.joining("; "));
        int more = visit.dueItems().size() - SHOWN;
        return more > 0 ? first + "; " + more + " more on its page" : first;
    }

    static String seen(DueItem item) {
        String subject = item.cylinder() != null ? "cylinder " + item.cylinder() : item.task();
        return (subject == null ? "" : subject + ": ") + item.evidence();
    }

    private static String workInShort(Visit visit) {
        String cylinders = Words.cylinders(visit.cylinders());
        if (cylinders.isEmpty()) {
            return visit.inspection() ? "test" : "task";
        }
        return cylinders + (visit.inspection() ? " +test" : "") + (visit.tasks().isEmpty() ? "" : " +task");
    }

    private static String firstEvidence(Visit visit) {
        if (visit.dueItems().isEmpty()) {
            return visit.why();
        }
        DueItem first = visit.dueItems().get(0);
        String more = visit.dueItems().size() > 1 ? " (+" + (visit.dueItems().size() - 1) + ")" : "";
        return (first.cylinder() == null ? "" : "cyl " + first.cylinder() + ": ") + first.evidence() + more;
    }
}
