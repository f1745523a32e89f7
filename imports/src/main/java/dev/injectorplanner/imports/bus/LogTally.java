package dev.injectorplanner.imports.bus;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** What was counted while a log was read. */
public final class LogTally {
    private static final int SHOWN = 5;

    private final List<String> examples = new ArrayList<>();
    private long frames;
    private long lines;
    private long damaged;
    private LogClock clock = LogClock.UTC;

    /** Data frames read. */
    public long frames() {
        return frames;
    }

    /** Lines of a text, or packets of a capture, that are not blank and not headings. */
    public long lines() {
        return lines;
    }

    /** Lines or packets that could not be read. */
    public long damaged() {
        return damaged;
    }

    /** The first few of the damaged ones: where, and what is wrong. */
    public List<String> examples() {
        return Collections.unmodifiableList(examples);
    }

    public LogClock clock() {
        return clock;
    }

    void clock(LogClock seen) {
        clock = seen;
    }

    void frame() {
        frames++;
    }

    void line() {
        lines++;
    }

    void damage(String where, String what) {
        damaged++;
        if (examples.size() < SHOWN) {
            examples.add(where + " " + what);
        }
    }
}
