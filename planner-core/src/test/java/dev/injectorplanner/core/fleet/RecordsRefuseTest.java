package dev.injectorplanner.core.fleet;

import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static dev.injectorplanner.core.testkit.FleetBuilder.V8;
import static dev.injectorplanner.core.testkit.FleetBuilder.noon;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.check.InvalidValueException;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** Every table's record refuses what cannot be, and says which field, what was there, and how to fix it. */
class RecordsRefuseTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
    private static final BigDecimal MONEY = new BigDecimal("60");
    private static final Set<DayOfWeek> DAYS = EnumSet.of(DayOfWeek.MONDAY);

    private static void refused(String field, String words, ThrowingCallable making) {
        assertThatThrownBy(making)
                .isInstanceOf(InvalidValueException.class)
                .hasMessageStartingWith(field + " \"")
                .hasMessageContaining(words)
                .hasMessageContaining("Fix: ");
    }

    private static Depot depot(int bays, double hours, Set<DayOfWeek> days, String overtime) {
        return new Depot("N", "North", ZONE, bays, hours, days, MONEY, new BigDecimal(overtime), 8);
    }

    @Test
    void depots() {
        assertThat(depot(2, 16, DAYS, "60").labourPerHour()).isEqualTo(new BigDecimal("60.00"));
        refused("bays", "from 1 to 200", () -> depot(0, 16, DAYS, "60"));
        refused("labour_hours_per_day", "must be from 0", () -> depot(2, Double.NaN, DAYS, "60"));
        refused("work_days", "names no day", () -> depot(2, 16, Set.of(), "60"));
        refused("overtime_per_hour", "is below labour_per_hour 60.00", () -> depot(2, 16, DAYS, "59.99"));
        refused("depot", "is empty", () -> new Depot(" ", "", ZONE, 1, 1, DAYS, MONEY, MONEY, 0));
        refused("labour_hours", "must be from 0", () -> new CapacityOverride("N", TODAY, -1, 1));
        refused("minimum_on_road", "from 0", () -> new DutyGroup("G", -1, MONEY));
        refused("downtime_per_day", "zero or more", () -> new DutyGroup("G", 1, new BigDecimal("-5")));
    }

    private static EngineFamily family(int cylinders, List<Integer> bank, List<Integer> firing, double glycol) {
        return new EngineFamily(V8, cylinders, List.of(new Bank("inline", bank)), firing, 0.5, 30, glycol, "P", MONEY);
    }

    @Test
    void engineFamilies() {
        List<Integer> four = List.of(1, 2, 3, 4);
        assertThat(family(4, four, List.of(1, 3, 4, 2), 50).bankOf(3).name()).isEqualTo("inline");
        refused("cylinders", "from 1 to 16", () -> family(17, four, four, 50));
        refused("banks", "must list each cylinder 1 to 4 once", () -> family(4, List.of(1, 2, 3), four, 50));
        refused("firing_order", "must list each cylinder", () -> family(4, four, List.of(1, 3, 3, 2), 50));
        refused("glycol_percent", "from 0 to 100", () -> family(4, four, four, 101));
        refused("banks", "has no cylinders", () -> new Bank("left", List.of()));
        assertThatThrownBy(() -> family(4, four, four, 50).bankOf(5)).hasMessage("V8 has no cylinder 5");
    }

    @Test
    void accessSteps() {
        assertThat(new AccessStep(V8, "s", 1, 1, List.of(8, 7, 7), 0, "").cylinders())
                .containsExactly(7, 8);
        refused("order", "from 1 to 999", () -> new AccessStep(V8, "s", 0, 1, List.of(), 0, ""));
        refused("hours", "from 0 to 100", () -> new AccessStep(V8, "s", 1, Double.NaN, List.of(), 0, ""));
        refused("cylinders", "from 1 to 16", () -> new AccessStep(V8, "s", 1, 1, List.of(0), 0, ""));
        refused("drains_coolant_percent", "100", () -> new AccessStep(V8, "s", 1, 1, List.of(), 100.5, ""));
    }

    private static Truck truck(String out) {
        Vin vin = new Vin("ZZ908TRK000000017");
        return new Truck("T1", vin, "N", V8, " ", LocalDate.of(2024, 1, 1), LocalDate.parse(out), null);
    }

    @Test
    void trucks() {
        assertThat(truck("2024-06-01").dutyGroup()).isNull();
        assertThat(truck("2024-06-01").inServiceAt(LocalDate.of(2024, 5, 31))).isTrue();
        assertThat(truck("2024-06-01").inServiceAt(LocalDate.of(2024, 6, 1))).isFalse();
        refused("out_of_service_on", "is before in_service_on 2024-01-01", () -> truck("2023-12-31"));
        refused("to", "is before from 2026-03-02", () -> new AwayWindow("T1", TODAY, TODAY.minusDays(1), ""));
    }

    private static FittedInjector fitted(Double km, String removed, Double removedKm, Found found) {
        return new FittedInjector(
                "T1",
                3,
                "P",
                null,
                null,
                Origin.NEW,
                LocalDate.of(2024, 1, 1),
                km,
                null,
                removed == null ? null : LocalDate.parse(removed),
                removedKm,
                null,
                found);
    }

    @Test
    void injectors() {
        refused("odometer", "zero or more", () -> fitted(-1.0, null, null, null));
        refused("odometer", "zero or more", () -> fitted(Double.NaN, null, null, null));
        refused("removed_on", "is before fitted_on 2024-01-01", () -> fitted(1.0, "2023-12-31", null, null));
        refused("removed_on", "but other removal columns are filled (500.0)", () -> fitted(1.0, null, 500.0, null));
        refused(
                "removed_on",
                "but other removal columns are filled (FAILED)",
                () -> fitted(1.0, null, null, Found.FAILED));
    }

    @Test
    void whenOneInjectorOverlapsAnother() {
        FittedInjector first = fitted(1.0, "2024-06-01", null, null);
        FittedInjector second = new FittedInjector(
                "T1", 3, "P", null, null, Origin.NEW, LocalDate.of(2024, 6, 1), null, null, null, null, null, null);
        assertThat(first.overlaps(second)).isFalse();
        assertThat(fitted(1.0, "2024-06-02", null, null).overlaps(second)).isTrue();
        assertThat(second.overlaps(fitted(1.0, null, null, null))).isTrue();
        assertThat(first.fittedAt(LocalDate.of(2024, 6, 1))).isFalse();
        assertThat(first.fittedAt(LocalDate.of(2024, 5, 31))).isTrue();
    }

    @Test
    void readingsFaultsAndTests() {
        refused("odometer", "both empty", () -> new Reading("T1", noon(TODAY), null, null, false));
        refused("odometer", "from 0 to 10000000", () -> new Reading("T1", noon(TODAY), 1e8, null, false));
        refused("engine_hours", "from 0", () -> new Reading("T1", noon(TODAY), null, -1.0, false));
        FaultCode code = new FaultCode("P0203");
        refused("cylinder", "is for cylinder 3", () -> new Fault("T1", noon(TODAY), code, 4, 1, null));
        refused("count", "from 1", () -> new Fault("T1", noon(TODAY), code, null, 0, null));
        assertThat(new Fault("T1", noon(TODAY), code, null, 1, null).cylinder()).isEqualTo(3);
        refused("unit", "is empty", () -> new CylinderTest("T1", 1, noon(TODAY), TestKind.BALANCE, 1, "", ""));
        refused(
                "value",
                "must be from",
                () -> new CylinderTest("T1", 1, noon(TODAY), TestKind.BALANCE, Double.NaN, "%", ""));
    }

    private static Part part(String price, int lead, int leadMost, String pattern) {
        BigDecimal none = BigDecimal.ZERO;
        return new Part(
                "P", "", PartKind.SEAL, "S", new BigDecimal(price), none, 0, lead, leadMost, 1, 0, 0, 0, pattern);
    }

    @Test
    void parts() {
        assertThat(part("5", 1, 1, "[A-Z]{3}").acceptsCode("ABC")).isTrue();
        assertThat(part("5", 1, 1, "[A-Z]{3}").acceptsCode("ABCD")).isFalse();
        assertThat(part("5", 1, 1, " ").acceptsCode("anything")).isTrue();
        refused("price", "zero or more", () -> part("-1", 1, 1, null));
        refused("price", "more than four decimals", () -> part("1.00001", 1, 1, null));
        refused("lead_days_max", "is below lead_days 9", () -> part("5", 9, 8, null));
        refused("code_pattern", "is not a regular expression that can be used here", () -> part("5", 1, 1, "[A-Z"));
    }

    @Test
    void jobPartsStockAndOrders() {
        refused("step", "is empty though per is step", () -> new JobPart(V8, Per.STEP, null, "P", 1, 1));
        refused("step", "is given though per is visit", () -> new JobPart(V8, Per.VISIT, "s", "P", 1, 1));
        refused("quantity", "above zero", () -> new JobPart(V8, Per.VISIT, null, "P", 0, 1));
        refused("chance", "from 0 to 1", () -> new JobPart(V8, Per.VISIT, null, "P", 1, 1.1));
        refused("on_hand", "must be from 0", () -> new StockLine("N", "P", -1));
        refused("quantity", "above zero", () -> new PurchaseLine("O", "P", "N", 0, TODAY, null));
    }

    @Test
    void intervalsAndRules() {
        refused("every_km", "are all empty", () -> new IntervalTask(V8, "t", null, null, null, 1, true));
        refused("every_months", "from 1 to 600", () -> new IntervalTask(V8, "t", null, null, 0, 1, true));
        refused("every", "above zero", () -> new IntervalTask(V8, "t", 0.0, null, null, 1, true));
        refused("limit", "above zero", () -> new Rule(null, RuleKind.FAULTS, 0, null));
        refused("window_days", "from 1 to 3650", () -> new Rule(null, RuleKind.FAULTS, 1, 0));
        assertThat(new Rule(" ", RuleKind.FAULTS, 1, null).family()).isNull();
    }
}
