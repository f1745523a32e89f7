package dev.injectorplanner.reports.bay;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.due.DueAction;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.units.SiteUnits;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Eight mileage lines that were due first do not hide the faults of cylinder 3. */
class EvidenceTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private static DueItem item(int cylinder, DueKind kind, DueAction action, String evidence, LocalDate by) {
        return new DueItem("T1", "North", cylinder, kind, null, action, evidence, "3 in 30 days", "site rule", by);
    }

    @Test
    void the_strongest_comes_first_and_none_is_cut() {
        List<DueItem> items = new ArrayList<>();
        for (int cylinder = 1; cylinder <= 8; cylinder++) {
            String km = "310,000 km since fitting; " + (cylinder == 8 ? "47" : "5")
                    + " % chance of failing within 12 weeks";
            items.add(item(cylinder, DueKind.DISTANCE_KM, DueAction.REPLACE, km, DAY.minusDays(90)));
        }
        items.add(item(4, DueKind.WARRANTY, DueAction.INSPECT, "warranty ends", DAY.minusDays(120)));
        items.add(item(5, DueKind.RETURN_FLOW, DueAction.INSPECT, "return flow 62 ml/min", DAY));
        items.add(item(3, DueKind.RISK, DueAction.REPLACE, "31 % chance", DAY));
        items.add(item(3, DueKind.FAULTS, DueAction.REPLACE, "4 faults of the cylinder", DAY));
        String limit = " (limit 3 in 30 days, site rule)";
        assertThat(Evidence.of(items, SiteUnits.METRIC))
                .containsExactly(
                        "Cylinder 3: 4 faults of the cylinder" + limit,
                        "Cylinder 5: return flow 62 ml/min" + limit,
                        "Cylinder 3: 31 % chance" + limit,
                        "Cylinder 8: 310,000 km since fitting; 47 % chance of failing within 12 weeks" + limit,
                        "Cylinders 1 2 3 4 5 6 7: 310,000 km since fitting; 5 % chance of failing within 12 weeks"
                                + limit,
                        "Cylinder 4: warranty ends" + limit);
    }
}
