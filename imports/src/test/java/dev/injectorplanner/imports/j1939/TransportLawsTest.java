package dev.injectorplanner.imports.j1939;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.imports.j1939.BusEncoder.Frame;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Laws of the transport protocol (SAE J1939-21), on made-up traffic. The seed is in each message. */
class TransportLawsTest {
    private static final int DM1 = J1939Decoder.ACTIVE_FAULTS;
    private static final long APART = 60_000;

    @Test
    void whatIsWrittenIsRead() {
        for (int seed = 0; seed < 400; seed++) {
            Random random = new Random(seed);
            List<TroubleCode> codes = codes(random, random.nextInt(120));
            int lamps = random.nextInt(256);
            byte[] payload = BusEncoder.faults(lamps, 0xFF, codes);
            Decoded decoded = new Decoded();
            int source = random.nextInt(254);
            boolean toOne = payload.length > 8 && random.nextBoolean();
            int pgn = random.nextBoolean() ? DM1 : J1939Decoder.PREVIOUS_FAULTS;
            decoded.frames(
                    toOne
                            ? BusEncoder.connection(0, APART, pgn, source, 249, payload)
                            : BusEncoder.broadcast(0, APART, pgn, source, payload));
            assertThat(decoded.faults).as("seed %d", seed).hasSize(1);
            FaultMessage message = decoded.faults.get(0);
            assertThat(message.codes()).as("seed %d", seed).isEqualTo(codes);
            assertThat(message.source()).isEqualTo(source);
            assertThat(message.kind() == FaultMessage.Kind.ACTIVE).isEqualTo(pgn == DM1);
            assertThat(message.lamps()).isEqualTo(Lamps.of(lamps, 0xFF));
            assertThat(decoded.decoder.lostMessages()).isZero();
        }
    }

