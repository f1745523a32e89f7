package dev.injectorplanner.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import dev.injectorplanner.app.people.Role;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The months ahead: worked out in the background, then pictures and figures, for everybody to read. */
@InBrowser
class OutlookPageTest {
    @ParameterizedTest
    @EnumSource
    void pictures_and_figures_by_month(Size size, Site.Demo demo) {
        try (Person buyer = demo.person(Role.BUYER, size)) {
            buyer.open("/outlook?months=6");
            assertThat(buyer.title()).isEqualTo("Outlook");
            assertThat(buyer.sees()).contains("6 months, March 2026 to August 2026", "Road failures", "KV-8140");
            assertThat(buyer.page().locator("figure.panel").count()).isEqualTo(6);
            String album = System.getProperty("planner.album");
            if (album != null) {
                shot(buyer.page(), ColorScheme.LIGHT, album, size);
                shot(buyer.page(), ColorScheme.DARK, album, size);
            }
            assertThat(Fitness.faults(buyer.page())).isEmpty();
            buyer.follow("Norrvik");
            buyer.page().getByText("Being worked out").first().waitFor(Person.hidden());
            assertThat(buyer.section("b").innerText()).contains("Norrvik").doesNotContain("Aldermoor");
        }
    }

    private static void shot(Page page, ColorScheme scheme, String album, Size size) {
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
        page.screenshot(new Page.ScreenshotOptions()
                .setFullPage(true)
                .setPath(Path.of(
                        album,
                        "outlook-" + size.name().toLowerCase(Locale.ROOT) + "-"
                                + scheme.name().toLowerCase(Locale.ROOT) + ".png")));
    }
}
