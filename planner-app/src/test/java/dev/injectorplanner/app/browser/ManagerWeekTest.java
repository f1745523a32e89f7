package dev.injectorplanner.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import dev.injectorplanner.app.people.Role;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The fleet manager's Monday and Friday in clicks, counted; no question needs a second page. */
@InBrowser
class ManagerWeekTest {
    private static final Pattern SHORT =
            Pattern.compile("KL-6110 \\(injector, inline six\\), Brennick: \\d+ short for \\d+ visits?");

    private int clicks;
    private final List<String> pages = new ArrayList<>();

    private void click(Person manager, Locator what) {
        what.click();
        manager.page().waitForLoadState();
        clicks++;
        pages.add(URI.create(manager.page().url()).getPath());
    }

    private static Locator question(Person manager, Pattern words) {
        return manager.page().locator("article.question", new Page.LocatorOptions().setHasText(words));
    }

    private static Locator button(Locator within, String words) {
        return within.getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName(words))
                .first();
    }

    /** A short part for several trucks: one click decides it, one takes it back, and the page stays. */
    @ParameterizedTest
    @EnumSource
    void monday_decides_where_the_question_stands(Size size, Site.Demo demo) {
        try (Person manager = demo.person(Role.MANAGER, size)) {
            manager.open("/");
            Locator shortPart = question(manager, SHORT);
            assertThat(shortPart).hasCount(1);
            assertThat(shortPart.locator("tbody tr").first()).containsText("Proposed:");
            click(manager, shortPart.locator("button.main"));
            assertThat(manager.page().locator(".undo")).containsText(SHORT);
            click(manager, button(manager.page().locator(".undo"), "Undo"));
            assertThat(question(manager, SHORT)).hasCount(1);

            assertThat(clicks).isEqualTo(2);
            assertThat(pages).containsOnly("/week");
        }
    }

    /** Next weeks told to a depot's shop, and one truck found from any page by keyboard. */
    @ParameterizedTest
    @EnumSource
    void friday_confirms_a_week_and_stays_with_all_depots(Size size, Site.Demo demo) {
        try (Person manager = demo.person(Role.MANAGER, size)) {
            manager.open("/plan?week=2026-W11");
            Locator depot = manager.page().locator("tr.group-row", new Page.LocatorOptions().setHasText("Brennick:"));
            if (button(depot, "Confirm this week").count() > 0) { // the other size may have done it
                click(manager, button(depot, "Confirm this week"));
            }
            assertThat(manager.section("B")).containsText("confirmed");
            assertThat(manager.page().locator(".choose a[aria-current]").first())
                    .hasText("All depots");
            assertThat(clicks).isLessThanOrEqualTo(1);

            manager.page().locator("h1").click();
            manager.page().keyboard().press("/");
            manager.page().keyboard().type("t036");
            manager.page().keyboard().press("Enter");
            assertThat(manager.page().locator("h1")).hasText("T036");
        }
    }

    /** Why this truck, what it costs, what another week would: one click from the plan, and no page is needed twice. */
    @ParameterizedTest
    @EnumSource
    void friday_asks_what_another_week_would_cost(Size size, Site.Demo demo) {
        try (Person manager = demo.person(Role.MANAGER, size)) {
            manager.open("/plan?depot=Brennick&week=2026-W10");
            pages.add("/plan");
            click(manager, manager.section("B").locator("a[href^='/trucks/']").first());
            assertThat(manager.section("D")).containsText("planned");
            assertThat(manager.section("D")).containsText("Road failure risk");
            assertThat(manager.section("F")).containsText("Bill");
            assertThat(manager.section("B")).containsText("Why these, why this week");
            assertThat(clicks).isEqualTo(1);
            assertThat(pages).hasSize(2).doesNotHaveDuplicates();
        }
    }

    /** A list of trucks answers who is worst, is kept as a view, and comes back by its address. */
    @ParameterizedTest
    @EnumSource
    void the_worklist_is_filtered_and_kept_as_a_view(Size size, Site.Demo demo) {
        try (Person manager = demo.person(Role.MANAGER, size)) {
            manager.open("/trucks?depot=Norrvik&sort=since");
            assertThat(manager.section("A").locator("tbody tr").first()).containsText("Norrvik");
            manager.type("Save what is shown above as", "far runners " + size);
            manager.press("Save this view");
            assertThat(manager.page().locator(".views")).containsText("My view: far runners " + size);
            assertThat(manager.page().url()).endsWith("/trucks?depot=Norrvik&sort=since");
            manager.page()
                    .locator(".view-line", new Page.LocatorOptions().setHasText("far runners " + size))
                    .locator("button")
                    .click();
            assertThat(manager.page().locator(".views")).not().containsText("far runners " + size);
        }
    }
}
