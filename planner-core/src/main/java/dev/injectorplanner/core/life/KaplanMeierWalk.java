package dev.injectorplanner.core.life;

import java.util.ArrayList;
import java.util.List;

/** One walk over the exits in ascending order, with the entries beside it. */
final class KaplanMeierWalk {
    private final LifeRecords records;
    private final double[] exits;
    private final int[] byExit;
    private final double[] entries;
    private final int[] byEntry;
    private int nextExit;
    private int nextEntry;
    private long entered;
    private long left;
    private double survival = 1;
    private double greenwood;

    private KaplanMeierWalk(LifeRecords records) {
        int rows = records.size();
        this.records = records;
        exits = new double[rows];
        entries = records.hasDelayedEntry() ? new double[rows] : new double[0];
        for (int i = 0; i < rows; i++) {
            exits[i] = records.exit(i);
            if (records.hasDelayedEntry()) {
                entries[i] = records.entry(i);
            }
        }
        byExit = SortOrder.ascending(exits);
        byEntry = SortOrder.ascending(entries);
        entered = records.hasDelayedEntry() ? 0 : records.eventCount() + records.suspensionCount();
    }

    static List<KaplanMeier.Point> points(LifeRecords records) {
        KaplanMeierWalk walk = new KaplanMeierWalk(records);
        List<KaplanMeier.Point> points = new ArrayList<>();
        while (walk.nextExit < walk.byExit.length) {
            points.add(walk.step());
        }
        return points;
    }

    private KaplanMeier.Point step() {
        double age = exits[byExit[nextExit]];
        while (nextEntry < byEntry.length && entries[byEntry[nextEntry]] < age) {
            entered += records.count(byEntry[nextEntry++]);
        }
        long atRisk = entered - left;
        long events = 0;
        long suspensions = 0;
        while (nextExit < byExit.length && exits[byExit[nextExit]] == age) {
            int row = byExit[nextExit++];
            if (records.isEvent(row)) {
                events += records.count(row);
            } else {
                suspensions += records.count(row);
            }
        }
        left += events + suspensions;
        if (events > 0) {
            survival *= (double) (atRisk - events) / atRisk;
            greenwood += events / ((double) atRisk * (atRisk - events));
        }
        double stdErr = survival == 0 ? Double.NaN : survival * Math.sqrt(greenwood);
        return new KaplanMeier.Point(age, atRisk, events, suspensions, survival, stdErr);
    }
}
