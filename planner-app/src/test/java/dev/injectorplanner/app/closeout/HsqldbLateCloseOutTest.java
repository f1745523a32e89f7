package dev.injectorplanner.app.closeout;

import dev.injectorplanner.app.store.StoreSettings;
import java.nio.file.Path;

class HsqldbLateCloseOutTest extends LateCloseOutContract {
    @Override
    StoreSettings store(Path data) {
        return StoreSettings.embedded(data);
    }
}
