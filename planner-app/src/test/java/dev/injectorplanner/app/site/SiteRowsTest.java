package dev.injectorplanner.app.site;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.intake.Intake;
import dev.injectorplanner.app.people.AuditEntry;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A manager changes families, access steps, rules and depots row by row. Family Four: four cylinders, two steps, two trucks. */
class SiteRowsTest {
    @TempDir
    private Path folder;

    private Store store;
    private SiteRows rows;

    @BeforeEach
    void open() {
        store = Store.open(StoreSettings.embedded(folder));
        dev.injectorplanner.app.store.OneFleet.into(store);
        rows = new SiteRows(store, new Intake(store), InstantSource.system());
    }

    @AfterEach
    void close() {
        store.close();
    }

    private SiteRow row(SiteTable table, String key) {
        return rows.find(table, key).orElseThrow();
    }

    private Map<String, String> with(SiteRow row, String column, String value) {
        Map<String, String> cells = new HashMap<>(row.cells());
        cells.put(column, value);
        return cells;
    }

    private AuditEntry newest() {
        return new AuditTrail(store.dataSource()).list(Long.MAX_VALUE, 1).get(0);
    }

    @Test
    void a_step_takes_longer_and_the_trail_says_so() {
        SiteRow step = row(SiteTable.ACCESS, "Four, cowl");

        assertThat(rows.save(SiteTable.ACCESS, with(step, "hours", "2.25"), step.key(), step.mark(), "ann"))
                .isEmpty();

        assertThat(row(SiteTable.ACCESS, "Four, cowl").cells()).containsEntry("hours", "2.25");
        assertThat(newest().who()).isEqualTo("ann");
        assertThat(newest().subject()).isEqualTo("access: Four, cowl");
        assertThat(newest().before()).isEqualTo("hours 1.5");
        assertThat(newest().after()).isEqualTo("hours 2.25");
    }

    @Test
    void the_guards_of_files_hold_and_say_which_column() {
        SiteRow family = row(SiteTable.FAMILIES, "Four");

        Map<String, String> wrong = rows.save(
                SiteTable.FAMILIES, with(family, "glycol_percent", "140"), family.key(), family.mark(), "ann");

        assertThat(wrong).containsOnlyKeys("glycol_percent");
        assertThat(wrong.get("glycol_percent")).startsWith("“140”").contains("Fix: ");
        assertThat(row(SiteTable.FAMILIES, "Four")).isEqualTo(family);
    }

    @Test
    void an_unknown_part_names_the_nearest() {
        SiteRow family = row(SiteTable.FAMILIES, "Four");

        assertThat(rows.save(
                                SiteTable.FAMILIES,
                                with(family, "injector_part", "INJ-4Q"),
                                family.key(),
                                family.mark(),
                                "ann")
                        .get("injector_part"))
                .contains("INJ-4R");
    }

    @Test
    void a_safety_rule_is_added_and_kept_to_its_range() {
        Map<String, String> rule = Map.of("family", "all", "rule", "safety", "limit", "90", "window_days", "");
        assertThat(rows.save(SiteTable.RULES, rule, null, "", "ann")).containsOnlyKeys("limit");

        Map<String, String> sooner = Map.of("family", "all", "rule", "safety", "limit", "2", "window_days", "14");
        assertThat(rows.save(SiteTable.RULES, sooner, null, "", "ann")).isEmpty();

        assertThat(row(SiteTable.RULES, "all, safety").cells()).containsEntry("limit", "2");
        assertThat(newest().before()).isEmpty();
        assertThat(rows.save(SiteTable.RULES, sooner, null, "", "ann").get("rule"))
                .contains("already exists");
    }

    @Test
    void of_two_who_change_a_row_the_later_is_told() {
        SiteRow seenByBoth = row(SiteTable.ACCESS, "Four, cowl");
        rows.save(SiteTable.ACCESS, with(seenByBoth, "hours", "2"), seenByBoth.key(), seenByBoth.mark(), "ann");

        Map<String, String> wrong =
                rows.save(SiteTable.ACCESS, with(seenByBoth, "hours", "3"), seenByBoth.key(), seenByBoth.mark(), "bob");

        assertThat(wrong.get(SiteRows.WHOLE_ROW)).contains("hours 2").contains("nothing was overwritten");
        assertThat(row(SiteTable.ACCESS, "Four, cowl").cells()).containsEntry("hours", "2");
        assertThat(rows.remove(SiteTable.ACCESS, seenByBoth.key(), seenByBoth.mark(), "bob"))
                .hasValueSatisfying(words -> assertThat(words).contains("nothing was overwritten"));
    }

