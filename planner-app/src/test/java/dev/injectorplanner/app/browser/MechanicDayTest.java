package dev.injectorplanner.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import dev.injectorplanner.app.people.Role;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The mechanic at the truck: today's sheets, one of them, and its close-out while the network comes and goes. */
@InBrowser
class MechanicDayTest {
    @Test
    void on_a_phone_whose_network_is_gone_for_a_while(Site.Demo demo) {
        try (Person mechanic = demo.person(Role.MECHANIC, Size.PHONE)) {
            Page page = mechanic.page();
            BaySheetAtHand sheet = sheet(mechanic, "T013");
            sheet.fitted(1, "S-NEW-1", "PHONE38000000001");
            sheet.notDone(5, "bolt seized");
            sheet.extras("clip of the return line renewed");
            sheet.save();
            assertThat(page.locator("#wrong")).containsText("hours");
            assertThat(sheet.field("c1.code")).hasValue("PHONE38000000001");
            mechanic.forgive("the server responded with a status of 422");
            assertThat(Fitness.faults(page)).isEmpty();
            sheet.hours("2.5");
            page.context().setOffline(true);
            sheet.save();
            assertThat(page.locator("#network")).containsText("No network. What you typed is kept on this device");
            mechanic.forgive("net::ERR_");
            page.context().setOffline(false);
            assertThat(page.locator("main")).containsText("Saved.");
            assertThat(page.locator("main")).containsText("clip of the return line renewed");
            assertThat(Fitness.faults(page)).isEmpty();
            mechanic.goTo("Bay sheets");
            assertThat(page.locator("tr:has-text('T013')")).containsText("done");
        }
        a_manager_corrects_it(demo);
    }

    private static void a_manager_corrects_it(Site.Demo demo) {
        try (Person manager = demo.person(Role.MANAGER, Size.DESK)) {
            manager.open("/bay/T013/close-outs");
            assertThat(Fitness.faults(manager.page())).isEmpty();
            manager.follow("Correct it");
            assertThat(Fitness.faults(manager.page())).isEmpty();
            manager.page().locator("[name=why]").fill("the hours were those of the day before");
            new BaySheetAtHand(manager.page()).hours("3.5");
            manager.press("Save the correction");
            assertThat(manager.page().locator("main")).containsText("Version 2");
            assertThat(manager.page().locator("main")).containsText("corrected later");
        }
    }

    @Test
    void at_a_desk_where_sending_fails_and_the_page_is_loaded_again(Site.Demo demo) {
        try (Person mechanic = demo.person(Role.MECHANIC, Size.DESK)) {
            Page page = mechanic.page();
            BaySheetAtHand sheet = sheet(mechanic, "T053");
            List<Integer> cylinders = sheet.planned();
            int first = cylinders.get(0);
            sheet.fitted(first, "S-NEW-2", "DESK320000000001");
            cylinders.stream().skip(1).forEach(cylinder -> sheet.notDone(cylinder, "bolt seized"));
            sheet.hours("3");
            page.route("**/bay/T053", route -> {
                if (route.request().method().equals("POST")) {
                    route.abort();
                } else {
                    route.resume();
                }
            });
            sheet.save();
            assertThat(page.locator("#network")).containsText("No network.");
            mechanic.forgive("net::ERR_");
            page.reload();
            assertThat(page.locator("#draft")).hasText("What you had typed is here again.");
            assertThat(sheet.field("c" + first + ".serial")).hasValue("S-NEW-2");
            assertThat(sheet.field("c" + first + ".coded")).isChecked();
            for (int other : cylinders.subList(1, cylinders.size())) {
                assertThat(sheet.field("c" + other + ".reason")).hasValue("bolt seized");
            }
            assertThat(sheet.field("labourHours")).hasValue("3");
            page.unroute("**/bay/T053"); // what waits is sent by itself
            assertThat(page.locator("main"))
                    .containsText(
                            "Saved.",
                            new com.microsoft.playwright.assertions.LocatorAssertions.ContainsTextOptions()
                                    .setTimeout(40_000));
            mechanic.forgive("net::ERR_"); // what waited was tried before the way was free
        }
    }

    /** The draft of a page that asked for miles, on one that asks for km. */
    @Test
    void an_odometer_kept_in_another_unit_is_read_again(Site.Demo demo) {
        try (Person manager = demo.person(Role.MANAGER, Size.PHONE)) {
            Page page = manager.page();
            manager.open("/bay/T005?more=true");
            new BaySheetAtHand(page).hours("3");
            page.locator("[name=odometer]").fill("256191");
            page.reload();
            assertThat(page.locator("#draft")).hasText("What you had typed is here again.");
            assertThat(page.locator("[name=odometer]")).hasValue("256191");
            page.evaluate("""
                    () => {
                      const name = Object.keys(localStorage).find(each => each.startsWith('close-out '));
                      localStorage[name] = localStorage[name].replaceAll('"KM"', '"MILES"');
                    }""");
            page.reload();
            assertThat(page.locator("#draft")).containsText("but not the odometer");
            assertThat(page.locator("[name=odometer]")).hasValue("");
            assertThat(page.locator("[name=labourHours]")).hasValue("3");
            assertThat(page.locator("[name=distance]")).hasValue("KM");
        }
    }

    private static BaySheetAtHand sheet(Person mechanic, String truck) {
        mechanic.open("/");
        assertThat(mechanic.page().locator("h1")).hasText("Bay sheets");
        mechanic.follow(truck);
        assertThat(mechanic.page().locator("main")).containsText("Before you start");
        return new BaySheetAtHand(mechanic.page());
    }
}
