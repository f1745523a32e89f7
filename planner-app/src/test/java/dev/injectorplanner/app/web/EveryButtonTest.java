package dev.injectorplanner.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.testkit.DemoSite;
import dev.injectorplanner.app.testkit.Visitor;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Each role walks over every page it is shown a way to, and presses every link and every button there: none answers that it
 * is for somebody else. Pages of one kind are walked twice, forms of one kind pressed twice.
 */
class EveryButtonTest {
    private static final int OF_ONE_KIND = 2;
    private static final Set<String> LEFT_OUT = Set.of("/sign-out");
    private static final String PEOPLE = "/settings/people";

    private static DemoSite demo;

    @BeforeAll
    static void start(@TempDir Path folder) throws Exception {
        demo = DemoSite.start(folder);
    }

    @AfterAll
    static void stop() {
        demo.close();
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void nothing_that_is_offered_is_refused(Role role) throws Exception {
        Walk walk = new Walk(Visitor.as(role, demo.app().address()), Visitor.name(role));
        walk.overEveryPage();
        assertThat(walk.pages).as("pages walked").isGreaterThan(10);
        walk.pressEveryButton();
        assertThat(walk.pressed).as("buttons pressed").isGreaterThan(3);
        assertThat(walk.refused).isEmpty();
    }

    private static final class Walk {
        private final Visitor visitor;
        private final String name;
        private final Map<String, Integer> seen = new HashMap<>();
        private final Map<String, String> forms = new LinkedHashMap<>();
        private final Map<String, PressedPage.Form> pressable = new HashMap<>();
        private final Map<String, PressedPage.Button> button = new HashMap<>();
        private final Set<String> refused = new TreeSet<>();
        private int pages;
        private int pressed;

        Walk(Visitor visitor, String name) {
            this.visitor = visitor;
            this.name = name;
        }

        void overEveryPage() throws Exception {
            Deque<String> waiting = new ArrayDeque<>(List.of("/"));
            while (!waiting.isEmpty()) {
                String path = waiting.remove();
                HttpResponse<String> answer = visitor.get(path);
                note("GET " + path, answer);
                String to = answer.headers().firstValue("Location").orElse("");
                List<String> next = new ArrayList<>();
                if (answer.statusCode() == 302) {
                    next.add(URI.create(path).resolve(to).toString());
                } else if (answer.headers()
                        .firstValue("Content-Type")
                        .orElse("")
                        .startsWith("text/html")) {
                    pages++;
                    next.addAll(read(path, new PressedPage(answer.body())));
                }
                next.stream().filter(this::isNew).forEach(waiting::add);
            }
        }

        private List<String> read(String path, PressedPage page) {
            List<String> next = new ArrayList<>();
            for (String link : page.links()) {
                if (!link.isEmpty() && !link.startsWith("#") && !link.startsWith("mailto:")) {
                    next.add(resolved(path, link));
                }
            }
            for (PressedPage.Form form : page.forms()) {
                for (PressedPage.Button each : form.buttons()) {
                    String action = each.action() == null ? form.action() : each.action();
                    String to = resolved(path, action.isEmpty() ? path : action);
                    if (form.method().equalsIgnoreCase("get")) {
                        next.add(to.replaceAll("\\?.*", "") + "?" + Visitor.form(form.fields()));
                    } else if (!LEFT_OUT.contains(to)) {
                        String key = to + " " + each.name() + "=" + each.value() + " "
                                + form.fields().keySet();
                        if (isNew("POST " + key)) {
                            forms.put(key, to);
                            pressable.put(key, form);
                            button.put(key, each);
                        }
                    }
                }
            }
            return next;
        }

        private static String resolved(String path, String link) {
            return URI.create(path.replaceAll("\\?.*", ""))
                    .resolve(link.replace(" ", "%20").replaceAll("#.*", ""))
                    .toString();
        }

        private boolean isNew(String address) {
            String kind = address.replaceAll("=[^&]*", "=").replaceAll("\\bT\\d+\\b|PO-[^/?]+|\\d+", "*");
            return seen.merge(address, 1, Integer::sum) == 1
                    && seen.merge("kind " + kind, 1, Integer::sum) <= OF_ONE_KIND;
        }

        void pressEveryButton() throws Exception {
            List<Map.Entry<String, String>> order = new ArrayList<>(forms.entrySet());
            order.sort(Comparator.comparing(each -> each.getValue().startsWith(PEOPLE))); // may take rights away: last
            for (Map.Entry<String, String> each : order) {
                PressedPage.Form form = pressable.get(each.getKey());
                PressedPage.Button with = button.get(each.getKey());
                Map<String, String> fields = new LinkedHashMap<>(form.fields());
                if (each.getValue().startsWith(PEOPLE) && name.equals(fields.get("name"))) {
                    continue; // nobody is meant to lock himself out
                }
                if (!with.name().isEmpty()) {
                    fields.put(with.name(), with.value());
                }
                HttpResponse<String> answer = visitor.postBare(each.getValue(), Visitor.form(fields));
                pressed++;
                note("POST " + each.getKey(), answer);
            }
        }

        private void note(String what, HttpResponse<String> answer) {
            boolean asked = answer.headers().firstValue("Location").orElse("").contains("/sign-in");
            if (answer.statusCode() == 403 || asked) {
                refused.add(what + ": " + answer.statusCode());
            }
            assertThat(answer.statusCode()).as(what).isLessThan(500);
        }
    }
}
