package dev.injectorplanner.reports.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.Summary;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Escaping and folding against lines worked out from RFC 5545; source note beside the data. */
class OctetFoldingTest {
    static List<String[]> lines() throws Exception {
        Path file = Path.of(OctetFoldingTest.class
                .getResource("/published/icalendar_lines.csv")
                .toURI());
        return Files.readAllLines(file).stream()
                .skip(1)
                .map(line -> line.split(",", -1))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("lines")
    void a_text_becomes_the_published_line(String property, String textHex, String foldedHex) {
        String text = text(textHex);
        Property made = property.equals("SUMMARY") ? new Summary(text) : new Description(text);
        assertThat(OctetFolding.fold(made.toString())).isEqualTo(text(foldedHex));
    }

    private static String text(String hex) {
        return new String(HexFormat.of().parseHex(hex), StandardCharsets.UTF_8);
    }
}