    /** Codes that are neither all 0 nor all 0xFF, which stand for none. */
    private static List<TroubleCode> codes(Random random, int count) {
        List<TroubleCode> codes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            codes.add(new TroubleCode(
                    1 + random.nextInt((1 << 19) - 2), random.nextInt(31), random.nextInt(128), random.nextInt(2)));
        }
        return codes;
    }

    /** Many ECUs send at once, each in its own order: every message arrives, as it was sent. */
    @Test
    void sessionsOfSeveralAddressesDoNotMix() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            TreeMap<Integer, List<TroubleCode>> sent = new TreeMap<>();
            List<Frame> frames = new ArrayList<>();
            for (int source = 0; source < 20; source++) {
                List<TroubleCode> codes = codes(random, 2 + random.nextInt(30));
                sent.put(source, codes);
                byte[] payload = BusEncoder.faults(0, 0xFF, codes);
                long start = random.nextInt(400_000);
                frames.addAll(
                        random.nextBoolean()
                                ? BusEncoder.connection(start, APART, DM1, source, 200 + random.nextInt(3), payload)
                                : BusEncoder.broadcast(start, APART, DM1, source, payload));
            }
            frames.sort(Comparator.comparingLong(Frame::micros));
            Decoded decoded = new Decoded().frames(frames);
            TreeMap<Integer, List<TroubleCode>> read = new TreeMap<>();
            decoded.faults.forEach(message -> read.put(message.source(), message.codes()));
            assertThat(decoded.faults).as("seed %d", seed).hasSize(20);
            assertThat(read).as("seed %d", seed).isEqualTo(sent);
        }
    }

    /** Whatever frames are lost, repeated or swapped: a message arrives as it was sent or not at all. */
    @Test
    void aDamagedMessageIsNeverReadAsAnother() {
        int whole = 0;
        for (int seed = 0; seed < 2_000; seed++) {
            Random random = new Random(seed);
            List<TroubleCode> codes = codes(random, 2 + random.nextInt(12));
            List<Frame> frames =
                    new ArrayList<>(BusEncoder.broadcast(0, APART, DM1, 0, BusEncoder.faults(0, 0xFF, codes)));
            int at = random.nextInt(frames.size());
            switch (random.nextInt(3)) {
                case 0 -> frames.remove(at);
                case 1 -> frames.add(at, frames.get(random.nextInt(frames.size())));
                default -> frames.add(frames.remove(at));
            }
            Decoded decoded = new Decoded().frames(frames);
            decoded.decoder.end();
            decoded.faults.forEach(message -> assertThat(message.codes()).isEqualTo(codes));
            assertThat(decoded.faults.size()).as("seed %d", seed).isLessThanOrEqualTo(1);
            whole += decoded.faults.size();
        }
        assertThat(whole).as("a repeated or a moved last frame does no harm").isBetween(100, 700);
    }

    @Test
    void aMissingPacketOfABroadcastLosesTheMessage() {
        List<Frame> frames = new ArrayList<>(broadcast());
        frames.remove(2);
        assertLost(frames);
    }

    @Test
    void packetsOutOfOrderLoseABroadcast() {
        List<Frame> frames = new ArrayList<>(broadcast());
        frames.add(1, frames.remove(2));
        assertLost(frames);
    }

    @Test
    void aNewBroadcastTakesThePlaceOfOneThatIsNotWhole() {
        List<Frame> frames = new ArrayList<>(broadcast().subList(0, 2));
        frames.addAll(broadcast());
        Decoded decoded = new Decoded().frames(frames);
        assertThat(decoded.faults).hasSize(1);
        assertThat(decoded.decoder.lostMessages()).isEqualTo(1);
    }

    @Test
    void aSizeThatDoesNotFitItsPacketsIsRefused() {
        Decoded decoded = new Decoded().frame("18ECFF00", "20 12 00 04 FF CA FE 00");
        assertThat(decoded.decoder.lostMessages()).isEqualTo(1);
    }

    @Test
    void silenceEndsASession() {
        byte[] payload = BusEncoder.faults(0, 0xFF, codes(new Random(5), 3));
        assertThat(new Decoded().frames(BusEncoder.broadcast(0, 750_000, DM1, 0, payload)).faults)
                .hasSize(1);
        assertLost(BusEncoder.broadcast(0, 750_001, DM1, 0, payload));
        assertThat(new Decoded().frames(BusEncoder.connection(0, 1_250_000, DM1, 0, 249, payload)).faults)
                .hasSize(1);
        assertLost(BusEncoder.connection(0, 1_250_001 * 2, DM1, 0, 249, payload));
    }

    @Test
    void anAbortOfEitherSideEndsAConnection() {
        byte[] payload = BusEncoder.faults(0, 0xFF, codes(new Random(5), 5));
        for (boolean bySender : List.of(true, false)) {
            List<Frame> frames = new ArrayList<>(BusEncoder.connection(0, APART, DM1, 0, 249, payload));
            frames.add(3, BusEncoder.abort(APART * 2, DM1, bySender ? 0 : 249, bySender ? 249 : 0));
            assertLost(frames);
        }
    }

    /** The receiver of a connection asks for a packet again: it comes late, and the message is whole. */
    @Test
    void aConnectionMayRepeatPackets() {
        List<TroubleCode> codes = codes(new Random(5), 5);
        List<Frame> frames =
                new ArrayList<>(BusEncoder.connection(0, APART, DM1, 0, 249, BusEncoder.faults(0, 0xFF, codes)));
        Frame early = frames.remove(3);
        frames.add(4, early);
        frames.add(4, frames.get(2));
        Decoded decoded = new Decoded().frames(frames);
        assertThat(decoded.faults).hasSize(1);
        assertThat(decoded.faults.get(0).codes()).isEqualTo(codes);
    }

    private static List<Frame> broadcast() {
        return BusEncoder.broadcast(0, APART, DM1, 0, BusEncoder.faults(0, 0xFF, codes(new Random(1), 6)));
    }

    private static void assertLost(List<Frame> frames) {
        Decoded decoded = new Decoded().frames(frames);
        decoded.decoder.end();
        assertThat(decoded.faults).isEmpty();
        assertThat(decoded.decoder.lostMessages()).isEqualTo(1);
    }
}
