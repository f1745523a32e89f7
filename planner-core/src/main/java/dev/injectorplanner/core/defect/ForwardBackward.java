package dev.injectorplanner.core.defect;

import dev.injectorplanner.core.condition.SignTrack;
import dev.injectorplanner.core.history.LifeEnd;
import java.util.List;

/**
 * Splits a life's weeks between the two states, given all that it showed and how it ended, and adds them to a tally. Source:
 * Baum, Petrie, Soules and Weiss (1970), Annals of Mathematical Statistics 41:164-171; scaled as in Rabiner (1989),
 * Proceedings of the IEEE 77:257-286.
 */
final class ForwardBackward {
    private static final int FROM_SOUND = 0;
    private static final int NEW = 1;
    private static final int FROM_DEFECT = 2;

    private final DefectModel model;
    private double[] sound = new double[0];
    private double[] defective = new double[0];
    private double[] showsSound = new double[0];
    private double[] showsDefect = new double[0];
    private double[][] steps = new double[3][0];

    ForwardBackward(DefectModel model) {
        this.model = model;
    }

    /** Adds a life to the tally. */
    void add(WatchedLife life, Tally tally) {
        int weeks = life.track().weeks();
        makeRoom(weeks);
        shows(life.track(), weeks);
        int lived = life.failed() ? weeks - 1 : weeks;
        DefectModel.Weekly last = forward(life, lived, weeks);
        double first = life.firstAge() > 0 ? model.usual(life.life(), life.firstAge()) : 0;
        double soundNow = lived == 0 ? 1 - first : sound[lived - 1];
        double defectNow = lived == 0 ? first : defective[lived - 1];
        double ahead = 1;
        double aheadDefect = 1;
        if (life.failed()) {
            double use = life.perWeek() * life.lastWeek();
            double suddenly = last.failsSuddenly * showsSound[lived];
            double newly = last.failsWithNewDefect * showsDefect[lived];
            double failing = last.fails() * showsDefect[lived];
            ahead = suddenly + newly;
            aheadDefect = failing;
            double all = soundNow * ahead + defectNow * aheadDefect;
            failure(
                    life,
                    lived,
                    tally,
                    soundNow * suddenly / all,
                    soundNow * newly / all,
                    defectNow * failing / all,
                    use);
        } else if (life.end() == LifeEnd.WORN || life.end() == LifeEnd.HEALTHY) {
            boolean worn = life.end() == LifeEnd.WORN;
            ahead = worn ? model.sound().worn() : 1 - model.sound().worn();
            aheadDefect =
                    worn ? model.defective().worn() : 1 - model.defective().worn();
            double all = soundNow * ahead + defectNow * aheadDefect;
            tally.takenOut(worn, soundNow * ahead / all, defectNow * aheadDefect / all);
        }
        backward(life, lived, tally, ahead, aheadDefect, first);
    }

    private void makeRoom(int weeks) {
        if (sound.length < weeks) {
            sound = new double[weeks];
            defective = new double[weeks];
            showsSound = new double[weeks];
            showsDefect = new double[weeks];
            steps = new double[3][weeks];
        }
    }

    private void shows(SignTrack track, int weeks) {
        for (int week = 0; week < weeks; week++) {
            showsSound[week] = model.sound().week(track, week);
            showsDefect[week] = model.defective().week(track, week);
        }
        for (SignTrack.Seen test : track.tests()) {
            int band = StateSigns.band(test.ratio());
            showsSound[test.week()] *= model.sound().test(test.kind(), band);
            showsDefect[test.week()] *= model.defective().test(test.kind(), band);
        }
    }

