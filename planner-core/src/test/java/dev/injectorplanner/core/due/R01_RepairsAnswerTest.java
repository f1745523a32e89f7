package dev.injectorplanner.core.due;

import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.fleet.JobPart;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PartKind;
import dev.injectorplanner.core.fleet.Per;
import dev.injectorplanner.core.fleet.Repair;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.fleet.TaskDone;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.schedule.EarliestFit;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a recorded repair answers, and what a recorded service puts off. */
class R01_RepairsAnswerTest {
    private static Plan plan(FleetBuilder fleet) {
        return new Planner(new EarliestFit()).plan(fleet.build(), Policy.standard(), TODAY);
    }

    /** Three faults of the circuit of cylinder 3, and three of its balance, which no wiring explains. */
    private static FleetBuilder faulty(String code) {
        FleetBuilder fleet =
                new FleetBuilder().truck("T1").allInjectors("T1", 60_000).rule(RuleKind.FAULTS, 3);
        for (int day = 9; day >= 3; day -= 3) {
            fleet.fault("T1", TODAY.minusDays(day), code);
        }
        return fleet;
    }

    private static long faultsDue(FleetBuilder fleet) {
        return plan(fleet).dueItems().stream()
                .filter(item -> item.kind() == DueKind.FAULTS)
                .count();
    }

    @ParameterizedTest
    @CsvSource({
        "SPN 653 FMI 5, injector harness, 0",
        "P0203, 'injector connector, cylinder 3', 0",
        "P0203, 'injector connector, cylinders 1, 3', 0",
        "P0203, 'injector connector, cylinder 4', 1",
        "SPN 653 FMI 7, injector harness, 1",
        "P0269, injector harness, 1",
        "P0203, 'injector harness, fuel filter', 0",
        "P0203, NOx sensor connector cleaned, 1",
        "P0203, trailer wiring, 1",
        "P0203, fuel filter, 1",
        "P0203, brakes, 1"
    })
    void wiring_answers_faults_of_the_circuit_of_its_cylinders(String code, String what, int due) {
        FleetBuilder fleet = faulty(code);
        assertThat(faultsDue(fleet)).isEqualTo(1);
        double before = plan(fleet).risks().get(2).chance12();
        fleet.repair("T1", TODAY.minusDays(1), what, "Kim");
        assertThat(faultsDue(fleet)).isEqualTo(due);
        double after = plan(fleet).risks().get(2).chance12();
        if (due == 0) {
            assertThat(after).isLessThan(before);
        } else {
            assertThat(after).isEqualTo(before);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "'brakes checked, no fault found', true",
        "air suspension relief valve, true",
        "trailer coupling, true",
        "oil leak at the sump, true",
        "AdBlue injector, true",
        "turbo oil return line, true",
        "AdBlue supply pump, true",
        "no fault found, false",
        "pressure relief valve, false",
        "fuel supply pump, false"
    })
    void only_work_on_the_fuel_system_closes_a_leak(String what, boolean open) {
        FleetBuilder fleet = new FleetBuilder()
                .truck("T1")
                .allInjectors("T1", 60_000)
                .fault("T1", TODAY.minusDays(3), "P0093")
                .repair("T1", TODAY.minusDays(1), what, "Kim");
        assertThat(plan(fleet).dueItems().stream().anyMatch(item -> item.kind() == DueKind.SAFETY))
                .isEqualTo(open);
    }

    /** Another cylinder that a remark compares with was not repaired. */
    @Test
    void a_cylinder_in_a_remark_is_none_that_was_repaired() {
        FleetBuilder fleet = faulty("P0203");
        fleet.repairs.add(repair("injector harness, cylinder 5", "compared with cylinder 3: in order"));
        assertThat(faultsDue(fleet)).isEqualTo(1);
    }

    private static Repair repair(String what, String remark) {
        return new Repair("T1", TODAY.minusDays(1), null, what, null, remark, "Kim");
    }

    /** A leak that was looked for in vain says nothing of the rail's pressure. */
    @Test
    void no_fault_found_closes_what_was_looked_for() {
        FleetBuilder fleet = new FleetBuilder()
                .truck("T1")
                .allInjectors("T1", 60_000)
                .fault("T1", TODAY.minusDays(3), "P0093")
                .fault("T1", TODAY.minusDays(3), "SPN 157 FMI 1");
        fleet.repairs.add(repair(Repair.foundNothing(List.of("P0093", "SPN 157 FMI 18")), "filter: in order"));
        assertThat(plan(fleet).dueItems())
                .filteredOn(item -> item.kind() == DueKind.SAFETY)
                .singleElement()
                .satisfies(item -> assertThat(item.faultCode()).isEqualTo("SPN 157 FMI 1"));
    }

    @Test
    void a_code_of_the_circuit_that_was_looked_for_in_vain_is_answered() {
        FleetBuilder fleet = faulty("P0203");
        fleet.repairs.add(repair(Repair.foundNothing(List.of("P0204")), ""));
        assertThat(faultsDue(fleet)).isEqualTo(1);
        fleet.repairs.add(repair(Repair.foundNothing(List.of("P0203")), ""));
        assertThat(faultsDue(fleet)).isZero();
    }

