package dev.injectorplanner.app.web.worklist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.units.SiteUnits;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which trucks the worklist shows and in what order, as its address says. */
class WorklistQueryTest {
    private static final List<WorkTruck> TRUCKS = List.of(
            truck("T10", "North", 0.30, 2, 250_000.0, "2026-W12", Standing.PLANNED),
            truck("T9", "South", 0.05, 0, 300_000.0, null, Standing.NO_VISIT),
            truck("T2", "North", null, 1, null, null, Standing.NOTHING),
            truck("T11", "South", 0.10, 5, 100_000.0, "2026-W10", Standing.SAFETY));

    private static WorkTruck truck(
            String name, String depot, Double chance, long faults, Double since, String week, Standing standing) {
        return new WorkTruck(
                name,
                "VIN" + name,
                depot,
                "",
                "K8",
                chance == null ? null : new WorkTruck.Risk(chance, 3, 0.15),
                faults,
                new WorkTruck.Meters(since, 500_000.0, null, 1_000.0),
                week == null ? null : new WorkTruck.Next(IsoWeek.parse(week), null, "all 8", 9),
                standing,
                false);
    }

    private static List<String> shown(Map<String, String> set) {
        return new WorklistQuery(set)
                .of(TRUCKS, Set.of("T9"), SiteUnits.METRIC).stream()
                        .map(WorkTruck::truck)
                        .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "'', T10 T11 T9 T2",
        "chance, T10 T11 T9 T2",
        "-chance, T9 T11 T10 T2",
        "truck, T2 T9 T10 T11",
        "-truck, T11 T10 T9 T2",
        "faults, T11 T10 T2 T9",
        "since, T9 T10 T11 T2",
        "-since, T11 T10 T9 T2",
        "visit, T11 T10 T2 T9",
        "-visit, T10 T11 T2 T9",
        "state, T11 T9 T10 T2",
        "depot, T2 T10 T9 T11",
        "nonsense, T10 T11 T9 T2"
    })
    void what_is_not_known_comes_last_and_equals_stand_by_name(String sort, String order) {
        assertThat(shown(Map.of("sort", sort))).isEqualTo(List.of(order.split(" ")));
    }

    @ParameterizedTest
    @CsvSource({
        "depot, South, T11 T9",
        "state, no-visit, T9",
        "faults, on, T10 T11 T2",
        "risk, 9, T10 T11",
        "km, '200,000', T10 T9",
        "over, on, T10",
        "find, anything, T9",
        "unknown, x, T10 T11 T9 T2"
    })
    void a_filter_leaves_what_it_says(String name, String value, String left) {
        assertThat(shown(Map.of(name, value))).isEqualTo(List.of(left.split(" ")));
    }

    @Test
    void a_distance_is_typed_in_the_sites_unit() {
        SiteUnits miles =
                new SiteUnits(SiteUnits.Distance.MILES, SiteUnits.Volume.LITRES, SiteUnits.Temperature.CELSIUS);
        // 160,000 mi is 257,495 km: 1 mi = 1.609344 km exactly (international yard and pound agreement, 1959)
        assertThat(new WorklistQuery(Map.of("km", "160000")).of(TRUCKS, Set.of(), miles))
                .extracting(WorkTruck::truck)
                .containsExactly("T9");
    }

    @Test
    void an_address_is_read_back_as_it_was_written() {
        WorklistQuery query =
                new WorklistQuery(Map.of("depot", "Kraków & Söhne", "sort", "-km=1", "find", "a+b", "page", "2"));

        assertThat(WorklistQuery.parse(query.address())).isEqualTo(query);
        assertThat(query.with("sort", "truck").get("page")).isEmpty();
        assertThat(query.with("depot", "").filters()).isEqualTo(1);
    }

    @Test
    void a_figure_that_is_none_is_refused_with_a_fix() {
        assertThatThrownBy(() -> shown(Map.of("risk", "high")))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("high")
                .hasMessageContaining("15");
    }

    @ParameterizedTest
    @CsvSource({"T9, T10, -1", "T10, T10a, -1", "t2, T10, -1", "A-07, A-7, -1", "12, 9, 1", "x, x, 0"})
    void names_stand_as_people_count(String one, String other, int order) {
        assertThat(Integer.signum(NaturalOrder.INSTANCE.compare(one, other))).isEqualTo(order);
        assertThat(Integer.signum(NaturalOrder.INSTANCE.compare(other, one))).isEqualTo(-order);
    }
}
