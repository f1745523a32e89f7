package dev.injectorplanner.core.life;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Random Weibull lives with late entries and suspensions, from a seeded source. */
record RandomLives(List<double[]> rows) {

    /** A draw that has at least two failures at different ages, so that it can be fitted. */
    static RandomLives draw(SplittableRandom random, int units) {
        WeibullLife life = new WeibullLife(random.nextDouble(0.5, 6), random.nextDouble(100, 1e6));
        List<double[]> rows = new ArrayList<>();
        rows.add(new double[] {0, life.scale() * 0.8, 1});
        rows.add(new double[] {0, life.scale() * 1.1, 1});
        rows.add(new double[] {0, life.scale() * 1.2, 0});
        while (rows.size() < units) {
            double entry = random.nextBoolean() ? 0 : life.scale() * random.nextDouble(0.05, 0.6);
            double exit = entry + life.remainingQuantile(entry, random.nextDouble(1e-9, 1));
            double cut = entry + life.scale() * random.nextDouble(0.1, 1.5);
            rows.add(new double[] {entry, Math.min(exit, cut), exit < cut ? 1 : 0});
        }
        return new RandomLives(rows);
    }

    int size() {
        return rows.size();
    }

    LifeRecords records() {
        return records(null);
    }

    LifeRecords records(long[] counts) {
        double[] entries = rows.stream().mapToDouble(row -> row[0]).toArray();
        double[] exits = rows.stream().mapToDouble(row -> row[1]).toArray();
        boolean[] events = new boolean[rows.size()];
        for (int i = 0; i < events.length; i++) {
            events[i] = rows.get(i)[2] == 1;
        }
        return LifeRecords.of(entries, exits, events, counts);
    }

    RandomLives times(double k) {
        return new RandomLives(rows.stream()
                .map(row -> new double[] {row[0] * k, row[1] * k, row[2]})
                .toList());
    }

    RandomLives doubled() {
        List<double[]> twice = new ArrayList<>(rows);
        twice.addAll(rows);
        return new RandomLives(twice);
    }

    /** Each life cut into one to four consecutive pieces, only the last of which may fail. */
    RandomLives cut(SplittableRandom random) {
        List<double[]> pieces = new ArrayList<>();
        for (double[] row : rows) {
            double from = row[0];
            for (int i = random.nextInt(0, 4); i > 0; i--) {
                double to = from + (row[1] - from) * random.nextDouble(0.1, 0.9);
                pieces.add(new double[] {from, to, 0});
                from = to;
            }
            pieces.add(new double[] {from, row[1], row[2]});
        }
        return new RandomLives(pieces);
    }
}
