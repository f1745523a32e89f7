package dev.injectorplanner.app.order;

import dev.injectorplanner.app.store.StoreSettings;
import java.nio.file.Path;

class HsqldbShopLoopTest extends ShopLoopContract {
    @Override
    StoreSettings store(Path data) {
        return StoreSettings.embedded(data);
    }
}
