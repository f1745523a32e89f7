package dev.injectorplanner.app.drop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import dev.injectorplanner.app.drop.DropResult.Outcome;
import dev.injectorplanner.app.intake.Intake;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.testkit.Database;
import dev.injectorplanner.app.testkit.MovedClock;
import dev.injectorplanner.app.testkit.TruckLogs;
import dev.injectorplanner.imports.j1939.TroubleCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DropFolderTest {
    private static final Instant NOW = Instant.parse("2026-03-02T05:00:00Z");
    private static final String GOOD = "depot,part,on_hand\nNorth,INJ-4R,5\n";
    private static final String HALF_GOOD = "depot,part,on_hand\nNorth,INJ-4R,6\nNorth,INJ-4R-X,-1\n";

    @TempDir
    private Path folder;

    private final Store store = Database.HSQLDB.empty();
    private final MovedClock clock = new MovedClock(NOW);
    private DropFolder drop;

    @BeforeEach
    void open() {
        drop = node("one");
    }

    @Test
    void a_whole_file_is_loaded_and_moved_to_done() throws IOException {
        put("stock.csv", GOOD);
        List<DropResult> all = drop.pass();
        assertThat(all)
                .extracting(DropResult::name, DropResult::outcome)
                .containsExactly(tuple("stock.csv", Outcome.DONE));
        assertThat(all.get(0).words()).isEqualTo("stock.csv: 1 rows read, none refused.");
        assertThat(folder.resolve("done/stock.csv")).hasContent(GOOD);
        assertThat(files()).containsExactly("done/stock.csv");
        assertThat(store.snapshot().stock()).anyMatch(line -> line.onHand() == 5);
    }

    @Test
    void a_vehicle_log_is_loaded_by_its_name() throws IOException {
        Instant at = Instant.parse("2026-03-01T08:00:00Z");
        put(
                "T-1_2026-03-01.log",
                new TruckLogs().faults(at, 60, 0, new TroubleCode(653, 5, 1, 0)).text());
        put(
                "unknown.log",
                new TruckLogs().faults(at, 60, 0, new TroubleCode(653, 5, 1, 0)).text());
        assertThat(drop.pass())
                .extracting(DropResult::name, DropResult::outcome)
                .containsExactlyInAnyOrder(
                        tuple("T-1_2026-03-01.log", Outcome.DONE), tuple("unknown.log", Outcome.REFUSED));
        assertThat(Files.readString(folder.resolve("refused/unknown.report.txt")))
                .contains("cannot be given to a truck", "Fix: ");
        assertThat(store.snapshot().faults())
                .anyMatch(fault -> fault.isEpisode()
                        && fault.seenAt().equals(at)
                        && fault.until().equals(at.plusSeconds(59)));
    }

    @Test
    void refused_rows_lie_beside_their_file() throws IOException {
        put("stock.csv", HALF_GOOD);
        DropResult dropped = drop.pass().get(0);
        assertThat(dropped.outcome()).isEqualTo(Outcome.REFUSED);
        assertThat(dropped.words()).contains("1 refused. Fix: ");
        assertThat(files())
                .containsExactly("refused/stock.csv", "refused/stock.refused.csv", "refused/stock.report.txt");
        assertThat(Files.readString(folder.resolve("refused/stock.report.txt"))).contains("line 3", "Fix: ");
        assertThat(store.snapshot().stock()).as("the good row is in").anyMatch(line -> line.onHand() == 6);
    }

    @Test
    void a_file_that_is_no_table_is_refused_with_the_reason_beside_it() throws IOException {
        put("notes.csv", "just some words\n");
        assertThat(drop.pass().get(0).outcome()).isEqualTo(Outcome.REFUSED);
        assertThat(files()).containsExactly("refused/notes.csv", "refused/notes.report.txt");
        assertThat(Files.readString(folder.resolve("refused/notes.report.txt"))).contains("Fix: ");
    }

    @Test
    void names_that_clash_get_a_number() throws IOException {
        for (int time = 0; time < 3; time++) {
            put("stock.csv", HALF_GOOD);
            drop.pass();
        }
        assertThat(files())
                .contains(
                        "refused/stock.csv",
                        "refused/stock-2.csv",
                        "refused/stock-3.csv",
                        "refused/stock-3.refused.csv");
    }

    @Test
    void corrected_rows_go_in_beside_their_original() throws IOException {
        put("stock.csv", HALF_GOOD);
        drop.pass();
        Files.move(folder.resolve("refused/stock.csv"), folder.resolve("stock.csv"));
        String rows = Files.readString(folder.resolve("refused/stock.refused.csv"));
        put("stock.refused.csv", rows.replace("INJ-4R-X", "SEAL-1").replace(",-1", ",9"));
        age(folder.resolve("stock.csv"));
        assertThat(drop.pass()).hasSize(2);
        assertThat(files()).contains("done/stock-corrected.csv");
        assertThat(store.snapshot().stock()).anyMatch(line -> line.part().equals("SEAL-1") && line.onHand() == 9);
    }

    @Test
    void a_file_that_is_being_written_is_waited_for() throws IOException {
        Path file = put("stock.csv", "depot,part,on_hand\n");
        Files.setLastModifiedTime(file, FileTime.from(NOW.minusSeconds(5)));
        assertThat(drop.pass().get(0).outcome()).isEqualTo(Outcome.WAITING);
        clock.move(Duration.ofSeconds(40));
        Files.writeString(file, "North,INJ-4R,8\n", StandardOpenOption.APPEND);
        Files.setLastModifiedTime(file, FileTime.from(NOW.minusSeconds(500))); // a copy that keeps the old time
        assertThat(drop.pass().get(0).words()).isEqualTo("stock.csv is not complete yet: it is still growing.");
        assertThat(drop.pass().get(0).outcome()).isEqualTo(Outcome.DONE);
    }

    @Test
    void a_writer_whose_clock_runs_ahead_is_not_waited_for_for_ever() throws IOException {
        Files.setLastModifiedTime(put("stock.csv", GOOD), FileTime.from(NOW.plus(Duration.ofDays(2))));
        assertThat(drop.pass().get(0).outcome()).isEqualTo(Outcome.WAITING);
        clock.move(Duration.ofSeconds(31));
        assertThat(drop.pass().get(0).outcome()).isEqualTo(Outcome.DONE);
    }

    @Test
    void half_a_workbook_is_waited_for_and_refused_in_the_end() throws IOException {
        Path file = put("stock.xlsx", "PK\u0003\u0004 and so on, without an end");
        assertThat(drop.pass().get(0).words())
                .isEqualTo("stock.xlsx is not complete yet: the workbook is not complete yet.");
        clock.move(DropSettings.DEAD_AFTER);
        DropResult dropped = drop.pass().get(0);
        assertThat(dropped.outcome()).isEqualTo(Outcome.REFUSED);
        assertThat(file).doesNotExist();
    }

    @Test
    void names_of_unfinished_files_are_waited_for() throws IOException {
        put("stock.csv.part", GOOD);
        put(".stock.csv", GOOD);
        put("~$stock.xlsx", GOOD);
        assertThat(drop.pass())
                .extracting(DropResult::outcome)
                .containsOnly(Outcome.WAITING)
                .hasSize(3);
    }

    @Test
    void folders_and_links_are_left_alone_with_a_word() throws IOException {
        Path outside = Files.writeString(folder.resolveSibling(folder.getFileName() + "-outside.csv"), GOOD);
        Files.createDirectory(folder.resolve("archive"));
        Files.createSymbolicLink(folder.resolve("stock.csv"), outside);
        assertThat(drop.pass())
                .extracting(DropResult::words)
                .containsExactly(
                        "archive is a folder and is ignored. Fix: put the file itself here.",
                        "stock.csv is a link and is ignored. Fix: put the file itself here.");
        assertThat(outside).exists();
        Files.delete(outside);
    }

    @Test
    void what_a_dead_node_had_taken_is_taken_back_and_a_living_ones_is_not() throws IOException {
        TakenFolder dead = new TakenFolder(folder.resolve("taken"), "dead");
        dead.beat(NOW);
        dead.take(put("stock.csv", GOOD));
        clock.move(DropSettings.DEAD_AFTER);
        assertThat(drop.pass()).isEmpty();
        clock.move(Duration.ofSeconds(1));
        assertThat(drop.pass()).extracting(DropResult::outcome).containsExactly(Outcome.DONE);
        assertThat(files()).containsExactly("done/stock.csv");
    }

    private DropFolder node(String name) {
        return new DropFolder(new Intake(store), DropSettings.standard(folder), name, clock);
    }

    /** A file that has lain there for a minute. */
    private Path put(String name, String content) throws IOException {
        Path file = Files.writeString(folder.resolve(name), content);
        return age(file);
    }

    private Path age(Path file) throws IOException {
        return Files.setLastModifiedTime(file, FileTime.from(clock.instant().minusSeconds(60)));
    }

    private List<String> files() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString())
                    .sorted()
                    .toList();
        }
    }
}
