package dev.injectorplanner.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Somebody at a browser. What the pages ask of other hosts, and what the browser's console complains of, is kept and must
 * be nothing when the person leaves.
 */
final class Person implements AutoCloseable {
    private static final double MOST_WAIT = 120_000;

    private final URI address;
    private final BrowserContext context;
    private final Page page;
    private final List<String> complaints = new ArrayList<>();

    /** @param cookies of an earlier sign-in, or null */
    Person(Browser browser, URI address, Size size, @Nullable String cookies) {
        this.address = address;
        Browser.NewContextOptions options = new Browser.NewContextOptions()
                .setViewportSize(size.width(), size.height())
                .setLocale("en-GB")
                .setTimezoneId("UTC");
        context = browser.newContext(cookies == null ? options : options.setStorageState(cookies));
        context.setDefaultTimeout(Chromium.MOST_WAIT);
        page = context.newPage();
        watch();
    }

    private void watch() {
        String host = address.getAuthority();
        page.onRequest(request -> {
            URI asked = URI.create(request.url());
            if (!"data".equals(asked.getScheme())
                    && !"blob".equals(asked.getScheme())
                    && !host.equals(asked.getAuthority())) {
                complaints.add("asked another host: " + request.url());
            }
        });
        page.onConsoleMessage(said -> {
            if (said.type().equals("error") || said.type().equals("warning")) {
                complaints.add("console: " + said.text() + " at " + said.location());
            }
        });
        page.onPageError(error -> complaints.add("script: " + error));
    }

    Page page() {
        return page;
    }

    /** What went wrong without anybody seeing it. */
    List<String> complaints() {
        return List.copyOf(complaints);
    }

    /** The browser's console tells of every refused request; here it is what the test wants. */
    void forgive(String part) {
        complaints.removeIf(each -> each.contains(part));
    }

    String cookies() {
        return context.storageState();
    }

    void signIn(String name, String password) {
        open("/sign-in");
        type("Name", name);
        type("Password", password);
        press("Sign in");
    }

    /** Opens an address of the site, and stays until what is worked out in the background is there. */
    Response open(String path) {
        Response response = page.navigate(address.resolve(path).toString());
        page.getByText("Being worked out").first().waitFor(hidden());
        return response;
    }

    /** Until it is no longer there, as long as the slowest work in the background may take. */
    static Locator.WaitForOptions hidden() {
        return new Locator.WaitForOptions()
                .setState(WaitForSelectorState.HIDDEN)
                .setTimeout(MOST_WAIT);
    }

    /** Opens a place by its name in the menu, which a phone shows only when asked for. */
    void goTo(String place) {
        Locator menu = page.getByRole(
                AriaRole.LINK, new Page.GetByRoleOptions().setName("Menu").setExact(true));
        if (menu.isVisible()) {
            menu.click();
        }
        page.getByRole(AriaRole.NAVIGATION, new Page.GetByRoleOptions().setName("Main"))
                .getByRole(AriaRole.LINK, new Locator.GetByRoleOptions().setName(place))
                .first()
                .click();
    }

    /** Follows a link by its words. */
    void follow(String words) {
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName(words).setExact(true))
                .first()
                .click();
    }

    void press(String button) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(button).setExact(true))
                .first()
                .click();
    }

    void type(String label, String text) {
        page.getByLabel(label, new Page.GetByLabelOptions().setExact(true))
                .first()
                .fill(text);
    }

    /** The page's text as it is seen. */
    String sees() {
        return page.locator("main").innerText();
    }

    /** The largest heading. */
    String title() {
        return page.locator("h1").innerText();
    }

    /** A section by its letter. */
    Locator section(String letter) {
        return page.locator("section[aria-labelledby=sec-" + letter.toLowerCase(java.util.Locale.ROOT) + "]");
    }

    @Override
    public void close() {
        context.close();
        assertThat(complaints).as("what the browser complained of").isEmpty();
    }
}
