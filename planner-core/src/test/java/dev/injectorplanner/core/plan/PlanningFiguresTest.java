package dev.injectorplanner.core.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import dev.injectorplanner.core.visit.Visit;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** What the planning figures do to a plan: together they span the simple rules. */
class PlanningFiguresTest {
    private static final Planner PLANNER = new Planner(new ExactScheduler(new SearchLimits(1, 1e-3, 1, 1)));

    private static Plan plan(PlanningFigures figures) {
        return PLANNER.plan(DemoFleet.make().snapshot(), Policy.standard().withFigures(figures), DemoFleet.TODAY);
    }

    private static int renewed(double margin) {
        return plan(PlanningFigures.STANDARD.withRenewalMargin(margin)).visits().stream()
                .mapToInt(visit -> visit.cylinders().size())
                .sum();
    }

    /** The margin reaches from nearly the whole fleet to what the site's own limits ask for. */
    @Test
    void a_smaller_margin_renews_more() {
        List<Integer> renewed = DoubleStream.of(0.2, 0.7, 1, 2, 10)
                .mapToObj(PlanningFiguresTest::renewed)
                .toList();
        assertThat(renewed).isSortedAccordingTo((one, other) -> Integer.compare(other, one));
        assertThat(renewed.get(0)).isGreaterThan(2 * renewed.get(2));
        assertThat(renewed.get(4)).isLessThan(renewed.get(2));
    }

    @Test
    void tests_worth_nothing_are_not_planned_but_where_the_site_asks() {
        Plan without = plan(PlanningFigures.STANDARD.withTestWorth(0));
        assertThat(without.visits().stream().filter(Visit::inspection).count())
                .isLessThan(plan(PlanningFigures.STANDARD.withTestWorth(5)).visits().stream()
                        .filter(Visit::inspection)
                        .count());
    }

    /** Injectors of one age in one truck differ by what they showed, and without signs by nothing. */
    @Test
    void signs_that_are_not_believed_leave_age_alone() {
        assertThat(widest(PlanningFigures.STANDARD.withSignWeight(0))).isLessThan(1e-9);
        assertThat(widest(PlanningFigures.STANDARD)).isGreaterThan(0.1);
    }

    private static double widest(PlanningFigures figures) {
        return plan(figures).risks().stream()
                .collect(Collectors.groupingBy(
                        risk -> risk.truck() + risk.part() + risk.origin() + risk.age(),
                        Collectors.summarizingDouble(InjectorRisk::defectChance)))
                .values()
                .stream()
                .mapToDouble(chances -> chances.getMax() - chances.getMin())
                .max()
                .orElse(0);
    }
}
