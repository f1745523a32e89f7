package dev.injectorplanner.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.testkit.Visitor;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A phone that loaded the day's sheets, lost the network, was switched off and on, and came back: one folder is its memory. */
@InBrowser
class OfflinePhoneTest {
    private static final String TRUCK = "T003";
    private static final String LEAKS = "T022";

    /** Longer than the fetching of a sheet that is under way. */
    private static final int LATER_MILLIS = 1_500;

    @Test
    void sheets_open_entries_wait_are_sent_once_and_a_refusal_stands_beside_its_field(
            Site.Demo demo, Chromium chromium, @TempDir Path memory) {
        try (PhoneLine line = PhoneLine.to(demo.address())) {
            loaded(line, chromium, memory);
            line.cut();
            entered_without_network(line, chromium, memory);
            back(line, chromium, memory);
        }
    }

    private static void loaded(PhoneLine line, Chromium chromium, Path memory) {
        try (BrowserContext phone = on(chromium, memory)) {
            Page page = signedIn(phone, line);
            assertThat(page.locator("h1")).hasText("Bay sheets");
            page.locator("a.row-link[href='/bay/T013']").waitFor();
            assertThat(page.locator("#kept")).containsText("are on this device");
            page.navigate(line.at("/bay/" + TRUCK));
            assertThat(page.locator("html[data-kept-sheets]")).hasCount(1);
            page.reload(); // what was kept is read once more before the phone is switched off
            assertThat(page.locator("html[data-kept-sheets]")).hasCount(1);
        }
    }

    private static void entered_without_network(PhoneLine line, Chromium chromium, Path memory) {
        try (BrowserContext phone = on(chromium, memory)) {
            Page page = phone.pages().get(0);
            page.navigate(line.at("/bay"));
            assertThat(page.locator("h1")).hasText("Bay sheets");
            page.navigate(line.at("/bay/" + TRUCK));
            assertThat(page.locator("#as-of")).containsText("No network: this page is as of");
            BaySheetAtHand sheet = new BaySheetAtHand(page);
            for (int cylinder : sheet.planned()) {
                sheet.fitted(cylinder, "S-OFF-" + cylinder, "OFFLINE00000000" + cylinder);
            }
            sheet.extras("typed without network");
            sheet.save(); // without hours: it is refused when it arrives
            assertThat(page.locator("#network")).containsText("No network.");
        }
    }

    private static void back(PhoneLine line, Chromium chromium, Path memory) {
        try (BrowserContext phone = on(chromium, memory)) {
            Page page = phone.pages().get(0);
            page.navigate(line.at("/bay"));
            assertThat(page.locator("#waiting")).containsText(TRUCK + ": no network; kept on this device");
            line.join();
            nobody_elses_entry_is_sent(phone, line);
            signedIn(phone, line);
            page = phone.pages().get(phone.pages().size() - 1);
            page.navigate(line.at("/bay"));
            assertThat(page.locator("#waiting")).containsText(TRUCK + ": not saved, needs correcting.");
            page.locator("#waiting a").click();
            assertThat(page.locator("[id='w-labourHours']")).containsText("hours");
            assertThat(page.locator("[name=extras]")).hasValue("typed without network");
            BaySheetAtHand sheet = new BaySheetAtHand(page);
            sheet.hours("2");
            sheet.save();
            assertThat(page.locator("main")).containsText("Saved.");
            page.navigate(line.at("/bay/" + TRUCK + "/close-outs"));
            assertThat(page.locator("main .fields dd").first()).hasText("1");
            page.navigate(line.at("/bay"));
            assertThat(page.locator("#waiting")).isHidden();
        }
    }

    /** A manager on the same phone: what the mechanic entered waits for the mechanic. */
    private static void nobody_elses_entry_is_sent(BrowserContext phone, PhoneLine line) {
        phone.clearCookies();
        Page page = signedIn(phone, line, Role.MANAGER);
        page.navigate(line.at("/bay"));
        assertThat(page.locator("#waiting")).containsText(TRUCK + ": an entry of mechanic is on this device");
        assertThat(page.locator("#waiting")).not().containsText("not saved");
        // a sheet fetched while nobody is signed in would get a session that takes the place of the next one's
        assertThat(page.locator("#kept")).containsText("on this device");
        phone.clearCookies();
    }

