package dev.injectorplanner.app.browser;

import com.microsoft.playwright.Page;
import dev.injectorplanner.app.people.Role;
import java.util.ArrayList;
import java.util.List;

/** Trucks of the demo by the kind of their visit, as its pages list them. */
final class DemoVisits {
    private DemoVisits() {}

    /** A truck whose visit tests injectors and does nothing else. */
    static String testOnly(Site.Demo demo) {
        List<String> asked = new ArrayList<>();
        try (Person manager = demo.person(Role.MANAGER, Size.DESK)) {
            for (int truck = 1; truck <= 60; truck++) {
                String name = "T%03d".formatted(truck);
                Page page = manager.page();
                manager.open("/bay/" + name);
                asked.add(name);
                if (page.locator("#sec-t").count() > 0 && page.locator("#sec-c").count() == 0) {
                    return name;
                }
            }
        }
        throw new IllegalStateException("no visit with a test alone among " + asked);
    }
}
