package dev.injectorplanner.app.browser;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Whether a page is fit for everybody who reads it. */
final class Fitness {
    /** A desk of 1280 px at 200 % and at 400 %: WCAG 2.2, success criteria 1.4.4 (resize text) and 1.4.10 (reflow). */
    private static final List<Integer> ZOOMED = List.of(640, 320);

    private static final List<String> GRAVE = List.of("serious", "critical");
    private static final String ASK = """
            async wanted => {
              const asked = { resultTypes: ['violations'] };
              if (wanted.only.length) { asked.runOnly = { type: 'rule', values: wanted.only }; }
              const found = await axe.run(document, asked);
              return found.violations.filter(rule => wanted.grave.includes(rule.impact)).map(rule =>
                rule.id + ': ' + rule.help + ': ' + rule.nodes.slice(0, 4).map(node => node.html).join('  '));
            }""";

    /**
     * 44 px high and wide: WCAG 2.2, success criterion 2.5.5 (target size, enhanced), with its exception for links within a sentence.
     */
    private static final String SMALL = """
            () => Array.from(document.querySelectorAll('a, button, input:not([type=hidden]), select, textarea, summary'))
              .filter(e => {
                const box = (e.closest('label') || e).getBoundingClientRect();
                const hidden = !box.width || e.matches('.skip, .hidden-text');
                const inSentence = e.matches('p a, li a, figcaption a')
                  && e.parentElement.textContent.trim() !== e.textContent.trim();
                return !hidden && !inSentence && (box.height < 44 || box.width < 44);
              })
              .slice(0, 4).map(e => e.outerHTML.slice(0, 120))""";

    private Fitness() {}

    /** All that is wrong with a page at desk and phone size and in the dark; empty where nothing is. */
    static List<String> faults(Page page) {
        List<String> faults = new ArrayList<>();
        page.evaluate(AxeBuilder.getAxeScript());
        page.setViewportSize(Size.DESK.width(), Size.DESK.height());
        faults.addAll(order(page));
        faults.addAll(sideways(page));
        faults.addAll(rules(page));
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
        faults.addAll(rules(page, "color-contrast", "link-in-text-block"));
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
        page.setViewportSize(Size.PHONE.width(), Size.PHONE.height());
        faults.addAll(sideways(page));
        faults.addAll(rules(page));
        for (int width : ZOOMED) {
            page.setViewportSize(width, Size.DESK.height());
            faults.addAll(sideways(page));
        }
        page.setViewportSize(Size.PHONE.width(), Size.PHONE.height());
        for (Object small : (List<?>) page.evaluate(SMALL)) {
            faults.add("too small for a thumb: " + small);
        }
        return faults;
    }

    /**
     * Rules of axe-core, those it calls serious or critical.
     *
     * @param only the rules to ask for, or empty for all
     */
    private static List<String> rules(Page page, String... only) {
        Object found = page.evaluate(ASK, Map.of("only", List.of(only), "grave", GRAVE));
        return ((List<?>) found)
                .stream()
                        .map(fault -> "at " + page.viewportSize().width + " px: " + fault)
                        .toList();
    }

    /** A page scrolls down only; a wide table has a box of its own. */
    private static List<String> sideways(Page page) {
        Object wide = page.evaluate("document.scrollingElement.scrollWidth - window.innerWidth");
        int over = ((Number) wide).intValue();
        return over <= 0
                ? List.of()
                : List.of("scrolls " + over + " px sideways at " + page.viewportSize().width + " px");
    }

    /** One first heading, no level left out, and a title of its own. */
    private static List<String> order(Page page) {
        List<String> faults = new ArrayList<>();
        int last = 0;
        int first = 0;
        for (String tag : page.locator("h1, h2, h3, h4, h5, h6")
                .evaluateAll("all => all.map(e => e.tagName)")
                .toString()
                .replaceAll("[\\[\\] ]", "")
                .split(",")) {
            int level = tag.length() == 2 ? tag.charAt(1) - '0' : 0;
            if (level > last + 1) {
                faults.add("heading " + tag + " follows level " + last);
            }
            first += level == 1 ? 1 : 0;
            last = level;
        }
        if (first != 1) {
            faults.add(first + " headings of the first level");
        }
        if (!page.title().matches(".+ · Injector Planner")) {
            faults.add("title \"" + page.title() + "\"");
        }
        return faults;
    }
}
