package dev.injectorplanner.app.command;

import dev.injectorplanner.app.alert.Alert;
import dev.injectorplanner.app.alert.AlertEvent;
import dev.injectorplanner.app.alert.AlertState;
import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.assembly.Application;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What somebody must decide. */
@Command(
        name = "alerts",
        mixinStandardHelpOptions = true,
        description = "Lists alerts, or says of one that it is known or may wait.",
        subcommands = {
            AlertsCommand.Seen.class,
            AlertsCommand.Mute.class,
            AlertsCommand.History.class,
            AlertsUpdateCommand.class
        })
final class AlertsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private StoreOptions store;

    @Option(names = "--depot", paramLabel = "D", description = "One depot (default: all).")
    private @Nullable String depot;

    @Option(
            names = "--state",
            paramLabel = "STATE",
            split = ",",
            description = "raised, seen, planned, muted, cleared (default: all that are open).")
    private List<String> states = List.of();

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        Set<AlertState> chosen = states();
        List<Alert> alerts;
        try (Application application = Application.open(store.settings())) {
            alerts = new Alerts(application.store().dataSource()).list(depot, chosen);
        }
        AlertPrinter.print(spec.commandLine().getOut(), alerts, json);
        return 0;
    }

    private Set<AlertState> states() {
        Set<AlertState> chosen = EnumSet.noneOf(AlertState.class);
        for (String state : states) {
            try {
                chosen.add(AlertState.valueOf(state.strip().toUpperCase(Locale.ROOT)));
            } catch (IllegalArgumentException e) {
                throw new ParameterException(
                        spec.commandLine(),
                        "--state " + state + ": is no state of an alert. Mend: choose among "
                                + Arrays.stream(AlertState.values())
                                        .map(AlertState::word)
                                        .collect(Collectors.joining(", "))
                                + ".",
                        e);
            }
        }
        return chosen.isEmpty() ? EnumSet.complementOf(EnumSet.of(AlertState.CLEARED)) : chosen;
    }

    /** Somebody knows. */
    @Command(
            name = "seen",
            mixinStandardHelpOptions = true,
            description = "Says that an alert is known; it stays open.")
    static final class Seen implements Callable<Integer> {
        @Spec
        private CommandSpec spec;

        @Mixin
        private StoreOptions store;

        @Parameters(paramLabel = "ID", description = "The alert's number.")
        private long id;

        @Option(names = "--json", description = "Prints one JSON object.")
        private boolean json;

        @Override
        public Integer call() {
            Alert alert;
            try (Application application = Application.open(store.settings())) {
                alert = new Alerts(application.store().dataSource()).seen(id, Person.here(), Instant.now());
            }
            AlertPrinter.print(spec.commandLine().getOut(), List.of(alert), json);
            return 0;
        }
    }

    /** It may wait. */
    @Command(
            name = "mute",
            mixinStandardHelpOptions = true,
            description = "Silences an alert until a day, with a reason; then it comes back if it is still found.")
    static final class Mute implements Callable<Integer> {
        @Spec
        private CommandSpec spec;

        @Mixin
        private StoreOptions store;

        @Parameters(paramLabel = "ID", description = "The alert's number.")
        private long id;

        @Option(names = "--until", required = true, paramLabel = "DATE", description = "The day it comes back.")
        private LocalDate until;

        @Option(names = "--why", required = true, paramLabel = "TEXT", description = "Why it may wait.")
        private String why;

        @Option(names = "--json", description = "Prints one JSON object.")
        private boolean json;

        @Override
        public Integer call() {
            Alert alert;
            try (Application application = Application.open(store.settings())) {
                alert = new Alerts(application.store().dataSource())
                        .mute(id, until, why, Person.here(), Instant.now(), LocalDate.now());
            }
            AlertPrinter.print(spec.commandLine().getOut(), List.of(alert), json);
            return 0;
        }
    }

    /** What became of one. */
    @Command(
            name = "history",
            mixinStandardHelpOptions = true,
            description = "Prints what became of an alert: when, who, from which state to which, why.")
    static final class History implements Callable<Integer> {
        @Spec
        private CommandSpec spec;

        @Mixin
        private StoreOptions store;

        @Parameters(paramLabel = "ID", description = "The alert's number.")
        private long id;

        @Option(names = "--json", description = "Prints one JSON object.")
        private boolean json;

        @Override
        public Integer call() {
            Alert alert;
            List<AlertEvent> events;
            try (Application application = Application.open(store.settings())) {
                Alerts alerts = new Alerts(application.store().dataSource());
                alert = alerts.get(id);
                events = alerts.history(id);
            }
            var out = spec.commandLine().getOut();
            if (json) {
                Json.print(out, Map.of("alert", alert, "history", events));
            } else {
                AlertPrinter.print(out, List.of(alert), false);
                AlertPrinter.printHistory(out, events);
            }
            return 0;
        }
    }
}
