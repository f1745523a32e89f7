package dev.injectorplanner.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.Main;
import dev.injectorplanner.app.testkit.Visitor;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The program itself, started and told to stop. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "has no SIGTERM: a stop there is a kill")
class ServeProcessTest {
    @TempDir
    private Path folder;

    @Test
    @Timeout(120)
    void a_stop_closes_pages_jobs_and_store() throws Exception {
        Process process = serve(ProcessBuilder.Redirect.INHERIT);
        try {
            BufferedReader said = process.inputReader();
            String ready = said.readLine();
            assertThat(ready).startsWith("Ready on http://127.0.0.1:");
            URI address = URI.create(ready.split(" ")[2]);
            assertThat(HttpClient.newHttpClient()
                            .send(
                                    HttpRequest.newBuilder(address.resolve("/actuator/health"))
                                            .build(),
                                    BodyHandlers.ofString())
                            .body())
                    .isEqualTo("{\"status\":\"UP\"}");
            assertThat(said.readLine()).startsWith("First start. Sign in as administrator");
            a_first_sign_in_leads_to_a_password_of_ones_own(
                    address, said.readLine().strip());
            assertThat(modified()).isEqualTo("modified=yes");
            process.destroy(); // SIGTERM
            assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
            assertThat(process.exitValue()).isEqualTo(143); // 128 + SIGTERM
            assertThat(modified()).isEqualTo("modified=no");
        } finally {
            process.toHandle().destroyForcibly();
        }
    }

    /** Between "Ready" and the sign-ins the store is closed under whoever prints them. */
    @Test
    @Timeout(120)
    void a_stop_before_the_sign_ins_are_printed_leaves_no_trace_in_the_log() throws Exception {
        Path log = folder.resolve("log");
        Process process = serve(ProcessBuilder.Redirect.to(log.toFile()));
        try {
            assertThat(process.inputReader().readLine()).startsWith("Ready on");
            process.destroy();
            assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
            assertThat(process.exitValue()).isEqualTo(143);
            assertThat(Files.readString(log)).doesNotContain("Exception", "\tat ", " ERROR ");
            assertThat(modified()).isEqualTo("modified=no");
        } finally {
            process.toHandle().destroyForcibly();
        }
    }

    private Process serve(ProcessBuilder.Redirect log) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Main.class.getName(),
                        "serve",
                        "--port",
                        "0",
                        "--data",
                        folder.resolve("data").toString())
                .redirectError(log)
                .start();
    }

    private static void a_first_sign_in_leads_to_a_password_of_ones_own(URI address, String given) throws Exception {
        Visitor administrator = Visitor.as("administrator", given, address);
        assertThat(administrator.get("/jobs").headers().firstValue("Location")).hasValue("/password");
        var changed = administrator.post(
                "/password",
                "/password",
                Map.of("now", given, "next", "a password of my own", "again", "a password of my own"));
        assertThat(changed.headers().firstValue("Location").orElseThrow()).endsWith("/sign-in?changed");
        assertThat(Visitor.as("administrator", "a password of my own", address)
                        .get("/jobs")
                        .statusCode())
                .isEqualTo(200);
    }

    /** How HSQLDB marks a store that is open, or was not closed. */
    private String modified() throws Exception {
        return Files.readAllLines(folder.resolve("data/planner.properties")).stream()
                .filter(line -> line.startsWith("modified="))
                .findFirst()
                .orElseThrow();
    }
}
