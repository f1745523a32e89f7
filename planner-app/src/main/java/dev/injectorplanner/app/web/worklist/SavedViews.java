package dev.injectorplanner.app.web.worklist;

import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.check.InvalidValueException;
import java.time.Instant;
import java.util.List;
import javax.sql.DataSource;

/** Views of the worklist that a person keeps under a name. */
public final class SavedViews {
    private static final int MOST = 20;
    private static final int LONGEST_NAME = 60;
    private static final int LONGEST_ADDRESS = 2000;

    private final StoreSql sql;

    public SavedViews(DataSource source) {
        this.sql = new StoreSql(source);
    }

    /**
     * A view.
     *
     * @param name its name
     * @param address what follows the question mark of its address
     */
    public record SavedView(String name, String address) {}

    public List<SavedView> list(String owner) {
        return sql.list(
                "select name, address from saved_view where owner = ? order by name",
                row -> new SavedView(row.getString("name"), row.getString("address")),
                owner);
    }

    /**
     * Keeps a view; one of the same name is replaced.
     *
     * @throws InvalidValueException where the name is empty or too long, or the person keeps too many
     */
    public void save(String owner, String name, String address, Instant at) {
        String named = name.strip();
        if (named.isEmpty() || named.length() > LONGEST_NAME) {
            throw new InvalidValueException(
                    "name", named, "is not a name for a view", "write 1 to " + LONGEST_NAME + " characters");
        }
        if (address.length() > LONGEST_ADDRESS) {
            throw new InvalidValueException("view", address.length(), "is too long", "use fewer filters");
        }
        sql.inTransaction(connection -> {
            StoreSql.update(connection, "delete from saved_view where owner = ? and name = ?", owner, named);
            int kept = StoreSql.list(
                            connection,
                            "select count(*) as n from saved_view where owner = ?",
                            row -> row.getInt("n"),
                            owner)
                    .get(0);
            if (kept >= MOST) {
                throw new InvalidValueException(
                        "view", named, "is one too many: " + MOST + " are kept already", "forget one first");
            }
            StoreSql.update(
                    connection,
                    "insert into saved_view (owner, name, address, saved_at) values (?, ?, ?, ?)",
                    owner,
                    named,
                    address,
                    at);
            AuditTrail.write(connection, at, owner, "save a view", named, "", address);
            return true;
        });
    }

    /** Forgets a view; one that is not there is none to forget. */
    public void forget(String owner, String name, Instant at) {
        sql.inTransaction(connection -> {
            List<String> kept = StoreSql.list(
                    connection,
                    "select address from saved_view where owner = ? and name = ?",
                    row -> row.getString("address"),
                    owner,
                    name);
            StoreSql.update(connection, "delete from saved_view where owner = ? and name = ?", owner, name);
            for (String address : kept) {
                AuditTrail.write(connection, at, owner, "forget a view", name, "kept: " + address, "");
            }
            return true;
        });
    }
}
