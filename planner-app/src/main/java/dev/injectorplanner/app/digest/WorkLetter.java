package dev.injectorplanner.app.digest;

import dev.injectorplanner.app.mail.Letter;
import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.reports.work.VisitColumns;
import dev.injectorplanner.reports.work.WorkListBook;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A depot's visits of one ISO week. */
final class WorkLetter {
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
        plan.records().of(depot).sentences().forEach(line -> letter.say("RECORDS. " + line));
        letter.say(AlertLetter.count(visits.size(), "visit") + ", " + String.format(Locale.ROOT, "%.1f", hours)
                        + " hours, Monday " + week.monday() + " to Sunday " + week.sunday() + ".")
                .table("Visits", VisitColumns.workList(plan), visits);
        return Optional.of(Workbooks.along(
                letter,
                "work-list-" + Workbooks.inFileName(depot) + "-" + week + ".xlsx",
                book::write,
                "The workbook has a page per truck with steps, parts and cautions. The engine maker's"
                        + " manual, local codes and licensed practice take precedence."));
    }
}
