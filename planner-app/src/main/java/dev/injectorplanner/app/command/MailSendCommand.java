package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.mail.MailSending;
import dev.injectorplanner.app.mail.MailSending.SendCounts;
import dev.injectorplanner.app.mail.MailSettings;
import dev.injectorplanner.app.mail.Outbox;
import dev.injectorplanner.core.check.InvalidValueException;
import java.io.PrintWriter;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Sends what is due. */
@Command(name = "send", mixinStandardHelpOptions = true, description = "Sends the mail that is due, once.")
final class MailSendCommand extends StoreCommand {
    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        MailSettings settings = settings();
        SendCounts counts;
        try (Application application = open()) {
            counts = new MailSending(new Outbox(application.store().dataSource()), settings, Clock.systemUTC())
                    .sendDue();
        }
        return print(out(), counts, json);
    }

    static MailSettings settings() {
        return MailSettings.find(System.getenv())
                .orElseThrow(() -> new InvalidValueException(
                        "PLANNER_MAIL_HOST", "", "is not set", "name the mail server in the environment"));
    }

    static int print(PrintWriter out, SendCounts counts, boolean json) {
        if (json) {
            Json.print(out, counts);
        } else {
            out.printf(
                    "Mail: %,d sent, %,d to retry, %,d refused%s%n",
                    counts.sent(),
                    counts.waiting(),
                    counts.refused(),
                    counts.error().isEmpty() ? "" : ": " + counts.error());
            out.flush();
        }
        return counts.waiting() + counts.refused() > 0 ? PlannerCommand.REFUSED : 0;
    }
}
