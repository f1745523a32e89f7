package dev.injectorplanner.imports.propose;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.match.MatchFile;
import dev.injectorplanner.imports.match.MatchText;
import dev.injectorplanner.imports.propose.Proposal.Question;
import dev.injectorplanner.imports.propose.Proposer.Said;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names of trucks that an office writes a little otherwise than the store, in a fleet of any size. */
class NamesAlikeTest {
    private static final int TRUCKS = 20_000;

    @TempDir
    private Path folder;

    @Test
    void aFleetOfTwentyThousandTrucksIsRecognisedByARule() throws IOException {
        KnownNames known = new KnownNames(Map.of(
                "truck",
                IntStream.range(0, TRUCKS)
                        .mapToObj(i -> String.format("T-%05d", i))
                        .toList()));
        Path file = Files.writeString(
                folder.resolve("export.csv"),
                "Kennung,Date,Odometer (km)\n"
                        + IntStream.range(0, TRUCKS)
                                .mapToObj(i -> String.format("t %05d,2026-03-01,%d", i, 1_000 + i))
                                .collect(Collectors.joining("\n")));
        Proposal proposal = new Proposer(known).propose(file, Said.NOTHING);
        assertThat(proposal.match().columns().get(0).column()).isEqualTo("truck");
        assertThat(proposal.match().open()).containsExactly("column \"Kennung\"");
        assertThat(proposal.questions())
                .filteredOn(question -> question.id().equals("names:Kennung"))
                .extracting(Question::evidence)
                .singleElement()
                .asString()
                .contains(
                        "differ from a stored name in case, spaces or signs only, such as \"t 00000\" from \"T-00000\"");

        FileMatch match = answered(proposal, "q.names:Kennung", "similar");
        String text = MatchFile.text(match, Map.of());
        assertThat(text).contains("\"Kennung\": {to: \"truck\", names: \"similar\"}");
        assertThat(MatchText.parse(Path.of("x.match.yaml"), text)).isEqualTo(match);
        List<Reading> read = ReadRows.of(file, known, match).of(Reading.class);
        assertThat(read).hasSize(TRUCKS);
        assertThat(read.get(TRUCKS - 1).truck()).isEqualTo("T-19999");
        assertThat(new Proposer(known).preview(file, match, 1).rows().get(0).cells())
                .contains("T-00000");
    }

    @Test
    void aNameThatTwoStoredNamesMayBeStaysAsItIs() {
        KnownNames known = new KnownNames(Map.of("truck", List.of("T-11 8", "T-118", "T-2")));
        assertThat(known.alike("truck", "t118")).isEmpty();
        assertThat(known.alike("truck", "T-118")).contains("T-118");
        assertThat(known.alike("truck", "t 2")).contains("T-2");
    }

    @Test
    void namesMayBeTakenAsTheyAre() throws IOException {
        KnownNames known = new KnownNames(Map.of("truck", List.of("T-1", "T-2")));
        Path file = Files.writeString(folder.resolve("readings.csv"), "Unit,Date,Odometer km\nt 1,2026-03-01,1000\n");
        Proposal proposal = new Proposer(known).propose(file, Said.NOTHING);
        assertThat(proposal.match().columns().get(0).namesAlike()).isTrue();
        FileMatch exact = answered(proposal, "q.names:Unit", "exact");
        assertThat(ReadRows.of(file, known, exact).of(Reading.class))
                .extracting(Reading::truck)
                .containsExactly("t 1");
    }

    private static FileMatch answered(Proposal proposal, String question, String answer) {
        return Answers.apply(proposal, Map.of(question, List.of(answer), "m0", List.of("truck")));
    }
}
