package dev.injectorplanner.imports;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.imports.file.CsvFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Records of RFC 4180 (Shafranovich 2005), section 2, rules 1 to 7: published/rfc4180-records.txt. */
class Rfc4180Test {
    @TempDir
    Path folder;

    static Stream<String> records() throws IOException {
        try (InputStream in = Rfc4180Test.class.getResourceAsStream("/published/rfc4180-records.txt")) {
            String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            return text.lines().filter(line -> !line.startsWith("#")).toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("records")
    void isReadAsTheStandardSays(String line) throws IOException {
        int arrow = line.indexOf(" => ");
        String raw = line.substring(0, arrow).replace("\\r", "\r").replace("\\n", "\n");
        List<List<String>> expected = Arrays.stream(line.substring(arrow + 4).split("//"))
                .map(Rfc4180Test::cells)
                .toList();

        assertThat(read(raw)).isEqualTo(expected);
        assertThat(read("\uFEFF" + raw)).as("with a byte order mark").isEqualTo(expected);
    }

    private static List<String> cells(String record) {
        return Arrays.stream(record.split("\\|"))
                .map(cell -> cell.equals("{}") ? "" : cell.replace("{RN}", "\r\n"))
                .toList();
    }

    private List<List<String>> read(String raw) throws IOException {
        Path file = folder.resolve("records.csv");
        Files.writeString(file, raw);
        List<List<String>> records = new ArrayList<>();
        CsvFile.open(file).read((line, cells) -> records.add(List.of(cells)));
        return records;
    }
}
