package dev.injectorplanner.imports.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.imports.j1939.BusEncoder;
import dev.injectorplanner.imports.j1939.BusEncoder.Frame;
import dev.injectorplanner.imports.j1939.LogWriter;
import dev.injectorplanner.imports.j1939.TroubleCode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Repeated reports become episodes, broadcast meters become readings. */
class EpisodesTest {
    private static final long START = Instant.parse("2026-03-02T08:00:00Z").getEpochSecond();
    private static final int DM1 = 65_226;
    private static final int DM2 = 65_227;

    @TempDir
    private Path folder;

    private final List<Frame> frames = new ArrayList<>();

    private void faults(int pgn, long second, TroubleCode... codes) {
        frames.addAll(BusEncoder.broadcast(
                (START + second) * 1_000_000, 50_000, pgn, 0, BusEncoder.faults(4, 255, List.of(codes))));
    }

    private static TroubleCode injector3(int count) {
        return new TroubleCode(653, 5, count, 0);
    }

    private void km(long second, double km) {
        long bits = Math.round(km * 8);
        frames.add(new Frame((START + second) * 1_000_000, 0x18FEE000, new byte[] {
            0, 0, 0, 0, (byte) bits, (byte) (bits >> 8), (byte) (bits >> 16), (byte) (bits >> 24)
        }));
    }

    private void fineKm(long second, int source, double km) {
        long bits = Math.round(km * 200);
        frames.add(new Frame((START + second) * 1_000_000, 0x18FEC100 | source, new byte[] {
            (byte) bits, (byte) (bits >> 8), (byte) (bits >> 16), (byte) (bits >> 24), -1, -1, -1, -1
        }));
    }

    private void hours(long second, int source, double hours) {
        long bits = Math.round(hours * 20);
        frames.add(new Frame((START + second) * 1_000_000, 0x18FEE500 | source, new byte[] {
            (byte) bits, (byte) (bits >> 8), (byte) (bits >> 16), (byte) (bits >> 24), -1, -1, -1, -1
        }));
    }

    private TruckLog read() throws IOException {
        Path file = Files.write(folder.resolve("truck.log"), LogWriter.candump(frames));
        return VehicleLog.read(file, ZoneOffset.UTC, LogRouting.all("T-1"), LogListener.SILENT)
                .trucks()
                .get(0);
    }

    /** A DM1 goes out once a second: 90,000 of them are 25 hours with one fault. */
    @Test
    void ninetyThousandFramesOfOneFaultAreOneEpisode() throws IOException {
        for (int second = 0; second < 90_000; second++) {
            faults(DM1, second, injector3(7));
        }
        List<Episode> episodes = read().episodes();
        assertThat(episodes).hasSize(1);
        Episode only = episodes.get(0);
        assertThat(only.code().text()).isEqualTo("SPN 653 FMI 5");
        assertThat(only.first()).isEqualTo(Instant.ofEpochSecond(START));
        assertThat(only.last()).isEqualTo(Instant.ofEpochSecond(START + 89_999));
        assertThat(only.count()).isEqualTo(1);
        assertThat(only.reports()).isEqualTo(90_000);
    }

    @Test
    void silenceOfMoreThanHalfAnHourBeginsANewEpisode() throws IOException {
        faults(DM1, 0, injector3(7));
        faults(DM1, 1_800, injector3(7));
        faults(DM1, 3_601, injector3(8));
        faults(DM1, 3_602, injector3(10));
        List<Episode> episodes = read().episodes();
        assertThat(episodes).extracting(Episode::count).containsExactly(1, 3);
        assertThat(episodes.get(1).first()).isEqualTo(Instant.ofEpochSecond(START + 3_601));
    }

    @Test
    void aCounterThatWasClearedCountsFromNothing() throws IOException {
        faults(DM1, 0, injector3(40));
        faults(DM1, 10, injector3(42));
        faults(DM1, 20, injector3(3));
        assertThat(read().episodes()).extracting(Episode::count).containsExactly(6);
    }

