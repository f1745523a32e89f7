package dev.injectorplanner.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.NewPerson;
import dev.injectorplanner.app.people.People;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.security.Pbkdf2Hashing;
import dev.injectorplanner.app.store.FleetMerge;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.store.StoreWriter;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** Where {@code --data} may stand: before a subcommand or after it, and it is the same store. */
class StorePlaceTest {
    private static final PrintStream OUT = System.out;
    private static final PrintStream ERR = System.err;

    @TempDir
    private static Path folder;

    private static Path filled;
    private static Path empty;

    private record Ran(int exit, String out, String err) {}

    @BeforeAll
    static void fill() {
        filled = folder.resolve("filled");
        empty = folder.resolve("empty");
        try (Store store = Store.open(StoreSettings.embedded(filled))) {
            try (StoreWriter writer = store.writer()) {
                FleetMerge.into(writer, OneOfEach.fleet());
                writer.commit();
            }
            new People(store.dataSource(), new Pbkdf2Hashing())
                    .add(new NewPerson("ann", Set.of(Role.MANAGER), null), "seven green kettles", true, "test");
        }
        String data = filled.toString();
        assertThat(run("hold", "--data", data, "pin", "T-1", "2026-W12").err()).isEmpty();
        assertThat(run("settings", "--data", data, "set", "site-name", "Quarry Road")
                        .err())
                .isEmpty();
        assertThat(run("calendar", "--data", data, "new", "North").err()).isEmpty();
        assertThat(run("mail", "--data", data, "recipients", "add", "--for", "buyer", "buyer@example.org")
                        .err())
                .isEmpty();
        assertThat(run("jobs", "--data", data, "set", "backup", "--off").err()).isEmpty();
    }

    @AfterEach
    void restore() {
        System.setOut(OUT);
        System.setErr(ERR);
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "hold, list, T-1",
        "settings, list, Quarry Road",
        "calendar, list, North",
        "user, list, ann",
        "mail, recipients list, buyer@example.org",
        "mail recipients, list, buyer@example.org",
        "jobs, times, by hand only"
    })
    void before_and_after_reach_the_same_store(String group, String subcommand, String mark) {
        Ran before = run(line(group, "--data", filled.toString(), subcommand));
        assertThat(before.exit()).as(before.err()).isZero();
        assertThat(before.out()).contains(mark);
        Ran after = run(line(group + " " + subcommand, "--data", filled.toString(), ""));
        assertThat(after.out().replaceAll("\\d+Z", "")).isEqualTo(before.out().replaceAll("\\d+Z", ""));
        assertThat(run(line(group, "--data", empty.toString(), subcommand)).out())
                .as("another store")
                .doesNotContain(mark);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"alerts seen 77", "alerts history 77"})
    void an_alert_is_looked_for_in_the_store_named_before(String line) {
        Path data = folder.resolve("made by " + line);
        String[] words = line.split(" ");
        assertThat(run(words[0], "--data", data.toString(), words[1], words[2]).exit())
                .isEqualTo(1);
        assertThat(data).isNotEmptyDirectory();
    }

    @Test
    void two_stores_are_refused_and_neither_is_made() {
        Path one = folder.resolve("one");
        Path two = folder.resolve("two");
        Ran ran = run("jobs", "--data", one.toString(), "times", "--data", two.toString());
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err())
                .contains("Two stores are named, --data " + one + " and --data " + two + ". Fix: name one.");
        assertThat(List.of(one, two)).noneMatch(Files::exists);
        Ran database = run("hold", "--data", one.toString(), "list", "--database", "jdbc:postgresql://h/p?password=x");
        assertThat(database.exit()).isEqualTo(2);
        assertThat(database.err())
                .contains("--data " + one + " and --database jdbc:postgresql://h/p. Fix: ")
                .doesNotContain("password=x");
    }

    @Test
    void the_same_store_named_twice_is_one() {
        Path same = filled.resolve("..").resolve("filled");
        Ran ran = run("hold", "--data", filled.toString(), "list", "--data", same.toString());
        assertThat(ran.exit()).as(ran.err()).isZero();
        assertThat(ran.out()).contains("T-1");
    }

    @Test
    void every_group_takes_the_place_where_one_of_its_subcommands_does_and_the_other_way_round() {
        List<String> groups = new ArrayList<>();
        new CommandLine(PlannerCommand.class).getSubcommands().values().forEach(command -> check(command, groups));
        assertThat(groups).contains("hold", "settings", "alerts", "mail", "recipients", "calendar", "jobs", "user");
    }

    private static void check(CommandLine command, List<String> groups) {
        var subcommands = command.getSubcommands().values();
        subcommands.forEach(each -> check(each, groups));
        if (subcommands.isEmpty()
                || !(takesPlace(command) || subcommands.stream().anyMatch(each -> takesPlace(each)))) {
            return;
        }
        groups.add(command.getCommandName());
        assertThat(takesPlace(command))
                .as(command.getCommandSpec().qualifiedName())
                .isTrue();
        assertThat(subcommands)
                .allSatisfy(each -> assertThat(takesPlace(each))
                        .as(each.getCommandSpec().qualifiedName())
                        .isTrue());
    }

    private static boolean takesPlace(CommandLine command) {
        return command.getCommandSpec().mixins().values().stream()
                .anyMatch(mixin -> mixin.userObject() instanceof StoreOptions);
    }

    private static String[] line(String first, String option, String value, String last) {
        List<String> words = new ArrayList<>(Arrays.asList(first.split(" ")));
        words.add(option);
        words.add(value);
        if (!last.isEmpty()) {
            words.addAll(Arrays.asList(last.split(" ")));
        }
        return words.toArray(String[]::new);
    }

    private static Ran run(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
        System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
        int exit = PlannerCommand.run(args);
        return new Ran(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
