package dev.injectorplanner.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import dev.injectorplanner.app.intake.OfficeExports;
import dev.injectorplanner.app.people.Role;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A fleet's own exports become a plan by pages only; next month's files ask nothing. */
@InBrowser
class FirstHourOnPagesTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource
    void from_exports_to_a_plan(Size size, Site.Empty empty) throws IOException {
        List<Path> files = OfficeExports.write(folder.resolve("february"), LocalDate.of(2026, 2, 27));
        try (Person manager = empty.person(Role.MANAGER, size)) {
            Page page = manager.page();
            if (size == Size.DESK) { // both sizes work on one site: it is empty once
                manager.open("/");
                assertThat(page.locator("h1")).hasText("Set up the store");
                assertThat(manager.section("B")).containsText("needed first");
            }
            manager.open("/imports/start");
            assertThat(Fitness.faults(page)).isEmpty();
            page.setViewportSize(size.width(), size.height());
            page.getByLabel("Example V8").check();
            page.getByLabel("Example inline six").check();
            manager.type("Your depots, separated by commas", "Ashby, Corley");
            manager.type("Their time zone", "America/Chicago");
            manager.press("Store these");
            assertThat(manager.section("B")).containsText("2 rows");

            boolean first = true;
            for (Path file : files) {
                match(manager, file, first);
                first = false;
            }

            manager.open("/plan");
            if (size == Size.DESK) { // both sizes work on one site: the plan is made once
                page.getByText("Plan Ashby now").click();
            }
            manager.open("/plan?depot=Ashby");
            assertThat(page.locator("main")).containsText("41");
            assertThat(page.locator("main")).not().containsText("No plan is in force here");
            manager.open("/imports");
            page.getByLabel("Files, in any order")
                    .setInputFiles(OfficeExports.write(folder.resolve("march"), LocalDate.of(2026, 3, 1))
                            .toArray(Path[]::new));
            page.getByLabel("Load the good rows").check();
            manager.press("Go");
            assertThat(manager.section("B")).containsText("by the match made from");
            assertThat(manager.section("B")).not().containsText("Fix:");
            manager.open("/trucks");
            assertThat(manager.sees()).contains("4100", "4117");
        }
    }

    private static void match(Person manager, Path file, boolean look) {
        Page page = manager.page();
        manager.open("/imports");
        page.getByLabel("A file whose headings do not follow a template").setInputFiles(file);
        manager.press("Match it");
        assertThat(page.locator("h1")).hasText("Match a file");
        if (look) {
            assertThat(Fitness.faults(page)).isEmpty();
        }
        var thousands = page.getByLabel(java.util.regex.Pattern.compile("^\\d{1,3},\\d{3} is \\d{4,6}$"));
        if (thousands.count() > 0) {
            thousands.first().check();
            manager.press("Preview again");
        }
        if (page.locator("input[name$='.V8 6.6']").count() > 0) { // which of the families it is, nobody guesses
            page.locator("input[name$='.V8 6.6']").fill("Example V8");
            page.locator("input[name$='.I6 9.0']").fill("Example inline six");
            manager.press("Preview again");
        }
        assertThat(manager.section("D")).not().containsText("Still to answer");
        page.locator("button[value=apply]").click();
        assertThat(page.locator("h1")).hasText("File loaded");
        assertThat(manager.section("A")).containsText("0 refused");
    }
}
