package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.condition.FleetSigns;
import dev.injectorplanner.core.condition.TruckSigns;
import dev.injectorplanner.core.history.Clock;
import dev.injectorplanner.core.history.LifeEnd;
import dev.injectorplanner.core.history.LifeHistory;
import dev.injectorplanner.core.history.Span;
import dev.injectorplanner.core.history.UnitLife;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Estimates delay, sensitivity of tests and share of silent failures from what trucks showed before injectors failed.
 *
 * <ul>
 *   <li>Delay: km from an injector's first sign (faults on three days within 60, or a test over its limit) to its failure,
 *       exponential, those taken out or still running censored: mean = km run after a first sign / failures after one. One
 *       found worn is taken as found halfway through its delay and counts as half a failure: to count it as censored would
 *       make delays look longer, since it came out because of its defect. A first sign comes some time after the defect
 *       arose; with an exponential delay what is left then is distributed as the whole, so nothing is added. Were delays of
 *       one length, the estimate would be short by the time to the first sign.
 *   <li>Sensitivity: of the days on which a cylinder was tested after such faults and before its injector failed or was found
 *       worn, the share with a test over its limit. Defects that show in faults may be easier to find than others: the figure
 *       is the upper end.
 *   <li>Silent share: of the failures, those without such faults before.
 * </ul>
 *
 * <p>Each takes {@link #ENOUGH} cases of the part, else of the fleet, else the planner's default holds. Shares are (cases +
 * 1) / (all + 2), Laplace's rule, so that none is 0 or 1.
 */
public final class DefectHistory {
    /** Failures or tests that an estimate takes. */
    public static final int ENOUGH = 20;

    /** Source: the part's own records. */
    public static final String OWN = "fitted to the part's records";

    /** Source: records of all parts of the fleet. */
    public static final String FLEET = "fitted to the fleet's records";

    /** Source: a figure that holds until the records are enough. */
    public static final String DEFAULT = "planner default";

    /** Where in its delay a defect is found when it is found, on average: a planner default. */
    static final double FOUND_AT = 0.5;

    /** Source: the site's own figure, until the records are enough. */
    public static final String SITE = "site";

    private static final double DEFAULT_KM_PER_HOUR = 50;

    private final LifeHistory history;
    private final FleetSigns signs;
    private final DefectDefaults otherwise;
    private final Map<String, Tally> tallies = new LinkedHashMap<>();
    private final Tally fleet = new Tally();

    private static final class Tally {
        private double kmAfterSign;
        private double failuresAfterSign;
        private long tests;
        private long found;
        private long failures;
        private long silent;
        private double km;
        private double hours;
    }

    private record Estimate(double value, String source) {}

    private DefectHistory(LifeHistory history, FleetSigns signs, DefectDefaults otherwise) {
        this.history = history;
        this.signs = signs;
        this.otherwise = otherwise;
    }

    /**
     * One estimate for each part asked for or told of, by part.
     *
     * @param otherwise what holds where the records are too few
     */
    public static Map<String, DefectEstimate> of(
            LifeHistory history, FleetSigns signs, List<String> parts, DefectDefaults otherwise) {
        return new DefectHistory(history, signs, otherwise).estimates(parts);
    }

    private Map<String, DefectEstimate> estimates(List<String> parts) {
        TreeSet<String> all = new TreeSet<>(parts);
        for (UnitLife unit : history.units()) {
            all.add(unit.part());
            for (Tally tally : List.of(tallies.computeIfAbsent(unit.part(), part -> new Tally()), fleet)) {
                count(unit, tally);
            }
        }
        Map<String, DefectEstimate> estimates = new LinkedHashMap<>();
        for (String part : all) {
            estimates.put(part, estimate(part, tallies.getOrDefault(part, new Tally())));
        }
        return estimates;
    }

    private void count(UnitLife unit, Tally tally) {
        Span km = unit.km();
        Span hours = unit.hours();
        if (km != null && hours != null) {
            tally.km += km.exit();
            tally.hours += hours.exit();
        }
        TruckSigns shown = signs.of(unit.truck());
        LocalDate last = unit.exitOn().minusDays(1);
        LocalDate faults = shown.firstFaults(unit.cylinder(), unit.observedFrom(), last);
        LocalDate over = shown.firstTestOver(unit.cylinder(), unit.observedFrom(), last);
        LocalDate sign = faults == null || over != null && over.isBefore(faults) ? over : faults;
        boolean failed = unit.end() == LifeEnd.FAILED;
        Double then = sign == null ? null : history.ageOn(unit, sign, Clock.DISTANCE);
        if (km != null && then != null) {
            tally.kmAfterSign += km.exit() - then;
            tally.failuresAfterSign += failed ? 1 : unit.failedOrWould() ? FOUND_AT : 0;
        }
        tally.failures += failed ? 1 : 0;
        tally.silent += failed && faults == null ? 1 : 0;
        if (faults != null && unit.failedOrWould()) {
            tally.tests += shown.testDays(unit.cylinder(), faults, last).size();
            tally.found += shown.testDaysOver(unit.cylinder(), faults, last).size();
        }
    }

    private DefectEstimate estimate(String part, Tally own) {
        Estimate delay = delay(
                own, OWN, delay(fleet, FLEET, given(otherwise.meanDelayKm(), DefectDefaults.STANDARD.meanDelayKm())));
        Estimate sensitivity = share(
                own.found,
                own.tests,
                OWN,
                share(
                        fleet.found,
                        fleet.tests,
                        FLEET,
                        given(otherwise.sensitivity(), DefectDefaults.STANDARD.sensitivity())));
        Estimate silent = share(
                own.silent,
                own.failures,
                OWN,
                share(
                        fleet.silent,
                        fleet.failures,
                        FLEET,
                        given(otherwise.silentShare(), DefectDefaults.STANDARD.silentShare())));
        double kmPerHour = own.hours > 0 && own.km > 0 ? own.km / own.hours : DEFAULT_KM_PER_HOUR;
        return new DefectEstimate(
                part,
                delay.value,
                delay.source,
                sensitivity.value,
                sensitivity.source,
                silent.value,
                silent.source,
                kmPerHour);
    }

    private static Estimate given(double value, double usual) {
        return new Estimate(value, value == usual ? DEFAULT : SITE);
    }

    private static Estimate delay(Tally tally, String source, Estimate otherwise) {
        return tally.failuresAfterSign >= ENOUGH && tally.kmAfterSign > 0
                ? new Estimate(tally.kmAfterSign / tally.failuresAfterSign, source)
                : otherwise;
    }

    private static Estimate share(long cases, long all, String source, Estimate otherwise) {
        return all >= ENOUGH ? new Estimate((cases + 1.0) / (all + 2.0), source) : otherwise;
    }
}
