package dev.injectorplanner.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.Role;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Planted faults: what the browser tests look for is found where it is. */
@InBrowser
class ChecksBiteTest {
    @Test
    void a_page_that_is_not_fit_is_found(Site.Demo demo) {
        try (Person nobody = demo.nobody(Size.DESK)) {
            nobody.page()
                    .setContent(
                            "<html><head><title>x</title></head><body><h1>One</h1><h3>Three</h3><div style='width:3000px'>wide</div>"
                                    + "<table style='height:5000px'><tr><td>tall</td></tr></table><p style='color:#bbb;background:#fff'>faint</p><button></button><p><a href='/x'>alone</a></p></body></html>");
            assertThat(Fitness.faults(nobody.page()))
                    .anyMatch(fault -> fault.startsWith("heading H3 follows level 1"))
                    .anyMatch(fault -> fault.startsWith("scrolls"))
                    .anyMatch(fault -> fault.startsWith("title"))
                    .anyMatch(fault -> fault.startsWith("a table of 5000 px"))
                    .anyMatch(fault -> fault.contains("at 320 px: color-contrast"))
                    .anyMatch(fault -> fault.startsWith("too small for a thumb: <a"))
                    .anyMatch(fault -> fault.contains("button-name"))
                    .anyMatch(fault -> fault.contains("html-has-lang"));
        }
    }

    @Test
    void a_request_to_another_host_is_found(Site.Demo demo) {
        try (Person nobody = demo.nobody(Size.DESK)) {
            nobody.page().setContent("<img src='http://elsewhere.invalid/x.png'>");
            assertThat(nobody.complaints()).anyMatch(each -> each.startsWith("asked another host: http://elsewhere"));
            nobody.forgive("elsewhere.invalid");
        }
    }

    @Test
    void what_the_content_policy_forbids_is_found(Site.Demo demo) {
        try (Person manager = demo.person(Role.MANAGER, Size.DESK)) {
            manager.open("/jobs");
            manager.page()
                    .evaluate(
                            "() => { const s = document.createElement('script'); s.textContent = 'window.planted = 1'; document.body.append(s); }");
            assertThat(manager.page().evaluate("() => window.planted === undefined"))
                    .isEqualTo(true);
            assertThat(manager.complaints()).anyMatch(each -> each.contains("Content Security Policy"));
            manager.forgive("Content Security Policy");
        }
    }

    @Test
    void a_machine_without_the_browser_is_told_how_to_mend_it() {
        assertThat(Chromium.findLack(Path.of("/nowhere/chromium")).orElseThrow())
                .startsWith("no browser at /nowhere/chromium. Fix: apt-get install chromium");
    }
}
