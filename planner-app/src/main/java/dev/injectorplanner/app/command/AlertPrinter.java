package dev.injectorplanner.app.command;

import dev.injectorplanner.app.alert.Alert;
import dev.injectorplanner.app.alert.AlertEvent;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.reports.table.TextTable;
import java.io.PrintWriter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;

/** Alerts for the terminal. */
final class AlertPrinter {
    private AlertPrinter() {}

    static void print(PrintWriter out, List<Alert> alerts, boolean json, SiteForm form) {
        if (json) {
            Json.print(out, Map.of("alerts", alerts));
            return;
        }
        TextTable table = new TextTable(">Alert", "By", "Depot", "About", "Rule", "State", "Evidence");
        for (Alert alert : alerts) {
            table.row(
                    alert.id(),
                    form.inTerminal().dates().of(alert.by()),
                    alert.depot() == null ? "" : alert.depot(),
                    alert.about(),
                    alert.ruleWords(),
                    state(alert),
                    form.inTerminal().sentence(alert.evidence() + "; limit " + alert.limit()));
        }
        if (table.isEmpty()) {
            out.println("No alerts.");
        } else {
            table.print(out);
        }
        out.flush();
    }

    private static String state(Alert alert) {
        return switch (alert.state()) {
            case PLANNED -> "planned for " + alert.visitWeek();
            case MUTED -> "snoozed until " + alert.mutedUntil() + ": " + alert.mutedWhy();
            case CLEARED -> "cleared: " + alert.clearedWhy();
            default -> alert.state().word();
        };
    }

    static void printHistory(PrintWriter out, List<AlertEvent> events) {
        TextTable table = new TextTable("When (UTC)", "Who", "From", "To", "Why");
        for (AlertEvent event : events) {
            table.row(
                    event.at().truncatedTo(ChronoUnit.SECONDS),
                    event.who(),
                    event.from() == null ? "" : event.from().word(),
                    event.to().word(),
                    event.why());
        }
        out.println();
        table.print(out);
        out.flush();
    }
}
