package dev.injectorplanner.app.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The browser of the tests: the machine's own Chromium, nothing is downloaded. */
final class Chromium implements AutoCloseable {
    private static final String USUAL = "/usr/bin/chromium";

    /** As long as a step may take on a busy machine. */
    static final double MOST_WAIT = 20_000;

    private final Playwright playwright;
    private final Browser browser;

    private Chromium(Playwright playwright, Browser browser) {
        this.playwright = playwright;
        this.browser = browser;
    }

    /** Where it should be: {@code -Dplanner.chromium}, else {@code CHROMIUM} of the environment, else Debian's place. */
    static Path place() {
        String said = System.getProperty("planner.chromium", System.getenv().getOrDefault("CHROMIUM", USUAL));
        return Path.of(said);
    }

    /** Why browser tests cannot run here; empty where they can. */
    static Optional<String> findLack(Path place) {
        return Files.isExecutable(place)
                ? Optional.empty()
                : Optional.of("no browser at " + place
                        + ". Fix: apt-get install chromium, or name another with -Dplanner.chromium=PATH");
    }

    static Chromium start() {
        Playwright playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        PlaywrightAssertions.setDefaultAssertionTimeout(MOST_WAIT);
        return new Chromium(
                playwright,
                playwright
                        .chromium()
                        .launch(new BrowserType.LaunchOptions()
                                .setExecutablePath(place())
                                .setArgs(List.of(
                                        "--no-sandbox",
                                        "--disable-background-networking",
                                        "--disable-component-update",
                                        "--disable-sync",
                                        "--no-first-run"))));
    }

    Browser browser() {
        return browser;
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
