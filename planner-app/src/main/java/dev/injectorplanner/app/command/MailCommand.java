package dev.injectorplanner.app.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Who gets mail, what waits to be sent. */
@Command(
        name = "mail",
        mixinStandardHelpOptions = true,
        description =
                "Who gets mail, and what is waiting to be sent. The mail server is set by PLANNER_MAIL_HOST, _PORT, _FROM,"
                        + " _STARTTLS, _USER and _PASSWORD in the environment.",
        subcommands = {
            MailRecipientsCommand.class,
            MailOutboxCommand.class,
            MailSendCommand.class,
            MailTestCommand.class
        })
final class MailCommand {
    @Mixin
    private StoreOptions before;

    private MailCommand() {}
}
