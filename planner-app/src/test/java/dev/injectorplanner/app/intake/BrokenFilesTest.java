package dev.injectorplanner.app.intake;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.demo.FleetFiles;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.imports.MalformedFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Broken files against a store with a fleet in it: each gets its sentence, and the store stays as it was. */
class BrokenFilesTest {
    @TempDir
    private Path folder;

    @Test
    void a_broken_file_leaves_the_store_as_it_was() throws IOException {
        Path good = Files.createDirectories(folder.resolve("good"));
        List<MalformedFiles.Case> cases = MalformedFiles.in(Files.createDirectories(folder.resolve("broken")));
        assertThat(cases).hasSizeGreaterThanOrEqualTo(40);
        try (Store store = Store.open(StoreSettings.embedded(folder.resolve("data")))) {
            assertThat(load(store, Mode.GOOD_ROWS, FleetFiles.write(OneOfEach.fleet(), good)))
                    .noneMatch(FileReport::anyRefused);
            for (MalformedFiles.Case broken : cases) {
                FileReport report =
                        load(store, Mode.GOOD_ROWS, List.of(broken.file())).get(0);
                assertThat(report.refusal()).as(broken.name()).isEqualTo(broken.sentence());
                assertThat(report.applied()).as(broken.name()).isFalse();
                assertThat(store.snapshot()).as(broken.name()).isEqualTo(OneOfEach.fleet());
            }
        }
    }

    private static List<FileReport> load(Store store, Mode mode, List<Path> files) {
        return new Intake(store).load(files, LoadSettings.of(mode), LoadListener.SILENT);
    }
}
