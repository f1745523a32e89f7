package dev.injectorplanner.core.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Each limit broken on purpose: two trucks of 6 h and one day, one depot week of 10 h + 2 h, 2 bay-days, group of 2. */
class ScheduleCheckerTest {
    private static final VisitOption SIX_HOURS = new VisitOption(0, List.of(1), 6, 1, 0);
    private static final TruckOptions A = new TruckOptions("A", "N", "G", List.of(SIX_HOURS), null);
    private static final TruckOptions B = new TruckOptions("B", "N", "G", List.of(SIX_HOURS), null);
    private static final Schedule BOTH = schedule("A", "B");

    private static Schedule schedule(String... trucks) {
        return new Schedule(
                List.of(trucks).stream()
                        .map(truck -> new Schedule.Choice(truck, SIX_HOURS))
                        .toList(),
                List.of(),
                0,
                null);
    }

    private static List<String> check(double hours, double overtime, double bayDays, double group, Schedule schedule) {
        return ScheduleChecker.listViolations(
                new ScheduleRequest(
                        1,
                        List.of(A, B),
                        List.of(new WeekCapacity("N", 0, hours, overtime, 30, bayDays)),
                        List.of(new GroupCapacity("G", 0, group))),
                schedule);
    }

    @Test
    void aGoodScheduleHasNone() {
        assertThat(check(10, 2, 2, 2, BOTH)).isEmpty();
    }

    @Test
    void hours() {
        assertThat(check(10, 1.9, 2, 2, BOTH))
                .singleElement()
                .asString()
                .startsWith("labour hours of depot N, week 0: 12.0");
    }

    @Test
    void bays() {
        assertThat(check(10, 2, 1.5, 2, BOTH)).singleElement().asString().startsWith("bay-days of depot N");
    }

    @Test
    void dutyGroup() {
        assertThat(check(10, 2, 2, 1, BOTH)).singleElement().asString().startsWith("truck-days of duty group G");
    }

    @Test
    void twoVisitsOfOneTruckAndOneForgotten() {
        assertThat(check(10, 2, 2, 2, schedule("A", "A")))
                .containsExactly("truck A: two visits", "truck B: neither placed nor named as not placed");
    }

    @Test
    void anOptionThatWasNotOffered() {
        Schedule other = new Schedule(
                List.of(new Schedule.Choice("A", new VisitOption(0, List.of(1), 1, 1, 0))),
                List.of(new Schedule.NotPlaced("A", "no room"), new Schedule.NotPlaced("B", "no room")),
                0,
                null);
        assertThat(check(10, 2, 2, 2, other)).containsExactly("truck A: an option that was not offered, week 0");
    }

    @Test
    void aTruckBothPlacedAndNot() {
        Schedule both = new Schedule(BOTH.choices(), List.of(new Schedule.NotPlaced("A", "no room")), 0, null);
        assertThat(check(10, 2, 2, 2, both)).containsExactly("truck A: named twice, once as not placed");
    }

    @Test
    void aWeekAfterTheLatest() {
        TruckOptions late = new TruckOptions("A", "N", null, List.of(new VisitOption(1, List.of(), 1, 1, 0)), 0);
        ScheduleRequest request =
                new ScheduleRequest(2, List.of(late), List.of(new WeekCapacity("N", 1, 8, 0, 0, 5)), List.of());
        Schedule schedule =
                new Schedule(List.of(new Schedule.Choice("A", late.options().get(0))), List.of(), 0, null);
        assertThat(ScheduleChecker.listViolations(request, schedule))
                .containsExactly("truck A: week 1 is after its latest, 0");
    }

    private static final TruckOptions PINNED = new TruckOptions("A", "N", null, List.of(SIX_HOURS), null, 1);

    private static List<String> checkPinned(Schedule schedule) {
        return ScheduleChecker.listViolations(
                new ScheduleRequest(2, List.of(PINNED), List.of(new WeekCapacity("N", 0, 10, 0, 0, 2)), List.of()),
                schedule);
    }

    @Test
    void aWeekOtherThanThePinned() {
        assertThat(checkPinned(schedule("A"))).containsExactly("truck A: week 0 is not the one it is pinned to, 1");
    }

    @Test
    void aPinThatIsOwnedUpToMayBeBroken() {
        Schedule.BrokenWish wish = new Schedule.BrokenWish("A", Schedule.Wish.PIN, 1, "away");
        assertThat(checkPinned(
                        new Schedule(schedule("A").choices(), List.of(), 0, 0.0, List.of(wish), Schedule.Stop.PROVEN)))
                .isEmpty();
    }

    @Test
    void aPinnedTruckLeftOutInSilence() {
        Schedule.NotPlaced left = new Schedule.NotPlaced("A", "no room");
        assertThat(checkPinned(new Schedule(List.of(), List.of(left), 0, 0.0, List.of(), Schedule.Stop.PROVEN)))
                .containsExactly(
                        "truck A: pinned or due, not placed, and not listed among the holds that cannot be kept");
    }
}
