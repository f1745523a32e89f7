package dev.injectorplanner.app.people;

import dev.injectorplanner.app.store.StoreException;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.check.InvalidValueException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/** The people who sign in. Every change goes into the audit trail within its own transaction. */
public final class People {
    /** The name of the person that a first start makes. */
    public static final String FIRST = "administrator";

    private final StoreSql sql;
    private final PasswordHashing hashing;
    private final InstantSource clock;

    public People(DataSource store, PasswordHashing hashing) {
        this(store, hashing, InstantSource.system());
    }

    People(DataSource store, PasswordHashing hashing, InstantSource clock) {
        this.sql = new StoreSql(store);
        this.hashing = hashing;
        this.clock = clock;
    }

    /** Everybody, by name. */
    public List<Account> list() {
        return sql.inTransaction(PersonRows::list);
    }

    /** A person by number; read again at every request, so that what an administrator changes holds at once. */
    public Optional<Account> find(long id) {
        return sql.inTransaction(connection -> PersonRows.find(connection, id));
    }

    /** A person by name, whatever its case. */
    public Optional<Account> find(String name) {
        return sql.inTransaction(connection -> PersonRows.find(connection, name));
    }

    /**
     * Makes the first administrator where there is nobody yet.
     *
     * @return the password, to be shown once and changed at the first sign-in; empty where there is somebody
     */
    public Optional<String> findFirstPassword() {
        if (!sql.inTransaction(PersonRows::list).isEmpty()) {
            return Optional.empty();
        }
        String password = Secrets.password();
        try {
            add(new NewPerson(FIRST, Set.of(Role.ADMINISTRATOR), null), password, true, "first start");
            return Optional.of(password);
        } catch (InvalidValueException | StoreException e) {
            if (sql.inTransaction(PersonRows::list).isEmpty()) {
                throw e;
            }
            return Optional.empty(); // another node that started at the same moment was first
        }
    }

    /**
     * Adds a person.
     *
     * @param mustChange whether the password is to be changed at the first sign-in
     * @param by who adds
     * @throws InvalidValueException where the name is taken, the depot is not known, or the password is refused
     */
    public void add(NewPerson person, CharSequence password, boolean mustChange, String by) {
        PasswordRules.check(person.name(), password);
        String hash = hashing.hash(password);
        sql.inTransaction(connection -> {
            if (PersonRows.find(connection, person.name()).isPresent()) {
                throw new InvalidValueException("name", person.name(), "is already in use", "choose another one");
            }
            PersonRows.requireDepot(connection, person.depot());
            PersonRows.insert(connection, person, hash, mustChange, clock.instant());
            Account added = PersonRows.get(connection, person.name());
            audit(connection, by, "add a person", person.name(), "", added.words());
            return true;
        });
    }

    /**
     * Changes what a person may do and where.
     *
     * @throws InvalidValueException where there is no such person or depot, or no administrator would be left
     */
    public void change(NewPerson person, String by) {
        sql.inTransaction(connection -> {
            Account before = PersonRows.get(connection, person.name());
            PersonRows.requireDepot(connection, person.depot());
            PersonRows.setRoles(connection, before.id(), person.roles(), person.depot());
            requireAdministrator(connection, before);
            Account after = PersonRows.get(connection, person.name());
            audit(connection, by, "change a person", before.name(), before.words(), after.words());
            return true;
        });
    }

    /**
     * Keeps a person out, or lets one in again. Who is signed in is signed out.
     *
     * @throws InvalidValueException where there is no such person, or no administrator would be left
     */
    public void setDisabled(String name, boolean disabled, String by) {
        sql.inTransaction(connection -> {
            Account before = PersonRows.get(connection, name);
            StoreSql.update(
                    connection,
                    "update person set disabled = ?, stamp = ?, failed_attempts = 0 where id = ?",
                    disabled,
                    Secrets.stamp(),
                    before.id());
            requireAdministrator(connection, before);
            Account after = PersonRows.get(connection, name);
            String what = disabled ? "disable a person" : "enable a person";
            audit(connection, by, what, before.name(), before.words(), after.words());
            return true;
        });
    }

    private static void requireAdministrator(Connection connection, Account touched) throws SQLException {
        boolean left = PersonRows.list(connection).stream()
                .anyMatch(account -> !account.disabled() && account.roles().contains(Role.ADMINISTRATOR));
        if (!left) {
            throw new InvalidValueException(
                    "name", touched.name(), "is the last administrator", "create another one first");
        }
    }

    /**
     * Gives a person a new password; what was signed in under the old one has ended.
     *
     * @param mustChange whether it is to be changed at the next sign-in
     * @throws InvalidValueException where there is no such person, or the password is refused
     */
    public void setPassword(String name, CharSequence password, boolean mustChange, String by) {
        PasswordRules.check(name, password);
        String hash = hashing.hash(password);
        sql.inTransaction(connection -> {
            Account account = PersonRows.get(connection, name);
            StoreSql.update(
                    connection,
                    "update person set password_hash = ?, stamp = ?, must_change = ?, failed_attempts = 0 where id = ?",
                    hash,
                    Secrets.stamp(),
                    mustChange,
                    account.id());
            audit(connection, by, "set a password", account.name(), "", mustChange ? "new, must be changed" : "new");
            return true;
        });
    }

    /**
     * Looks whether a name and a password go together; what it finds is counted and noted. Takes as long for a name that
     * is not there.
     *
     * @return the person; empty where they do not, or the person is disabled
     */
    public Optional<Account> findBySignIn(String name, CharSequence password) {
        Optional<Account> account = find(name);
        String hash = account.map(found -> hashOf(found.id())).orElseGet(this::nobodysHash);
        boolean right = password.length() <= PasswordRules.MOST && hashing.matches(password, hash);
        if (account.isEmpty()) {
            return Optional.empty();
        }
        Account found = account.get();
        boolean in = right && !found.disabled();
        String better = in && hashing.isOld(hash) ? hashing.hash(password) : null;
        note(found, in, better);
        return in ? account : Optional.empty();
    }

    /** Notes that a person signed in by other means than the password here. */
    public void cameIn(Account account) {
        note(account, true, null);
    }

    private void note(Account account, boolean in, @Nullable String better) {
        Instant now = clock.instant();
        sql.inTransaction(connection -> {
            if (in) {
                StoreSql.update(
                        connection,
                        "update person set failed_attempts = 0, signed_in_at = ?, password_hash = coalesce(?, password_hash)"
                                + " where id = ?",
                        now,
                        better,
                        account.id());
            } else {
                StoreSql.update(
                        connection,
                        "update person set failed_attempts = failed_attempts + 1 where id = ?",
                        account.id());
            }
            return true;
        });
    }

    private String hashOf(long id) {
        return sql.inTransaction(connection -> StoreSql.list(
                        connection,
                        "select password_hash from person where id = ?",
                        row -> row.getString("password_hash"),
                        id)
                .get(0));
    }

    private @Nullable String nobodys;

    private synchronized String nobodysHash() {
        String hash = nobodys;
        if (hash == null) {
            hash = hashing.hash(Secrets.password());
            nobodys = hash;
        }
        return hash;
    }

    private void audit(Connection connection, String by, String what, String name, String before, String after)
            throws SQLException {
        AuditTrail.write(connection, clock.instant(), by, what, name, before, after);
    }
}