    /** Two nodes on one store: each has its own object, so that only the store can make them take turns. */
    @Test
    void of_two_who_save_in_the_same_moment_one_is_told() throws Exception {
        SiteRow step = row(SiteTable.ACCESS, "Four, cowl");
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            for (int round = 1; round <= 5; round++) {
                SiteRow seen = row(SiteTable.ACCESS, step.key());
                List<Future<Map<String, String>>> answers = new ArrayList<>();
                for (String who : List.of("ann", "bob")) {
                    SiteRows node = new SiteRows(store, new Intake(store), InstantSource.system());
                    String hours = round + (who.equals("ann") ? ".25" : ".75");
                    answers.add(two.submit(() ->
                            node.save(SiteTable.ACCESS, with(seen, "hours", hours), seen.key(), seen.mark(), who)));
                }
                List<Map<String, String>> said =
                        List.of(answers.get(0).get(), answers.get(1).get());
                assertThat(said).filteredOn(Map::isEmpty).hasSize(1);
                assertThat(said)
                        .filteredOn(wrong -> !wrong.isEmpty())
                        .allSatisfy(wrong -> assertThat(wrong).containsOnlyKeys(SiteRows.WHOLE_ROW));
            }
        } finally {
            two.shutdown();
        }
    }

    @Test
    void a_family_with_trucks_stays_and_a_rule_goes() {
        SiteRow family = row(SiteTable.FAMILIES, "Four");
        assertThat(rows.remove(SiteTable.FAMILIES, "Four", family.mark(), "ann"))
                .hasValueSatisfying(words -> assertThat(words)
                        .contains("2 trucks")
                        .contains("access steps")
                        .contains("Fix: "));

        Map<String, String> rule = Map.of("family", "Four", "rule", "age_months", "limit", "48", "window_days", "");
        assertThat(rows.save(SiteTable.RULES, rule, null, "", "ann")).isEmpty();
        SiteRow added = row(SiteTable.RULES, "Four, age_months");
        assertThat(rows.remove(SiteTable.RULES, added.key(), added.mark(), "ann"))
                .isEmpty();
        assertThat(rows.find(SiteTable.RULES, added.key())).isEmpty();
        assertThat(newest().what()).isEqualTo("remove a row");
        assertThat(newest().before()).contains("limit 48");
    }

    /** A depot that only an open calendar address refers to, which no list of ours asks for. */
    @Test
    void what_else_refers_to_a_row_keeps_it() {
        SiteRow north = row(SiteTable.DEPOTS, "North");
        Map<String, String> south = with(north, "depot", "South");
        assertThat(rows.save(SiteTable.DEPOTS, south, null, "", "ann")).isEmpty();
        new dev.injectorplanner.app.calendar.CalendarFeeds(store.dataSource()).make("South", java.time.Instant.now());
        SiteRow there = row(SiteTable.DEPOTS, "South");

        assertThat(rows.remove(SiteTable.DEPOTS, "South", there.mark(), "ann"))
                .hasValueSatisfying(
                        words -> assertThat(words).contains("past records").contains("Fix: "));
        assertThat(rows.list(SiteTable.DEPOTS)).extracting(SiteRow::key).isEqualTo(List.of("North", "South"));
    }

    /** No truck has this family yet, so the intake would let it shrink under its steps; the plan could not be read then. */
    @Test
    void a_family_does_not_shrink_under_its_steps() {
        SiteRow four = row(SiteTable.FAMILIES, "Four");
        Map<String, String> five = with(four, "family", "Five");
        assertThat(rows.save(SiteTable.FAMILIES, five, null, "", "ann")).isEmpty();
        Map<String, String> step =
                new HashMap<>(row(SiteTable.ACCESS, "Four, cowl").cells());
        step.put("family", "Five");
        assertThat(rows.save(SiteTable.ACCESS, step, null, "", "ann")).isEmpty();

        SiteRow there = row(SiteTable.FAMILIES, "Five");
        Map<String, String> smaller = new HashMap<>(there.cells());
        smaller.put("cylinders", "2");
        smaller.put("banks", "inline 1 2");
        smaller.put("firing_order", "1 2");
        assertThat(rows.save(SiteTable.FAMILIES, smaller, there.key(), there.mark(), "ann"))
                .containsOnlyKeys("cylinders");
    }
}
