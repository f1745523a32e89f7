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

    /** The cylinders that the visit is for, that the sheet asks for. */
    List<Integer> planned() {
        return page.locator("details.cyl-card[data-planned]").all().stream()
                .map(card -> Integer.valueOf(card.getAttribute("id").substring("cyl-".length())))
                .toList();
    }

    Locator field(String name) {
        return page.locator("[name='" + name + "']:not([type=radio])");
    }

    private void choose(String name, String value) {
        page.locator("[name='" + name + "'][value='" + value + "']").check();
    }

    /** Opens a part of the sheet that is folded. */
    void open(String fold) {
        page.locator(fold)
                .evaluateAll(
                        "all => { for (let at = all[0]; at; at = at.parentElement && at.parentElement.closest('details')) { at.open = true; } }");
    }

    void fitted(int cylinder, String serial, String code) {
        String of = "c" + cylinder + ".";
        open("#cyl-" + cylinder);
        if (page.locator("#cyl-" + cylinder + "[data-planned]").count() == 0) {
            choose(of + "fate", "fitted");
        }
        choose(of + "found", "WORN");
        field(of + "serial").fill(serial);
        field(of + "code").fill(code);
        if (page.locator("[name='" + of + "origin']").count() > 0) { // an injector out of the kit has its origin
            open("#cyl-" + cylinder + " details");
            choose(of + "origin", "REMAN");
        }
        field(of + "coded").check();
    }

    void notDone(int cylinder, String why) {
        open("#cyl-" + cylinder + " details");
        choose("c" + cylinder + ".fate", "left");
        field("c" + cylinder + ".reason").fill(why);
    }

    void hours(String hours) {
        open("details:has(> #in-e)");
        field("labourHours").fill(hours);
    }

    void extras(String words) {
        open("details:has(> #in-e)");
        field("extras").fill(words);
    }

    void save() {
        page.locator(".stick .button.main").click();
    }
}
