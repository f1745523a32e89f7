package dev.injectorplanner.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.check.InvalidValueException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FirstPasswordFileTest {
    @TempDir
    private Path folder;

    @Test
    void onlyItsOwnerMayReadIt() throws Exception {
        Path file = Files.writeString(folder.resolve("first-password"), "of an earlier store");
        FirstPasswordFile.requireFolder(file);
        FirstPasswordFile.write(file, "abc-def");
        assertThat(Files.readString(file)).isEqualTo("abc-def\n");
        if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                    .isEqualTo("rw-------");
        }
    }

    @Test
    void aFolderThatIsNotThereIsRefusedBeforeThereIsAPassword() {
        Path nowhere = folder.resolve("no/first-password");
        assertThatThrownBy(() -> FirstPasswordFile.requireFolder(nowhere))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("cannot be written");
        assertThatThrownBy(() -> FirstPasswordFile.write(nowhere, "abc"))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("name a file in a folder");
    }
}
