package dev.injectorplanner.core.replay.keeper;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Figures of a rule of thumb for one family. Distances are km since fitting; infinite means never.
 *
 * @param triggerKm age at which an injector brings its truck in
 * @param alongKm age from which the others go along then
 * @param failureAlongKm age from which the others go along when one has failed
 * @param faultDays days with a stored fault within the window that bring a truck in; 0 for none
 * @param faultWindow the window, days
 * @param testEveryKm km between tests of a truck
 * @param secondLook whether a test over its limit counts only with a second one, of the other kind or the next time
 */
public record RuleFigures(
        double triggerKm,
        double alongKm,
        double failureAlongKm,
        int faultDays,
        int faultWindow,
        double testEveryKm,
        boolean secondLook) {
    /** Never. */
    public static final double NEVER = Double.POSITIVE_INFINITY;

    /** Only what has failed is replaced. */
    public static RuleFigures runToFailure() {
        return new RuleFigures(NEVER, NEVER, NEVER, 0, 60, NEVER, true);
    }

    /** The whole set when its oldest injector reaches an age. */
    public static RuleFigures interval(double km, double failureAlongKm) {
        return new RuleFigures(km, 0, failureAlongKm, 0, 60, NEVER, true);
    }

    /** The same without its ages: only faults and tests bring a truck in. */
    public RuleFigures signsOnly() {
        return withTrigger(NEVER);
    }

    RuleFigures withTrigger(double km) {
        return new RuleFigures(km, alongKm, failureAlongKm, faultDays, faultWindow, testEveryKm, secondLook);
    }

    /** Both at a planned visit and at a failure. */
    RuleFigures withAlong(double planned, double failure) {
        return new RuleFigures(triggerKm, planned, failure, faultDays, faultWindow, testEveryKm, secondLook);
    }

    RuleFigures withFaults(int days, int window) {
        return new RuleFigures(triggerKm, alongKm, failureAlongKm, days, window, testEveryKm, secondLook);
    }

    RuleFigures withTests(double everyKm, boolean second) {
        return new RuleFigures(triggerKm, alongKm, failureAlongKm, faultDays, faultWindow, everyKm, second);
    }

    /** The same with ages no lower than one at which injectors were seen to be left in; the others rise in proportion. */
    public RuleFigures noTighterThan(double leftInKm) {
        if (!(leftInKm > triggerKm)) {
            return this;
        }
        double by = leftInKm / triggerKm;
        return new RuleFigures(
                leftInKm, by * alongKm, by * failureAlongKm, faultDays, faultWindow, testEveryKm, secondLook);
    }

    /** In words, such as "at 160,000 km the whole set". */
    public String words() {
        StringBuilder words = new StringBuilder();
        if (triggerKm == NEVER) {
            words.append("no age");
        } else {
            words.append("at ").append(km(triggerKm)).append(alongKm == 0 ? " the whole set" : "");
        }
        if (alongKm > 0 && alongKm < NEVER && (triggerKm < NEVER || faultDays > 0)) {
            words.append(", along from ").append(km(alongKm));
        }
        words.append(failureAlongKm == NEVER ? "" : ", after a failure from " + km(failureAlongKm));
        if (faultDays > 0) {
            words.append(", on ").append(faultDays).append(" fault days in ").append(faultWindow);
        }
        if (testEveryKm < NEVER) {
            words.append(", tested every ").append(km(testEveryKm)).append(secondLook ? " with a second look" : "");
        }
        return words.toString();
    }

    /** In words by family, such as "V8: at 160,000 km the whole set; I6: no age". */
    public static String words(List<String> families, List<RuleFigures> figures) {
        return IntStream.range(0, families.size())
                .mapToObj(family ->
                        families.get(family) + ": " + figures.get(family).words())
                .collect(Collectors.joining("; "));
    }

    private static String km(double km) {
        return String.format(Locale.ROOT, "%,.0f km", km);
    }
}
