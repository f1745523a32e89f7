package dev.injectorplanner.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import dev.injectorplanner.app.people.Role;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The whole loop on a demo of its own: advised, ordered, confirmed, part received, kitted, fitted, core shipped, credited. The
 * plan and the stock follow at each step without anybody loading a file.
 */
@InBrowser
class BuyerLoopTest {
    private static final String SERIAL = "LOOP-1";
    private static final String CODE = "L00P000000000001";

    private String part = "";
    private String depot = "";
    private String order = "";
    private String truck = "";
    private int cylinder;

    @Test
    void advised_ordered_confirmed_received_kitted_fitted_shipped_credited(Chromium chromium) throws IOException {
        try (Site.Demo demo = Site.demo(chromium)) {
            try (Person buyer = demo.person(Role.BUYER, Size.DESK)) {
                ordered(buyer);
                confirmed(buyer);
            }
            try (Person storeman = demo.person(Role.STOREMAN, Size.PHONE)) {
                double before = onHand(storeman);
                partReceived(storeman);
                assertThat(onHand(storeman)).isEqualTo(before + 1);
                shortDelivery(storeman);
                kitted(storeman);
            }
            try (Person manager = demo.person(Role.MANAGER, Size.DESK)) {
                fitted(manager);
            }
            try (Person storeman = demo.person(Role.STOREMAN, Size.DESK)) {
                used(storeman);
                shipped(storeman);
            }
            try (Person buyer = demo.person(Role.BUYER, Size.PHONE)) {
                credited(buyer);
            }
        }
    }

    private double onOrder(Person buyer) {
        buyer.open("/stock/part?part=" + part + "&depot=" + depot);
        String words = buyer.page().locator(".fields dd").nth(3).innerText().strip();
        return Double.parseDouble(words.split("[,;]")[0]);
    }

    /** The first advised line that is an injector, three pieces more than advised: the plan made from it counts on them. */
    private void ordered(Person buyer) {
        buyer.open("/order");
        Locator row = buyer.section("A")
                .locator("tbody tr", new Locator.LocatorOptions().setHasText("injector"))
                .first();
        part = row.locator("th").innerText().split(",")[0].strip();
        depot = row.locator("[data-label=Depot]").innerText().strip();
        double before = onOrder(buyer);
        buyer.open("/order");
        Locator quantity = row.locator("input[name^=quantity]");
        int advised = (int) Double.parseDouble(quantity.inputValue());
        quantity.fill(String.valueOf(advised + 3));
        for (Locator other : buyer.section("A").locator("input[name=line]").all()) {
            other.setChecked(false);
        }
        row.locator("input[name=line]").check();
        row.locator("xpath=ancestor::form").locator("button[type=submit]").click();
        assertThat(buyer.page().locator("main")).containsText("is placed.");
        order = buyer.page().locator("[role=status] b").first().innerText().split(" ")[0];
        assertThat(order).startsWith("PO-");
        assertThat(onOrder(buyer)).isEqualTo(before + advised + 3);
        buyer.open("/order");
        Locator again = buyer.section("A")
                .locator("tbody tr", new Locator.LocatorOptions().setHasText(part))
                .filter(new Locator.FilterOptions().setHasText(depot));
        if (again.count() > 0) { // the new plan may use what was ordered, but asks for no more than its own need
            assertThat(again.first().locator("[data-label='On order']"))
                    .containsText(String.valueOf((int) before + advised + 3));
        }
    }

    private void confirmed(Person buyer) {
        buyer.open("/orders/" + order);
        assertThat(Fitness.faults(buyer.page())).isEmpty();
        buyer.page().locator("summary:has-text('Change')").first().click();
        buyer.type("Confirmed for", "2026-03-17");
        buyer.type("Unit price, if it changed", "455.50");
        buyer.press("Confirm");
        assertThat(buyer.section("A")).containsText("17\u00a0Mar\u00a02026");
        assertThat(buyer.section("A")).containsText("455.50");
        assertThat(buyer.section("A")).containsText("confirmed");
        assertThat(buyer.section("C")).containsText("Confirm an order line");
        buyer.open("/stock/part?part=" + part + "&depot=" + depot);
        assertThat(Fitness.faults(buyer.page())).isEmpty();
    }

    private double onHand(Person storeman) {
        storeman.open("/stock/part?part=" + part + "&depot=" + depot);
        return Double.parseDouble(
                storeman.page().locator(".fields dd").first().innerText().strip());
    }

