package dev.injectorplanner.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.Main;
import dev.injectorplanner.app.command.PlannerCommand;
import dev.injectorplanner.app.testkit.Visitor;
import java.io.BufferedReader;
import java.lang.management.ManagementFactory;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Many readers of a large fleet, by the load tool {@code wrk}, with health asked in the same run: as many as 4 and 20
 * connections get, and 25 connections that ask for some 50 pages a second. {@code -Dreaders.trucks=1000 -Dreaders.seconds=20}.
 */
@Tag("benchmark")
class ReadersBenchmark {
    private static final String TRUCKS = System.getProperty("readers.trucks", "1000");
    private static final String SECONDS = System.getProperty("readers.seconds", "20");

    @TempDir
    private Path folder;

    @Test
    void pages_and_health_under_many_readers() throws Exception {
        Path demo = folder.resolve("demo");
        assertThat(PlannerCommand.run("demo", "--trucks", TRUCKS, "--dir", demo.toString()))
                .isZero();
        Process server = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx1g",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Main.class.getName(),
                        "serve",
                        "--demo",
                        "--port",
                        "0",
                        "--data",
                        demo.resolve("data").toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader said = server.inputReader()) {
            URI address = URI.create(said.readLine().split(" ")[2]);
            said.readLine();
            String password = said.readLine().strip().split(" +")[1];
            Visitor manager = Visitor.as("manager", password, address);
            manager.get("/week");
            run(manager, address, 4, 0); // not yet compiled: what the first readers get
            run(manager, address, 4, 0);
            run(manager, address, 20, 0);
            run(manager, address, 25, 500);
        } finally {
            server.destroy();
            server.waitFor();
        }
    }

    private void run(Visitor manager, URI address, int connections, int pauseMillis) throws Exception {
        Process health = wrk(List.of("-c1"), "health.lua", address.resolve("/actuator/health"), Map.of());
        Process pages = wrk(
                List.of("-c" + connections, "--timeout", "30s"),
                "mixed.lua",
                address,
                Map.of("COOKIE", "planner_session=" + manager.session(), "PAUSE", String.valueOf(pauseMillis)));
        System.out.printf(
                "%d connections, pause %d ms: %s | %s | load average %.1f%n",
                connections,
                pauseMillis,
                last(pages),
                last(health),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    }

    private Process wrk(List<String> how, String script, URI address, Map<String, String> environment)
            throws Exception {
        Path lua = folder.resolve(script);
        if (!Files.exists(lua)) {
            Files.copy(getClass().getResourceAsStream("/load/" + script), lua);
        }
        List<String> command = new ArrayList<>(List.of("wrk", "-t1", "-d" + SECONDS + "s"));
        command.addAll(how);
        command.addAll(List.of("-s", lua.toString(), address.toString()));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().putAll(environment);
        return builder.start();
    }

    private static String last(Process process) throws Exception {
        String text = new String(process.getInputStream().readAllBytes()).strip();
        process.waitFor();
        return text.substring(text.lastIndexOf('\n') + 1);
    }
}
