package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.mail.Addressee;
import dev.injectorplanner.app.mail.MailRecipient;
import dev.injectorplanner.app.mail.MailRecipients;
import dev.injectorplanner.reports.table.TextTable;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Who gets mail. */
@Command(
        name = "recipients",
        mixinStandardHelpOptions = true,
        description = "Who gets mail.",
        subcommands = {
            MailRecipientsCommand.Add.class,
            MailRecipientsCommand.Remove.class,
            MailRecipientsCommand.Listing.class
        })
final class MailRecipientsCommand {
    @Mixin
    private StoreOptions before;

    private MailRecipientsCommand() {}

    private abstract static class Change extends StoreCommand {
        @Option(names = "--depot", paramLabel = "D", description = "Mail of one depot (default: of every depot).")
        private @Nullable String depot;

        @Option(
                names = "--for",
                required = true,
                paramLabel = "READER",
                description = "Role: manager, buyer, mechanic, administrator.")
        private String addressee;

        @Parameters(paramLabel = "ADDRESS", description = "Address, such as buyer@example.org.")
        private String address;

        abstract String run(MailRecipients recipients, MailRecipient recipient);

        @Override
        public Integer call() {
            MailRecipient recipient = new MailRecipient(depot, Addressee.of(addressee), address);
            try (Application application = open()) {
                PrintWriter out = out();
                String said = run(new MailRecipients(application.store().dataSource()), recipient);
                AuditNotes.change(application, "change who gets mail", recipient.address(), "", said);
                out.println(said);
                out.flush();
            }
            return 0;
        }

        static String words(MailRecipient recipient) {
            return recipient.address() + ", " + recipient.addressee().word() + " of "
                    + (recipient.depot() == null ? "every depot" : recipient.depot());
        }
    }

    /** Puts somebody on the list. */
    @Command(name = "add", mixinStandardHelpOptions = true, description = "Adds somebody to the list.")
    static final class Add extends Change {
        @Override
        String run(MailRecipients recipients, MailRecipient recipient) {
            return words(recipient) + (recipients.add(recipient) ? ": added." : ": is on the list already.");
        }
    }

    /** Takes somebody off the list. */
    @Command(name = "remove", mixinStandardHelpOptions = true, description = "Removes somebody from the list.")
    static final class Remove extends Change {
        @Override
        String run(MailRecipients recipients, MailRecipient recipient) {
            return words(recipient) + (recipients.remove(recipient) ? ": removed." : ": was not on the list.");
        }
    }

    /** Who is on it. */
    @Command(name = "list", mixinStandardHelpOptions = true, description = "Lists who gets mail.")
    static final class Listing extends StoreCommand {
        @Option(names = "--json", description = "Prints one JSON object.")
        private boolean json;

        @Override
        public Integer call() {
            List<MailRecipient> all;
            try (Application application = open()) {
                all = new MailRecipients(application.store().dataSource()).list();
            }
            PrintWriter out = out();
            TextTable table = new TextTable("Depot", "Reader", "Address");
            all.forEach(each -> table.row(
                    each.depot() == null ? "every depot" : each.depot(),
                    each.addressee().word(),
                    each.address()));
            if (json) {
                Json.print(out, Map.of("recipients", all));
            } else if (table.isEmpty()) {
                out.println("Nobody gets mail.");
            } else {
                table.print(out);
            }
            out.flush();
            return 0;
        }
    }
}
