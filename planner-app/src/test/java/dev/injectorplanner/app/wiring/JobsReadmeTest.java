package dev.injectorplanner.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.jobs.JobKind;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The tables of jobs and settings in the README say what the program does. */
class JobsReadmeTest {
    private static List<String> rows(String table) throws Exception {
        String readme = Files.readString(Path.of("../README.md"));
        String start = "<!-- " + table + ": held by JobsReadmeTest -->\n";
        return readme.substring(readme.indexOf(start) + start.length(), readme.indexOf("<!-- /" + table + " -->"))
                .lines()
                .skip(2)
                .toList();
    }

    @Test
    void jobs() throws Exception {
        assertThat(rows("jobs"))
                .isEqualTo(Arrays.stream(JobKind.values())
                        .map(kind -> String.format(
                                "| `%s` | %s | %s | `%s` | %s | %s |",
                                kind.option(),
                                kind.words(),
                                kind.scope() == JobKind.Scope.DEPOT ? "each depot" : "fleet",
                                kind.defaultTimes(),
                                kind.catchUp().isZero() ? "no" : kind.catchUp().toHours() + " h",
                                kind.why()))
                        .toList());
    }

    @Test
    void settings() throws Exception {
        assertThat(rows("settings"))
                .isEqualTo(Stream.concat(
                                Arrays.stream(JobsSettings.Name.values())
                                        .map(name -> row(name.key(), name.otherwise(), name.words())),
                                Arrays.stream(ProviderSettings.Name.values())
                                        .map(name -> row(name.key(), name.otherwise(), name.words())))
                        .toList());
    }

    private static String row(String key, String otherwise, String words) {
        return String.format("| `%s` | %s | %s |", key, otherwise, words);
    }
}
