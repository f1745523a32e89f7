package dev.injectorplanner.app.store;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HsqldbStoreTest extends StoreContract {
    @TempDir
    private Path folder;

    @Override
    Store openEmpty() {
        return reopen();
    }

    @Override
    Store reopen() {
        return Store.open(StoreSettings.embedded(folder));
    }

    @Test
    void a_file_where_the_folder_should_be_is_said_in_words() throws Exception {
        Path file = java.nio.file.Files.writeString(folder.resolve("notes.txt"), "notes");
        assertThatThrownBy(() -> Store.open(StoreSettings.embedded(file)))
                .isInstanceOf(StoreException.class)
                .hasMessage(file + " is not a folder and cannot be created. Fix: choose another with --data.");
    }

    @Test
    void an_address_that_is_none_is_refused_in_words() {
        assertThatThrownBy(() -> Store.open(new StoreSettings("jdbc:hsqldb:hsql://localhost:1/none", "SA", "")))
                .isInstanceOf(StoreException.class)
                .hasMessageStartingWith("The store at jdbc:hsqldb:hsql://localhost:1/none cannot be opened: ")
                .hasMessageContaining("Fix: ");
    }
}