    private void partReceived(Person storeman) {
        storeman.open("/orders/" + order);
        storeman.page().locator("summary:has-text('Receive')").first().click();
        storeman.follow("Receive with serials and codes");
        storeman.type("Serial 1", SERIAL);
        storeman.type("Code 1", CODE);
        storeman.press("Receive");
        assertThat(storeman.page().locator("main")).containsText("1 injector received.");
        storeman.type("Serial 1", SERIAL);
        storeman.type("Code 1", "L00P000000000002");
        storeman.press("Receive");
        assertThat(storeman.page().locator("#wrong")).containsText("is in stock at " + depot + " already");
        storeman.forgive("the server responded with a status of 422");
        storeman.open("/orders/" + order);
        assertThat(storeman.section("A")).containsText("part received");
        assertThat(storeman.page().locator("summary:has-text('Change')")).hasCount(0);
    }

    private void shortDelivery(Person storeman) {
        storeman.open("/orders/" + order);
        storeman.page()
                .locator("summary:has-text('Something is wrong')")
                .first()
                .click();
        Locator form = storeman.page().locator("form:has(input[name=words])").first();
        form.locator("input[name=pieces]").fill("1");
        form.locator("input[name=words]").fill("box of two held one");
        form.locator("[name=answer][value=CLAIM]").check();
        form.locator("button[value=problem]").click();
        assertThat(storeman.section("B")).containsText("box of two held one");
        assertThat(storeman.section("B")).containsText("to send");
    }

    private void kitted(Person storeman) {
        storeman.open("/store?depot=" + depot);
        Locator kit = storeman.section("A")
                .locator("tbody tr", new Locator.LocatorOptions().setHasText(part))
                .first();
        truck = kit.locator("th").innerText().strip();
        storeman.press("Allocate the kit of " + truck + " from stock");
        Locator now = storeman.section("A")
                .locator("tbody tr", new Locator.LocatorOptions().setHasText(truck))
                .first();
        assertThat(now).containsText(": " + SERIAL);
        String cylinders = now.locator("[data-label=Cylinders]").innerText();
        String before = cylinders.substring(0, cylinders.indexOf(": " + SERIAL)).strip();
        cylinder =
                Integer.parseInt(before.substring(before.lastIndexOf(' ') + 1).strip());
    }

    private void fitted(Person manager) {
        Page page = manager.page();
        manager.open("/bay/" + truck);
        BaySheetAtHand sheet = new BaySheetAtHand(page);
        List<Integer> planned = sheet.planned();
        assertThat(planned).contains(cylinder);
        sheet.fitted(cylinder, SERIAL, CODE);
        planned.stream().filter(other -> other != cylinder).forEach(other -> sheet.notDone(other, "no injector yet"));
        sheet.hours("4");
        sheet.save();
        assertThat(page.locator("main")).containsText("Saved.");
    }

    private void used(Person storeman) {
        storeman.open("/stock/part?part=" + part + "&depot=" + depot);
        Locator last = storeman.section("B").locator("tbody tr").first();
        assertThat(last).containsText("Used in a visit");
        assertThat(last).containsText("truck " + truck);
        assertThat(last).containsText("−1");
    }

    private void shipped(Person storeman) {
        storeman.open("/returns?depot=" + depot);
        assertThat(Fitness.faults(storeman.page())).isEmpty();
        storeman.page()
                .getByLabel("Ship the core of " + truck + ", cylinder " + cylinder)
                .check();
        storeman.page()
                .getByLabel("Ship the core of " + truck + ", cylinder " + cylinder)
                .locator("xpath=ancestor::form")
                .locator("button[type=submit]")
                .click();
        assertThat(storeman.page().locator("main")).containsText("Shipped with return note RN-00001.");
        assertThat(storeman.page().getByLabel("Ship the core of " + truck + ", cylinder " + cylinder))
                .hasCount(0);
        assertThat(storeman.page().locator("summary:has-text('Record the answer')"))
                .hasCount(0);
    }

    private void credited(Person buyer) {
        buyer.open("/returns?depot=" + depot);
        String asked = buyer.section("B")
                .locator("[data-label='Asked for']")
                .first()
                .innerText()
                .strip();
        buyer.press("All of RN-00001 credited in full");
        assertThat(buyer.page().locator("main")).containsText("The answer is recorded.");
        assertThat(buyer.section("B")).containsText("Nothing waits for an answer.");
        assertThat(buyer.section("E")).containsText("credited");
        assertThat(buyer.section("D").locator("tbody tr").first().locator("[data-label=Credited]"))
                .hasText(asked);
        assertThat(Fitness.faults(buyer.page())).isEmpty();
    }
}
