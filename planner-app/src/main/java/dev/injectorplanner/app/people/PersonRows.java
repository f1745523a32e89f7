package dev.injectorplanner.app.people;

import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.check.InvalidValueException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.text.Normalizer;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** People as rows; each method works within the caller's transaction. */
final class PersonRows {
    private static final String COLUMNS = "select p.id, p.name, p.depot, p.stamp, p.must_change, p.disabled,"
            + " p.failed_attempts, p.signed_in_at, r.role from person p left join person_role r on r.person = p.id";

    private PersonRows() {}

    /** Names that differ by case only are one name. */
    static String key(String name) {
        return Normalizer.normalize(name.strip(), Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
    }

    static List<Account> list(Connection connection) throws SQLException {
        return whole(StoreSql.list(connection, COLUMNS + " order by p.name_key, r.role", PersonRows::part));
    }

    static Optional<Account> find(Connection connection, String name) throws SQLException {
        return whole(StoreSql.list(connection, COLUMNS + " where p.name_key = ?", PersonRows::part, key(name))).stream()
                .findFirst();
    }

    static Optional<Account> find(Connection connection, long id) throws SQLException {
        return whole(StoreSql.list(connection, COLUMNS + " where p.id = ?", PersonRows::part, id)).stream()
                .findFirst();
    }

    static Account get(Connection connection, String name) throws SQLException {
        return find(connection, name)
                .orElseThrow(() -> new InvalidValueException(
                        "name", name, "does not exist", "use a name from the list of people"));
    }

    static void insert(Connection connection, NewPerson person, String hash, boolean mustChange, Instant at)
            throws SQLException {
        long id = StoreSql.nextIds(connection, "person_seq");
        StoreSql.update(
                connection,
                "insert into person (id, name, name_key, depot, password_hash, stamp, must_change, disabled,"
                        + " failed_attempts, made_at) values (?, ?, ?, ?, ?, ?, ?, ?, 0, ?)",
                id,
                person.name(),
                key(person.name()),
                person.depot(),
                hash,
                Secrets.stamp(),
                mustChange,
                false,
                at);
        addRoles(connection, id, person.roles());
    }

    static void setRoles(Connection connection, long id, Set<Role> roles, @Nullable String depot) throws SQLException {
        StoreSql.update(connection, "update person set depot = ? where id = ?", depot, id);
        StoreSql.update(connection, "delete from person_role where person = ?", id);
        addRoles(connection, id, roles);
    }

    private static void addRoles(Connection connection, long id, Set<Role> roles) throws SQLException {
        for (Role role : roles) {
            StoreSql.update(connection, "insert into person_role (person, role) values (?, ?)", id, role.name());
        }
    }

    static void requireDepot(Connection connection, @Nullable String depot) throws SQLException {
        List<String> depots =
                StoreSql.list(connection, "select depot from depot order by depot", row -> row.getString("depot"));
        if (depot != null && !depots.contains(depot)) {
            throw new InvalidValueException(
                    "depot",
                    depot,
                    "is not known",
                    depots.isEmpty() ? "load the depots first" : "choose one of " + String.join(", ", depots));
        }
    }

    private static Account part(ResultSet row) throws SQLException {
        String role = row.getString("role");
        return new Account(
                row.getLong("id"),
                row.getString("name"),
                role == null ? Set.of() : Set.of(Role.valueOf(role)),
                row.getString("depot"),
                row.getLong("stamp"),
                row.getBoolean("must_change"),
                row.getBoolean("disabled"),
                row.getInt("failed_attempts"),
                StoreSql.instant(row, "signed_in_at"));
    }

    /** One row a role becomes one account. */
    private static List<Account> whole(List<Account> parts) {
        List<Account> whole = new ArrayList<>();
        for (Account part : parts) {
            Account last = whole.isEmpty() ? null : whole.get(whole.size() - 1);
            if (last != null && last.id() == part.id()) {
                Set<Role> roles = EnumSet.copyOf(last.roles());
                roles.addAll(part.roles());
                whole.set(whole.size() - 1, withRoles(last, roles));
            } else {
                whole.add(part);
            }
        }
        return whole;
    }

    private static Account withRoles(Account account, Set<Role> roles) {
        return new Account(
                account.id(),
                account.name(),
                roles,
                account.depot(),
                account.stamp(),
                account.mustChange(),
                account.disabled(),
                account.failedAttempts(),
                account.signedInAt());
    }
}
