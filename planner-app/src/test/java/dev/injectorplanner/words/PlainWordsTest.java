package dev.injectorplanner.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Words that gave way to others (DEVELOPERS.md, Words) and must not come back where people read: sentences in the programs, pages,
 * sheets, the API's description and the pages of documentation.
 */
class PlainWordsTest {
    private static final Path ROOT = root();

    /** What must not be read any more; each with what is written instead. */
    private static final List<Pattern> BANNED = Stream.of(
                    "\\bmend(s|ed|ing)?\\b", // fix
                    "(?<!there )\\b(is|are) no (?!longer|more\\b)[a-z]+", // is not a
                    "\\bis none of\\b", // is not one of, does not belong to
                    "\\bstands? twice\\b", // is a duplicate
                    "\\bso (many|much)\\b", // the number, the unit
                    "\\bwho (has|sees) (it|one depot)\\b", // anyone holding it, limited to one depot
                    "\\b(hours|bay-days|days) there are\\b", // available
                    "\\bthere (are|is) left\\b", // remaining
                    "\\blets? pass\\b", // accepts
                    "\\bby halves\\b", // split
                    "\\balike\\b", // the same
                    "\\bwhose each\\b", // source
                    "\\bis weighed with\\b", // penalty per day
                    "\\bfindings?\\b", // due item
                    "\\banew\\b", // again, replan
                    "\\bwork(ed)? it out\\b", // preview
                    "\\bnuisance\\b", // rescheduling cost
                    "\\bannounc(e|es|ed|ing)\\b", // confirm
                    "\\brefusals?\\b(?! of)", // blocked weeks
                    "\\bset-up\\b", // shared access labour
                    "\\bproven within\\b", // within x % of the best possible
                    "\\bthere by\\b", // arrives by
                    "\\blate since\\b", // order date missed
                    "\\bmoving it costs\\b", // cost to postpone
                    "\\bgoods[- ]in\\b", // receiving
                    "\\btak(e|en) in\\b", // receive
                    "\\bshel(f|ves)\\b(?!!)", // stock
                    "\\bmut(e|ed|ing)\\b", // snooze
                    "\\btimed jobs?\\b", // scheduled job
                    "\\bgiven up\\b", // failed
                    "\\bin the controller\\b", // ECU
                    "\\bto do along\\b", // while it's open
                    "\\bfor an audit\\b", // maintenance record
                    "\\bmust not wait\\b", // safety: bring in now
                    "\\binterval tasks?\\b", // scheduled service
                    "\\bthis once\\b") // shown only once
            .map(words -> Pattern.compile(words, Pattern.CASE_INSENSITIVE))
            .toList();

    private static final Pattern LITERAL = Pattern.compile("\"((?:\\\\.|[^\"\\\\\\n])*)\"");
    private static final Pattern TAG = Pattern.compile("(?s)<(svg|style|script)\\b.*?</\\1>");

    private static Path root() {
        Path here = Path.of("").toAbsolutePath();
        while (!Files.exists(here.resolve("planner-core"))) {
            here = here.getParent();
        }
        return here;
    }

    private static List<Path> files(String under, String ending) throws IOException {
        try (Stream<Path> found = Files.walk(ROOT.resolve(under))) {
            return found.filter(path -> path.toString().endsWith(ending))
                    .sorted()
                    .toList();
        }
    }

    private static List<String> banned(Path file, String text) {
        List<String> found = new ArrayList<>();
        for (Pattern words : BANNED) {
            Matcher at = words.matcher(text);
            while (at.find()) {
                String around = text.substring(Math.max(0, at.start() - 30), Math.min(text.length(), at.end() + 30));
                found.add(ROOT.relativize(file) + ": \"" + at.group() + "\" in …" + around.replace('\n', ' ') + "…");
            }
        }
        return found;
    }

    @ParameterizedTest
    @ValueSource(strings = {"planner-core", "imports", "reports", "planner-app"})
    void sentences_of_the_program(String module) throws IOException {
        List<String> found = new ArrayList<>();
        for (Path file : files(module + "/src/main/java", ".java")) {
            for (String line : Files.readAllLines(file)) {
                if (line.strip().startsWith("*") || line.strip().startsWith("/")) {
                    continue;
                }
                Matcher literal = LITERAL.matcher(line);
                while (literal.find()) {
                    if (literal.group(1).strip().contains(" ")) {
                        found.addAll(banned(file, literal.group(1)));
                    }
                }
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void pages_sheets_and_papers() throws IOException {
        List<String> found = new ArrayList<>();
        List<Path> pages = new ArrayList<>(files("planner-app/src/main/resources/templates", ".html"));
        pages.addAll(files("reports/src/main/resources", ".html"));
        pages.addAll(files("reports/src/test/resources/golden", ".txt"));
        pages.addAll(files("planner-app/src/main/resources/static", ".js"));
        for (Path page : pages) {
            if (!page.toString().contains("htmx") && !page.toString().contains("zxing")) {
                found.addAll(banned(page, shown(Files.readString(page))));
            }
        }
        assertThat(found).isEmpty();
    }

    /** What a page shows: no drawings, no names of fields, fragments and addresses. */
    private static String shown(String page) {
        return TAG.matcher(page)
                .replaceAll(" ")
                .replaceAll(
                        "(?:id|for|name|class|href|value|th:href|th:id|th:name|th:if|th:unless|th:each|th:action)=\"[^\"]*\"",
                        " ")
                .replaceAll("\\$\\{[a-zA-Z.]+}", " ")
                .replaceAll("view\\.[a-zA-Z]+", " ")
                .replaceAll("video\\.muted", " ");
    }

    @Test
    void documentation_and_description_of_the_api() throws IOException {
        List<String> found = new ArrayList<>();
        for (String page : List.of(
                "README.md",
                "imports/README.md",
                "reports/README.md",
                "planner-app/README.md",
                "planner-core/README.md",
                "planner-app/src/main/resources/api/openapi.json")) {
            Path file = ROOT.resolve(page);
            found.addAll(banned(
                    file, Files.readString(file).replaceAll("`[^`]*`", " ").replace("\"mend\":", "")));
        }
        assertThat(found).isEmpty();
    }

    @Test
    void a_word_that_comes_back_is_found() {
        assertThat(banned(ROOT.resolve("x"), "line 3: is no truck. Mend: load it. Hours there are: 4"))
                .hasSize(3);
    }
}
