package dev.injectorplanner.app.mail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import dev.injectorplanner.app.mail.MailSending.SendCounts;
import dev.injectorplanner.app.mail.QueuedMail.State;
import dev.injectorplanner.app.testkit.Database;
import dev.injectorplanner.app.testkit.MovedClock;
import dev.injectorplanner.core.check.InvalidValueException;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The outbox against a mail server that is there, is not there, or says no. */
class MailSendingTest {
    private static final Instant NOW = Instant.parse("2026-03-02T05:00:00Z");

    private final MovedClock clock = new MovedClock(NOW);
    private GreenMail server = started(0);
    private Outbox outbox;

    @AfterEach
    void stop() {
        server.stop();
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void text_and_html_stand_side_by_side_and_a_file_goes_along(Database database) throws Exception {
        open(database);
        byte[] file = "what is in it".getBytes(StandardCharsets.UTF_8);
        outbox.queue(
                mail("a", "Kühlmittel – Nord", List.of(new Attachment("work.xlsx", Attachment.WORKBOOK, file))), NOW);
        assertThat(send()).isEqualTo(new SendCounts(1, 0, 0, ""));
        MimeMessage got = server.getReceivedMessages()[0];
        assertThat(got.getSubject()).isEqualTo("Kühlmittel – Nord");
        assertThat(got.getFrom()[0].toString()).isEqualTo("planner@example.org");
        assertThat(got.getSentDate().toInstant()).isEqualTo(NOW);
        MimeMultipart all = (MimeMultipart) got.getContent();
        assertThat(all.getContentType()).startsWith("multipart/mixed");
        MimeMultipart both = (MimeMultipart) all.getBodyPart(0).getContent();
        assertThat(both.getContentType()).startsWith("multipart/alternative");
        assertThat(both.getBodyPart(0).getContentType()).startsWith("text/plain");
        assertThat(both.getBodyPart(0).getContent()).isEqualTo("text – ü");
        assertThat(both.getBodyPart(1).getContentType()).startsWith("text/html");
        assertThat(both.getBodyPart(1).getContent()).isEqualTo("<p>html</p>");
        assertThat(all.getBodyPart(1).getFileName()).isEqualTo("work.xlsx");
        assertThat(all.getBodyPart(1).getInputStream().readAllBytes()).isEqualTo(file);
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void one_key_is_one_mail(Database database) {
        open(database);
        assertThat(outbox.queue(mail("a", "once", List.of()), NOW)).isTrue();
        assertThat(outbox.queue(mail("a", "once", List.of()), NOW)).isFalse();
        send();
        assertThat(outbox.queue(mail("a", "once", List.of()), NOW)).isFalse();
        send();
        assertThat(server.getReceivedMessages()).hasSize(1);
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void a_server_that_is_down_and_up_again_gets_each_mail_once(Database database) throws Exception {
        open(database);
        int port = server.getSmtp().getPort();
        server.stop();
        outbox.queue(mail("a", "first", List.of()), NOW);
        outbox.queue(mail("b", "second", List.of()), NOW);
        SendCounts down = send(settings(port, false));
        assertThat(down.sent()).isZero();
        assertThat(down.waiting()).isEqualTo(1);
        assertThat(outbox.list(9)).extracting(QueuedMail::state).containsOnly(State.WAITING);
        clock.move(Duration.ofMinutes(1));
        send(settings(port, false));
        server = started(port);
        clock.move(Duration.ofHours(1));
        assertThat(send(settings(port, false)).sent()).isEqualTo(2);
        clock.move(Duration.ofHours(1));
        assertThat(send(settings(port, false))).isEqualTo(new SendCounts(0, 0, 0, ""));
        assertThat(server.getReceivedMessages()).hasSize(2);
        assertThat(outbox.list(9)).extracting(QueuedMail::state).containsOnly(State.SENT);
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void a_mail_whose_sender_died_goes_out_under_the_same_id(Database database) throws Exception {
        open(database);
        outbox.queue(mail("a", "once", List.of()), NOW);
        Outbox.Claimed died = outbox.takeNext(NOW).orElseThrow();
        assertThat(outbox.takeNext(NOW)).as("nobody else may have it meanwhile").isEmpty();
        assertThat(send().sent()).isZero();
        clock.move(Outbox.CLAIM.plusSeconds(1));
        assertThat(send().sent()).isEqualTo(1);
        assertThat(server.getReceivedMessages()[0].getMessageID()).isEqualTo(died.messageId());
        outbox.failed(died, NOW, "late word of the dead");
        assertThat(outbox.list(1).get(0).state()).isEqualTo(State.SENT);
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void a_recipient_that_the_server_refuses_for_good_is_not_tried_again(Database database) throws Exception {
        open(database);
        outbox.queue(mail("a", "to nobody", List.of()), NOW);
        try (SmallSmtpServer no = new SmallSmtpServer("550 no such user here")) {
            SendCounts counts = send(settings(no.port(), false));
            assertThat(counts.refused()).isEqualTo(1);
            clock.move(Duration.ofDays(1));
            assertThat(send(settings(no.port(), false))).isEqualTo(new SendCounts(0, 0, 0, ""));
        }
        assertThat(outbox.list(1).get(0).state()).isEqualTo(State.REFUSED);
        assertThat(outbox.list(1).get(0).lastError()).isNotBlank();
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void a_recipient_that_is_refused_for_now_is_tried_again(Database database) throws Exception {
        open(database);
        outbox.queue(mail("a", "to somebody busy", List.of()), NOW);
        try (SmallSmtpServer later = new SmallSmtpServer("450 mailbox busy")) {
            assertThat(send(settings(later.port(), false)).waiting()).isEqualTo(1);
        }
        assertThat(outbox.list(1).get(0).nextAt()).isEqualTo(NOW.plus(Duration.ofMinutes(1)));
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void nothing_goes_out_unencrypted_where_encryption_is_asked_for(Database database) {
        open(database);
        outbox.queue(mail("a", "secret", List.of()), NOW);
        SendCounts counts = send(settings(server.getSmtp().getPort(), true));
        assertThat(counts.waiting()).isEqualTo(1);
        assertThat(counts.error()).contains("STARTTLS");
        assertThat(server.getReceivedMessages()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a@example.org\r\nBcc: b@example.org",
                "a@example.org, b@example.org",
                "a b@example.org",
                "nobody",
                "Name <a@example.org>",
                ""
            })
    void an_address_that_smuggles_something_is_refused(String address) {
        assertThatThrownBy(() -> new MailRecipient(null, Addressee.BUYER, address))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageEndingWith("is not an email address. Fix: write it as name@example.org.");
    }

    @Test
    void a_subject_or_file_name_of_two_lines_is_refused() {
        assertThatThrownBy(() -> mail("a", "one\r\nBcc: b@example.org", List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("subject");
        assertThatThrownBy(() -> new Attachment("a\nb.xlsx", Attachment.WORKBOOK, new byte[0]))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void the_pause_doubles_up_to_six_hours() {
        assertThat(List.of(1, 2, 3, 8, 9, 10, 500))
                .extracting(attempt -> MailSending.pause(attempt).toMinutes())
                .containsExactly(1L, 2L, 4L, 128L, 256L, 360L, 360L);
    }

    @Test
    void settings_come_from_the_environment_and_never_print_the_password() {
        Map<String, String> environment = Map.of(
                "PLANNER_MAIL_HOST", "mail.example.org",
                "PLANNER_MAIL_FROM", "planner@example.org",
                "PLANNER_MAIL_USER", "planner",
                "PLANNER_MAIL_PASSWORD", "open sesame");
        MailSettings found = MailSettings.find(environment).orElseThrow();
        assertThat(found.port()).isEqualTo(587);
        assertThat(found.startTls()).isTrue();
        assertThat(found.toString()).doesNotContain("sesame");
        assertThat(MailSettings.find(Map.of())).isEmpty();
        assertThatThrownBy(() -> new MailSettings("h", 25, "planner@example.org", false, "planner", "open sesame"))
                .hasMessageContaining("would send the password unencrypted");
        assertThatThrownBy(() -> MailSettings.find(
                        Map.of("PLANNER_MAIL_HOST", "h", "PLANNER_MAIL_PORT", "many", "PLANNER_MAIL_FROM", "a@b.org")))
                .hasMessageStartingWith("PLANNER_MAIL_PORT \"many\": is not a port number");
    }

    private void open(Database database) {
        outbox = new Outbox(database.empty().dataSource());
    }

    private SendCounts send() {
        return send(settings(server.getSmtp().getPort(), false));
    }

    private SendCounts send(MailSettings settings) {
        return new MailSending(outbox, settings, clock).sendDue();
    }

    private static MailSettings settings(int port, boolean startTls) {
        return new MailSettings("127.0.0.1", port, "planner@example.org", startTls, null, null);
    }

    private static Mail mail(String key, String subject, List<Attachment> attachments) {
        return new Mail(key, "manager@example.org", subject, "text – ü", "<p>html</p>", attachments);
    }

    private static GreenMail started(int port) {
        GreenMail mail = new GreenMail(new ServerSetup(port, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
        mail.start();
        return mail;
    }
}
