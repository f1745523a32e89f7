package dev.injectorplanner.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Keyboard;
import com.microsoft.playwright.Page;
import dev.injectorplanner.app.testkit.Visitor;
import org.junit.jupiter.api.Test;

/** A manager without a mouse: Tab and Enter alone, and always seen where one is. */
@InBrowser
class KeyboardDayTest {
    private static final int MOST_TABS = 250;
    private static final String WHERE = """
            () => {
              const at = document.activeElement;
              const label = at.labels && at.labels.length ? at.labels[0].textContent : at.getAttribute('aria-label');
              return (label || at.textContent || '').replace(/\\s+/g, ' ').trim();
            }""";
    private static final String SHOWN = """
            () => {
              const at = document.activeElement;
              if (at === document.body) { return true; }  // no stop: the page has just come, or its end was passed
              const seen = at.closest('.segments') ? at.nextElementSibling : at;
              const style = getComputedStyle(seen);
              return style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2;
            }""";

    @Test
    void signs_in_tries_another_week_and_leaves(Site.Demo demo) {
        try (Person manager = demo.nobody(Size.DESK)) {
            Page page = manager.page();
            Keyboard keys = page.keyboard();
            manager.open("/sign-in");
            tabTo(page, "Name");
            keys.type("manager");
            tabTo(page, "Password");
            keys.type(Visitor.PASSWORD);
            keys.press("Enter");
            assertThat(page.locator("h1")).hasText("Week ahead");
            keys.press("Tab");
            assertThat(focused(page)).isEqualTo("To the content");
            keys.press("Enter");
            tabTo(page, "Week W11");
            tabTo(page, "T023");
            keys.press("Enter");
            assertThat(page.locator("h1")).hasText("T023");
            tabTo(page, "Pin, move or block");
            keys.press("Enter");
            assertThat(page.locator("#change")).containsText("Change the visit of T023");
            tabTo(page, "Preview");
            keys.press("Enter");
            assertThat(page.locator("#change caption").first()).isVisible();
            tabTo(page, "Leave the plan as it is");
            keys.press("Enter");
            assertThat(manager.section("B").locator("h2")).containsText("Visits of 2026-W10");
            manager.open("/week");
            tabTo(page, "Sign out");
            keys.press("Enter");
            assertThat(page.locator("main")).containsText("You are signed out.");
        }
    }

    private static String focused(Page page) {
        return String.valueOf(page.evaluate(WHERE));
    }

    private static void tabTo(Page page, String words) {
        page.waitForLoadState(); // what is still coming takes the focus away
        for (int i = 0; i < MOST_TABS; i++) {
            page.keyboard().press("Tab");
            String at = focused(page);
            assertThat(page.evaluate(SHOWN))
                    .as("focus is seen at \"" + at + "\"")
                    .isEqualTo(true);
            if (at.equals(words)) {
                return;
            }
        }
        throw new AssertionError("no way by Tab to \"" + words + "\"");
    }
}
