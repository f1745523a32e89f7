package dev.injectorplanner.app.command;

import static org.assertj.core.api.Assertions.assertThat;

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
import java.util.Arrays;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Alerts, mail, calendars and the drop folder as a person types them. */
class ServiceCommandsTest {
    @TempDir
    private static Path folder;

    private record Ran(int exit, String out, String err) {
        JsonNode json() {
            return JsonMapper.shared().readTree(out);
        }
    }

    @BeforeAll
    static void fill() {
        try (Store store = Store.open(StoreSettings.embedded(folder.resolve("data")));
                StoreWriter writer = store.writer()) {
            FleetMerge.into(writer, OneOfEach.fleet());
            writer.commit();
        }
    }

    @Test
    void alerts_are_made_seen_muted_and_told_from_the_command_line() {
        JsonNode counts =
                run("alerts", "update", "--on", "2026-03-02", "--json").json();
        int raised = counts.get("raised").asInt();
        assertThat(raised).isPositive();
        JsonNode listed = run("alerts", "--depot", "North", "--json").json().get("alerts");
        assertThat(listed.size()).isEqualTo(raised);
        String first = listed.get(0).get("id").asString();
        assertThat(run("alerts", "acknowledge", first).exit).isZero();
        assertThat(run("alerts", "snooze", first, "--until", "2999-01-01", "--why", "on order").out)
                .contains("snoozed until 2999-01-01: on order");
        assertThat(run("alerts", "--state", "muted").out).contains("on order");
        assertThat(run("alerts", "history", first).out).contains("When (UTC)", "plan", "snoozed");
        assertThat(run("alerts", "mute", first, "--until", "2001-01-01", "--why", "x").err)
                .contains("Fix: name a later day.");
        assertThat(run("alerts", "--state", "odd").err).contains("Fix: choose from new, acknowledged, planned");
        assertThat(run("alerts", "--depot", "North", "--state", "cleared").out).contains("No alerts.");
    }

    @Test
    void who_gets_mail_is_kept() {
        assertThat(run("mail", "recipients", "add", "--depot", "North", "--for", "buyer", "buyer@example.org").out)
                .isEqualTo("buyer@example.org, buyer of North: added.\n");
        assertThat(run("mail", "recipients", "list").out).contains("North", "buyer", "buyer@example.org");
        assertThat(run("mail", "recipients", "add", "--for", "owner", "a@example.org").err)
                .contains("Fix: choose from");
        assertThat(run("mail", "recipients", "remove", "--depot", "North", "--for", "buyer", "buyer@example.org").out)
                .endsWith("removed.\n");
        assertThat(run("mail", "recipients", "list").out).isEqualTo("Nobody gets mail.\n");
        assertThat(run("mail", "outbox").out).isEqualTo("No mail.\n");
        Ran unset = run("mail", "test", "a@example.org");
        assertThat(unset.exit).isEqualTo(1);
        assertThat(unset.err).contains("PLANNER_MAIL_HOST").contains("Fix: name the mail server in the environment.");
    }

    @Test
    void a_calendar_address_is_shown_once_and_closed() {
        JsonNode made = run("calendar", "new", "North", "--json").json();
        String token = made.get("token").asString();
        String id = made.get("calendar").asString();
        assertThat(run("calendar", "list").out).contains("North", "open").doesNotContain(token);
        assertThat(run("calendar", "revoke", id).out).isEqualTo("Calendar " + id + " is closed.\n");
        assertThat(run("calendar", "list").out).contains("closed at");
        assertThat(run("calendar", "new", "West").err).contains("Fix: choose one of North");
    }

    @Test
    void a_drop_folder_is_worked_off_once() throws Exception {
        Path drop = Files.createDirectory(folder.resolve("drop"));
        assertThat(run("drop", drop.toString()).out).isEqualTo(drop + " has nothing to load.\n");
        Files.writeString(drop.resolve("stock.csv"), "depot,part,on_hand\nNorth,INJ-4R,5\n");
        assertThat(run("drop", drop.toString()).out).contains("stock.csv is not complete yet");
        JsonNode files =
                run("drop", drop.toString(), "--settled", "0", "--json").json().get("files");
        assertThat(files.get(0).get("outcome").asString()).isEqualTo("done");
        assertThat(drop.resolve("done/stock.csv")).exists();
    }

    private static Ran run(String... args) {
        PrintStream terminal = System.out;
        PrintStream errors = System.err;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
        System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
        try {
            String[] all = Arrays.copyOf(args, args.length + 2);
            all[args.length] = "--data";
            all[args.length + 1] = folder.resolve("data").toString();
            int exit = PlannerCommand.run(all);
            return new Ran(
                    exit,
                    out.toString(StandardCharsets.UTF_8).replace("\r\n", "\n"),
                    err.toString(StandardCharsets.UTF_8).replace("\r\n", "\n"));
        } finally {
            System.setOut(terminal);
            System.setErr(errors);
        }
    }
}
