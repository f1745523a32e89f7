package dev.injectorplanner.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import dev.injectorplanner.app.people.Role;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The fleet manager's morning: what is to decide, why a visit, another week tried and kept, an alert silenced. */
@InBrowser
class ManagerDayTest {
    @ParameterizedTest
    @CsvSource({"DESK, T036, 2026-W12", "PHONE, T059, 2026-W11"})
    void a_morning(Size size, String truck, String week, Site.Demo demo) {
        try (Person manager = demo.person(Role.MANAGER, size)) {
            manager.open("/");
            assertThat(manager.page().locator("h1")).hasText("Week ahead");
            assertThat(manager.section("A")).containsText("Proposed:");
            manager.follow(truck);
            the_truck_says_why(manager, truck);
            manager.follow("Pin, move or block");
            another_week_is_worked_out_and_left(manager, truck, week);
            another_week_is_worked_out_and_kept(manager, truck, week);
            an_alert_is_silenced(manager, truck);
        }
    }

    private static void the_truck_says_why(Person manager, String truck) {
        assertThat(manager.page().locator("h1")).hasText(truck);
        assertThat(manager.section("B")).containsText("Why these, why this week");
        assertThat(manager.section("A").locator("svg[role=img] title"))
                .hasText("Engine of " + truck + " from above, front at the top");
    }

    private static void another_week_is_worked_out_and_left(Person manager, String truck, String week) {
        work_out(manager, week);
        manager.follow("Leave the plan as it is");
        assertThat(manager.section("B").locator("h2")).containsText("Visits of 2026-W10");
        assertThat(manager.section("B")).containsText(truck);
    }

    private static void another_week_is_worked_out_and_kept(Person manager, String truck, String week) {
        manager.section("B")
                .locator("tr", new Locator.LocatorOptions().setHasText(truck))
                .first()
                .getByText("Change")
                .click();
        work_out(manager, week);
        manager.page().locator("#change .button.main").click();
        assertThat(manager.page().locator("main p[role=status]")).containsText(truck);
        assertThat(manager.section("B").locator("h2")).containsText("Visits of " + week);
        assertThat(manager.section("B")
                        .locator("tr", new Locator.LocatorOptions().setHasText(truck))
                        .first())
                .containsText("pinned");
    }

    private static void work_out(Person manager, String week) {
        Locator change = manager.page().locator("#change");
        change.getByLabel("Move, and pin there").check();
        change.getByLabel("Move to week").selectOption(week);
        change.getByLabel("Reason, for the record").fill("the driver is on leave");
        manager.press("Preview");
        assertThat(change.locator("caption").first()).containsText(week);
        assertThat(change.locator("tbody")).not().hasCount(0);
        assertThat(change.locator(".note").last()).not().isEmpty();
    }

    private static void an_alert_is_silenced(Person manager, String truck) {
        manager.goTo("Alerts");
        int raised = tally(manager);
        assertThat(raised).isPositive();
        Locator first = manager.section("A").locator("tbody tr").first();
        first.locator("summary").click();
        first.getByLabel("Snooze until").fill("2026-04-01");
        first.getByLabel("Why it may wait").fill("known at the depot, seen beside " + truck);
        first.locator("form.stack-form button").first().click();
        assertThat(manager.section("D").locator("h2")).containsText("Snoozed");
        assertThat(manager.section("D")).containsText("seen beside " + truck);
        assertThat(tally(manager)).isEqualTo(raised - 1);
    }

    /** How many alerts the menu says are open. */
    private static int tally(Person manager) {
        Locator alerts = manager.page().locator("nav.nav a[href='/alerts']");
        assertThat(alerts).hasText(Pattern.compile("Alerts.*"));
        String words = alerts.textContent().replaceAll("\\D", "");
        return words.isEmpty() ? 0 : Integer.parseInt(words);
    }
}
