package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.condition.TruckSigns;
import dev.injectorplanner.core.history.Clock;
import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.inspection.DefectRate;
import dev.injectorplanner.core.inspection.Delay;
import dev.injectorplanner.core.inspection.DelayTimeModel;
import dev.injectorplanner.core.inspection.TestedInjector;
import dev.injectorplanner.core.inspection.UnseenDefects;
import dev.injectorplanner.core.usage.InjectorAge;
import dev.injectorplanner.core.usage.MeterUsage;
import dev.injectorplanner.core.usage.TruckUsage;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * For each truck the day by which the chance that a defect nobody has seen fails on the road passes a limit, by the
 * delay-time model. Only silent defects count: those that announce themselves by faults are seen without a test. A day
 * counts as a test where every injector that was in on it and still is was tested. A truck without such a day counts from its
 * oldest injector's fitting; a fleet without any test on record has no dates: they begin with its first tests.
 */
public final class InspectionDates {
    /** A defect that this many tests missed is hardly there; more of them take time and change nothing. */
    private static final int TESTS_COUNTED = 3;

    private final FleetRisk risk;
    private final LocalDate today;

    public InspectionDates(FleetRisk risk, LocalDate today) {
        this.risk = risk;
        this.today = today;
    }

    /**
     * The day for one truck.
     *
     * @param ages its fitted injectors
     * @param limit chance of a road failure from an undetected defect that the site accepts, between 0 and 1
     * @param until last day asked for
     * @return empty where the limit is not passed by then, km or usage are not known, or the fleet has no test on record
     */
    public Optional<TruckInspection> find(TruckUsage usage, List<InjectorAge> ages, double limit, LocalDate until) {
        List<InjectorAge> known = ages.stream().filter(age -> age.km() != null).toList();
        MeterUsage odometer = usage.odometer();
        Double now = odometer.meterOn(today);
        if (!risk.tested() || known.isEmpty() || now == null || !(odometer.perWeek() > 0)) {
            return Optional.empty();
        }
        TruckSigns signs = risk.signs().of(usage.truck());
        List<Tested> tests = testsOf(signs, known, odometer, now);
        double oldest = known.stream().mapToDouble(InspectionDates::km).max().orElse(0);
        double since = tests.isEmpty() ? oldest : tests.get(tests.size() - 1).kmAgo;
        List<TestedInjector> injectors = known.stream()
                .map(age -> injector(age, tests, since, modelDelay(age)))
                .toList();
        DefectEstimate estimate = risk.defectsOf(known.get(0).part());
        UnseenDefects unseen = new UnseenDefects(
                new DelayTimeModel(Delay.exponential(estimate.meanDelayKm()), estimate.sensitivity()));
        double longest = since + odometer.perWeek() / 7 * (until.toEpochDay() - today.toEpochDay() + 1);
        OptionalDouble distance =
                longest > 0 ? unseen.findDistanceToLimit(injectors, limit, longest) : OptionalDouble.empty();
        if (distance.isEmpty()) {
            return Optional.empty();
        }
        long days = (long) Math.floor((distance.getAsDouble() - since) / odometer.perWeek() * 7);
        return Optional.of(new TruckInspection(
                usage.truck(),
                tests.isEmpty() ? null : tests.get(tests.size() - 1).day,
                since,
                unseen.failureChance(injectors, since),
                today.plusDays(days),
                !estimate.delaySource().equals(DefectEstimate.DEFAULT)
                        && !estimate.sensitivitySource().equals(DefectEstimate.DEFAULT)
                        && !estimate.silentSource().equals(DefectEstimate.DEFAULT)));
    }

    /**
     * A test of all injectors of a truck.
     *
     * @param day its day
     * @param kmAgo km run since
     */
    public record Tested(LocalDate day, double kmAgo) {}

    /** The last test of all of a truck's injectors; empty where there was none, or km are not known. */
    public Optional<Tested> lastTest(TruckUsage usage, List<InjectorAge> ages) {
        List<InjectorAge> known = ages.stream().filter(age -> age.km() != null).toList();
        Double now = usage.odometer().meterOn(today);
        if (known.isEmpty() || now == null) {
            return Optional.empty();
        }
        List<Tested> tests = testsOf(risk.signs().of(usage.truck()), known, usage.odometer(), now);
        return tests.isEmpty() ? Optional.empty() : Optional.of(tests.get(tests.size() - 1));
    }

    private static double km(InjectorAge age) {
        Double km = age.km();
        return km == null ? 0 : km;
    }

    private Delay modelDelay(InjectorAge age) {
        PartLife model = risk.lives().of(age.part(), age.origin(), age.fittedOn());
        return Delay.exponential(risk.defectsOf(age.part()).meanDelay(model.clock()));
    }

    /** Days on which all injectors that were in were tested, oldest first, with the km run since. */
    private List<Tested> testsOf(TruckSigns signs, List<InjectorAge> ages, MeterUsage odometer, double now) {
        TreeSet<LocalDate> days = new TreeSet<>();
        ages.forEach(
                age -> days.addAll(signs.testDays(age.cylinder(), age.fittedOn().plusDays(1), today)));
        List<Tested> tests = new ArrayList<>();
        for (LocalDate day : days) {
            Double then = odometer.meterOn(day);
            boolean all = ages.stream()
                    .filter(age -> age.fittedOn().isBefore(day))
                    .allMatch(age -> !signs.testDays(age.cylinder(), day, day).isEmpty());
            if (all && then != null) {
                tests.add(new Tested(day, Math.max(0, now - then)));
            }
        }
        return tests;
    }

    private TestedInjector injector(InjectorAge age, List<Tested> tests, double since, Delay delay) {
        DefectRate rate = silent(age, delay);
        double own = km(age);
        List<Double> testAges = tests.stream()
                .filter(test -> test.day.isAfter(age.fittedOn()))
                .map(test -> own - test.kmAgo)
                .filter(then -> then >= 0)
                .toList();
        List<Double> last = testAges.subList(Math.max(0, testAges.size() - TESTS_COUNTED), testAges.size());
        return testAges.isEmpty()
                ? new TestedInjector(rate.startingAt(Math.max(0, since - own)), List.of())
                : new TestedInjector(rate, last);
    }

    /** Silent defects a km by km since fitting, also where the life counts hours: at the unit's own pace. */
    private DefectRate silent(InjectorAge age, Delay delay) {
        PartLife model = risk.lives().of(age.part(), age.origin(), age.fittedOn());
        DefectEstimate estimate = risk.defectsOf(age.part());
        DefectRate rate = DefectRate.ofLife(model.life(), 1, delay);
        double pace = model.clock() == Clock.DISTANCE ? 1 : hoursPerKm(age, estimate);
        double share = estimate.silentShare();
        return km -> share * pace * rate.at(pace * km);
    }

    private static double hoursPerKm(InjectorAge age, DefectEstimate estimate) {
        @Nullable Double hours = age.hours();
        double km = km(age);
        return hours != null && hours > 0 && km > 0 ? hours / km : 1 / estimate.kmPerHour();
    }
}
