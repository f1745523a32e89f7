package dev.injectorplanner.imports.j1939;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Messages that others have published with their meaning. Sources: published/j1939.md. */
class PublishedMessagesTest {
    @Test
    void troubleCodes() {
        for (String[] row : PublishedRows.of("j1939_trouble_codes.csv")) {
            TroubleCode code = TroubleCode.of(Decoded.bytes(row[0]), 0, SpnLayout.VERSION_4);
            assertThat(List.of(code.spn(), code.fmi(), code.count(), code.conversionBit()))
                    .as(row[0])
                    .isEqualTo(numbers(row, 1));
        }
    }

    @Test
    void earlierLayouts() {
        for (String[] row : PublishedRows.of("j1939_spn_layouts.csv")) {
            byte[] bytes = Decoded.bytes(row[0]);
            for (int version = 1; version <= 4; version++) {
                TroubleCode code = TroubleCode.of(bytes, 0, SpnLayout.of(version));
                assertThat(code.spn())
                        .as("%s in version %d", row[0], version)
                        .isEqualTo(Integer.parseInt(row[Math.min(version, 3)]));
                assertThat(List.of(code.fmi(), code.count(), code.conversionBit()))
                        .isEqualTo(numbers(row, 4));
            }
        }
    }

    @Test
    void faultMessagesWithTheirLamps() {
        for (String[] row : PublishedRows.of("j1939_dm1.csv")) {
            FaultMessage message = new Decoded().frame(row[0], row[1]).faults.get(0);
            assertThat(message.source()).as(row[1]).isEqualTo(Integer.parseInt(row[2]));
            assertThat(states(message.lamps()))
                    .as(row[1])
                    .isEqualTo(Arrays.asList(row).subList(3, 7));
            assertThat(codes(message)).as(row[1]).isEqualTo(row[7]);
        }
    }

    @Test
    void lamps() {
        List<String> names = List.of("mil", "red_stop", "amber_warning", "protect");
        for (String[] row : PublishedRows.of("j1939_lamps.csv")) {
            byte[] bytes = Decoded.bytes(row[0]);
            assertThat(states(Lamps.of(bytes[0] & 0xFF, bytes[1] & 0xFF)).get(names.indexOf(row[1])))
                    .as("%s %s", row[0], row[1])
                    .isEqualTo(row[2]);
        }
    }

    @Test
    void oneEngineLaysItsSpnsOutTheOldWay() {
        FaultMessage message = new Decoded(SpnLayout.VERSION_1)
                .frame("1CFECA27", "C1 FF FE 00 C2 01 FF FF")
                .faults
                .get(0);
        assertThat(codes(message)).isEqualTo("520198/2/1/0");
    }

    @Test
    void broadcastOfFourCodes() {
        Decoded decoded = new Decoded();
        PublishedRows.of("j1939_broadcasts.csv").forEach(row -> decoded.frame(row[1], row[2]));
        assertThat(decoded.faults).hasSize(1);
        assertThat(codes(decoded.faults.get(0))).isEqualTo("91/3/1/0 92/4/2/0 93/5/3/0 94/6/4/0");
        assertThat(decoded.decoder.lostMessages()).isZero();
    }

    @Test
    void broadcastsComeTogetherAsPublished() {
        StringBuilder payloads = new StringBuilder();
        for (String[] row : PublishedRows.of("j1939_broadcasts.csv")) {
            byte[] data = Decoded.bytes(row[2]);
            if (row[1].contains("EC")) {
                TransportSession session = new TransportSession(
                        0, Integer.parseInt(row[3]), true, data[1] & 0xFF | (data[2] & 0xFF) << 8, data[3]);
                for (String[] next : PublishedRows.of("j1939_broadcasts.csv")) {
                    if (next[0].equals(row[0]) && next[1].contains("EB")) {
                        assertThat(session.take(0, Decoded.bytes(next[2]), 8)).isTrue();
                    }
                }
                assertThat(session.isWhole()).isTrue();
                assertThat(Arrays.copyOf(session.data(), session.size())).isEqualTo(Decoded.bytes(row[4]));
                payloads.append(row[0]);
            }
        }
        assertThat(payloads).hasToString("12");
    }

    @Test
    void meters() {
        for (String[] row : PublishedRows.of("j1939_meters.csv")) {
            assertThat(new Decoded().frame(row[0], row[1]).meters)
                    .as(row[2])
                    .containsExactly(row[2] + " " + Double.parseDouble(row[3]));
        }
        assertThat(new Decoded()
                        .frame("18FEC100", "FF FF FF FF FF FF FF FF")
                        .frame("18FEE500", "00 00 00 FE FF FF FF FF")
                        .meters)
                .as("not available, in error")
                .isEmpty();
    }

    /** SAE J1939-71: text that ends with an asterisk; the number is the published example of 49 CFR 565. */
    @Test
    void vin() {
        byte[] text = "1M8GDM9AXKP042788*".getBytes(StandardCharsets.US_ASCII);
        assertThat(new Decoded().frames(BusEncoder.broadcast(0, 50_000, J1939Decoder.VIN, 0, text)).vins)
                .containsExactly("1M8GDM9AXKP042788");
    }

    private static List<Integer> numbers(String[] row, int from) {
        return Arrays.stream(row).skip(from).map(Integer::valueOf).toList();
    }

    private static List<String> states(Lamps lamps) {
        return List.of(
                lamps.malfunction().words(),
                lamps.redStop().words(),
                lamps.amberWarning().words(),
                lamps.protect().words());
    }

    private static String codes(FaultMessage message) {
        return message.codes().stream()
                .map(code -> code.spn() + "/" + code.fmi() + "/" + code.count() + "/" + code.conversionBit())
                .collect(Collectors.joining(" "));
    }
}
