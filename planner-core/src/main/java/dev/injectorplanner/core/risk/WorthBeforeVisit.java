package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.defect.CostOfDeferring;
import dev.injectorplanner.core.defect.DefectBook;
import dev.injectorplanner.core.defect.FailurePath;
import dev.injectorplanner.core.defect.TestWorth;
import dev.injectorplanner.core.fleet.TestKind;
import java.util.Set;

/**
 * What the result of a test is worth for an injector that a later visit replaces anyway: a defect found need not wait for that
 * visit, which is what is done where its parts are not there yet. Looked at for the near weeks only, since plans are made anew.
 */
public final class WorthBeforeVisit {
    /** An injector of which nothing is known. */
    public static final WorthBeforeVisit NONE = new WorthBeforeVisit(new double[0][0]);

    private static final int TEST_WEEKS = 8;
    private static final int LONGEST_WAIT = 12;
    private static final double NOTHING = 1;

    private final double[][] worth;

    private WorthBeforeVisit(double[][] worth) {
        this.worth = worth;
    }

    static WorthBeforeVisit of(
            DefectBook.Entry defects,
            CostOfDeferring.Terms terms,
            FailurePath path,
            Set<TestKind> kinds,
            double[] moments) {
        double[][] worth = new double[Math.min(TEST_WEEKS, moments.length)][];
        double reached = 0;
        for (int week = 0; week < worth.length; week++) {
            path.goOn((moments[week] - reached) * terms.perWeek());
            reached = moments[week];
            worth[week] = new double[Math.min(LONGEST_WAIT, moments.length - 1 - week) + 1];
            for (int wait = 1; wait < worth[week].length; wait++) {
                LeftDefect left = LeftDefect.of(defects, terms, moments[week + wait] - moments[week]);
                double cost = left.inTime() * left.costOfEnd(terms);
                double chance = path.chanceDefective();
                worth[week][wait] = chance * cost < NOTHING
                        ? 0
                        : new TestWorth(defects.model(), kinds, 0, cost, terms.alone() - terms.planned()).at(chance);
            }
        }
        return new WorthBeforeVisit(worth);
    }

    /**
     * The worth of a test in a week before a visit.
     *
     * @param testWeek weeks from the plan's first, 0 or more
     * @param visitWeek the same, after it
     * @return money, 0 or more; 0 for tests further ahead than is looked
     */
    public double of(int testWeek, int visitWeek) {
        if (testWeek >= worth.length || worth[testWeek].length < 2) {
            return 0;
        }
        return worth[testWeek][Math.min(visitWeek - testWeek, worth[testWeek].length - 1)];
    }
}
