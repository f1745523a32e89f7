package dev.injectorplanner.app.browser;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Whether a page is fit for everybody who reads it. */
final class Fitness {
    /** A desk of 1280 px at 200 %: WCAG 2.2, success criterion 1.4.4 (resize text). */
    private static final int TWICE = 640;

    /** The same at 400 %, narrower than any phone: success criterion 1.4.10 (reflow). */
    private static final int FOUR_TIMES = 320;

    /** No table of a page is taller at a desk, px: longer ones are paged or folded. */
    private static final int TALLEST = 4_000;

    private static final String TALL = "Math.round(Math.max(0, ...Array.from(document.querySelectorAll('table'))"
            + ".map(table => Math.min(table.getBoundingClientRect().height,"
            + " (table.closest('.scroll') || { clientHeight: Infinity }).clientHeight))))";

    private static final List<String> GRAVE = List.of("serious", "critical");
    private static final String ASK = """
            async wanted => {
              // nothing is fetched again, and no selector is worked out for what is fine
              const asked = { resultTypes: ['violations'], preload: false, selectors: false };
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

    /**
     * All that is wrong with a page at a desk, at 200 % and 400 %, on a phone, light and dark; empty where nothing is. A phone and
     * 200 % show the layout of 400 % with more room, so the rules are asked at the narrowest and sideways scrolling at each.
     */
    static List<String> faults(Page page) {
        List<String> faults = new ArrayList<>();
        page.evaluate(AxeBuilder.getAxeScript());
        page.setViewportSize(Size.DESK.width(), Size.DESK.height());
        faults.addAll(order(page));
        faults.addAll(sideways(page));
        faults.addAll(tall(page));
        faults.addAll(lightAndDark(page));
        for (int width : new int[] {TWICE, Size.PHONE.width()}) {
            page.setViewportSize(width, Size.PHONE.height());
            faults.addAll(sideways(page));
        }
        for (Object small : (List<?>) page.evaluate(SMALL)) {
            faults.add("too small for a thumb: " + small);
        }
        page.setViewportSize(FOUR_TIMES, Size.PHONE.height());
        faults.addAll(sideways(page));
        faults.addAll(lightAndDark(page));
        return faults;
    }

    /** All rules in the light, those of colours in the dark as well. */
    private static List<String> lightAndDark(Page page) {
        List<String> faults = new ArrayList<>(rules(page));
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
        faults.addAll(rules(page, "color-contrast", "link-in-text-block"));
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
        return faults;
    }

    private static List<String> tall(Page page) {
        int px = ((Number) page.evaluate(TALL)).intValue();
        return px <= TALLEST ? List.of() : List.of("a table of " + px + " px");
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
