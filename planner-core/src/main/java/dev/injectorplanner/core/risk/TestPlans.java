package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.calendar.PlanWeeks;
import dev.injectorplanner.core.defect.CostOfDeferring;
import dev.injectorplanner.core.defect.DefectBook;
import dev.injectorplanner.core.defect.FailurePath;
import dev.injectorplanner.core.defect.TestWorth;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.fleet.Truck;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * When to test each truck: as late as its result is ripe, and only where it would change enough. A test made early loses the
 * share of the interval that it cuts off, as any interval task does: every week of waiting for the next one costs the mean
 * gain of testing at the best interval. Source: delay-time inspection, Christer and Waller (1984), with the gain of a test
 * from what its result would change.
 */
public final class TestPlans {
    private static final int LONGEST_INTERVAL_WEEKS = 104;
    private static final int STEP_WEEKS = 4;

    private static final int[] WEEKS_BEYOND = {0, 8, 16, 26};

    private final FleetIndex index;
    private final FleetRisk risk;
    private final ReplacementCosts costs;
    private final Deferrals deferrals;
    private final VisitCosts visits;
    private final PlanWeeks weeks;
    private final double believed;
    private final Set<TestKind> kinds;
    private final double[] moments;
    private final Map<String, Optional<TestPlan>> known = new ConcurrentHashMap<>();
    private final Map<String, WorthBeforeVisit> beforeVisit = new ConcurrentHashMap<>();

    /** @param believed what a test is taken to be worth, as a multiple of what its result would change; 0 for no tests */
    public TestPlans(
            FleetIndex index,
            FleetRisk risk,
            ReplacementCosts costs,
            Deferrals deferrals,
            VisitCosts visits,
            PlanWeeks weeks,
            double believed) {
        this.index = index;
        this.risk = risk;
        this.costs = costs;
        this.deferrals = deferrals;
        this.visits = visits;
        this.weeks = weeks;
        this.believed = believed;
        this.kinds = risk.testKinds();
        double[] within = weeks.moments();
        this.moments = new double[within.length + WEEKS_BEYOND.length];
        System.arraycopy(within, 0, moments, 0, within.length);
        for (int i = 0; i < WEEKS_BEYOND.length; i++) {
            moments[within.length + i] = weeks.horizon() + WEEKS_BEYOND[i];
        }
    }

    /** The plan of a truck's tests, worked out once; empty where the fleet makes no tests or no injector's risk is known. */
    public Optional<TestPlan> of(Truck truck) {
        return known.computeIfAbsent(truck.truck(), name -> made(truck, listKnown(truck)));
    }

    /** What a test is worth for an injector that a later visit of the plan replaces. */
    public WorthBeforeVisit beforeVisitOf(Truck truck, int cylinder) {
        return beforeVisit.computeIfAbsent(
                truck.truck() + "\n" + cylinder,
                key -> risk.find(truck.truck(), cylinder)
                        .filter(injector -> made() && deferrals.perWeek(injector) > 0)
                        .map(injector -> beforeVisit(truck, injector))
                        .orElse(WorthBeforeVisit.NONE));
    }

    private WorthBeforeVisit beforeVisit(Truck truck, InjectorRisk injector) {
        double perWeek = deferrals.perWeek(injector);
        return WorthBeforeVisit.of(
                risk.defectModelOf(injector.part()),
                costs.termsOf(truck, injector, perWeek, deferrals.weeksUntilLeaving(truck)),
                costs.pathOf(injector, injector.defectChance()),
                kinds,
                weeks.moments());
    }

    private boolean made() {
        return believed > 0 && !kinds.isEmpty();
    }

    private Optional<TestPlan> made(Truck truck, List<InjectorRisk> injectors) {
        if (!made() || injectors.isEmpty()) {
            return Optional.empty();
        }
        double cost = visits.test(truck);
        Map<Integer, double[]> worth = new LinkedHashMap<>();
        double[] all = new double[moments.length];
        double[] routine = new double[LONGEST_INTERVAL_WEEKS / STEP_WEEKS];
        double sound = 1;
        for (InjectorRisk injector : injectors) {
            sound *= 1 - injector.defectChance();
            double[] own = new double[moments.length];
            addWorth(truck, injector, own, routine);
            for (int i = 0; i < own.length; i++) {
                all[i] += own[i];
            }
            worth.put(injector.cylinder(), Arrays.copyOf(own, weeks.weeks()));
        }
        return Optional.of(plan(all, worth, routine, cost, 1 - sound));
    }

