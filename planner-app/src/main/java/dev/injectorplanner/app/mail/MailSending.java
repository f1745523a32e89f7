package dev.injectorplanner.app.mail;

import jakarta.mail.MessagingException;
import jakarta.mail.SendFailedException;
import jakarta.mail.Session;
import jakarta.mail.Transport;
import jakarta.mail.internet.MimeMessage;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Properties;
import org.eclipse.angus.mail.smtp.SMTPAddressFailedException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Sends what waits in the outbox. */
public final class MailSending {
    private static final Logger LOG = LoggerFactory.getLogger(MailSending.class);
    private static final String TIMEOUT_MILLIS = "20000";
    private static final int PERMANENT = 500; // RFC 5321, 4.2.1: 5yz is a permanent no
    private static final int MOST_DOUBLINGS = 9;
    private static final Duration LONGEST_PAUSE = Duration.ofHours(6);

    private final Outbox outbox;
    private final MailSettings settings;
    private final Clock clock;

    public MailSending(Outbox outbox, MailSettings settings, Clock clock) {
        this.outbox = outbox;
        this.settings = settings;
        this.clock = clock;
    }

    /**
     * What a pass did.
     *
     * @param sent mails the server took
     * @param waiting mails that are tried again later
     * @param refused mails the server will never take
     * @param error what the server, or its absence, said last; empty where all went well
     */
    public record SendCounts(int sent, int waiting, int refused, String error) {
        private static final SendCounts NONE = new SendCounts(0, 0, 0, "");
    }

    /** Sends every mail that is due; stops at the first sign that the server cannot be reached. */
    public SendCounts sendDue() {
        SendCounts counts = SendCounts.NONE;
        Session session = Session.getInstance(properties());
        Optional<Outbox.Claimed> next = outbox.takeNext(clock.instant());
        if (next.isEmpty()) {
            return counts;
        }
        try (Transport transport = session.getTransport("smtp")) {
            transport.connect(settings.host(), settings.port(), settings.user(), settings.password());
            while (next.isPresent()) {
                Outbox.Claimed mail = next.get();
                counts = plus(counts, send(session, transport, mail));
                if (!transport.isConnected()) {
                    return counts;
                }
                next = outbox.takeNext(clock.instant());
            }
            return counts;
        } catch (MessagingException e) {
            return next.isPresent() ? plus(counts, later(next.get(), e)) : counts;
        }
    }

    private SendCounts send(Session session, Transport transport, Outbox.Claimed mail) {
        try {
            MimeMessage message = MimeForm.of(session, settings.from(), mail);
            transport.sendMessage(message, message.getAllRecipients());
            outbox.sent(mail, clock.instant());
            return new SendCounts(1, 0, 0, "");
        } catch (MessagingException e) {
            if (isForGood(e)) {
                String error = words(e);
                LOG.warn("Mail {} was refused permanently: {}", mail.id(), error);
                outbox.refused(mail, clock.instant(), error);
                return new SendCounts(0, 0, 1, error);
            }
            return later(mail, e);
        }
    }

    private SendCounts later(Outbox.Claimed mail, MessagingException e) {
        String error = words(e);
        Instant again = clock.instant().plus(pause(mail.attempt()));
        LOG.warn("Mail {} will be retried at {}: {} answered {}", mail.id(), again, settings, error);
        outbox.failed(mail, again, error);
        return new SendCounts(0, 1, 0, error);
    }

    /** One minute, then twice as long each time, up to six hours. It never gives up: nothing is lost. */
    static Duration pause(int attempt) {
        Duration pause = Duration.ofMinutes(1L << Math.min(MOST_DOUBLINGS, attempt - 1));
        return pause.compareTo(LONGEST_PAUSE) < 0 ? pause : LONGEST_PAUSE;
    }

    /** Only a no to the recipient itself; a server that will not have us may think better of it. */
    private static boolean isForGood(MessagingException e) {
        for (Exception each = e;
                each != null;
                each = each instanceof MessagingException m ? m.getNextException() : null) {
            if (each instanceof SMTPAddressFailedException failed) {
                return failed.getReturnCode() >= PERMANENT;
            }
        }
        return e instanceof SendFailedException failed
                && failed.getInvalidAddresses() != null
                && failed.getInvalidAddresses().length > 0
                && failed.getNextException() == null;
    }

    private static String words(MessagingException e) {
        return String.valueOf(e.getMessage()).replaceAll("\\p{Cntrl}+", " ").strip();
    }

    private static SendCounts plus(SendCounts one, SendCounts other) {
        return new SendCounts(
                one.sent + other.sent,
                one.waiting + other.waiting,
                one.refused + other.refused,
                other.error.isEmpty() ? one.error : other.error);
    }

    private Properties properties() {
        Properties set = new Properties();
        set.setProperty("mail.smtp.auth", String.valueOf(settings.user() != null));
        set.setProperty("mail.smtp.starttls.enable", String.valueOf(settings.startTls()));
        set.setProperty("mail.smtp.starttls.required", String.valueOf(settings.startTls()));
        set.setProperty("mail.smtp.ssl.checkserveridentity", "true");
        set.setProperty("mail.smtp.connectiontimeout", TIMEOUT_MILLIS);
        set.setProperty("mail.smtp.timeout", TIMEOUT_MILLIS);
        set.setProperty("mail.smtp.writetimeout", TIMEOUT_MILLIS);
        return set;
    }
}
