package dev.injectorplanner.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class MigrationsTest {
    @Test
    void the_newest_migration_is_named_in_the_code() throws Exception {
        Path folder =
                Path.of(getClass().getResource("/db/migration/common").toURI()).getParent();
        try (Stream<Path> files = Files.walk(folder)) {
            int newest = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".sql"))
                    .mapToInt(name -> Integer.parseInt(name.substring(1, name.indexOf("__"))))
                    .max()
                    .orElseThrow();
            assertThat(StoreOpening.NEWEST).isEqualTo(newest);
        }
    }
}
