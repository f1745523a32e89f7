package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.mail.Letter;
import dev.injectorplanner.app.mail.Mail;
import dev.injectorplanner.app.mail.MailSending;
import dev.injectorplanner.app.mail.MailSettings;
import dev.injectorplanner.app.mail.Outbox;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tries the server out. */
@Command(
        name = "test",
        mixinStandardHelpOptions = true,
        description = "Sends a test mail to an address, and any other mail that is due.")
final class MailTestCommand extends StoreCommand {
    @Parameters(paramLabel = "ADDRESS", description = "Address.")
    private String address;

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        MailSettings settings = MailSendCommand.settings();
        Instant now = Instant.now();
        Letter letter = new Letter("Injector Planner can send mail")
                .say("This is a test. The server " + settings + " accepted it from " + settings.from() + ".");
        Mail mail = new Mail(
                "test/" + now + "/" + address, address, letter.title(), letter.text(), letter.html(), List.of());
        try (Application application = open()) {
            Outbox outbox = new Outbox(application.store().dataSource());
            outbox.queue(mail, now);
            var counts = new MailSending(outbox, settings, Clock.systemUTC()).sendDue();
            return MailSendCommand.print(out(), counts, json);
        }
    }
}
