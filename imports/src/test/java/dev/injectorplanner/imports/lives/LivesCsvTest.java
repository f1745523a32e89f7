package dev.injectorplanner.imports.lives;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.injectorplanner.core.life.EffectRecords;
import dev.injectorplanner.core.life.LifeRecords;
import dev.injectorplanner.core.life.RepeatHistory;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LivesCsvTest {
    @TempDir
    private Path folder;

    private Path file(String... lines) throws IOException {
        Path file = folder.resolve("lives.csv");
        Files.write(file, List.of(lines), StandardCharsets.UTF_8);
        return file;
    }

    private static List<String> complaints(ThrowingCallable call) {
        LivesRefusedException refused = catchThrowableOfType(LivesRefusedException.class, call);
        assertThat(refused).isNotNull();
        return refused.complaints();
    }

    @Test
    void headingsInAnyOrderAndCase() throws Exception {
        ReadLives<LifeRecords> read =
                LivesCsv.lives(file("Count, EXIT ,depot,event,Entry", "2,120.5,North,1,0", "1,3e4,\"So,uth\",0,100"));
        LifeRecords lives = read.data();
        assertThat(lives.size()).isEqualTo(2);
        assertThat(lives.count(0)).isEqualTo(2);
        assertThat(lives.exit(1)).isEqualTo(30_000);
        assertThat(lives.entry(1)).isEqualTo(100);
        assertThat(lives.isEvent(0)).isTrue();
        assertThat(lives.eventCount()).isEqualTo(2);
        assertThat(lives.suspensionCount()).isEqualTo(1);
        assertThat(read.remarks()).containsExactly("lives.csv: column \"depot\" is not used.");
    }

    @Test
    void aByteOrderMarkAndBlankLinesAreNoTrouble() throws Exception {
        LifeRecords lives =
                LivesCsv.lives(file("\uFEFFexit,event", "", "5,1", "", "6,0")).data();
        assertThat(lives.size()).isEqualTo(2);
        assertThat(lives.hasDelayedEntry()).isFalse();
    }

    @Test
    void everyBadCellHasItsOwnLine() throws Exception {
        Path file =
                file("entry,exit,event,count", "0,12 500,1,1", "-3,5,2,1.5", "7,7,0,1", "0,,1,0", "0,NaN,1,1", "0,5,1");
        assertThat(complaints(() -> LivesCsv.lives(file)))
                .containsExactly(
                        "lives.csv, line 2, column exit: \"12 500\" is not a plain number. Fix: write it like 12500 or"
                                + " 0.25, without thousands separators or units.",
                        "lives.csv, line 3, column entry: \"-3\" is below zero. Fix: enter zero or more.",
                        "lives.csv, line 3, column event: \"2\" is neither 1 nor 0. Fix: enter 1 for a failure, 0 for a"
                                + " unit still working.",
                        "lives.csv, line 3, column count: \"1.5\" is not a whole number of 1 or more. Fix: enter the"
                                + " number of units the row represents.",
                        "lives.csv, line 4, column entry: \"7\" is not below the exit 7. Fix: correct entry or exit.",
                        "lives.csv, line 5, column exit: \"\" is empty. Fix: enter a number, or remove the row.",
                        "lives.csv, line 5, column count: \"0\" is not a whole number of 1 or more. Fix: enter the"
                                + " number of units the row represents.",
                        "lives.csv, line 6, column exit: \"NaN\" is not a plain number. Fix: write it like 12500 or"
                                + " 0.25, without thousands separators or units.",
                        "lives.csv, line 7 has 3 cells, but there are 4 headings. Fix: check for a missing or extra"
                                + " comma.");
    }

    @Test
    void filesThatAreNoTable() throws Exception {
        assertThat(complaints(() -> LivesCsv.lives(folder.resolve("none.csv"))).get(0))
                .contains("no such file");
        assertThat(complaints(() -> LivesCsv.lives(file())))
                .containsExactly(
                        "lives.csv is empty. Fix: give it a line of headings, with exit, event among them, and one"
                                + " line per injector life.");
        assertThat(complaints(() -> LivesCsv.lives(file("exit,event"))).get(0)).contains("no rows");
        assertThat(complaints(() -> LivesCsv.lives(file("exit;event", "5;1"))).get(0))
                .contains("semicolons");
        assertThat(complaints(() -> LivesCsv.lives(file("time,event", "5,1"))))
                .containsExactly("lives.csv has no column \"exit\"; its headings are time, event. Fix: name the column"
                        + " \"exit\" in the first line.");
        assertThat(complaints(() -> LivesCsv.lives(file("exit,event,Exit", "5,1,5")))
                        .get(0))
                .contains("twice");
    }

    @Test
    void manyBadCellsAreCountedNotAllListed() throws Exception {
        String[] lines = new String[251];
        lines[0] = "exit,event";
        java.util.Arrays.fill(lines, 1, 251, "x,1");
        List<String> complaints = complaints(() -> LivesCsv.lives(file(lines)));
        assertThat(complaints).hasSize(101);
        assertThat(complaints.get(100)).isEqualTo("... and 150 more like these.");
    }

    @Test
    void repeatsGatherByUnit() throws Exception {
        List<RepeatHistory> units = LivesCsv.repeats(
                        file("unit,age,what", "T1,50,event", "T2,80,End", "T1,90,end", "T1,20,EVENT"))
                .data();
        assertThat(units).extracting(RepeatHistory::unit).containsExactly("T1", "T2");
        assertThat(units.get(0).eventAges()).containsExactly(20, 50);
        assertThat(units.get(1).endAge()).isEqualTo(80);
    }

    @Test
    void repeatsThatDoNotHangTogether() throws Exception {
        Path file = file("unit,age,what", "A,5,event", "B,9,end", "B,10,event", "B,12,end", "C,1,stop");
        assertThat(complaints(() -> LivesCsv.repeats(file)))
                .containsExactly(
                        "lives.csv, line 5, column what: \"end\" is the second end of unit B. Fix: keep the row of the"
                                + " day it was last seen.",
                        "lives.csv, line 6, column what: \"stop\" is neither event nor end. Fix: enter event for a"
                                + " failure, end for when last seen.");
        Path loose = file("unit,age,what", "A,5,event", "B,9,end", "B,10,event");
        assertThat(complaints(() -> LivesCsv.repeats(loose)))
                .containsExactly(
                        "lives.csv: unit A has no end. Fix: add a row with what = end and its age when last seen.",
                        "lives.csv, line 4: the event of unit B lies beyond its end. Fix: correct the age of the event"
                                + " or of the end.");
    }

    @Test
    void effectsTakeEveryOtherColumnAsCovariate() throws Exception {
        EffectRecords records = LivesCsv.effects(
                        file("id,Fault Count,start,stop,event,drift", "a,2,0,10,0,-0.5", "a,3,10,15,1,0.25"))
                .data();
        assertThat(records.names()).containsExactly("Fault Count", "drift");
        assertThat(records.covariate(0, 1)).isEqualTo(3);
        assertThat(records.covariate(1, 0)).isEqualTo(-0.5);
        assertThat(records.start(1)).isEqualTo(10);
        Path file = file("stop,event,colour", "5,1,red", "5,0,3");
        assertThat(complaints(() -> LivesCsv.effects(file)))
                .singleElement()
                .asString()
                .startsWith("lives.csv, line 2, column colour: \"red\" is not a plain number.");
    }

    @Test
    void anOpenQuoteIsRefusedInWords() throws Exception {
        Path file = file("exit,event", "5,1", "\"6,0", "7,1");
        assertThat(complaints(() -> LivesCsv.lives(file)).get(0)).startsWith("lives.csv");
    }
}
