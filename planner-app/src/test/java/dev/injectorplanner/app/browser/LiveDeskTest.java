package dev.injectorplanner.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.jobs.DepotZones;
import dev.injectorplanner.app.jobs.JobKind;
import dev.injectorplanner.app.jobs.JobRegistry;
import dev.injectorplanner.app.jobs.JobRunner;
import dev.injectorplanner.app.jobs.JobRuns;
import dev.injectorplanner.app.jobs.RunKey;
import dev.injectorplanner.app.jobs.task.LiveChanges;
import dev.injectorplanner.app.jobs.task.LivePlan;
import dev.injectorplanner.app.jobs.task.PlanKeeper;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.testkit.DemoSite;
import dev.injectorplanner.app.testkit.MovedClock;
import dev.injectorplanner.app.testkit.Multipart;
import dev.injectorplanner.app.testkit.Visitor;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A page that stays open while somebody else loads a file: it says so, and its reader goes on typing. */
@InBrowser
class LiveDeskTest {
    private static final int A_LOOK = 21_000; // ms; the page looks every 20 s

    @TempDir
    private Path folder;

    @Test
    void a_load_elsewhere_replans_and_the_open_page_says_so_without_losing_what_was_typed(Chromium chromium)
            throws Exception {
        try (DemoSite site = DemoSite.start(folder);
                Person manager = new Person(chromium.browser(), site.app().address(), Size.DESK, null)) {
            Page page = manager.page();
            page.clock().install();
            manager.signIn(Visitor.name(Role.MANAGER), Visitor.PASSWORD);
            manager.open("/plan?depot=Norrvik&truck=T026");
            Locator strip = page.locator("#live");
            Locator why = page.locator("#why");
            why.fill("the driver is on");
            why.focus();
            replan(site.application(), 1, (key, depot, at, planned, by) -> {
                throw new AssertionError("nothing was changed yet");
            });

            load(site.app().address());
            page.clock().runFor(A_LOOK);
            assertThat(strip).isEmpty();
            replan(site.application(), 7, (key, depot, at, planned, by) -> {
                page.clock().runFor(A_LOOK);
                assertThat(strip).containsText(Pattern.compile("Replanning: .* after load of away\\.csv by buyer"));
                assertThat(why).hasValue("the driver is on");
                site.application().planning().keep(key, at, planned, depot, by);
            });
            page.clock().runFor(A_LOOK);
            assertThat(strip)
                    .containsText(Pattern.compile(
                            "New plan of \\d\\d:\\d\\d is ready, made after load of away\\.csv by buyer"));
            page.keyboard().type(" leave");
            assertThat(why).hasValue("the driver is on leave");

            strip.locator("a").click();
            page.waitForLoadState();
            assertThat(page.locator("#live")).hasText("");
            assertThat(page.locator("#change h3")).containsText("T026");
        }
    }

    private static void load(URI address) throws Exception {
        Visitor buyer = Visitor.as(Role.BUYER, address);
        Multipart form = new Multipart()
                .field("_csrf", buyer.csrf("/imports"))
                .field("mode", "good_rows")
                .file(
                        "files",
                        "away.csv",
                        "truck,from,to,reason\nT026,2026-05-04,2026-05-08,on hire\n".getBytes(StandardCharsets.UTF_8));
        assertThat(buyer.send(form.to(address.resolve("/imports"))).statusCode())
                .isLessThan(400);
    }

    /** The job as it would fire some minutes later. */
    private static void replan(Application application, int minutes, PlanKeeper keeper) {
        var pool = application.store().dataSource();
        MovedClock clock = new MovedClock(DemoSite.NOW.plus(Duration.ofMinutes(minutes)));
        LivePlan task = new LivePlan(
                application.planning(),
                application.plans(),
                keeper,
                new LiveChanges(pool),
                () -> Optional.of(Duration.ofMinutes(5)));
        try (JobRunner runner = new JobRunner(
                new JobRuns(pool, clock, "test", Duration.ofMinutes(10)),
                JobRegistry.builder().add(JobKind.LIVE_PLAN, task).build(),
                new DepotZones(pool),
                (connection, failed) -> {},
                clock)) {
            assertThat(runner.run(new RunKey(JobKind.LIVE_PLAN, "", clock.instant()), true, 0))
                    .isTrue();
        }
    }
}
