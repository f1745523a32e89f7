package dev.injectorplanner.app.web.frame;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.testkit.DemoSite;
import dev.injectorplanner.app.testkit.Visitor;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A page that only shows something must not make the copies of the fleet look out of date. */
class PagesChangeNothingTest {
    @Test
    void pages_that_are_read_count_as_no_change(@TempDir Path folder) throws Exception {
        try (DemoSite site = DemoSite.start(folder)) {
            Visitor manager = Visitor.as(Role.MANAGER, site.app().address());
            long before = site.application().store().changes();
            for (String page : new String[] {"/week", "/plan", "/bay", "/order"}) {
                assertThat(manager.get(page).statusCode()).as(page).isEqualTo(200);
            }
            assertThat(site.application().store().changes()).isEqualTo(before);
        }
    }
}
