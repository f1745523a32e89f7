package dev.injectorplanner.core.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.schedule.Schedule.Choice;
import dev.injectorplanner.core.schedule.ScheduleRequest;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two trucks, each with a visit in week 0 for 100 saved and in week 1 for a little more. */
class StayNearTest {
    private static final double WORTH = 20;

    private final ScheduleRequest request =
            new ScheduleRequest(2, List.of(truck("T1", -110), truck("T2", -130)), List.of(), List.of());
    private final Schedule before = schedule(0, 0);
    private final StayNear near = new StayNear(request, before, WORTH);

    private static TruckOptions truck(String name, double later) {
        return new TruckOptions(name, "D", null, List.of(option(0, -100), option(1, later)), null, null);
    }

    private static VisitOption option(int week, double cost) {
        return new VisitOption(week, List.of(1), 8, 1, cost);
    }

    private Schedule schedule(int first, int second) {
        VisitOption one = request.trucks().get(0).options().get(first);
        VisitOption other = request.trucks().get(1).options().get(second);
        double cost = one.cost() + other.cost();
        return new Schedule(
                List.of(new Choice("T1", one), new Choice("T2", other)),
                List.of(),
                cost,
                cost,
                List.of(),
                Schedule.Stop.PROVEN);
    }

    @Test
    void a_visit_that_stays_may_cost_what_staying_is_worth() {
        Schedule least = schedule(1, 1);
        assertThat(near.isWorthIt(schedule(0, 1), least)).isTrue();
    }

    /** 40 dearer than the least, with two visits staying it would pass as 20 each; one of them is not worth its 30. */
    @Test
    void what_stays_is_counted_and_not_what_there_was() {
        assertThat(near.isWorthIt(before, schedule(0, 1))).isFalse();
        assertThat(near.isWorthIt(schedule(1, 0), schedule(0, 1))).isFalse();
    }

    @Test
    void the_schedule_found_is_told_in_true_costs() {
        ScheduleRequest favouring = near.favouring();
        List<Choice> choices = favouring.trucks().stream()
                .map(truck -> new Choice(truck.truck(), truck.options().get(0)))
                .toList();
        Schedule found = new Schedule(choices, List.of(), -240.0, -240.0, List.of(), Schedule.Stop.PROVEN);
        Schedule told = near.trueCosts(found, schedule(1, 1));
        assertThat(told.choices()).isEqualTo(before.choices());
        assertThat(told.cost()).isEqualTo(-200);
        assertThat(told.bound()).isEqualTo(-240);
    }
}
