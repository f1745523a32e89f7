package dev.injectorplanner.app.mail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.app.testkit.Database;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MailRecipientsTest {
    @ParameterizedTest
    @EnumSource(Database.class)
    void a_reader_of_every_depot_gets_each_depots_mail_once(Database database) {
        MailRecipients recipients = new MailRecipients(database.empty().dataSource());
        MailRecipient everywhere = new MailRecipient(null, Addressee.BUYER, "buyer@example.org");
        assertThat(recipients.add(everywhere)).isTrue();
        assertThat(recipients.add(everywhere)).isFalse();
        recipients.add(new MailRecipient("North", Addressee.BUYER, "buyer@example.org"));
        recipients.add(new MailRecipient("North", Addressee.BUYER, "north@example.org"));
        recipients.add(new MailRecipient("North", Addressee.MANAGER, "manager@example.org"));
        assertThat(recipients.listAddresses("North", Addressee.BUYER))
                .containsExactly("buyer@example.org", "north@example.org");
        assertThat(recipients.listAddresses("South", Addressee.BUYER)).containsExactly("buyer@example.org");
        assertThat(recipients.listAddresses(null, Addressee.MANAGER)).isEmpty();
        assertThat(recipients.remove(everywhere)).isTrue();
        assertThat(recipients.remove(everywhere)).isFalse();
        assertThat(recipients.list()).hasSize(3);
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void an_unknown_depot_or_reader_is_said_with_those_there_are(Database database) {
        MailRecipients recipients = new MailRecipients(database.empty().dataSource());
        assertThatThrownBy(() -> recipients.add(new MailRecipient("West", Addressee.BUYER, "a@example.org")))
                .hasMessage("depot \"West\": is not known. Fix: choose one of North, South.");
        assertThatThrownBy(() -> Addressee.of("owner"))
                .hasMessage("for \"owner\": is not a mail role. Fix: choose from manager, buyer, mechanic,"
                        + " administrator.");
    }
}
