package dev.injectorplanner.app.digest;

import dev.injectorplanner.app.alert.Alert;
import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.mail.Addressee;
import dev.injectorplanner.app.mail.Attachment;
import dev.injectorplanner.app.mail.Letter;
import dev.injectorplanner.app.mail.Mail;
import dev.injectorplanner.app.mail.MailRecipients;
import dev.injectorplanner.app.mail.Outbox;
import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.plan.SafetyCase;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/**
 * Puts each reader's mail into the outbox: one mail a reader, and none where there is nothing to say. {@code due} is the
 * moment a job was due; the same job, depot, due time and recipient never makes a second mail. Each method answers how
 * many mails it queued.
 */
public final class Digests {
    private final StoreSql sql;
    private final Outbox outbox;
    private final MailRecipients recipients;
    private final Alerts alerts;
    private final SiteSettings settings;

    public Digests(DataSource store) {
        this.sql = new StoreSql(store);
        this.outbox = new Outbox(store);
        this.recipients = new MailRecipients(store);
        this.alerts = new Alerts(store);
        this.settings = new SiteSettings(store);
    }

    /** The manager's daily digest of alerts not told before. They count as told once a mail waits, not earlier. */
    public int daily(String depot, Instant due) {
        List<Alert> untold = alerts.listUntold(depot);
        return told(
                "daily digest",
                depot,
                due,
                Addressee.MANAGER,
                AlertLetter.of(depot, untold, heldOff(depot), settings.form()),
                untold);
    }

    /** Diagnoses of open safety faults that somebody holds off, told again every day. */
    private List<String> heldOff(String depot) {
        return sql.list(
                "select s.truck, s.reason, s.held_by, s.since from safety_hold s join truck t on t.truck = s.truck"
                        + " where t.depot = ? and exists (select a.id from alert a where a.truck = s.truck"
                        + " and a.rule = 'SAFETY' and a.open_key = 0) order by s.truck",
                row -> "SAFETY. Truck " + row.getString("truck") + ": the diagnosis is HELD OFF by "
                        + row.getString("held_by") + " since " + row.getDate("since") + ": " + row.getString("reason")
                        + ". " + SafetyCase.WARNING,
                depot);
    }

    /** The administrator's mail of failed jobs. */
    public int jobsFailed(Instant due) {
        List<Alert> untold = alerts.listUntoldJobs();
        return told("failed jobs", null, due, Addressee.ADMINISTRATOR, AlertLetter.ofJobs(untold), untold);
    }

    /** The mechanic's work list of a depot and ISO week, with the workbook. */
    public int workList(Planned planned, String depot, IsoWeek week, Instant due) {
        return WorkLetter.find(planned, depot, week, settings.form())
                .map(letter -> queue("work list " + week, depot, due, Addressee.MECHANIC, letter))
                .orElse(0);
    }

    /** The buyer's order list of a depot, with the workbook. */
    public int orderList(Planned planned, String depot, Instant due) {
        return OrderLetter.find(planned, depot, settings.form())
                .map(letter -> queue("order list", depot, due, Addressee.BUYER, letter))
                .orElse(0);
    }

    /** The buyer's cores to send back and claims to make. */
    public int deadlines(Planned planned, String depot, Instant due) {
        return DeadlineLetter.find(planned, depot, settings.form())
                .map(letter -> queue("deadlines", depot, due, Addressee.BUYER, new Lettered(letter, List.of())))
                .orElse(0);
    }

    /** A letter and what goes along. */
    record Lettered(Letter letter, List<Attachment> attachments) {}

    private int told(
            String job,
            @Nullable String depot,
            Instant due,
            Addressee addressee,
            Optional<Letter> letter,
            List<Alert> untold) {
        List<String> addresses = recipients.listAddresses(depot, addressee);
        if (letter.isEmpty() || addresses.isEmpty()) {
            return 0;
        }
        Lettered lettered = new Lettered(letter.get(), List.of());
        return sql.inTransaction(connection -> {
            int queued = 0;
            for (String address : addresses) {
                queued += outbox.queue(connection, mail(job, depot, due, address, lettered), due) ? 1 : 0;
            }
            if (queued > 0) {
                Alerts.markTold(connection, untold);
            }
            return queued;
        });
    }

    private int queue(String job, String depot, Instant due, Addressee addressee, Lettered letter) {
        List<String> addresses = recipients.listAddresses(depot, addressee);
        return sql.inTransaction(connection -> {
            int queued = 0;
            for (String address : addresses) {
                queued += outbox.queue(connection, mail(job, depot, due, address, letter), due) ? 1 : 0;
            }
            return queued;
        });
    }

    private static Mail mail(String job, @Nullable String depot, Instant due, String address, Lettered lettered) {
        String key = job + "/" + (depot == null ? "" : depot) + "/" + due + "/" + address;
        Letter letter = lettered.letter();
        return new Mail(key, address, letter.title(), letter.text(), letter.html(), lettered.attachments());
    }
}
