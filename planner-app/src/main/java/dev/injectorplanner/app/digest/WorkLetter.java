package dev.injectorplanner.app.digest;

import dev.injectorplanner.app.mail.Letter;
import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.reports.work.WorkListBook;
import dev.injectorplanner.reports.workbook.Words;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A depot's visits of one ISO week. */
final class WorkLetter {
    private static final DateTimeFormatter START = DateTimeFormatter.ofPattern("EEE yyyy-MM-dd HH:mm", Locale.ENGLISH);

    private WorkLetter() {}

    static Optional<Digests.Lettered> find(Planned planned, String depot, IsoWeek week) {
        Plan plan = planned.plan();
        WorkListBook book = new WorkListBook(new FleetIndex(planned.fleet()), plan, depot, week);
        List<Visit> visits = book.visits();
        if (visits.isEmpty()) {
            return Optional.empty();
        }
        double hours = visits.stream().mapToDouble(Visit::labourHours).sum();
        Letter letter = new Letter("Work list, " + depot + ", week " + week);
        plan.safety().stream()
                .filter(each -> each.depot().equals(depot))
                .forEach(each -> letter.say("SAFETY. " + each.words()));
        letter.say(AlertLetter.count(visits.size(), "visit") + ", " + String.format(Locale.ROOT, "%.1f", hours)
                        + " hours, Monday " + week.monday() + " to Sunday " + week.sunday() + ".")
                .table(
                        "Visits",
                        List.of("Start", "Bay", "Truck", "Cylinders", "Also done", "Hours"),
                        visits.stream().map(visit -> row(plan, visit)).toList());
        return Optional.of(Workbooks.along(
                letter,
                "work-list-" + Workbooks.inFileName(depot) + "-" + week + ".xlsx",
                book::write,
                "The workbook has a page per truck with steps, parts and cautions. The engine maker's"
                        + " manual, local codes and licensed practice take precedence."));
    }

    private static List<String> row(Plan plan, Visit visit) {
        var place = DepotDays.find(plan.days(), visit);
        return List.of(
                place.map(laid -> laid.start().format(START)).orElse("day not set"),
                place.map(laid -> String.valueOf(laid.bay())).orElse("open"),
                visit.truck(),
                visit.cylinders().isEmpty() ? "none" : Words.cylinders(visit.cylinders()),
                Words.along(visit),
                String.format(Locale.ROOT, "%.1f", visit.labourHours()));
    }
}
