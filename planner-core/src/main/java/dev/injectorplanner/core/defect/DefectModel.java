package dev.injectorplanner.core.defect;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.condition.Sign;
import dev.injectorplanner.core.condition.SignTrack;
import dev.injectorplanner.core.life.PredictiveLife;
import java.util.List;

/**
 * How injectors of one part come to fail: sound, they get a defect at a rate that follows their life; with a defect they fail
 * after an exponential delay; some fail without one. In each state they show faults and test values by chance. A hidden
 * Markov model by weeks. Source: delay-time model, Christer and Waller (1984), Journal of the Operational Research Society
 * 35:401-406; replacement under partial observation, Makis and Jiang (2003), Mathematics of Operations Research 28:382-394.
 *
 * @param meanDelay mean time from a defect to its failure, above 0, in the unit of the part's clock
 * @param suddenShare share of the life's hazard that strikes without a defect before it, 0..1
 * @param arrivalFactor defects arise at this times the hazard that the life has one mean delay later
 * @param sound what a sound injector shows
 * @param defective what one with a defect shows
 * @param failures failures (and worn ones) that the figures were fitted to; 0 where they are planner defaults
 */
public record DefectModel(
        double meanDelay,
        double suddenShare,
        double arrivalFactor,
        StateSigns sound,
        StateSigns defective,
        long failures) {
    public DefectModel {
        Require.positive("mean delay", meanDelay);
        Require.within("sudden share", suddenShare, 0, 1);
        Require.notNegative("arrival factor", arrivalFactor);
    }

    /** Chance that a test, balance and return flow together, finds a defect that is there. */
    public double sensitivity() {
        return defective.over();
    }

    /** Chance that a test calls a sound injector over its limit. */
    public double falseAlarm() {
        return sound.over();
    }

    /** How much more often a week with one day of faults is seen of an injector with a defect than of a sound one. */
    public double faultRatio() {
        return defective.faultDays()[1] / sound.faultDays()[1];
    }

    /**
     * Share of failures that show no fault in any week before they come: sudden ones, and those whose delay passes in silence.
     *
     * @param perWeek usual use a week, above 0
     */
    public double silentShare(double perWeek) {
        double fails = -Math.expm1(-perWeek / meanDelay);
        double quiet = defective.quiet();
        double silent = quiet * fails / (1 - quiet * (1 - fails));
        return suddenShare + (1 - suddenShare) * silent;
    }

    /** The same with defects arising this many times as often, above 0. */
    public DefectModel withArrivals(double factor) {
        return new DefectModel(meanDelay, suddenShare, arrivalFactor * factor, sound, defective, failures);
    }

    /**
     * The same with its signs believed less or more.
     *
     * @param weight power of the likelihood ratio of each sign, 0 or more; 1 for none changed
     */
    public DefectModel withSignWeight(double weight) {
        return weight == 1
                ? this
                : new DefectModel(
                        meanDelay,
                        suddenShare,
                        arrivalFactor,
                        sound,
                        defective.withRatiosTo(Require.notNegative("sign weight", weight), sound),
                        failures);
    }

    /** The same where nobody notes faults: that none is on record says nothing. */
    DefectModel withoutFaults() {
        StateSigns blind = new StateSigns(
                sound.faultDays(),
                sound.circuit(),
                sound.rail(),
                defective.balance(),
                defective.returnFlow(),
                defective.worn());
        return new DefectModel(meanDelay, suddenShare, arrivalFactor, sound, blind, failures);
    }

    /** How much likelier a sign is of an injector with a defect than of a sound one, above 0. */
    public double likelihoodRatio(Sign sign) {
        return switch (sign) {
            case ONE_FAULT -> faultRatio();
            case FAULTS -> faultRatio() * faultRatio();
            case TEST -> sensitivity() / falseAlarm();
            case CIRCUIT -> defective.circuit() / sound.circuit();
            case RAIL -> defective.rail() / sound.rail();
        };
    }

    /** Sudden failures per unit of age. */
    double sudden(PredictiveLife life, int pair, double age) {
        return suddenShare * life.hazard(pair, age);
    }

    /** Defects arising per unit of age in a sound injector. */
    double arrivals(PredictiveLife life, int pair, double age) {
        return arrivalFactor * arising(life, pair, age);
    }

    /** Failures that the life has one mean delay later, per unit of age, put back to when their defects arose. */
    double arising(PredictiveLife life, int pair, double age) {
        return life.wear(pair).hazard(age + meanDelay) + life.early().arising(age, meanDelay);
    }

    /** Chance that an injector of an age that is alive and has shown nothing has a defect: inflow against outflow. */
    public double usual(PredictiveLife life, double age) {
        double inflow = arrivals(life, middle(life), Math.max(1, age)) * meanDelay;
        return inflow / (1 + inflow);
    }

    /** The pair that stands for the centre of a life. */
    static int middle(PredictiveLife life) {
        return life.size() / 2;
    }

    /**
     * Chance that an injector still in service has a defect, given what it showed.
     *
     * @param life of its part and origin
     * @param firstAge its age where the track begins, 0 for a new one
     * @param perWeek use a week
     */
    public double chanceDefective(PredictiveLife life, double firstAge, double perWeek, SignTrack track) {
        double chance = firstAge > 0 ? usual(life, firstAge) : 0;
        List<SignTrack.Seen> tests = track.tests();
        int next = 0;
        Weekly step = new Weekly(this, life, perWeek);
        for (int week = 0; week < track.weeks(); week++) {
            step.at(firstAge + (week + 0.5) * perWeek);
            double sound = (1 - chance) * step.staysSound * sound().week(track, week);
            double bad = ((1 - chance) * step.turns + chance * step.staysDefective)
                    * defective().week(track, week);
            for (; next < tests.size() && tests.get(next).week() == week; next++) {
                SignTrack.Seen test = tests.get(next);
                int band = StateSigns.band(test.ratio());
                sound *= sound().test(test.kind(), band);
                bad *= defective().test(test.kind(), band);
            }
            chance = bad / (sound + bad);
        }
        return chance;
    }

    /** Chances of one week's steps between the states. */
    static final class Weekly {
        private final DefectModel model;
        private final PredictiveLife life;
        private final double use;
        private final double fails;
        double staysSound;
        double turns;
        double staysDefective;
        double failsSuddenly;
        double failsWithNewDefect;

        Weekly(DefectModel model, PredictiveLife life, double use) {
            this.model = model;
            this.life = life;
            this.use = use;
            this.fails = -Math.expm1(-use / model.meanDelay);
        }

        /** Takes the hazards of an age, the middle of the week; a defect that arises in a week is half a week old at its end. */
        void at(double age) {
            int pair = middle(life);
            double sudden = -Math.expm1(-model.sudden(life, pair, age) * use);
            double turn = -Math.expm1(-model.arrivals(life, pair, age) * use);
            staysSound = (1 - sudden) * (1 - turn);
            turns = (1 - sudden) * turn * (1 - 0.5 * fails);
            staysDefective = 1 - fails;
            failsSuddenly = sudden;
            failsWithNewDefect = (1 - sudden) * turn * 0.5 * fails;
        }

        double fails() {
            return fails;
        }
    }
}
