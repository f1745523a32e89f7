package dev.injectorplanner.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import dev.injectorplanner.app.people.Role;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The administrator lets a person and a program in, and reads who did what; a job is run by hand. */
@InBrowser
class AdministratorDayTest {
    @ParameterizedTest
    @EnumSource
    void lets_in_a_person_and_a_program(Size size, Site.Demo demo) {
        try (Person administrator = demo.person(Role.ADMINISTRATOR, size)) {
            Page page = administrator.page();
            String name = "store." + size.name().toLowerCase(java.util.Locale.ROOT);
            administrator.open("/settings/people");
            administrator.type("Sign-in name", name);
            page.locator("form.narrow").getByLabel("parts buyer").check();
            administrator.press("Add");
            assertThat(page.locator("[role=status]")).containsText("Password of " + name + ", shown only once");
            assertThat(Fitness.faults(page)).isEmpty();
            page.setViewportSize(size.width(), size.height());
            administrator.follow("Tokens");
            administrator.type("What it is for", "telematics " + size);
            page.getByLabel("readings:write").check();
            administrator.press("Create token");
            assertThat(page.locator("[role=status]")).containsText("The new token, shown only once");
            administrator.follow("Audit trail");
            assertThat(administrator.section("A")).containsText("telematics " + size);
            assertThat(administrator.section("A")).containsText(name);
        }
    }

    @ParameterizedTest
    @EnumSource
    void runs_a_job_by_hand(Size size, Site.Empty empty) {
        try (Person administrator = empty.person(Role.ADMINISTRATOR, size)) {
            administrator.open("/jobs");
            administrator.page().getByText("Run now: backup").click();
            assertThat(administrator.page().locator("h1")).hasText("Jobs");
            administrator.open("/settings/audit");
            assertThat(administrator.section("A")).containsText("run a job by hand");
        }
    }
}
