package dev.injectorplanner.core.plan;

import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.schedule.EarliestFit;
import dev.injectorplanner.core.testkit.FleetBuilder;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * One truck, one injector beyond the site's limit: fitted at 90,000 km, 300,000 km today, so 210,000 km old; limit
 * 200,000 km; 1,400 km a week. 10,000 km beyond the limit are 50 days: due since 2026-01-11.
 */
class A01_OneInjectorOverdueTest {
    private final Plan plan = new Planner(new EarliestFit())
            .plan(
                    new FleetBuilder()
                            .truck("T1")
                            .injector("T1", 3, LocalDate.of(2023, 1, 9), 90_000.0)
                            .injector("T1", 4, LocalDate.of(2025, 1, 9), 280_000.0)
                            .rule(RuleKind.DISTANCE_KM, 200_000)
                            .build(),
                    Policy.standard(),
                    TODAY);

    @Test
    void theFindingSaysEvidenceLimitAndDay() {
        assertThat(plan.dueItems()).hasSize(1);
        DueItem item = plan.dueItems().get(0);
        assertThat(item.cylinder()).isEqualTo(3);
        assertThat(item.kind()).isEqualTo(DueKind.DISTANCE_KM);
        assertThat(item.evidence())
                .isEqualTo(
                        "210,000 km since fitting on 2023-01-09, 1,400 km a week; 5 % chance of failing within 12 weeks");
        assertThat(item.limit()).isEqualTo("200,000 km since fitting");
        assertThat(item.limitSource()).isEqualTo("site rule");
        assertThat(item.by()).isEqualTo(LocalDate.of(2026, 1, 11));
    }

    @Test
    void theVisitComesThisWeek() {
        Visit visit = plan.visits().get(0);
        assertThat(visit.week()).isEqualTo(new IsoWeek(2026, 10));
        assertThat(visit.cylinders()).containsExactly(3);
        assertThat(visit.steps()).containsExactly("covers off", "intake off");
        assertThat(visit.labourHours()).isCloseTo(3.4, within(1e-9));
        assertThat(visit.drainedLitres()).isCloseTo(20, within(1e-9));
        assertThat(visit.why())
                .startsWith(
                        "Cylinder 3: 210,000 km since fitting on 2023-01-09, 1,400 km a week; 5 % chance of failing within 12 weeks;"
                                + " 200,000 km since fitting (site rule), due 2026-01-11.")
                .contains("compared with no visit", "Adding another would cost more: cylinder 4", "a week later costs");
    }

    @Test
    void agesAreThereForEveryInjector() {
        assertThat(plan.injectors()).extracting("cylinder").isEqualTo(List.of(3, 4));
        assertThat(plan.injectors().get(1).km()).isCloseTo(20_000, within(1e-6));
        assertThat(plan.injectors().get(1).months()).isEqualTo(13);
    }

    @Test
    void oneInjectorIsMissingAndComesByExpressIfOrderedToday() {
        assertThat(plan.partNeeds()).hasSize(1);
        assertThat(plan.partNeeds().get(0).missing()).isEqualTo(1);
        assertThat(plan.partNeeds().get(0).express()).isEqualTo(1);
        assertThat(plan.partNeeds().get(0).orderBy()).isEqualTo(LocalDate.of(2026, 3, 2));
    }

    @Test
    void theHoursAreBooked() {
        assertThat(plan.loads()).hasSize(26);
        assertThat(plan.loads().get(0).labourHours()).isCloseTo(3.4, within(1e-9));
        assertThat(plan.loads().get(0).availableHours()).isEqualTo(80);
        assertThat(plan.loads().get(0).availableBayDays()).isEqualTo(10);
    }
}
