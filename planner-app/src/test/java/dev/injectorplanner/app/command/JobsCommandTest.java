package dev.injectorplanner.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.store.FleetMerge;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.store.StoreWriter;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code jobs} and what {@code serve} refuses, as a person types them. */
class JobsCommandTest {
    private static final PrintStream OUT = System.out;
    private static final PrintStream ERR = System.err;

    @TempDir
    private Path folder;

    private record Ran(int exit, String out, String err) {}

    @BeforeEach
    void fill() {
        try (Store store = Store.open(StoreSettings.embedded(folder));
                StoreWriter writer = store.writer()) {
            FleetMerge.into(writer, OneOfEach.fleet());
            writer.commit();
        }
    }

    @AfterEach
    void restore() {
        System.setOut(OUT);
        System.setErr(ERR);
    }

    private Ran run(String... args) {
        return runAt(folder, args);
    }

    private static Ran runAt(Path data, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
        System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
        String[] all = new String[args.length + 2];
        System.arraycopy(args, 0, all, 0, args.length);
        all[args.length] = "--data";
        all[args.length + 1] = data.toString();
        int exit = PlannerCommand.run(all);
        return new Ran(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void a_job_run_by_hand_stands_in_the_list() {
        assertThat(run("jobs").out()).startsWith("No job has run yet. Fix: ");
        Ran ran = run("jobs", "run", "nightly-plan", "--depot", "North");
        assertThat(ran.exit()).as(ran.err()).isZero();
        assertThat(ran.out()).startsWith("nightly plan of depot North, due ").contains(": done: due items ");
        assertThat(run("jobs").out()).contains("nightly-plan (by hand)", "North", "done", "due items ");
        JsonNode list = JsonMapper.shared().readTree(run("jobs", "--json").out());
        assertThat(list.get("runs").size()).isEqualTo(1);
        assertThat(list.get("runs").get(0).get("outcome").asString()).isEqualTo("done");
    }

    @Test
    void a_backup_prints_one_json_object_and_nothing_else() {
        JsonNode run = JsonMapper.shared()
                .readTree(run("jobs", "run", "backup", "--json").out());
        assertThat(run.get("counts").asString()).startsWith("KiB ");
        assertThat(folder.resolveSibling(folder.getFileName() + "-backup")).isNotEmptyDirectory();
    }

    @Test
    void what_cannot_run_is_said_in_words() {
        assertThat(run("jobs", "run", "nightly-plan")).satisfies(ran -> {
            assertThat(ran.exit()).isEqualTo(1);
            assertThat(ran.err()).contains("is missing: the nightly plan runs for one depot. Fix: name the depot.");
        });
        assertThat(run("jobs", "run", "nightly-plan", "--depot", "South").err())
                .contains("is not known. Fix: choose one of North.");
        assertThat(run("jobs", "run", "mail-out").err()).contains("is not set up for this store. Fix: choose from");
        assertThat(run("jobs", "run", "washing").err())
                .contains("is not a job. Fix: choose from nightly-plan, sweep, ");
    }

    @Test
    void times_are_set_and_listed() {
        assertThat(run("jobs", "times").out()).contains("nightly-plan", "30 2 * * *", "Europe/Riga", "planner default");
        assertThat(run("jobs", "set", "nightly-plan", "--depot", "North", "--at", "15 1 * * *")
                        .out())
                .isEqualTo("Set: nightly plan of depot North." + System.lineSeparator());
        assertThat(run("jobs", "times").out()).contains("15 1 * * *", "site");
        assertThat(run("jobs", "set", "backup", "--off").exit()).isZero();
        assertThat(run("jobs", "times").out()).contains("by hand only");
        assertThat(run("jobs", "set", "backup", "--default").exit()).isZero();
        assertThat(run("jobs", "times").out()).doesNotContain("by hand only");
        assertThat(run("jobs", "set", "backup", "--at", "every night"))
                .satisfies(ran -> assertThat(ran.exit()).isEqualTo(1))
                .satisfies(ran -> assertThat(ran.err()).contains("does not have five fields. Fix: "));
        assertThat(run("jobs", "set", "backup").exit()).isEqualTo(2);
    }

    @Test
    void serve_says_what_is_no_address_or_port_and_shows_the_demo_on_this_machine_alone() {
        assertThat(run("serve", "--port", "70000"))
                .satisfies(ran -> assertThat(ran.exit()).isEqualTo(2))
                .satisfies(ran -> assertThat(ran.err()).contains("70000").contains("is not a port number. Fix: "));
        assertThat(run("serve", "--demo", "--address", "0.0.0.0").err())
                .contains("is for this machine only. Fix: leave out --address and --behind-tls.");
        assertThat(run("serve", "--demo"))
                .satisfies(ran -> assertThat(ran.exit()).isEqualTo(1))
                .satisfies(ran -> assertThat(ran.err())
                        .contains("is not the demo's data. Fix: create the demo first with the demo command"));
    }

    @Test
    void serve_says_that_the_store_cannot_be_opened() throws Exception {
        Path file = java.nio.file.Files.writeString(folder.resolve("notes.txt"), "notes");
        Ran ran = runAt(file, "serve", "--port", "0");
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.err())
                .contains("notes.txt is not a folder and cannot be created. Fix: choose another with --data.")
                .doesNotContain("Exception");
    }

    @Test
    void serve_says_that_a_port_is_taken_and_lets_go_of_the_store() throws Exception {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            Ran ran = run("serve", "--port", String.valueOf(taken.getLocalPort()));
            assertThat(ran.exit()).isEqualTo(1);
            assertThat(ran.err())
                    .contains("Port " + taken.getLocalPort() + " is in use. Fix: choose another with --port")
                    .doesNotContain("Exception");
        }
        assertThat(run("jobs", "times").exit()).isZero();
    }
}
