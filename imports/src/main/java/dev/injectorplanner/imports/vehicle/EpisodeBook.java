package dev.injectorplanner.imports.vehicle;

import dev.injectorplanner.core.fault.ObdCodes;
import dev.injectorplanner.core.fault.SuspectParameters;
import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.imports.j1939.FaultMessage;
import dev.injectorplanner.imports.j1939.TroubleCode;
import dev.injectorplanner.imports.obd.ObdReport;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Makes episodes of fault messages: reports of one fault no further apart than {@link Episode#GAP} are one. Holds a bounded number
 * of faults and of episodes, whatever the log.
 */
final class EpisodeBook {
    static final int MOST_EPISODES = 20_000;
    static final int MOST_TRACKS = 4_096;

    /** Marks codes of OBD among the keys of the others. */
    private static final int OBD = 1 << 30;

    private static final TroubleCode NO_COUNT = new TroubleCode(0, 0, TroubleCode.NO_COUNT, 0);

    private static final long GAP_MICROS = Episode.GAP.toNanos() / 1_000;

    private final Map<Long, FaultTrack> tracks = new LinkedHashMap<>(16, 0.75f, true);
    private final List<Episode> episodes = new ArrayList<>();
    private final long[] messages = new long[256];
    private final long[] answers = new long[256];
    private final OdometerTrack odometer;
    private long notKept;

    EpisodeBook(OdometerTrack odometer) {
        this.odometer = odometer;
    }

    void add(FaultMessage message) {
        boolean active = message.kind() == FaultMessage.Kind.ACTIVE;
        if (active) {
            messages[message.source() & 0xFF]++;
        }
        for (TroubleCode code : message.codes()) {
            Long key = (long) message.source() << 32 | (long) code.spn() << 5 | code.fmi();
            FaultTrack track = track(key);
            if (track.isApart(message.micros(), GAP_MICROS)) {
                close(key, track);
            }
            if (active) {
                track.active(message.micros(), messages[message.source() & 0xFF], code);
            } else {
                track.previous(message.micros(), code);
            }
        }
    }

    /** Confirmed codes of OBD; nothing is counted there. */
    void add(ObdReport report) {
        if (report.kind() != ObdReport.Kind.ACTIVE) {
            return;
        }
        long number = ++answers[report.source() & 0xFF];
        for (int code : report.codes()) {
            Long key = (long) report.source() << 32 | OBD | code;
            FaultTrack track = track(key);
            if (track.isApart(report.micros(), GAP_MICROS)) {
                close(key, track);
            }
            track.active(report.micros(), number, NO_COUNT);
        }
    }

    private static FaultCode code(int key) {
        return (key & OBD) != 0
                ? new FaultCode(ObdCodes.text(key & 0xFFFF))
                : FaultCode.of(key >> 5 & SuspectParameters.MOST, key & 31);
    }

    private FaultTrack track(Long key) {
        FaultTrack known = tracks.get(key);
        if (known != null) {
            return known;
        }
        if (tracks.size() >= MOST_TRACKS) {
            Iterator<Map.Entry<Long, FaultTrack>> oldest = tracks.entrySet().iterator();
            Map.Entry<Long, FaultTrack> gone = oldest.next();
            close(gone.getKey(), gone.getValue());
            oldest.remove();
        }
        FaultTrack track = new FaultTrack();
        tracks.put(key, track);
        return track;
    }

    private void close(long key, FaultTrack track) {
        if (!track.isOpen()) {
            return;
        }
        if (episodes.size() < MOST_EPISODES) {
            episodes.add(new Episode(
                    (int) (key >> 32),
                    code((int) key),
                    Moments.of(track.first()),
                    Moments.of(track.last()),
                    track.count(),
                    track.reports(),
                    odometer.at(track.first())));
        } else {
            notKept++;
        }
        track.close();
    }

    /** All episodes, the earliest first; ends those that are open. */
    List<Episode> finish() {
        tracks.forEach(this::close);
        episodes.sort(Comparator.comparing(Episode::first)
                .thenComparingInt(Episode::source)
                .thenComparing(each -> each.code().text()));
        return List.copyOf(episodes);
    }

    /** Episodes beyond the first {@value #MOST_EPISODES}, which are only counted. */
    long notKept() {
        return notKept;
    }
}
