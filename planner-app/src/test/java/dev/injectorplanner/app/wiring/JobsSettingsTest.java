package dev.injectorplanner.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.check.InvalidValueException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobsSettingsTest {
    @TempDir
    private Path folder;

    private JobsSettings read(String... lines) throws Exception {
        Path file = Files.write(folder.resolve("site.settings"), java.util.List.of(lines));
        return JobsSettings.of(Settings.read(file, JobsSettings.names()));
    }

    @Test
    void what_is_set_holds_and_the_rest_is_default() throws Exception {
        JobsSettings settings = read("backup.keep = 3", "backup.folder=/mnt/copies", "jobs.lease-seconds=30");
        assertThat(settings.backupKeep()).isEqualTo(3);
        assertThat(settings.backupFolder()).hasValue(Path.of("/mnt/copies"));
        assertThat(settings.lease()).isEqualTo(Duration.ofSeconds(30));
        assertThat(settings.quartz().threads()).isEqualTo(2);
        assertThat(JobsSettings.of(Settings.read(null, JobsSettings.names())).backupKeep())
                .isEqualTo(7);
    }

    @Test
    void a_name_that_is_not_known_is_refused_with_the_nearest_one() {
        assertThatThrownBy(() -> read("backup.kep=3"))
                .isInstanceOf(InvalidValueException.class)
                .hasMessage("setting \"backup.kep\": is not known. Fix: write backup.keep, or remove it.");
    }

    @Test
    void values_that_make_no_sense_are_refused() {
        assertThatThrownBy(() -> read("backup.keep=some")).hasMessageContaining("is not a whole number");
        assertThatThrownBy(() -> read("backup.keep=0")).hasMessageContaining("backup.keep");
        assertThatThrownBy(() -> read("jobs.threads=1000")).hasMessageContaining("jobs.threads");
        assertThatThrownBy(() -> read("jobs.lease-seconds=1")).hasMessageContaining("jobs.lease-seconds");
        assertThatThrownBy(() -> Settings.read(folder.resolve("none"), JobsSettings.names()))
                .hasMessageContaining("cannot be read. Fix: ");
    }
}
