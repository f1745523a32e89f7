package dev.injectorplanner.app.command;

import dev.injectorplanner.app.alert.Alert;
import dev.injectorplanner.app.alert.AlertEvent;
import dev.injectorplanner.app.alert.AlertState;
import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.core.units.SiteForm;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** What somebody must decide. */
@Command(
        name = "alerts",
        mixinStandardHelpOptions = true,
        description = "Lists alerts, acknowledges or snoozes one.",
        subcommands = {
            AlertsCommand.Acknowledge.class,
            AlertsCommand.Snooze.class,
            AlertsCommand.History.class,
            AlertsUpdateCommand.class
        })
final class AlertsCommand extends StoreCommand {
    @Option(names = "--depot", paramLabel = "D", description = "One depot (default: all).")
    private @Nullable String depot;

    @Option(
            names = "--state",
            paramLabel = "STATE",
            split = ",",
            description = "new, acknowledged, planned, snoozed, cleared (default: all open ones).")
    private List<String> states = List.of();

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        Set<AlertState> chosen = states();
        List<Alert> alerts;
        SiteForm form;
        try (Application application = open()) {
            form = application.settings().form();
            alerts = new Alerts(application.store().dataSource()).list(depot, chosen);
        }
        AlertPrinter.print(out(), alerts, json, form);
        return 0;
    }

    private Set<AlertState> states() {
        Set<AlertState> chosen = EnumSet.noneOf(AlertState.class);
        for (String state : states) {
            try {
                chosen.add(AlertState.of(state));
            } catch (IllegalArgumentException e) {
                throw new ParameterException(
                        commandLine(),
                        "--state " + state + ": is not an alert state. Fix: choose from "
                                + Arrays.stream(AlertState.values())
                                        .map(AlertState::word)
                                        .collect(Collectors.joining(", "))
                                + ".",
                        e);
            }
        }
        return chosen.isEmpty() ? EnumSet.complementOf(EnumSet.of(AlertState.CLEARED)) : chosen;
    }

    /** What is done with one alert. */
    abstract static class OneAlert extends StoreCommand {
        @Parameters(paramLabel = "ID", description = "The alert's number.")
        private long id;

        @Option(names = "--json", description = "Prints one JSON object.")
        private boolean json;

        private SiteForm form = SiteForm.STANDARD;

        abstract void answer(Alerts alerts);

        @Override
        public Integer call() {
            try (Application application = open()) {
                form = application.settings().form();
                answer(new Alerts(application.store().dataSource()));
            }
            return 0;
        }

        long id() {
            return id;
        }

        boolean asJson() {
            return json;
        }

        void print(Alert alert) {
            AlertPrinter.print(out(), List.of(alert), json, form);
        }
    }

    /** Somebody has taken note. */
    @Command(
            name = "acknowledge",
            aliases = "seen",
            mixinStandardHelpOptions = true,
            description = "Acknowledges an alert; it stays open.")
    static final class Acknowledge extends OneAlert {
        @Override
        void answer(Alerts alerts) {
            print(alerts.seen(id(), Person.here(), Instant.now()));
        }
    }

    /** It may wait. */
    @Command(
            name = "snooze",
            aliases = "mute",
            mixinStandardHelpOptions = true,
            description = "Snoozes an alert until a date, with a reason; then it comes back if it is still due.")
    static final class Snooze extends OneAlert {
        @Option(names = "--until", required = true, paramLabel = "DATE", description = "The day it comes back.")
        private LocalDate until;

        @Option(names = "--why", required = true, paramLabel = "TEXT", description = "Why it may wait.")
        private String why;

        @Override
        void answer(Alerts alerts) {
            print(alerts.mute(id(), until, why, Person.here(), Instant.now(), LocalDate.now()));
        }
    }

    /** What became of one. */
    @Command(
            name = "history",
            mixinStandardHelpOptions = true,
            description = "Prints the history of an alert: when, who, from which state to which, why.")
    static final class History extends OneAlert {
        @Override
        void answer(Alerts alerts) {
            Alert alert = alerts.get(id());
            List<AlertEvent> events = alerts.history(id());
            if (asJson()) {
                Json.print(out(), Map.of("alert", alert, "history", events));
            } else {
                print(alert);
                AlertPrinter.printHistory(out(), events);
            }
        }
    }
}