    /** A leak found without network: the way from the list to the diagnosis, and what is missing said beside its field. */
    @Test
    void a_diagnosis_waits_is_sent_once_and_a_refusal_stands_beside_its_field(
            Site.Demo demo, Chromium chromium, @TempDir Path memory) {
        String look = "/bay/" + LEAKS + "/look/leak";
        try (PhoneLine line = PhoneLine.to(demo.address())) {
            try (BrowserContext phone = on(chromium, memory)) {
                Page page = signedIn(phone, line, Role.MANAGER);
                page.navigate(line.at("/bay?depot=Aldermoor"));
                assertThat(page.locator("#kept")).containsText("are on this device");
            }
            line.cut();
            try (BrowserContext phone = on(chromium, memory)) {
                Page page = phone.pages().get(0);
                page.navigate(line.at("/bay/" + LEAKS));
                page.locator("a[href='" + look + "']").click();
                assertThat(page.locator("#as-of")).containsText("No network: this page is as of");
                check(page, "state.filter-housing", "CAUSE");
                page.locator("[id='found.filter-housing']").fill("drain plug weeps");
                page.locator("button[value=repair]").click(); // without the work done: it is refused when it arrives
                assertThat(page.locator("#network")).containsText("No network.");
            }
            line.join();
            try (BrowserContext phone = on(chromium, memory)) {
                Page page = signedIn(phone, line, Role.MANAGER);
                page.navigate(line.at("/bay?depot=Aldermoor"));
                assertThat(page.locator("#waiting")).containsText(LEAKS + ": not saved, needs correcting.");
                page.locator("#waiting a").click();
                assertThat(page.locator("[id='w-what']")).containsText("choose what was done");
                assertThat(page.locator("[id='found.filter-housing']")).hasValue("drain plug weeps");
                page.locator("label.pick", new Page.LocatorOptions().setHasText("fuel filter"))
                        .click();
                page.locator("button[value=repair]").click();
                assertThat(page.locator("main")).containsText("Recorded.");
                page.navigate(line.at("/safety/" + LEAKS));
                assertThat(page.locator("main")).containsText("No safety fault is open");
                page.navigate(line.at("/bay?depot=Aldermoor"));
                assertThat(page.locator("#kept")).containsText("are on this device");
                assertThat(page.locator("#waiting")).isHidden();
            }
        }
    }

    /** Signing out while sheets are still being fetched leaves none of them here, and the next one signs in at once. */
    @Test
    void who_signs_out_leaves_no_sheet_and_the_next_signs_in(Site.Demo demo, Chromium chromium, @TempDir Path memory) {
        try (PhoneLine line = PhoneLine.to(demo.address());
                BrowserContext phone = on(chromium, memory)) {
            Page page = signedIn(phone, line);
            page.locator("a.row-link[href='/bay/T013']").waitFor();
            page.waitForFunction("() => navigator.serviceWorker.ready.then(there => !!there.active)");
            page.getByRole(
                            com.microsoft.playwright.options.AriaRole.LINK,
                            new Page.GetByRoleOptions().setName("Menu").setExact(true))
                    .click();
            page.locator("form[action$='/sign-out'] button").first().click();
            page.waitForURL("**/sign-in**");
            Page next = phone.newPage();
            next.navigate(line.at("/sign-in"));
            next.waitForTimeout(LATER_MILLIS);
            assertThat(
                            String.valueOf(
                                    next.evaluate(
                                            "() => caches.keys().then(names => names.filter(name => name.startsWith('bay-sheets')).length)")))
                    .isEqualTo("0");
            assertThat(signedIn(phone, line).locator("h1")).hasText("Bay sheets");
        }
    }

    private static void check(Page page, String name, String value) {
        page.locator("[name='" + name + "'][value=" + value + "]")
                .check(new com.microsoft.playwright.Locator.CheckOptions().setForce(true));
    }

    private static BrowserContext on(Chromium chromium, Path memory) {
        return chromium.browser()
                .browserType()
                .launchPersistentContext(
                        memory,
                        new BrowserType.LaunchPersistentContextOptions()
                                .setExecutablePath(Chromium.place())
                                .setArgs(java.util.List.of("--no-sandbox", "--disable-background-networking"))
                                .setHeadless(true)
                                .setViewportSize(Size.PHONE.width(), Size.PHONE.height()));
    }

    private static Page signedIn(BrowserContext phone, PhoneLine line) {
        return signedIn(phone, line, Role.MECHANIC);
    }

    private static Page signedIn(BrowserContext phone, PhoneLine line, Role role) {
        Page page = phone.newPage();
        page.navigate(line.at("/sign-in"));
        page.getByLabel("Name", new Page.GetByLabelOptions().setExact(true)).fill(Visitor.name(role));
        page.getByLabel("Password", new Page.GetByLabelOptions().setExact(true)).fill(Visitor.PASSWORD);
        page.locator("main button, form button[type=submit]").first().click();
        page.waitForURL(url -> !url.contains("sign-in"));
        return page;
    }
}
