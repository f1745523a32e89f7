package dev.injectorplanner.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.fleet.Part;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StoredPatternsTest {
    @TempDir
    private Path folder;

    @Test
    void a_pattern_of_an_earlier_version_that_is_refused_now_keeps_no_fleet_from_being_read() throws Exception {
        OldStore.unpack(OldStore.LAST_RELEASE, folder);
        OldStore.run(folder, List.of("update part set code_pattern = '(?=[A-Z])[0-9A-Z]{16}' where kind = 'INJECTOR'"));
        try (Store store = Store.open(StoreSettings.embedded(folder))) {
            List<Part> injectors = store.snapshot().parts().stream()
                    .filter(part -> part.codePattern() != null)
                    .toList();
            assertThat(injectors).isNotEmpty().allMatch(part -> part.acceptsCode("ANYTHING"));
        }
    }
}
