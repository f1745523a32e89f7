package dev.injectorplanner.app.closeout;

import dev.injectorplanner.app.store.StoreSettings;
import java.nio.file.Path;

class HsqldbCloseOutTest extends CloseOutContract {
    @Override
    StoreSettings store(Path data) {
        return StoreSettings.embedded(data);
    }
}
