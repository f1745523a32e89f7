package dev.injectorplanner.app.plans;

import dev.injectorplanner.app.store.StoreSettings;
import java.nio.file.Path;

class HsqldbPlansTest extends PlansContract {
    @Override
    StoreSettings store(Path data) {
        return StoreSettings.embedded(data);
    }
}
