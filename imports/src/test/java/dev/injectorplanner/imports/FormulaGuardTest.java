package dev.injectorplanner.imports;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.imports.cell.FormulaGuard;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaGuardTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "@SUM(A1)", "+cmd|' /C calc'!A0", "-2+3", "\t=1", "\r=1", "'=1", "''@x", "=", "-"})
    void what_looks_like_a_formula_is_led_in_and_comes_back(String text) {
        assertThat(FormulaGuard.guarded(text)).isEqualTo("'" + text);
        assertThat(FormulaGuard.unguarded(FormulaGuard.guarded(text))).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"-3.25", "+5", "'-1 200,5'", "-40%", "T-1", "'''quoted'", "''"})
    void numbers_and_names_stay(String text) {
        assertThat(FormulaGuard.guarded(text)).isEqualTo(text);
        assertThat(FormulaGuard.unguarded(text)).isEqualTo(text);
        assertThat(FormulaGuard.unguarded("'" + text)).isEqualTo("'" + text);
    }

    @Test
    void refused_rows_open_without_a_formula_and_load_again_as_they_were() throws Exception {
        Path file = Files.writeString(
                folder.resolve("away.csv"), "truck,from,to,reason\n=T1,2026-03-09,2026-03-02,=HYPERLINK(\"x\")\n");
        Collected read = Collected.of(file);
        try (RefusedRowsFile rows = RefusedRowsFile.beside(file)) {
            rows.add(read.refusedPlaces.get(0), read.refused.get(0));
        }
        Path refused = folder.resolve("away.refused.csv");
        List<String> lines = Files.readAllLines(refused);
        assertThat(lines).hasSize(2);
        assertThat(lines.get(1)).contains(",'=T1,").contains("\"'=HYPERLINK(\"\"x\"\")\"");
        assertThat(lines.get(1).split(",")).noneMatch(cell -> cell.matches("\"?[=+@].*"));
        Files.writeString(refused, Files.readString(refused).replace("2026-03-02", "2026-03-12"));
        assertThat(Collected.of(refused).rows.toString())
                .contains("=T1", "=HYPERLINK(\"x\")")
                .doesNotContain("'=");
    }
}