    /** 127: the ECU does not count. What counts then is how often the fault turned active. */
    @Test
    void withoutACounterActivationsCount() throws IOException {
        for (int second = 0; second < 30; second++) {
            if (second % 10 < 7) {
                faults(DM1, second, injector3(127));
            } else {
                faults(DM1, second);
            }
        }
        List<Episode> episodes = read().episodes();
        assertThat(episodes).extracting(Episode::count).containsExactly(3);
        assertThat(episodes).extracting(Episode::reports).containsExactly(21L);
    }

    @Test
    void previouslyActiveFaultsAreNoEpisodesUnlessTheyCameAgain() throws IOException {
        faults(DM2, 0, injector3(5));
        faults(DM2, 5_000, injector3(5));
        assertThat(read().episodes()).isEmpty();
        faults(DM2, 9_000, injector3(7));
        assertThat(read().episodes()).extracting(Episode::count).containsExactly(2);
    }

    @Test
    void aCounterKnownFromBeforeGivesTheRise() throws IOException {
        faults(DM2, 0, injector3(5));
        faults(DM1, 100, injector3(9));
        assertThat(read().episodes()).extracting(Episode::count).containsExactly(4);
    }

    /** 200,000 km at 0 s, 200,010 km at 1,000 s: 200,004 km at 400 s. */
    @Test
    void odometerBetweenTwoReadings() throws IOException {
        km(0, 200_000);
        faults(DM1, 400, injector3(1));
        km(1_000, 200_010);
        Double odometer = read().episodes().get(0).odometerKm();
        assertThat(odometer).isEqualTo(200_004);
    }

    @Test
    void noOdometerFarFromAnyReading() throws IOException {
        faults(DM1, 0, injector3(1));
        km(601, 200_000);
        assertThat(read().episodes().get(0).odometerKm()).isNull();
    }

    @Test
    void theLastMetersOfEachDayAreReadings() throws IOException {
        long day = 86_400;
        for (int second = 0; second < 3 * day; second += 600) {
            km(second, 200_000 + second / 100.0);
            hours(second + 1, 0, 5_000 + second / 3_600.0);
        }
        List<MeterReading> readings = read().readings();
        assertThat(readings).hasSize(4);
        assertThat(readings.get(0).takenAt()).isEqualTo(Instant.parse("2026-03-02T23:50:00Z"));
        assertThat(readings.get(0).odometerKm()).isEqualTo(200_570);
        assertThat(readings.get(0).engineHours()).isEqualTo(5_015.85);
    }

    @Test
    void highResolutionAndTheEnginesOwnHoursCount() throws IOException {
        km(0, 200_000.125);
        hours(0, 39, 4_000);
        fineKm(1, 0, 200_000.2);
        fineKm(2, 23, 199_900);
        hours(2, 0, 5_000);
        km(3, 200_000.125);
        List<MeterReading> readings = read().readings();
        assertThat(readings).hasSize(1);
        assertThat(readings.get(0).odometerKm()).isEqualTo(200_000.2);
        assertThat(readings.get(0).engineHours()).isEqualTo(5_000);
    }

    /** A log of a year, a point a second thinned to a few thousand: the odometer is still right to a few metres. */
    @Test
    void aLongLogKeepsItsOdometer() {
        OdometerTrack track = new OdometerTrack();
        for (long second = 0; second < 2_000_000; second += 10) {
            track.add(second * 1_000_000, 0, 100_000 + second * 0.02, false);
        }
        assertThat(track.at(1_234_567L * 1_000_000))
                .isCloseTo(100_000 + 1_234_567 * 0.02, org.assertj.core.data.Offset.offset(0.001));
        assertThat(track.at(1_999_985L * 1_000_000))
                .isCloseTo(100_000 + 1_999_985 * 0.02, org.assertj.core.data.Offset.offset(0.001));
    }

    @Test
    void vinsByAddress() throws IOException {
        byte[] vin = "1M8GDM9AXKP042788*".getBytes(StandardCharsets.US_ASCII);
        frames.addAll(BusEncoder.broadcast(START * 1_000_000, 50_000, 65_260, 0, vin));
        Path file = Files.write(folder.resolve("truck.log"), LogWriter.candump(frames));
        assertThat(VehicleLog.read(file, ZoneOffset.UTC, LogRouting.all(""), LogListener.SILENT)
                        .vins())
                .containsEntry(0, "1M8GDM9AXKP042788");
    }
}