    /** The controller's counter runs on: 7 were the old injector's, one is the new one's. */
    @Test
    void a_new_injector_does_not_inherit_the_count_of_the_old_one() {
        FleetBuilder fleet = new FleetBuilder().truck("T1").rule(RuleKind.FAULTS, 3);
        fleet.injector("T1", 3, TODAY.minusDays(20), null);
        fleet.faults.add(counted(TODAY.minusDays(25), 7));
        fleet.faults.add(counted(TODAY.minusDays(5), 8));
        assertThat(faultsDue(fleet)).isZero();
        fleet.faults.add(counted(TODAY.minusDays(2), 11));
        assertThat(faultsDue(fleet)).isEqualTo(1);
    }

    private static Fault counted(LocalDate day, int count) {
        return new Fault("T1", FleetBuilder.noon(day), new FaultCode("SPN 653 FMI 7"), null, count, null);
    }

    @Test
    void a_fault_after_the_repair_counts_again() {
        FleetBuilder fleet = faulty("P0203").repair("T1", TODAY.minusDays(4), "injector harness", "Kim");
        assertThat(faultsDue(fleet)).isZero();
        fleet.fault("T1", TODAY.minusDays(2), "P0203").fault("T1", TODAY.minusDays(1), "P0203");
        assertThat(faultsDue(fleet)).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({
        "fuel filter, true",
        "supply pump, true",
        "high-pressure pump, true",
        "pressure relief valve, true",
        "fuel line, true",
        "no fault found, true",
        "leaking connector of the return line, true",
        "injector harness, false",
        "injector connector, false"
    })
    void fuel_work_closes_a_safety_fault_and_wiring_does_not(String what, boolean closes) {
        FleetBuilder fleet =
                new FleetBuilder().truck("T1").allInjectors("T1", 60_000).fault("T1", TODAY.minusDays(3), "P0093");
        assertThat(plan(fleet).safety()).hasSize(1);
        fleet.repair("T1", TODAY.minusDays(1), what, "Kim");
        assertThat(plan(fleet).safety()).hasSize(closes ? 0 : 1);
    }

    private static FleetBuilder serviced(Double everyKm, Integer everyMonths) {
        FleetBuilder fleet =
                new FleetBuilder().truck("T1").allInjectors("T1", 60_000).onShelf(20);
        fleet.intervals.add(new IntervalTask(FleetBuilder.V8, "fuel filter", everyKm, null, everyMonths, 0.5, true));
        return fleet;
    }

    private static DueItem service(FleetBuilder fleet) {
        return plan(fleet).dueItems().stream()
                .filter(item -> item.kind() == DueKind.INTERVAL)
                .findFirst()
                .orElseThrow();
    }

    /** 300,000 km today, 1,400 a week: done at 290,000, next at 310,000, that is in 10,000 / 1,400 = 7.14 weeks or 50 days. */
    @Test
    void the_next_service_is_an_interval_after_the_last_one_on_record() {
        FleetBuilder fleet = serviced(20_000.0, null);
        assertThat(service(fleet).by()).isEqualTo(TODAY.plusDays(100)); // the next multiple, 320,000 km
        LocalDate done = TODAY.minusDays(50);
        fleet.tasksDone.add(new TaskDone("T1", "fuel filter", done, 290_000.0, null));
        assertThat(service(fleet).by()).isEqualTo(TODAY.plusDays(50));
        assertThat(service(fleet).evidence()).isEqualTo("last done on " + done + ", 10,000 km ago, next at 310,000 km");
        FleetBuilder byMonths = serviced(null, 6);
        byMonths.tasksDone.add(new TaskDone("T1", "fuel filter", TODAY.minusMonths(4), null, null));
        assertThat(service(byMonths).by()).isEqualTo(TODAY.plusMonths(2));
    }

    @Test
    void parts_of_a_service_are_in_kits_and_orders() {
        FleetBuilder fleet = serviced(20_000.0, null).rule(RuleKind.DISTANCE_KM, 50_000);
        fleet.tasksDone.add(new TaskDone("T1", "fuel filter", TODAY.minusDays(130), 281_000.0, null));
        fleet.parts.add(new Part(
                "FIL-1",
                "fuel filter",
                PartKind.FILTER,
                "Supplier One",
                new BigDecimal("31"),
                BigDecimal.ZERO,
                0,
                2,
                4,
                1,
                0,
                0,
                0,
                null));
        fleet.jobParts.add(new JobPart(FleetBuilder.V8, Per.TASK, null, "FIL-1", 2, 1, "fuel filter"));
        Plan plan = plan(fleet);
        assertThat(plan.visits()).anySatisfy(visit -> assertThat(visit.tasks()).contains("fuel filter"));
        assertThat(plan.partNeeds()).anySatisfy(need -> {
            assertThat(need.part()).isEqualTo("FIL-1");
            assertThat(need.required()).isEqualTo(2);
        });
        assertThat(plan.parts().allocation().pieces()).anySatisfy(pieces -> {
            assertThat(pieces.part()).isEqualTo("FIL-1");
            assertThat(pieces.quantity()).isEqualTo(2);
        });
        assertThat(plan.parts().orders())
                .anySatisfy(line -> assertThat(line.part()).isEqualTo("FIL-1"));
    }
}