    /** Chances of the states after each week that it lived through; the step of its last week is returned. */
    private DefectModel.Weekly forward(WatchedLife life, int lived, int weeks) {
        double chance = life.firstAge() > 0 ? model.usual(life.life(), life.firstAge()) : 0;
        DefectModel.Weekly step = new DefectModel.Weekly(model, life.life(), life.perWeek());
        for (int week = 0; week < lived; week++) {
            if (week == weeks - 1) {
                step = new DefectModel.Weekly(model, life.life(), life.perWeek() * life.lastWeek());
            }
            step.at(life.firstAge() + (week + 0.5) * life.perWeek());
            steps[FROM_SOUND][week] = step.staysSound;
            steps[NEW][week] = step.turns;
            steps[FROM_DEFECT][week] = step.staysDefective;
            double stays = (1 - chance) * step.staysSound * showsSound[week];
            double has = ((1 - chance) * step.turns + chance * step.staysDefective) * showsDefect[week];
            chance = has / (stays + has);
            sound[week] = 1 - chance;
            defective[week] = chance;
        }
        DefectModel.Weekly last =
                new DefectModel.Weekly(model, life.life(), life.perWeek() * (life.failed() ? life.lastWeek() : 1));
        last.at(life.firstAge() + (weeks - 0.5) * life.perWeek());
        return last;
    }

    private void failure(
            WatchedLife life, int week, Tally tally, double suddenly, double newly, double failing, double use) {
        tally.sudden += suddenly;
        tally.arrivals += newly;
        tally.failuresOfDefects += newly + failing;
        tally.defectiveUse += use * (0.5 * failing + 0.25 * newly);
        expose(life, week, tally, 0.5 * (suddenly + newly), use);
        count(life.track(), week, tally, suddenly, newly + failing);
    }

    private void expose(WatchedLife life, int week, Tally tally, double sound, double use) {
        int pair = DefectModel.middle(life.life());
        double age = life.firstAge() + (week + 0.5) * life.perWeek();
        tally.suddenExpected += sound * use * life.life().hazard(pair, age);
        tally.arrivalsExpected += sound * use * model.arising(life.life(), pair, age);
    }

    private static void count(SignTrack track, int week, Tally tally, double sound, double defective) {
        tally.week(track, week, sound, defective);
        List<SignTrack.Seen> tests = track.tests();
        for (int i = firstOf(tests, week); i < tests.size() && tests.get(i).week() == week; i++) {
            tally.test(tests.get(i), sound, defective);
        }
    }

    private static int firstOf(List<SignTrack.Seen> tests, int week) {
        int low = 0;
        int high = tests.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (tests.get(middle).week() < week) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Goes back through the weeks lived, with what is still to come of each state as weight. */
    private void backward(WatchedLife life, int lived, Tally tally, double atEnd, double atEndDefect, double first) {
        double ahead = atEnd;
        double aheadDefect = atEndDefect;
        for (int week = lived - 1; week >= 0; week--) {
            double all = sound[week] * ahead + defective[week] * aheadDefect;
            double isSound = sound[week] * ahead / all;
            double isDefective = defective[week] * aheadDefect / all;
            count(life.track(), week, tally, isSound, isDefective);
            double before = week == 0 ? 1 - first : sound[week - 1];
            double beforeDefect = week == 0 ? first : defective[week - 1];
            double stays = steps[FROM_SOUND][week] * showsSound[week] * ahead;
            double turns = steps[NEW][week] * showsDefect[week] * aheadDefect;
            double keeps = steps[FROM_DEFECT][week] * showsDefect[week] * aheadDefect;
            double sum = before * (stays + turns) + beforeDefect * keeps;
            double turned = before * turns / sum;
            double use = life.perWeek() * (week == life.track().weeks() - 1 ? life.lastWeek() : 1);
            tally.arrivals += turned;
            tally.defectiveUse += use * (beforeDefect * keeps / sum + 0.5 * turned);
            expose(life, week, tally, before * stays / sum + 0.5 * turned, use);
            ahead = stays + turns;
            aheadDefect = keeps;
            double scale = ahead + aheadDefect;
            ahead /= scale;
            aheadDefect /= scale;
        }
    }
}
