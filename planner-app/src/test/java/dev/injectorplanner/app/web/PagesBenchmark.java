package dev.injectorplanner.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.sun.management.OperatingSystemMXBean;
import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.command.PlannerCommand;
import dev.injectorplanner.app.demo.DemoDay;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.wiring.JobsSettings;
import dev.injectorplanner.app.wiring.Settings;
import java.lang.management.ManagementFactory;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What each page of the office takes of the server's CPU on a large fleet, the first time and once compiled, with what it sends.
 * {@code -Dpages.trucks=1000}. Client and server are one process, so the figures hold the client's share too.
 */
@Tag("benchmark")
class PagesBenchmark {
    private static final String TRUCKS = System.getProperty("pages.trucks", "1000");
    private static final int TIMES = 10;
    private static final List<String> PAGES = List.of(
            "/week",
            "/plan",
            "/plan?week=2026-W14",
            "/trucks",
            "/trucks?sort=-visit&page=3",
            "/trucks?state=no-visit",
            "/trucks/T0001",
            "/trucks/T0002",
            "/find?q=T01",
            "/results",
            "/alerts",
            "/order",
            "/orders",
            "/stock",
            "/returns",
            "/coolant",
            "/life",
            "/bay",
            "/store");

    private static final String TALLEST = "Math.round(Math.max(0, ...Array.from(document.querySelectorAll('table'))"
            + ".map(table => Math.min(table.getBoundingClientRect().height,"
            + " (table.closest('.scroll') || { clientHeight: Infinity }).clientHeight))))";

    @TempDir
    private Path folder;

    @Test
    void cpu_of_each_page() throws Exception {
        Path demo = folder.resolve("demo");
        assertThat(PlannerCommand.run("demo", "--trucks", TRUCKS, "--dir", demo.toString()))
                .isZero();
        Application application = Application.open(StoreSettings.embedded(demo.resolve("data")));
        Visitor.addAll(application.store(), "D001"); // the first depot of a generated fleet
        try (RunningApp app = WebApp.start(
                CompletableFuture.completedFuture(application),
                JobsSettings.of(Settings.none()),
                Listening.here(0),
                new SiteClock(DemoDay.clock()))) {
            Visitor manager = Visitor.as(Role.MANAGER, app.address());
            readAhead();
            System.out.printf("%s trucks%n%-32s %12s %12s %10s%n", TRUCKS, "page", "first, ms", "later, ms", "KB");
            figures(manager);
            heights(app);
        }
    }

    /** Until the server has read its plans ahead, as it has by the time people come in. */
    private static void readAhead() throws InterruptedException {
        Thread reader = Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread.getName().equals("plan-reader"))
                .findFirst()
                .orElseThrow();
        int idle = 0;
        while (idle < 20) {
            Thread.sleep(100);
            idle = reader.getState() == Thread.State.TIMED_WAITING ? idle + 1 : 0;
        }
    }

    private static void figures(Visitor manager) throws Exception {
        for (String path : PAGES) {
            double first = cpu(manager, path);
            double sum = 0;
            for (int at = 0; at < TIMES; at++) {
                sum += cpu(manager, path);
            }
            HttpResponse<String> page = manager.get(path);
            assertThat(page.statusCode()).as(path).isEqualTo(200);
            System.out.printf(
                    "%-32s %12.0f %12.0f %10d%n",
                    path, first, sum / TIMES, page.body().length() / 1024);
        }
    }

    /** The tallest table of each page at a desk, px: none may be above 4,000. Needs the browser of the browser tests. */
    private static void heights(RunningApp app) {
        Path chromium = Path.of(System.getenv().getOrDefault("CHROMIUM", "/usr/bin/chromium"));
        try (Playwright playwright = Playwright.create(
                        new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
                Browser browser = playwright
                        .chromium()
                        .launch(new BrowserType.LaunchOptions()
                                .setExecutablePath(chromium)
                                .setArgs(List.of("--no-sandbox")))) {
            Page page = browser.newPage(new Browser.NewPageOptions().setViewportSize(1280, 900));
            page.setDefaultTimeout(120_000);
            page.navigate(app.address().resolve("/sign-in").toString());
            page.getByLabel("Name").first().fill(Visitor.name(Role.MANAGER));
            page.getByLabel("Password").first().fill(Visitor.PASSWORD);
            page.locator("main button[type=submit]").first().click();
            for (String path : PAGES) {
                page.navigate(app.address().resolve(path).toString());
                System.out.printf(
                        "%-32s tallest table %6s px, page %6s px%n",
                        path, page.evaluate(TALLEST), page.evaluate("document.documentElement.scrollHeight"));
            }
        }
    }

    /** CPU of the whole process while a page is asked for, ms. */
    private static double cpu(Visitor manager, String path) throws Exception {
        OperatingSystemMXBean system = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        long before = system.getProcessCpuTime();
        manager.get(path);
        return (system.getProcessCpuTime() - before) / 1e6;
    }
}
