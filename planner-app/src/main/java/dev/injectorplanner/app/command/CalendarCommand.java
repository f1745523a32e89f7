package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.calendar.CalendarFeeds;
import dev.injectorplanner.app.calendar.CalendarFeeds.Feed;
import dev.injectorplanner.app.calendar.CalendarFeeds.NewFeed;
import dev.injectorplanner.reports.table.TextTable;
import java.io.PrintWriter;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Secret addresses of the visits' calendars. */
@Command(
        name = "calendar",
        mixinStandardHelpOptions = true,
        description = "Secret addresses under which calendar programs read a depot's visits.",
        subcommands = {CalendarCommand.New.class, CalendarCommand.Revoke.class, CalendarCommand.Listing.class})
final class CalendarCommand {
    @Mixin
    private StoreOptions before;

    private CalendarCommand() {}

    /** What the three have in common. */
    private abstract static class Sub extends StoreCommand {
        @Option(names = "--json", description = "Prints one JSON object.")
        private boolean json;

        abstract void run(Application application, CalendarFeeds feeds, PrintWriter out, boolean json);

        @Override
        public Integer call() {
            try (Application application = open()) {
                PrintWriter out = out();
                run(application, new CalendarFeeds(application.store().dataSource()), out, json);
                out.flush();
            }
            return 0;
        }
    }

    /** Makes one. */
    @Command(
            name = "new",
            mixinStandardHelpOptions = true,
            description = "Makes a secret address for a depot's calendar and shows its token once.")
    static final class New extends Sub {
        @Parameters(paramLabel = "DEPOT", description = "The depot.")
        private String depot;

        @Override
        void run(Application application, CalendarFeeds feeds, PrintWriter out, boolean json) {
            NewFeed made = feeds.make(depot, Instant.now());
            AuditNotes.change(
                    application, "make a calendar", "calendar " + made.feed().id(), "", depot);
            if (json) {
                Json.print(out, Map.of("calendar", made.feed().id(), "depot", depot, "token", made.token()));
                return;
            }
            out.println("Calendar " + made.feed().id() + " of " + depot + ": /calendar/" + made.token()
                    + ".ics on the address of serve");
            out.println("It is shown only once. Anyone holding it can read the visits of " + depot
                    + ". Close it with: calendar" + " revoke " + made.feed().id());
        }
    }

    /** Closes one. */
    @Command(name = "revoke", mixinStandardHelpOptions = true, description = "Closes a secret address permanently.")
    static final class Revoke extends Sub {
        @Parameters(paramLabel = "ID", description = "The calendar's number.")
        private long id;

        @Override
        void run(Application application, CalendarFeeds feeds, PrintWriter out, boolean json) {
            feeds.revoke(id, Instant.now());
            AuditNotes.change(application, "close a calendar", "calendar " + id, "open", "closed");
            if (json) {
                Json.print(out, Map.of("revoked", id));
            } else {
                out.println("Calendar " + id + " is closed.");
            }
        }
    }

    /** Lists them. */
    @Command(name = "list", mixinStandardHelpOptions = true, description = "Lists the addresses, without their tokens.")
    static final class Listing extends Sub {
        @Override
        void run(Application application, CalendarFeeds feeds, PrintWriter out, boolean json) {
            List<Feed> all = feeds.list();
            if (json) {
                Json.print(out, Map.of("calendars", all));
                return;
            }
            TextTable table = new TextTable(">Calendar", "Depot", "Made at", "State");
            all.forEach(feed -> table.row(
                    feed.id(),
                    feed.depot(),
                    feed.madeAt(),
                    feed.revokedAt() == null ? "open" : "closed at " + feed.revokedAt()));
            if (table.isEmpty()) {
                out.println("No calendars.");
            } else {
                table.print(out);
            }
        }
    }
}
