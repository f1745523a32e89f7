package dev.injectorplanner.imports.bus;

import java.io.IOException;
import java.io.InputStream;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** Lines of a text, each a frame: {@code candump -L} lines by a way of their own, since logs have millions of them. */
final class TextFrames {
    private static final int BUFFER = 1 << 16;
    private static final int SAMPLE = 60;

    private final FrameSink sink;
    private final LogTally tally;
    private final LineParser parser;
    private long line;

    TextFrames(ZoneId zone, FrameSink sink, LogTally tally) {
        this.sink = sink;
        this.tally = tally;
        this.parser = new LineParser(zone);
    }

    /** Whether the start of a file reads as lines of frames. */
    static boolean looksLikeFrames(byte[] head) {
        LogTally tally = new LogTally();
        TextFrames frames = new TextFrames(ZoneOffset.UTC, (micros, id, extended, data, length) -> {}, tally);
        int from = 0;
        for (int at = 0; at < head.length && tally.lines() < SAMPLE; at++) {
            if (head[at] == '\n') {
                frames.line(head, from, at);
                from = at + 1;
            }
        }
        if (tally.lines() == 0 && from < head.length) {
            frames.line(head, from, head.length);
        }
        return tally.frames() > 0 && tally.frames() * 5 >= tally.lines() * 4;
    }

    void read(InputStream in) throws IOException {
        byte[] buffer = new byte[BUFFER];
        int filled = 0;
        boolean tooLong = false;
        int got = in.read(buffer, 0, BUFFER);
        while (got >= 0) {
            int from = 0;
            int end = filled + got;
            for (int at = filled; at < end; at++) {
                if (buffer[at] == '\n') {
                    tooLong = finished(buffer, from, at, tooLong);
                    from = at + 1;
                }
            }
            filled = end - from;
            if (filled == BUFFER) { // a line without end: nothing of it is kept
                tooLong = true;
                filled = 0;
            } else {
                System.arraycopy(buffer, from, buffer, 0, filled);
            }
            got = in.read(buffer, filled, BUFFER - filled);
        }
        if (filled > 0 || tooLong) {
            finished(buffer, 0, filled, tooLong);
        }
    }

    private boolean finished(byte[] buffer, int from, int to, boolean tooLong) {
        if (tooLong) {
            line++;
            tally.line();
            tally.damage("line " + line, "has more than " + BUFFER + " characters");
        } else {
            line(buffer, from, to);
        }
        return false;
    }

    private void line(byte[] text, int from, int to) {
        line++;
        switch (parser.parse(text, from, to)) {
            case FRAME -> {
                tally.line();
                tally.frame();
                tally.clock(parser.clock());
                sink.frame(parser.micros(), parser.id(), parser.extended(), parser.data(), parser.length());
            }
            case NO_DATA -> tally.line();
            case BLANK -> {}
            case HEADING -> {
                if (tally.frames() > 0) {
                    damaged(text, from, to);
                }
            }
            case DAMAGED -> damaged(text, from, to);
        }
    }

    private void damaged(byte[] text, int from, int to) {
        tally.line();
        tally.damage("line " + line, parser.complaint(text, from, to));
    }
}
