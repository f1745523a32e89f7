package dev.injectorplanner.core.plan;

import static dev.injectorplanner.core.testkit.FleetBuilder.NORTH;
import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.schedule.days.DayPin;
import dev.injectorplanner.core.schedule.days.DayPlan;
import dev.injectorplanner.core.testkit.FleetBuilder;
import dev.injectorplanner.core.visit.Visit;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What a foreman holds a plan to: his own pins, and days that can happen. */
class Q01_ForemansHandTest {
    private static FleetBuilder two() {
        return new FleetBuilder()
                .onShelf(24)
                .truck("T1")
                .truck("T2")
                .allInjectors("T1", 230_000)
                .allInjectors("T2", 220_000)
                .rule(RuleKind.DISTANCE_KM, 200_000);
    }

    private static DayPlan.Laid placeOf(Plan plan, String truck) {
        return plan.days().get(0).days().laid().stream()
                .filter(laid -> laid.truck().equals(truck))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aPinnedDaySurvivesReplans() {
        DayPin pin = new DayPin(TODAY.plusDays(2), 2, LocalTime.of(9, 30));
        Holds holds = Holds.none().withDays(Map.of("T1", pin));
        for (int day = 0; day < 3; day++) {
            Plan plan = PlanOf.planner().plan(two().build(), Policy.standard(), TODAY.plusDays(day), holds);
            DayPlan.Laid laid = placeOf(plan, "T1");
            assertThat(laid.start()).isEqualTo(pin.day().atTime(9, 30));
            assertThat(laid.bay()).isEqualTo(2);
            assertThat(plan.cost().brokenWishes()).isEmpty();
        }
    }

    @Test
    void theConsequenceIsToldBeforeItIsKept() {
        Planner planner = PlanOf.planner();
        PreparedFleet fleet = planner.prepare(two().build(), Policy.standard(), TODAY);
        PreparedFleet.Trial before = planner.tryOut(fleet, Holds.none(), List.of());
        Holds pin = Holds.none().withDays(Map.of("T1", new DayPin(TODAY.plusDays(3), 1, LocalTime.of(7, 0))));
        PlanChange change = fleet.change(before, planner.tryOut(fleet, pin, List.of(), before));
        assertThat(change.days())
                .filteredOn(day -> day.truck().equals("T1"))
                .singleElement()
                .satisfies(day -> assertThat(day.after()).isEqualTo("2026-03-05 07:00, bay 1"));
    }

    /** Four o'clock in the afternoon is after the shift: the pin gives way, the plan says so, the visit stays in its week. */
    @Test
    void aPinThatCannotBeKeptIsNamed() {
        Holds holds = Holds.none().withDays(Map.of("T1", new DayPin(TODAY.plusDays(1), 1, LocalTime.of(16, 0))));
        Plan plan = PlanOf.held(two().build(), holds);
        assertThat(plan.cost().brokenWishes()).singleElement().satisfies(wish -> {
            assertThat(wish.truck()).isEqualTo("T1");
            assertThat(wish.reason()).contains("16:00", "does not fit there");
        });
        assertThat(plan.visits().get(0).week()).isEqualTo(IsoWeek.of(TODAY));
    }

    /**
     * Random fleets: every day within its hours, no more trucks of a group off the road than it can spare, trucks that must
     * not be driven counted, every diagnosis on the first open day, nothing on a closed day. Added up from the plan alone.
     */
    @Test
    void randomFleetsGetDaysThatCanHappen() {
        for (int seed = 0; seed < 12; seed++) {
            Random random = new Random(seed);
            FleetBuilder builder = new FleetBuilder()
                    .withDepot(1 + random.nextInt(2), 4 + random.nextInt(12), random.nextInt(8))
                    .onShelf(random.nextInt(60))
                    .rule(RuleKind.DISTANCE_KM, 200_000);
            builder.dutyGroups.add(new DutyGroup("line", 3, new BigDecimal("300")));
            for (int truck = 1; truck <= 8; truck++) {
                builder.truck("T" + truck, truck <= 5 ? "line" : null)
                        .allInjectors("T" + truck, 150_000 + random.nextInt(100_000));
            }
            String leaking = "T" + (1 + random.nextInt(8));
            builder.fault(leaking, TODAY.minusDays(1), "P0093");
            LocalDate today = TODAY.plusDays(random.nextInt(7));
            FleetSnapshot fleet = builder.build();
            check(fleet, PlanOf.planner().plan(fleet, Policy.standard(), today), leaking, "seed " + seed);
        }
    }

    private static void check(FleetSnapshot fleet, Plan plan, String leaking, String which) {
        double hours = fleet.depots().get(0).labourHoursPerDay();
        LocalDate first = plan.today();
        while (first.getDayOfWeek().compareTo(DayOfWeek.FRIDAY) > 0) {
            first = first.plusDays(1);
        }
        assertThat(plan.safety().get(0).start().toLocalDate()).as(which).isEqualTo(first);
        Map<LocalDate, Double> booked = new TreeMap<>();
        Map<LocalDate, Integer> off = new TreeMap<>();
        for (DayPlan.Laid laid : plan.days().get(0).days().laid()) {
            laid.days().forEach(day -> booked.merge(day.date(), day.labourHours(), Double::sum));
            boolean line = Integer.parseInt(laid.truck().substring(1)) <= 5 && !laid.diagnosis();
            for (LocalDate day = laid.start().toLocalDate();
                    !day.isAfter(laid.end().toLocalDate());
                    day = day.plusDays(1)) {
                off.merge(day, line ? 1 : 0, Integer::sum);
            }
        }
        boolean leakInLine = Integer.parseInt(leaking.substring(1)) <= 5;
        for (Map.Entry<LocalDate, Integer> day : off.entrySet()) {
            int unsafe = leakInLine && !day.getKey().isAfter(first) ? 1 : 0;
            assertThat(day.getValue())
                    .as("%s on %s", which, day.getKey())
                    .isLessThanOrEqualTo(Math.max(0, 5 - unsafe - 3));
        }
        booked.forEach((day, sum) -> {
            assertThat(day.getDayOfWeek()).as(which).isNotIn(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY);
            double over = overtimeOf(fleet, plan, day);
            assertThat(sum).as("%s on %s", which, day).isLessThanOrEqualTo(hours + over + 0.02);
        });
        for (Visit visit : plan.visits()) {
            boolean soon = visit.week().compareTo(plan.firstWeek().plus(1)) <= 0 && visit.labourHours() > 0;
            assertThat(!soon || DepotDays.find(plan.days(), visit).isPresent())
                    .as("%s: %s has a day", which, visit.truck())
                    .isTrue();
            assertThat(visit.depot()).isEqualTo(NORTH);
        }
    }

    /** The week's overtime where its visits need more than its plain hours, or a limit is named; else none. */
    private static double overtimeOf(FleetSnapshot fleet, Plan plan, LocalDate day) {
        IsoWeek week = IsoWeek.of(day);
        double needs = plan.visits().stream()
                .filter(visit -> visit.week().equals(week))
                .mapToDouble(Visit::labourHours)
                .sum();
        double plain = plan.days().get(0).days().loads().stream()
                .filter(load -> IsoWeek.of(load.date()).equals(week))
                .mapToDouble(DayPlan.DayLoad::availableHours)
                .sum();
        boolean named = !plan.days().get(0).days().limits().isEmpty();
        double most = fleet.depots().get(0).overtimeHoursPerWeek();
        return named ? most : Math.min(most, Math.max(0, needs - plain));
    }
}
