package dev.injectorplanner.imports;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each broken file gets its one sentence, before any of its rows is handed over. */
class MalformedFilesTest {
    @TempDir
    static Path folder;

    private static List<MalformedFiles.Case> cases;

    @BeforeAll
    static void writeThem() throws IOException {
        cases = MalformedFiles.in(folder);
    }

    static List<MalformedFiles.Case> cases() {
        return cases;
    }

    @ParameterizedTest
    @MethodSource("cases")
    void isRefusedInOneSentence(MalformedFiles.Case broken) {
        Collected collected = new Collected();

        assertThatThrownBy(() -> TableReader.read(broken.file(), Collected.usual(), collected))
                .isInstanceOf(FileRefusedException.class)
                .hasMessage(broken.sentence());
        assertThat(collected.rows).isEmpty();
        assertThat(collected.refused).isEmpty();
        assertThat(collected.remarks).isEmpty();
    }

    @Test
    void areFortyAtLeast() {
        assertThat(cases).hasSizeGreaterThanOrEqualTo(40);
    }

    @Test
    void aPartOfAWorkbookMayUnpackOnlySoFar() {
        Path file = Workbooks.write(folder.resolve("limited.xlsx"), Workbooks::readings);

        assertThatThrownBy(() -> Collected.of(file, Collected.usual().withMostSheetBytes(600)))
                .isInstanceOf(FileRefusedException.class)
                .hasMessageStartingWith("limited.xlsx: ")
                .hasMessageContaining("unpacks to more than 0 MiB")
                .hasMessageEndingWith("Fix: save the table as CSV, or split it.");
    }
}
