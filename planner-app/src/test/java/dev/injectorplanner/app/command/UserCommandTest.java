package dev.injectorplanner.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** People from the command line, with passwords piped in. */
class UserCommandTest {
    private static final String PASSWORD = "four quiet lorry words";

    @TempDir
    private Path folder;

    private record Ran(int exit, String text) {}

    private Ran run(String piped, String... args) {
        String[] all = java.util.Arrays.copyOf(args, args.length + 2);
        all[args.length] = "--data";
        all[args.length + 1] = folder.resolve("data").toString();
        InputStream in = System.in;
        PrintStream out = System.out;
        PrintStream err = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        try {
            System.setIn(new ByteArrayInputStream(piped.getBytes(StandardCharsets.UTF_8)));
            System.setOut(new PrintStream(said, true, StandardCharsets.UTF_8));
            System.setErr(System.out);
            int exit = PlannerCommand.run(all);
            return new Ran(exit, said.toString(StandardCharsets.UTF_8));
        } finally {
            System.setIn(in);
            System.setOut(out);
            System.setErr(err);
        }
    }

    @Test
    void people_are_added_listed_and_kept_out() {
        assertThat(run("", "user", "list").text()).contains("No users yet.");
        assertThat(run(PASSWORD + "\n", "user", "add", "ann", "--roles", "manager,administrator"))
                .satisfies(ran -> assertThat(ran.exit()).as(ran.text()).isZero())
                .satisfies(
                        ran -> assertThat(ran.text()).contains("ann is added").doesNotContain(PASSWORD));
        assertThat(run(PASSWORD + "\n", "user", "add", "bob", "--roles", "buyer")
                        .exit())
                .isZero();
        assertThat(run("", "user", "disable", "bob").text()).contains("bob is disabled.");
        assertThat(run("", "user", "list").text())
                .contains("fleet manager, administrator", "password to be changed", "disabled");
    }

    @Test
    void what_is_wrong_is_said_and_adds_nobody() {
        assertThat(run("short\n", "user", "add", "ann", "--roles", "manager"))
                .satisfies(ran -> assertThat(ran.exit()).isEqualTo(1))
                .satisfies(ran ->
                        assertThat(ran.text()).contains("is too short. Fix: ").doesNotContain("\"short\""));
        assertThat(run("", "user", "add", "ann", "--roles", "manager").text()).contains("is missing. Fix: type it");
        assertThat(run(PASSWORD, "user", "add", "ann", "--roles", "driver").text())
                .contains("choose from manager, buyer, storeman, mechanic, administrator");
        assertThat(run(PASSWORD, "user", "add", "ann", "--roles", "manager", "--password", "x")
                        .exit())
                .as("a password is no argument")
                .isEqualTo(2);
        assertThat(run("", "user", "list").text()).contains("No users yet.");
    }
}
