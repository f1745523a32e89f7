package dev.injectorplanner.app.browser;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.List;

/** A truck's bay sheet, as a mechanic fills it in. */
final class BaySheetAtHand {
    private final Page page;

    BaySheetAtHand(Page page) {
        this.page = page;
    }

    /** The cylinders that the visit is for, whose parts of the sheet stand open. */
    List<Integer> planned() {
        return page.locator("details.cyl-card[open][id^=cyl-]").all().stream()
                .map(card -> Integer.valueOf(card.getAttribute("id").substring("cyl-".length())))
                .toList();
    }

    Locator field(String name) {
        return page.locator("[name='" + name + "']:not([type=radio])");
    }

    private void choose(String name, String value) {
        page.locator("[name='" + name + "'][value='" + value + "']").check();
    }

    void fitted(int cylinder, String serial, String code) {
        String of = "c" + cylinder + ".";
        choose(of + "fate", "fitted");
        choose(of + "found", "WORN");
        field(of + "serial").fill(serial);
        field(of + "code").fill(code);
        if (page.locator("[name='" + of + "origin']").count() > 0) { // an injector out of the kit has its origin
            choose(of + "origin", "REMAN");
        }
        field(of + "programmed").check();
        field(of + "compared").check();
    }

    void notDone(int cylinder, String why) {
        choose("c" + cylinder + ".fate", "left");
        field("c" + cylinder + ".reason").fill(why);
    }

    void hours(String hours) {
        field("labourHours").fill(hours);
    }

    void extras(String words) {
        field("extras").fill(words);
    }

    void save() {
        page.locator(".stick .button.main").click();
    }
}
