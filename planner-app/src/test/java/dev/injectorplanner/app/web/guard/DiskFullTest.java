package dev.injectorplanner.app.web.guard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreException;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.testkit.Served;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.app.web.RunningApp;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The store on a small file system that fills up. Making one takes the rights of root; without them the test says so. */
@EnabledOnOs(value = OS.LINUX, disabledReason = "mounts a small file system in memory")
class DiskFullTest {
    private static final String SIZE = "96m";

    @TempDir
    private Path folder;

    private Path disk;

    @BeforeEach
    void mount() throws Exception {
        disk = Files.createDirectory(folder.resolve("disk"));
        assumeTrue(
                run("mount", "-t", "tmpfs", "-o", "size=" + SIZE, "tmpfs", disk.toString()),
                "no right to mount a small file system");
    }

    @AfterEach
    void unmount() throws Exception {
        run("umount", "-l", disk.toString()); // a file that is just being closed keeps a plain one from it
    }

    @Test
    @Timeout(120)
    void what_cannot_be_kept_is_refused_in_words_and_pages_still_open() throws Exception {
        StoreSettings settings = StoreSettings.embedded(disk.resolve("data"));
        Path filler = disk.resolve("filler");
        try (RunningApp app = Served.on(settings)) {
            Visitor administrator = Visitor.as(Role.ADMINISTRATOR, app.address());
            Visitor manager = Visitor.as(Role.MANAGER, app.address());
            Map<String, String> person = Map.of("name", "newcomer", "role", "BUYER", "depot", "");
            fill(filler);
            assertThat(manager.get("/trucks").statusCode()).isEqualTo(200);
            var refused = administrator.post("/settings/people", "/settings/people/add", person);
            assertThat(refused.statusCode()).isEqualTo(503);
            assertThat(refused.body()).contains("The disk is full: ", "has not been stored", "Fix: ", "Reference: ");
            Files.delete(filler);
            assertThat(administrator.get("/settings/people").body()).doesNotContain("newcomer");
            administrator.post("/settings/people", "/settings/people/add", person);
            assertThat(administrator.get("/settings/people").body()).contains("newcomer");
        }
    }

    @Test
    void a_new_store_that_finds_no_room_says_so_and_is_made_once_there_is_some() throws Exception {
        Path data = Files.createDirectory(disk.resolve("data"));
        Path filler = disk.resolve("filler");
        fill(filler);
        assertThatThrownBy(() -> Store.open(StoreSettings.embedded(data)))
                .isInstanceOf(StoreException.class)
                .hasMessageStartingWith("The disk is full: ")
                .hasMessageContaining("Fix: ");
        Files.delete(filler);
        Store.open(StoreSettings.embedded(data)).close();
    }

    private void fill(Path filler) throws IOException {
        long room = Files.getFileStore(disk).getUsableSpace();
        Files.write(filler, new byte[(int) (room - (16 << 10))]);
    }

    private static boolean run(String... command) throws Exception {
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        return process.waitFor(20, TimeUnit.SECONDS) && process.exitValue() == 0;
    }
}
