package dev.injectorplanner.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.store.FleetMerge;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.store.StoreWriter;
import java.io.OutputStream;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackupCommandTest {
    @TempDir
    private Path folder;

    private Path zip;
    private Path restored;

    @BeforeEach
    void copied() {
        Path data = folder.resolve("data");
        try (Store store = Store.open(StoreSettings.embedded(data));
                StoreWriter writer = store.writer()) {
            FleetMerge.into(writer, OneOfEach.fleet());
            writer.commit();
        }
        zip = folder.resolve("copy.zip");
        restored = folder.resolve("restored");
        assertThat(PlannerCommand.run("backup", "--data", data.toString(), "--to", zip.toString()))
                .isZero();
    }

    private int restore() {
        return PlannerCommand.run("restore", zip.toString(), "--data", restored.toString());
    }

    @Test
    void a_copy_comes_back_as_the_same_fleet_and_over_no_other_store() {
        assertThat(folder).isDirectoryNotContaining("glob:**copy.zip.*");
        assertThat(restore()).isZero();
        try (Store store = Store.open(StoreSettings.embedded(restored))) {
            assertThat(store.snapshot()).isEqualTo(OneOfEach.fleet());
        }
        assertThat(restore()).as("a store is there now").isEqualTo(PlannerCommand.REFUSED);
    }

    @Test
    void a_copy_whose_bytes_were_changed_is_refused_and_leaves_nothing() throws Exception {
        try (FileSystem inside = FileSystems.newFileSystem(zip);
                OutputStream script =
                        Files.newOutputStream(inside.getPath("planner.script"), StandardOpenOption.APPEND)) {
            script.write('\n');
        }
        assertThat(restore()).isEqualTo(PlannerCommand.REFUSED);
        assertThat(restored).isEmptyDirectory();
    }
}
