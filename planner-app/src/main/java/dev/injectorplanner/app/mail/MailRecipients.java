package dev.injectorplanner.app.mail;

import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.check.InvalidValueException;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/** The list of who gets mail. */
public final class MailRecipients {
    private final StoreSql sql;

    public MailRecipients(DataSource store) {
        this.sql = new StoreSql(store);
    }

    /**
     * Puts somebody on the list.
     *
     * @return false where they are on it already
     * @throws InvalidValueException where there is no such depot
     */
    public boolean add(MailRecipient recipient) {
        return sql.inTransaction(connection -> {
            checkDepot(connection, recipient.depot());
            if (list(connection).contains(recipient)) {
                return false;
            }
            StoreSql.update(
                    connection,
                    "insert into mail_recipient (id, depot, depot_key, reader, address) values (?, ?, ?, ?, ?)",
                    StoreSql.nextIds(connection, "mail_recipient_seq"),
                    recipient.depot(),
                    key(recipient.depot()),
                    recipient.addressee().name(),
                    recipient.address());
            return true;
        });
    }

    /** Takes somebody off the list; false where they are not on it. */
    public boolean remove(MailRecipient recipient) {
        return sql.inTransaction(connection -> StoreSql.update(
                        connection,
                        "delete from mail_recipient where depot_key = ? and reader = ? and address = ?",
                        key(recipient.depot()),
                        recipient.addressee().name(),
                        recipient.address())
                == 1);
    }

    public List<MailRecipient> list() {
        return sql.inTransaction(MailRecipients::list);
    }

    /** Addresses of one depot's readers, with those of every depot, each once; no depot means those of every depot. */
    public List<String> listAddresses(@Nullable String depot, Addressee addressee) {
        return list().stream()
                .filter(each -> each.addressee() == addressee
                        && (each.depot() == null || each.depot().equals(depot)))
                .map(MailRecipient::address)
                .distinct()
                .toList();
    }

    private static List<MailRecipient> list(Connection connection) throws SQLException {
        return StoreSql.list(
                connection,
                "select depot, reader, address from mail_recipient order by depot_key, reader, address",
                row -> new MailRecipient(
                        row.getString("depot"), Addressee.valueOf(row.getString("reader")), row.getString("address")));
    }

    private static void checkDepot(Connection connection, @Nullable String depot) throws SQLException {
        List<String> depots =
                StoreSql.list(connection, "select depot from depot order by depot", row -> row.getString("depot"));
        if (depot != null && !depots.contains(depot)) {
            throw new InvalidValueException(
                    "depot",
                    depot,
                    "is not known",
                    depots.isEmpty()
                            ? "load the depots first"
                            : "choose one of " + depots.stream().collect(Collectors.joining(", ")));
        }
    }

    private static String key(@Nullable String depot) {
        return depot == null ? "" : depot;
    }
}
