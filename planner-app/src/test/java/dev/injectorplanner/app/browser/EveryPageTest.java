package dev.injectorplanner.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.web.frame.Navigation;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every page, at a desk, on a phone, in the dark: fit for everybody, nothing from other hosts, no complaint. */
@InBrowser
class EveryPageTest {
    /** Pages say 2 Mar 2026. */
    private static final Pattern ISO_DATE = Pattern.compile("(?<![\\w-]).{0,30}\\d{4}-\\d{2}-\\d{2}(?![\\w-])");

    /** One window a site and role for all pages: a new one would fetch every style and script again. */
    private static final Map<String, Person> PEOPLE = new HashMap<>();

    @AfterAll
    static void goHome() {
        PEOPLE.values().forEach(Person::close);
        PEOPLE.clear();
    }

    static Stream<String> places() {
        return Navigation.PLACES.stream().map(Navigation.Place::path);
    }

    @ParameterizedTest
    @MethodSource("places")
    void a_place_of_the_menu(String path, Site.Demo demo) {
        fit(demo, Role.MANAGER, path);
    }

    /** Pages within places, as the manager sees them. */
    static List<String> within() {
        return List.of(
                "/week?week=2026-W11",
                "/plan?depot=Aldermoor&week=2026-W10&truck=T034&do=move&to=2026-W13",
                "/plan?depot=Norrvik&truck=T026",
                "/trucks?find=T00",
                "/trucks?find=nothing+like+it",
                "/trucks?state=planned&sort=-visit",
                "/find?q=T00",
                "/find?q=nothing+like+it",
                "/trucks/T005",
                "/trucks/T026",
                "/trucks/T040?failed=6",
                "/trucks/T028/record",
                "/safety/T028",
                "/bay?depot=Brennick",
                "/start/T040?failed=6",
                "/bay/T003/look/leak",
                "/bay/T003/look/circuit",
                "/bay/T005",
                "/bay/T003",
                "/bay/T005/close-outs",
                "/orders/PO-4101",
                "/orders/suppliers",
                "/stock/part?part=KV-8140",
                "/stock/part?part=KL-6110&depot=Brennick",
                "/stock/count?depot=Norrvik",
                "/outlook/parts",
                "/replay",
                "/imports/start",
                "/settings/figures",
                "/settings/site",
                "/settings/families",
                "/settings/families/row?key=V8-140",
                "/settings/access",
                "/settings/access/row",
                "/settings/rules",
                "/settings/rules/row",
                "/settings/depots",
                "/settings/depots/row?key=Brennick",
                "/password");
    }

    /** Pages that the administrator alone sees. */
    static List<String> administrators() {
        return List.of("/settings/people", "/settings/tokens", "/settings/audit");
    }

    @ParameterizedTest
    @MethodSource("within")
    void a_page_within(String path, Site.Demo demo) {
        fit(demo, Role.MANAGER, path);
    }

    @ParameterizedTest
    @MethodSource("administrators")
    void a_page_of_the_administrator(String path, Site.Demo demo) {
        fit(demo, Role.ADMINISTRATOR, path);
    }

    @ParameterizedTest
    @MethodSource("places")
    void a_place_before_anything_is_loaded_says_what_to_do(String path, Site.Empty empty) {
        fit(empty, Role.MANAGER, path);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/week?depot=Nowhere", "/trucks/T999", "/plan/nothing", "/settings/people"})
    void a_refusal(String path, Site.Demo demo) {
        try (Person manager = demo.person(Role.MANAGER, Size.DESK)) {
            assertThat(manager.open(path).status()).isBetween(400, 404);
            assertThat(Fitness.faults(manager.page())).isEmpty();
            assertThat(manager.sees()).contains("Fix: ");
            manager.forgive("the server responded with a status of");
        }
    }

    /** Opened and folded from the keyboard, what was pressed stays and keeps the focus. */
    @ParameterizedTest
    @EnumSource
    void alerts_are_folded_and_opened_where_the_focus_is(Size size, Site.Demo demo) {
        try (Person manager = demo.person(Role.MANAGER, size)) {
            manager.open("/alerts");
            Locator summary = manager.page().locator("details.fold > summary").first();
            summary.focus();
            for (String words : List.of("Show all", "Show fewer", "Show all", "Show fewer")) {
                if (summary.innerText().contains(words)) {
                    continue;
                }
                summary.press("Enter");
                assertThat(summary.innerText()).contains(words);
                assertThat(summary.isVisible()).isTrue();
                assertThat(summary.evaluate("each => each === document.activeElement"))
                        .isEqualTo(true);
            }
        }
    }

    @Test
    void signing_in(Site.Demo demo) {
        try (Person nobody = demo.nobody(Size.DESK)) {
            for (String path : List.of("/sign-in", "/sign-in?wrong", "/sign-in?out")) {
                nobody.open(path);
                assertThat(Fitness.faults(nobody.page())).as(path).isEmpty();
            }
        }
    }

    private static void fit(Site site, Role role, String path) {
        Person person = PEOPLE.computeIfAbsent(site.address() + " " + role, key -> site.person(role, Size.DESK));
        assertThat(person.open(path).status()).isEqualTo(200);
        assertThat(Fitness.faults(person.page())).as(path).isEmpty();
        assertThat(person.complaints()).as(path).isEmpty();
        if (!path.matches("/imports.*|/settings.*")) { // those show what files and stored rows say
            assertThat(ISO_DATE.matcher(person.sees()).results().map(MatchResult::group))
                    .as("dates of another form: " + path)
                    .isEmpty();
        }
    }
}
