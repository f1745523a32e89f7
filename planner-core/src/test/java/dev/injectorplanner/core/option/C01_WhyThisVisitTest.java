package dev.injectorplanner.core.option;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The answer for the visit of {@link A01_TwoTiredCylindersTest}: cylinders 2 and 7 in week 0, -730. */
class C01_WhyThisVisitTest {
    private final OptionPricer pricer = new OptionPricer(
            new CylinderSets(Engines.v8(), Engines.threeSteps()),
            new Rates(70, 2, 40, 400, 8),
            A01_TwoTiredCylindersTest.prices(),
            List.of(),
            2);
    private final VisitReason reason = VisitReason.of(pricer, pricer.best(0));

    @Test
    void each_cylinder_says_what_the_other_way_costs() {
        assertThat(reason.saves()).isCloseTo(730, within(1e-9));
        // without 7: {2} is -415, 315 dearer; without 2: {7} is -155, 575 dearer
        assertThat(reason.done()).extracting(VisitReason.Cylinder::cylinder).containsExactly(2, 7);
        assertThat(reason.done())
                .extracting(VisitReason.Cylinder::otherWayCosts)
                .containsExactly(575.0, 315.0);
        // with 8 as well: -655, 75 dearer
        assertThat(reason.left())
                .filteredOn(each -> each.cylinder() == 8)
                .extracting(VisitReason.Cylinder::otherWayCosts)
                .containsExactly(75.0);
    }

    @Test
    void the_week_says_what_moving_costs() {
        assertThat(reason.weekEarlier()).isNull();
        assertThat(reason.weekLater()).isCloseTo(65, within(1e-9));
        assertThat(reason.words())
                .startsWith("Saves 730 compared with no visit. Shared access 520 is shared by 2.")
                .endsWith("Moving it: a week later costs 65.");
    }
}
