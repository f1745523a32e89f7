package dev.injectorplanner.imports.bus;

import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;

/** A log of frames: {@code candump -L} lines, timestamped hex tables, pcapng or pcap of SocketCAN. */
public final class BusLog {
    private static final int LOOKED_AT = 16_384;
    private static final int BUFFER = 1 << 16;

    private BusLog() {}

    /** Whether a file is such a log, by its first bytes: a capture, or lines of which four in five are frames. */
    public static boolean isLog(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] head = in.readNBytes(LOOKED_AT);
            return Captures.isCapture(head) || TextFrames.looksLikeFrames(head);
        } catch (IOException e) {
            return false; // whoever reads it as a table says why it cannot be read
        }
    }

    /**
     * Reads a log to its end.
     *
     * @param zone what times without an offset are read in
     * @return what was counted; damaged lines are left out
     * @throws FileRefusedException if the file cannot be read, or is a capture of something else
     */
    public static LogTally read(Path file, ZoneId zone, FrameSink sink) {
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file), BUFFER)) {
            return read(file, in, zone, sink);
        } catch (IOException e) {
            throw new FileRefusedException(file, "cannot be read", "check its name and your permission to read it", e);
        }
    }

    /** The same of a stream; {@code name} is what complaints call it. */
    public static LogTally read(Path name, InputStream in, ZoneId zone, FrameSink sink) throws IOException {
        LogTally tally = new LogTally();
        InputStream marked = in.markSupported() ? in : new BufferedInputStream(in, BUFFER);
        marked.mark(Captures.MAGIC_BYTES);
        byte[] magic = marked.readNBytes(Captures.MAGIC_BYTES);
        marked.reset();
        if (Captures.isCapture(magic)) {
            new Captures(name, marked, sink, tally).read();
        } else {
            new TextFrames(zone, sink, tally).read(marked);
        }
        return tally;
    }
}
