package dev.injectorplanner.app.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.testkit.Database;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** People, tokens and the audit trail, alike on both databases. */
class PeopleTest {
    private static final String PASSWORD = "quiet lorry under rain";
    private static final PasswordHashing PLAIN = new PasswordHashing() {
        @Override
        public String hash(CharSequence password) {
            return "hash of " + password;
        }

        @Override
        public boolean matches(CharSequence password, String hash) {
            return hash.equals(hash(password));
        }

        @Override
        public boolean isOld(String hash) {
            return false;
        }
    };

    private static String name() {
        return "p" + UUID.randomUUID().toString().substring(0, 8);
    }

    @ParameterizedTest
    @EnumSource
    void a_person_is_added_changed_kept_out_and_each_change_is_noted(Database database) {
        Store store = database.empty();
        People people = new People(store.dataSource(), PLAIN);
        AuditTrail audit = new AuditTrail(store.dataSource());
        people.findFirstPassword();
        assertThat(people.findFirstPassword()).as("somebody is there").isEmpty();
        String name = name();
        people.add(new NewPerson(name, Set.of(Role.MECHANIC), Database.NORTH), PASSWORD, true, "ann");
        long stamp = people.find(name.toUpperCase(java.util.Locale.ROOT))
                .orElseThrow()
                .stamp();
        people.change(new NewPerson(name, Set.of(Role.MANAGER, Role.BUYER), null), "ann");
        people.setDisabled(name, true, "ann");
        Account account = people.find(name).orElseThrow();
        assertThat(account.roles()).containsExactlyInAnyOrder(Role.MANAGER, Role.BUYER);
        assertThat(account.depot()).isNull();
        assertThat(account.stamp()).isNotEqualTo(stamp);
        assertThat(people.findBySignIn(name, PASSWORD)).isEmpty();
        List<AuditEntry> noted = audit.list(Long.MAX_VALUE, 3);
        assertThat(noted).extracting(AuditEntry::subject).containsOnly(name);
        assertThat(noted)
                .extracting(AuditEntry::what)
                .containsExactly("disable a person", "change a person", "add a person");
        assertThat(noted.get(1).before()).isEqualTo("mechanic, North");
        assertThat(noted.get(1).after()).isEqualTo("fleet manager, parts buyer, all depots");
        assertThat(noted.toString()).doesNotContain(PASSWORD);
    }

    @ParameterizedTest
    @EnumSource
    void wrong_passwords_are_counted_until_the_right_one(Database database) {
        People people = new People(database.empty().dataSource(), PLAIN);
        String name = name();
        people.add(new NewPerson(name, Set.of(Role.BUYER), null), PASSWORD, false, "ann");
        assertThat(people.findBySignIn(name, "not that one at all")).isEmpty();
        assertThat(people.findBySignIn(name, "x".repeat(100_000))).isEmpty();
        assertThat(people.find(name).orElseThrow().failedAttempts()).isEqualTo(2);
        assertThat(people.findBySignIn(name, PASSWORD)).isPresent();
        assertThat(people.find(name).orElseThrow().failedAttempts()).isZero();
    }

    @ParameterizedTest
    @EnumSource
    void what_breaks_a_rule_is_refused_and_leaves_nothing(Database database) {
        People people = new People(database.empty().dataSource(), PLAIN);
        people.findFirstPassword();
        assertThatThrownBy(() -> people.setDisabled(People.FIRST, true, "ann"))
                .hasMessageContaining("is the last administrator. Fix: create another one first.");
        assertThat(people.find(People.FIRST).orElseThrow().disabled()).isFalse();
        NewPerson nowhere = new NewPerson(name(), Set.of(Role.MECHANIC), "Nowhere");
        assertThatThrownBy(() -> people.add(nowhere, PASSWORD, false, "ann"))
                .hasMessageContaining("is not known. Fix: choose one of North, South.");
        assertThat(people.find(nowhere.name())).isEmpty();
        assertThatThrownBy(() ->
                        people.add(new NewPerson("ADMINISTRATOR", Set.of(Role.BUYER), null), PASSWORD, false, "ann"))
                .hasMessageContaining("is already in use");
        assertThatThrownBy(() -> new NewPerson("a b", Set.of(Role.BUYER), null)).hasMessageContaining("Fix:");
        assertThatThrownBy(() -> new NewPerson("bob", Set.of(Role.MECHANIC), null))
                .hasMessageContaining("choose the mechanic's depot");
    }

    @ParameterizedTest
    @EnumSource
    void a_token_ends_and_its_secret_is_not_in_the_store(Database database) {
        Store store = database.empty();
        Instant made = Instant.parse("2026-03-02T08:00:00Z");
        ApiTokens then = new ApiTokens(store.dataSource(), () -> made);
        ApiTokens.NewToken token = then.make("telematics", EnumSet.of(Scope.READINGS_WRITE), Database.NORTH, 7, "ann");
        assertThat(then.findOpen(token.secret()).orElseThrow().scopes()).containsExactly(Scope.READINGS_WRITE);
        assertThat(then.findOpen(token.secret() + "x")).isEmpty();
        assertThat(new ApiTokens(store.dataSource(), () -> made.plus(Duration.ofDays(7))).findOpen(token.secret()))
                .isEmpty();
        assertThat(then.list().toString()).doesNotContain(token.secret());
        assertThat(token.toString()).doesNotContain(token.secret());
        then.revoke(token.token().id(), "ann");
        assertThat(then.findOpen(token.secret())).isEmpty();
        assertThatThrownBy(() -> then.revoke(token.token().id(), "ann")).hasMessageContaining("is not an active token");
    }

    /** Source: FIPS 180-4's example "abc", as published by NIST with the standard. */
    @Test
    void secrets_are_kept_as_sha_256() {
        assertThat(Secrets.hash("abc")).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assertThat(Secrets.token().getBytes(StandardCharsets.US_ASCII)).hasSize(43);
        assertThat(Secrets.token()).isNotEqualTo(Secrets.token());
    }

    @Test
    void passwords_are_judged_by_length_not_by_composition() {
        assertThat(refusal("ann", "elevenchars")).contains("is too short");
        assertThat(refusal("ann", "twelve chars")).isEmpty();
        assertThat(refusal("ann", "x y z w v".repeat(15))).contains("is too long");
        assertThat(refusal("ann", "for ANN and others")).contains("contains the name");
        assertThat(refusal("ann", "aaaaaaaaaaaa")).contains("uses too few different characters");
        assertThat(refusal("bob", Secrets.password())).isEmpty();
    }

    private static String refusal(String name, String password) {
        try {
            PasswordRules.check(name, password);
            return "";
        } catch (IllegalArgumentException e) {
            assertThat(e.getMessage()).doesNotContain(password);
            return Optional.ofNullable(e.getMessage()).orElse("");
        }
    }
}