    private TestPlan plan(
            double[] all, Map<Integer, double[]> worth, double[] routine, double cost, double defectChance) {
        double rate = 0;
        for (int i = 0; i < routine.length; i++) {
            rate = Math.max(rate, (routine[i] - cost) / ((i + 1) * STEP_WEEKS));
        }
        double later = 0;
        for (int i = weeks.weeks(); i < moments.length; i++) {
            later = Math.max(later, all[i] - cost - rate * moments[i]);
        }
        double[] against = new double[weeks.weeks()];
        @Nullable Integer due = null;
        double most = later;
        for (int week = 0; week < against.length; week++) {
            double gain = all[week] - cost - rate * moments[week];
            against[week] = rate * moments[week] - all[week] + later;
            if (gain > most) {
                most = gain;
                due = week;
            }
        }
        return new TestPlan(against, worth, due, due == null ? 0 : all[due], cost, defectChance);
    }

    /**
     * Adds an injector's worth of a test at each moment, and after each interval since a test that found nothing. While its
     * truck stands nothing fails, so that there is nothing to prevent.
     */
    private void addWorth(Truck truck, InjectorRisk injector, double[] own, double[] routine) {
        double perWeek = deferrals.perWeek(injector);
        if (!(perWeek > 0)) {
            return;
        }
        double leaves = deferrals.weeksUntilLeaving(truck);
        CostOfDeferring.Terms terms = costs.termsOf(truck, injector, perWeek, leaves);
        double leaveSound = leaveSound(truck, injector, terms);
        FailurePath path = costs.pathOf(injector, injector.defectChance());
        double reached = 0;
        for (int i = 0; i < own.length && moments[i] < leaves; i++) {
            path.goOn((moments[i] - reached) * perWeek);
            reached = moments[i];
            own[i] = believed
                    * worth(injector, terms, leaveSound, leaves - reached).at(path.chanceDefective());
        }
        FailurePath tested = costs.pathOf(injector, 0);
        for (int i = 0; i < routine.length && (i + 1) * STEP_WEEKS < leaves; i++) {
            tested.goOn(STEP_WEEKS * perWeek);
            routine[i] += believed
                    * worth(injector, terms, leaveSound, leaves - (i + 1) * STEP_WEEKS)
                            .at(tested.chanceDefective());
        }
    }

    private TestWorth worth(InjectorRisk injector, CostOfDeferring.Terms terms, double leaveSound, double weeksLeft) {
        DefectBook.Entry defects = risk.defectModelOf(injector.part());
        double leaveDefective = leaveDefective(defects, terms, weeksLeft);
        return new TestWorth(defects.model(), kinds, leaveSound, leaveDefective, terms.alone() - terms.planned());
    }

    private double leaveSound(Truck truck, InjectorRisk injector, CostOfDeferring.Terms terms) {
        double chance = injector.defectChance();
        double leaveDefective = leaveDefective(risk.defectModelOf(injector.part()), terms, terms.leavesInWeeks());
        double later = deferrals.of(truck, injector).later();
        return chance < 0.999 ? (later - chance * leaveDefective) / (1 - chance) : later - leaveDefective;
    }

    /** It fails, or it shows and is taken out, or its truck leaves with it and nobody replaces it. */
    private static double leaveDefective(DefectBook.Entry defects, CostOfDeferring.Terms terms, double weeksLeft) {
        LeftDefect left = LeftDefect.of(defects, terms, weeksLeft);
        double onEnd = left.costOfEnd(terms) - terms.rate() / left.endsPerUse();
        return left.inTime() * onEnd - (1 - left.inTime()) * terms.planned();
    }

    /** Injectors of a truck whose risk is known. */
    public List<InjectorRisk> listKnown(Truck truck) {
        return index.family(truck.family()).allCylinders().stream()
                .flatMap(cylinder -> risk.find(truck.truck(), cylinder).stream())
                .toList();
    }
}
