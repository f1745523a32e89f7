package dev.injectorplanner.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.imports.match.MatchFile;
import dev.injectorplanner.imports.propose.KnownNames;
import dev.injectorplanner.imports.propose.Proposer;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the command match writes and reports. */
class MatchRunTest {
    @TempDir
    private Path folder;

    @Test
    void whatIsInDoubtIsAskedInTheFileAndOnTheTerminal() throws IOException {
        Path file = Files.writeString(
                folder.resolve("readings.csv"), "Unit,Date,Odometer (km)\nT1,03/04/2026,1000\n,03/05/2026,1100\n");
        String printed = run(file, false);
        assertThat(printed).contains("Answer in readings.csv.match.yaml: ", "dates", "blank cells of column \"Unit\"");
        assertThat(MatchFile.read(MatchFile.beside(file)).open())
                .containsExactlyInAnyOrder("dates", "blank cells of column \"Unit\"");
    }

    @Test
    void aMatchThatIsThereStaysUnlessAskedFor() throws IOException {
        Path file = Files.writeString(folder.resolve("readings.csv"), "Unit,Date,Odometer (km)\nT1,2026-04-03,1000\n");
        run(file, false);
        Path match = MatchFile.beside(file);
        Files.writeString(match, Files.readString(match).replace("dates: \"none\"", "dates: \"mdy\""));
        String mine = Files.readString(match);
        assertThat(run(file, false)).contains("is there already; --again replaces it");
        assertThat(Files.readString(match)).isEqualTo(mine);
        run(file, true);
        assertThat(Files.readString(match)).isNotEqualTo(mine);
    }

    private static String run(Path file, boolean again) {
        StringWriter printed = new StringWriter();
        MatchRun run = new MatchRun(new PrintWriter(printed), new Proposer(KnownNames.NONE), again);
        run.run(List.of(file), Proposer.Said.NOTHING);
        run.print();
        return printed.toString();
    }
}
