package dev.injectorplanner.core.defect;

/**
 * How fast signs tell a defect from chance: the mean gain of a week in log-odds (Kullback and Leibler 1951, Annals of
 * Mathematical Statistics 22:79-86), and from it how long it takes until one would act, as in Wald's sequential test (Wald 1945,
 * Annals of Mathematical Statistics 16:117-186, section 3).
 */
final class Evidence {
    /** Log-odds from the usual one or two in a hundred to the chance at which one acts. */
    private static final double NEEDED = 3;

    /** Weeks from acting on signs to the work done: a planner default. */
    private static final double UNTIL_DONE = 1;

    private static final double LEAST_GAIN = 1e-6;

    private Evidence() {}

    /** Mean gain in log-odds of a week in which there is a defect; zero or more. */
    static double gainPerWeek(DefectModel model) {
        double[] sound = model.sound().faultDays();
        double[] defective = model.defective().faultDays();
        double gain = gain(model.sound().rail(), model.defective().rail())
                + gain(model.sound().circuit(), model.defective().circuit());
        for (int days = 0; days < sound.length; days++) {
            gain += defective[days] > 0 ? defective[days] * Math.log(defective[days] / sound[days]) : 0;
        }
        return Math.max(0, gain);
    }

    private static double gain(double sound, double defective) {
        return defective * Math.log(defective / sound) + (1 - defective) * Math.log((1 - defective) / (1 - sound));
    }

    /** Rate a week at which a defect has shown enough for the injector to be taken out. */
    static double showsPerWeek(DefectModel model) {
        return 1 / (NEEDED / Math.max(LEAST_GAIN, gainPerWeek(model)) + UNTIL_DONE);
    }
}
