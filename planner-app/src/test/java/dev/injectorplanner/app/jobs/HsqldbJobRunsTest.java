package dev.injectorplanner.app.jobs;

import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;

class HsqldbJobRunsTest extends JobRunsContract {
    @TempDir
    private static Path folder;

    @Override
    Store open() {
        return Store.open(StoreSettings.embedded(folder));
    }
}
