package dev.injectorplanner.app.mail;

import dev.injectorplanner.app.mail.QueuedMail.State;
import dev.injectorplanner.app.store.StoreSql;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/**
 * Mail that waits in the store until a server has taken it.
 *
 * <p>Sent at least once: a node that dies between the server's yes and its own note sends the mail again when its time
 * has lapsed, under the same Message-ID, by which a receiver recognises the double. The other choice, to note first and
 * send afterwards, would lose a work list.
 */
public final class Outbox {
    /** A node that has taken a mail has so long to send it. */
    static final Duration CLAIM = Duration.ofMinutes(10);

    private static final int LONGEST_ERROR = 2_000;
    private static final String COLUMNS =
            "id, recipient, subject, state, attempts, queued_at, next_at, sent_at, last_error";

    private final StoreSql sql;

    public Outbox(DataSource store) {
        this.sql = new StoreSql(store);
    }

    /** A mail that this node may send now; {@code attempt} tells its claim from a later one. */
    record Claimed(long id, int attempt, String messageId, Instant queuedAt, Mail mail) {}

    /**
     * Queues a mail within the caller's transaction.
     *
     * @return false where one with its key is there already
     */
    public boolean queue(Connection connection, Mail mail, Instant at) throws SQLException {
        if (!StoreSql.list(
                        connection,
                        "select id from mail_message where message_key = ?",
                        row -> row.getLong(1),
                        mail.key())
                .isEmpty()) {
            return false;
        }
        long id = StoreSql.nextIds(connection, "mail_message_seq");
        StoreSql.update(
                connection,
                "insert into mail_message (id, message_key, message_id, recipient, subject, body_text, body_html, state,"
                        + " attempts, queued_at, next_at) values (?, ?, ?, ?, ?, ?, ?, 'WAITING', 0, ?, ?)",
                id,
                mail.key(),
                "<" + UUID.randomUUID() + "@injector-planner.invalid>",
                mail.recipient(),
                mail.subject(),
                mail.text(),
                mail.html(),
                at,
                at);
        for (Attachment attachment : mail.attachments()) {
            StoreSql.update(
                    connection,
                    "insert into mail_attachment (id, message, name, media_type, content) values (?, ?, ?, ?, ?)",
                    StoreSql.nextIds(connection, "mail_attachment_seq"),
                    id,
                    attachment.name(),
                    attachment.mediaType(),
                    Base64.getEncoder().encodeToString(attachment.content()));
        }
        return true;
    }

    /** Queues a mail by itself. */
    public boolean queue(Mail mail, Instant at) {
        return sql.inTransaction(connection -> queue(connection, mail, at));
    }

    /** The newest mails, those not sent first. */
    public List<QueuedMail> list(int most) {
        return sql.inTransaction(connection -> StoreSql.list(
                connection,
                "select " + COLUMNS + " from mail_message order by case when state = 'SENT' then 1 else 0 end,"
                        + " queued_at desc, id desc fetch first " + most + " rows only",
                Outbox::row));
    }

    /** Takes the mail that has waited longest, so that no other node sends it meanwhile. */
    Optional<Claimed> takeNext(Instant now) {
        while (true) {
            List<QueuedMail> due = sql.inTransaction(connection -> StoreSql.list(
                    connection,
                    "select " + COLUMNS + " from mail_message where state in ('WAITING', 'SENDING') and next_at <= ?"
                            + " order by next_at, id fetch first 1 rows only",
                    Outbox::row,
                    now));
            if (due.isEmpty()) {
                return Optional.empty();
            }
            QueuedMail mail = due.get(0);
            int attempt = mail.attempts() + 1;
            boolean mine = sql.inTransaction(connection -> StoreSql.update(
                            connection,
                            "update mail_message set state = 'SENDING', attempts = ?, next_at = ?"
                                    + " where id = ? and attempts = ? and state in ('WAITING', 'SENDING')",
                            attempt,
                            now.plus(CLAIM),
                            mail.id(),
                            mail.attempts())
                    == 1);
            if (mine) {
                return Optional.of(sql.inTransaction(connection -> claimed(connection, mail.id(), attempt)));
            }
        }
    }

    void sent(Claimed mail, Instant at) {
        note(mail, State.SENT, at, at, null);
    }

    /** Not this time: it is tried again at {@code next}. */
    void failed(Claimed mail, Instant next, String error) {
        note(mail, State.WAITING, next, null, error);
    }

    void refused(Claimed mail, Instant at, String error) {
        note(mail, State.REFUSED, at, null, error);
    }

    private void note(Claimed mail, State state, Instant next, @Nullable Instant sentAt, @Nullable String error) {
        String shown = error == null || error.length() <= LONGEST_ERROR ? error : error.substring(0, LONGEST_ERROR);
        sql.inTransaction(connection -> StoreSql.update(
                connection,
                "update mail_message set state = ?, next_at = ?, sent_at = ?, last_error = ?"
                        + " where id = ? and attempts = ? and state = 'SENDING'",
                state.name(),
                next,
                sentAt,
                shown,
                mail.id(),
                mail.attempt()));
    }

    private static Claimed claimed(Connection connection, long id, int attempt) throws SQLException {
        List<Attachment> attachments = StoreSql.list(
                connection,
                "select name, media_type, content from mail_attachment where message = ? order by id",
                row -> new Attachment(
                        row.getString("name"),
                        row.getString("media_type"),
                        Base64.getDecoder().decode(row.getString("content"))),
                id);
        return StoreSql.list(
                        connection,
                        "select message_key, message_id, recipient, subject, body_text, body_html, queued_at"
                                + " from mail_message where id = ?",
                        row -> new Claimed(
                                id,
                                attempt,
                                row.getString("message_id"),
                                StoreSql.moment(row, "queued_at"),
                                new Mail(
                                        row.getString("message_key"),
                                        row.getString("recipient"),
                                        row.getString("subject"),
                                        row.getString("body_text"),
                                        row.getString("body_html"),
                                        attachments)),
                        id)
                .get(0);
    }

    private static QueuedMail row(ResultSet row) throws SQLException {
        return new QueuedMail(
                row.getLong("id"),
                row.getString("recipient"),
                row.getString("subject"),
                State.valueOf(row.getString("state")),
                row.getInt("attempts"),
                StoreSql.moment(row, "queued_at"),
                StoreSql.moment(row, "next_at"),
                StoreSql.instant(row, "sent_at"),
                row.getString("last_error"));
    }
}
