package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.mail.Outbox;
import dev.injectorplanner.app.mail.QueuedMail;
import dev.injectorplanner.reports.table.TextTable;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What waits to be sent. */
@Command(name = "outbox", mixinStandardHelpOptions = true, description = "Lists the newest mails, unsent ones first.")
final class MailOutboxCommand extends StoreCommand {
    @Option(names = "--most", paramLabel = "N", description = "Maximum number of mails to list (default: 50).")
    private int most = 50;

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        List<QueuedMail> mails;
        try (Application application = open()) {
            mails = new Outbox(application.store().dataSource()).list(most);
        }
        var out = out();
        TextTable table = new TextTable(">Mail", "State", ">Tries", "To", "Subject", "Last error");
        mails.forEach(mail -> table.row(
                mail.id(),
                mail.state().name().toLowerCase(Locale.ROOT),
                mail.attempts(),
                mail.recipient(),
                mail.subject(),
                mail.lastError() == null ? "" : mail.lastError()));
        if (json) {
            Json.print(out, Map.of("mails", mails));
        } else if (table.isEmpty()) {
            out.println("No mail.");
        } else {
            table.print(out);
        }
        out.flush();
        return 0;
    }
}
