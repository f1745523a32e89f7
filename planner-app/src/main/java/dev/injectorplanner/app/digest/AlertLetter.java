package dev.injectorplanner.app.digest;

import dev.injectorplanner.app.alert.Alert;
import dev.injectorplanner.app.alert.AlertState;
import dev.injectorplanner.app.mail.Letter;
import dev.injectorplanner.core.units.SiteForm;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** New alerts in one letter: what needs a decision first, then what the plan answers already. */
final class AlertLetter {
    /** More lines nobody reads; the list of alerts has them all. */
    private static final int SHOWN = 50;

    private static final List<String> COLUMNS = List.of("Alert", "By", "Truck", "Rule", "Evidence", "Limit");

    private AlertLetter() {}

    static Optional<Letter> of(String depot, List<Alert> alerts, List<String> heldOff, SiteForm form) {
        List<Alert> planned = alerts.stream()
                .filter(alert -> alert.state() == AlertState.PLANNED)
                .toList();
        List<Alert> open = alerts.stream()
                .filter(alert -> alert.state() != AlertState.PLANNED)
                .toList();
        if (alerts.isEmpty() && heldOff.isEmpty()) {
            return Optional.empty();
        }
        Letter letter = new Letter(
                depot + ": " + count(open.size(), "new alert") + " without a visit, " + planned.size()
                        + " covered by the plan",
                form);
        heldOff.forEach(letter::say);
        letter.say(answer(open));
        table(letter, "Without a visit", open, COLUMNS, AlertLetter::row);
        List<String> columns = new ArrayList<>(COLUMNS);
        columns.add("Visit in");
        table(letter, "Covered by a planned visit", planned, columns, AlertLetter::plannedRow);
        return Optional.of(letter.say("Limits are checked against the latest data. They do not replace the"
                + " engine maker's manual, local codes or the judgement of a licensed mechanic."));
    }

    static Optional<Letter> ofJobs(List<Alert> alerts) {
        if (alerts.isEmpty()) {
            return Optional.empty();
        }
        Letter letter = new Letter(count(alerts.size(), "job") + " failed")
                .say("Each was retried and failed every time. The alert stays open until the job succeeds.");
        table(
                letter,
                "Failed jobs",
                alerts,
                List.of("Alert", "Job", "Error"),
                alert -> List.of(String.valueOf(alert.id()), alert.about(), alert.evidence()));
        return Optional.of(letter);
    }

    private interface Row {
        List<String> of(Alert alert);
    }

    private static void table(Letter letter, String heading, List<Alert> alerts, List<String> columns, Row row) {
        letter.tableOf(
                heading, columns, alerts.stream().limit(SHOWN).map(row::of).toList());
        if (alerts.size() > SHOWN) {
            letter.say((alerts.size() - SHOWN) + " more: see the list of alerts.");
        }
    }

    private static String answer(List<Alert> open) {
        return open.isEmpty()
                ? "Nothing to decide: planned visits cover every new alert."
                : "To decide: plan a visit for these, or snooze them with a reason. The most urgent is "
                        + open.get(0).about() + ", by " + open.get(0).by() + ".";
    }

    private static List<String> row(Alert alert) {
        return List.of(
                String.valueOf(alert.id()),
                alert.by().toString(),
                alert.about(),
                alert.ruleWords(),
                alert.evidence(),
                alert.limit() + " (" + alert.limitSource() + ")");
    }

    private static List<String> plannedRow(Alert alert) {
        List<String> row = new ArrayList<>(row(alert));
        row.add(String.valueOf(alert.visitWeek()));
        return row;
    }

    static String count(int number, String word) {
        return number + " " + word + (number == 1 ? "" : "s");
    }
}
