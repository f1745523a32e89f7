package dev.injectorplanner.core.replay.world;

import dev.injectorplanner.core.replay.scenario.SignTruth;
import dev.injectorplanner.core.truth.Draws;
import java.util.TreeSet;

/** Days on which cylinders store a fault for nothing: stray codes by km, and spells of a chafed harness, whatever is fitted. */
final class FalseCodes {
    private static final long FALSE_CODES = 2;
    private static final double DAYS_A_YEAR = 365.25;
    private static final int LONGEST_SPELL = 5;
    private static final int DAYS_APART = 3;

    private final SignTruth signs;
    private final double strayDays;
    private final int first;
    private final int last;

    /** @param last day after the last one */
    FalseCodes(SignTruth signs, double kmPerWeek, int first, int last) {
        this.signs = signs;
        this.strayDays = 7 * signs.kmBetweenFalseCodes() / kmPerWeek;
        this.first = first;
        this.last = last;
    }

    /** By cylinder, ascending. */
    int[][] days(long seed, int truck, int cylinders) {
        int[][] days = new int[cylinders][];
        for (int c = 0; c < cylinders; c++) {
            Draws draws = Draws.keyed(seed, FALSE_CODES, truck, c);
            TreeSet<Integer> found = new TreeSet<>();
            for (double at = first + draws.exponential(strayDays); at < last; at += draws.exponential(strayDays)) {
                found.add((int) at);
            }
            spells(draws, signs.harnessFaultsPerYear() / cylinders, found);
            days[c] = found.stream().mapToInt(Integer::intValue).toArray();
        }
        return days;
    }

    private void spells(Draws draws, double perYear, TreeSet<Integer> found) {
        if (perYear == 0) {
            return;
        }
        double between = DAYS_A_YEAR / perYear;
        for (double at = first + draws.exponential(between); at < last; at += draws.exponential(between)) {
            int length = draws.whole(2, LONGEST_SPELL);
            for (int day = 0; day < length; day++) {
                found.add((int) at + DAYS_APART * day);
            }
        }
    }
}
