package dev.injectorplanner.imports.obd;

import dev.injectorplanner.imports.bus.FrameSink;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Finds ECUs' answers to OBD services 03, 07 and 0A in a bus log (ISO 15031-5 over ISO 15765-2 and -4, from memory):
 * identifiers 7E8 to 7EF of 11 bits, 18DAF1xx of 29; answers of more than one frame come in order, a second apart at most.
 */
public final class ObdAnswers implements FrameSink {
    private static final int FIRST_ECU = 0x7E8;
    private static final int LAST_ECU = 0x7EF;
    private static final int TO_TESTER = 0x18DA_F100;
    private static final long TIME_OUT_MICROS = 1_000_000;
    private static final int MOST_BYTES = 2 + 2 * 255;

    private final Consumer<ObdReport> reports;
    private final @Nullable Answer[] open = new Answer[256];

    /** An answer of several frames that is not whole. */
    private static final class Answer {
        private final byte[] data;
        private int filled;
        private int next = 1;
        private long lastMicros;

        Answer(int size, long micros) {
            data = new byte[size];
            lastMicros = micros;
        }

        void take(byte[] frame, int from, int to) {
            int count = Math.min(to - from, data.length - filled);
            System.arraycopy(frame, from, data, filled, count);
            filled += count;
        }
    }

    public ObdAnswers(Consumer<ObdReport> reports) {
        this.reports = reports;
    }

    @Override
    public void frame(long micros, int id, boolean extended, byte[] data, int length) {
        boolean answer = extended ? (id & 0x1FFF_FF00) == TO_TESTER : id >= FIRST_ECU && id <= LAST_ECU;
        if (!answer || length < 2) {
            return;
        }
        int source = id & 0xFF;
        int size = data[0] & 0xF;
        switch (data[0] >> 4 & 0xF) {
            case 0 -> {
                open[source] = null;
                if (size < length) {
                    message(micros, source, data, 1, size);
                }
            }
            case 1 -> begin(micros, source, size << 8 | data[1] & 0xFF, data, length);
            case 2 -> more(micros, source, size, data, length);
            default -> {} // flow control, from the tester
        }
    }

    private void begin(long micros, int source, int size, byte[] data, int length) {
        open[source] = null;
        if (size > length - 2 && size <= MOST_BYTES) {
            Answer answer = new Answer(size, micros);
            answer.take(data, 2, length);
            open[source] = answer;
        }
    }

    private void more(long micros, int source, int number, byte[] data, int length) {
        Answer answer = open[source];
        if (answer == null) {
            return;
        }
        if (number != (answer.next & 0xF) || micros - answer.lastMicros > TIME_OUT_MICROS) {
            open[source] = null;
            return;
        }
        answer.next++;
        answer.lastMicros = micros;
        answer.take(data, 1, length);
        if (answer.filled == answer.data.length) {
            open[source] = null;
            message(micros, source, answer.data, 0, answer.data.length);
        }
    }

    /** Service, number of codes, two bytes a code; two bytes of 0 fill up. */
    private void message(long micros, int source, byte[] data, int from, int size) {
        ObdReport.Kind kind = size < 2 ? null : kind(data[from] & 0xFF);
        if (kind == null) {
            return;
        }
        int count = data[from + 1] & 0xFF;
        if (size < 2 + 2 * count) {
            return;
        }
        List<Integer> codes = new ArrayList<>();
        for (int at = from + 2; at < from + 2 + 2 * count; at += 2) {
            int code = (data[at] & 0xFF) << 8 | data[at + 1] & 0xFF;
            if (code != 0) {
                codes.add(code);
            }
        }
        reports.accept(new ObdReport(micros, source, kind, codes));
    }

    private static ObdReport.@Nullable Kind kind(int service) {
        return switch (service) {
            case 0x43 -> ObdReport.Kind.ACTIVE;
            case 0x47 -> ObdReport.Kind.PENDING;
            case 0x4A -> ObdReport.Kind.PERMANENT;
            default -> null;
        };
    }
}
