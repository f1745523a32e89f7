package dev.injectorplanner.core.usage;

import java.time.LocalDate;

/** Usage a week from a track: Theil-Sen over the readings of a window. */
final class UsageEstimate {
    /** More readings than this in the window are thinned evenly: 128 give 8,128 pairs, plenty for a median. */
    static final int MOST_POINTS = 128;

    private static final int FEWEST_POINTS = 3;
    private static final double NORMAL = 1.4826;

    private UsageEstimate() {}

    /**
     * @param windowDays days back from the last reading; where fewer than three readings fall into it, the last three of
     *     the track tell instead
     */
    static MeterUsage of(MeterTrack track, int windowDays, LocalDate today) {
        int n = track.size();
        LocalDate last = track.lastDay();
        LocalDate end = last == null || last.isAfter(today) ? today : last; // a truck that went silent keeps its habit
        int silentDays = (int) (today.toEpochDay() - end.toEpochDay());
        double from = end.toEpochDay() + 1 - windowDays;
        int first = n;
        while (first > 0 && track.day(first - 1) >= from) {
            first--;
        }
        first = Math.max(0, Math.min(first, n - FEWEST_POINTS));
        int[] points = thinned(first, n);
        if (!tells(track, points)) {
            return new MeterUsage(track, false, 0, 0, silentDays);
        }
        double[] days = new double[points.length];
        double[] values = new double[points.length];
        int[] segments = new int[points.length];
        for (int i = 0; i < points.length; i++) {
            days[i] = track.day(points[i]) - track.day(points[0]);
            values[i] = track.cumulative(points[i]);
            segments[i] = track.segment(points[i]);
        }
        double perWeek = Math.max(0, 7 * TheilSen.fit(days, values, segments).slope());
        return new MeterUsage(track, true, perWeek, spread(track, track.day(points[0]), perWeek), silentDays);
    }

    private static boolean tells(MeterTrack track, int[] points) {
        for (int i = 1; i < points.length; i++) {
            boolean sameMeter = track.segment(points[i]) == track.segment(points[i - 1]);
            if (sameMeter && track.day(points[i]) > track.day(points[i - 1])) {
                return true;
            }
        }
        return false;
    }

    private static int[] thinned(int first, int end) {
        int n = end - first;
        int take = Math.min(n, MOST_POINTS);
        int[] points = new int[take];
        for (int i = 0; i < take; i++) {
            points[i] = take == n ? first + i : first + (int) Math.round(i * (n - 1.0) / (take - 1));
        }
        return points;
    }

    private static double spread(MeterTrack track, double from, double perWeek) {
        double last = track.day(track.size() - 1);
        int weeks = (int) ((last - from) / 7);
        if (weeks < 3) {
            return 0;
        }
        double[] deviations = new double[weeks];
        Double before = track.at(last, 0);
        for (int week = 0; week < weeks; week++) {
            Double earlier = track.at(last - 7.0 * (week + 1), 0);
            deviations[week] = before == null || earlier == null ? 0 : Math.abs(before - earlier - perWeek);
            before = earlier;
        }
        return NORMAL * Medians.median(deviations, weeks);
    }
}
