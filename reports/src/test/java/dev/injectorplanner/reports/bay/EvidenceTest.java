package dev.injectorplanner.reports.bay;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.due.DueAction;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.units.SiteUnits;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Eight mileage lines that were due first do not hide the faults of cylinder 3. */
class EvidenceTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private static DueItem item(int cylinder, DueKind kind, DueAction action, String evidence, LocalDate by) {
        return item(cylinder, kind, action, evidence, by, null);
    }

    private static DueItem item(
            int cylinder, DueKind kind, DueAction action, String evidence, LocalDate by, @Nullable Double chance12) {
        return new DueItem(
                "T1", "North", cylinder, kind, null, action, evidence, "3 in 30 days", "site rule", by, null, chance12);
    }

    @Test
    void the_strongest_comes_first_and_none_is_cut() {
        List<DueItem> items = new ArrayList<>();
        for (int cylinder = 1; cylinder <= 8; cylinder++) {
            boolean likely = cylinder == 8;
            String km = "310,000 km since fitting; " + (likely ? "47" : "5") + " % chance of failing within 12 weeks";
            double chance = likely ? 0.474 : 0.051;
            items.add(item(cylinder, DueKind.DISTANCE_KM, DueAction.REPLACE, km, DAY.minusDays(90), chance));
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

    /** The engine writes ISO dates, which files keep; the sheet names the month. */
    @Test
    void a_date_reads_as_everywhere_on_the_sheet() {
        assertThat(Evidence.of(
                        List.of(item(3, DueKind.FAULTS, DueAction.REPLACE, "4 faults, last on 2026-02-20", DAY)),
                        SiteUnits.METRIC))
                .containsExactly("Cylinder 3: 4 faults, last on 20 Feb 2026 (limit 3 in 30 days, site rule)");
    }

    /** Both are "under 1 %" in words; a plan that was kept without chances goes last. */
    @Test
    void a_chance_counts_as_a_figure_not_as_its_words() {
        String words = " since fitting; under 1 % chance of failing within 12 weeks";
        List<DueItem> items = List.of(
                item(1, DueKind.DISTANCE_KM, DueAction.REPLACE, "300,000 km" + words, DAY),
                item(2, DueKind.DISTANCE_KM, DueAction.REPLACE, "302,000 km" + words, DAY, 0.002),
                item(3, DueKind.DISTANCE_KM, DueAction.REPLACE, "305,000 km" + words, DAY, 0.008));
        assertThat(Evidence.of(items, SiteUnits.METRIC))
                .extracting(line -> line.substring(0, "Cylinder 1".length()))
                .containsExactly("Cylinder 3", "Cylinder 2", "Cylinder 1");
    }
}
