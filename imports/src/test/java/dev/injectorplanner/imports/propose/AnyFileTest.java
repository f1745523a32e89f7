package dev.injectorplanner.imports.propose;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.imports.match.MatchFile;
import dev.injectorplanner.imports.match.MatchText;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Random files from a seed: refused in one sentence or proposed; then every row is read or refused, none is lost. */
class AnyFileTest {
    private static final String[] HEADINGS = {
        "Unit",
        "Unit #",
        "VIN",
        "Date",
        "Odo",
        "Miles",
        "KM in",
        "Hrs",
        "Cyl",
        "P/N",
        "S/N",
        "Why out",
        "DTC",
        "Qty",
        "Depot",
        "",
        "Remark",
        "Date",
        "SPN",
        "FMI",
        "Time",
        "Cost",
        "Date out",
        "\"quo\"\"ted\"",
        "Łódź",
        "#",
        "-"
    };
    private static final String[] GROUPS = {"Odometer", "Fitted", "Removed", "Unit", "Test", "Remark"};
    private static final String[] CELLS = {
        "",
        "-",
        "n/a",
        "T1",
        "T 2",
        "490,254",
        "490.254",
        "490.254,5",
        "8,5",
        "03/04/2026",
        "14.3.26",
        "3/14/26 2:05 PM",
        "0",
        "8",
        "6,04E+05",
        "#N/A",
        "broke down",
        "reman",
        "SPN 651 FMI 7",
        "P0275-00",
        "cyl 3 contribution",
        "$1,200.50",
        "12 km",
        "=1+1",
        "left bank",
        "1-4",
        "all",
        "99999999999999999999",
        "1e400",
        "\u00a0",
        "yes",
        "07:15",
        "\"a, b\"",
        "x",
        "2026-02-30"
    };

    @TempDir
    private Path folder;

    @Test
    void noExceptionAndNoRowIsLost() throws IOException {
        for (long seed = 1; seed <= 400; seed++) {
            Random random = new Random(seed);
            char delimiter = ",;\t".charAt(random.nextInt(3));
            int rows = 1 + random.nextInt(60);
            Path file = folder.resolve("export " + seed + ".csv");
            Files.writeString(file, text(random, delimiter, rows));
            Proposer proposer = new Proposer(names(random));
            Proposal proposal;
            try {
                proposal = proposer.propose(file, Proposer.Said.NOTHING);
            } catch (FileRefusedException e) {
                assertThat(e.getMessage()).as("seed %d", seed).contains("Fix:");
                continue;
            }
            String text = MatchFile.text(proposal.match(), proposal.remarks());
            assertThat(MatchText.parse(file, text)).as("seed %d", seed).isEqualTo(proposal.match());
            Preview preview = proposer.preview(file, proposal.match(), 20);
            assertThat(proposal.headingLine()).as("seed %d", seed).isPositive();
            if (preview.refusal().isEmpty()) {
                assertThat(preview.good() + preview.refused())
                        .as("seed %d", seed)
                        .isEqualTo(proposal.rows());
            } else {
                assertThat(preview.refusal()).as("seed %d", seed).contains("Fix:");
            }
        }
    }

    private static KnownNames names(Random random) {
        return random.nextBoolean()
                ? KnownNames.NONE
                : new KnownNames(
                        Map.of("truck", List.of("T1", "T2"), "family", List.of("Example V8"), "depot", List.of("N")));
    }

    private static String text(Random random, char delimiter, int rows) {
        StringBuilder text = new StringBuilder();
        for (int title = random.nextInt(3); title > 0; title--) {
            text.append("Title ").append(title).append('\n');
        }
        int columns = 2 + random.nextInt(9);
        if (random.nextInt(3) == 0) { // groups over the headings
            for (int at = 0; at < columns; at++) {
                text.append(at == 0 ? "" : String.valueOf(delimiter))
                        .append(random.nextBoolean() ? "" : GROUPS[random.nextInt(GROUPS.length)]);
            }
            text.append('\n');
        }
        for (int row = 0; row <= rows; row++) {
            for (int at = 0; at < columns; at++) {
                String[] from = row == 0 ? HEADINGS : CELLS;
                String cell = from[random.nextInt(from.length)];
                boolean quote = cell.indexOf(delimiter) >= 0 && !cell.startsWith("\"");
                text.append(at == 0 ? "" : String.valueOf(delimiter)).append(quote ? '"' + cell + '"' : cell);
            }
            text.append('\n');
        }
        return text.toString();
    }
}
