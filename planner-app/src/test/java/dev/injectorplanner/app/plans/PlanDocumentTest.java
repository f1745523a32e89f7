package dev.injectorplanner.app.plans;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.plan.Plan;
import java.io.InputStream;
import org.junit.jupiter.api.Test;

/** A plan that the last release kept: the demo's, as it lay in the store at schema version 10. It is never made anew. */
class PlanDocumentTest {
    @Test
    void a_plan_of_the_last_release_is_read_whole() throws Exception {
        try (InputStream document = getClass().getResourceAsStream("/stores/plan-schema-10.json.gz")) {
            Plan plan = PlanDocument.read(document.readAllBytes());
            assertThat(plan.visits()).hasSize(50);
            assertThat(plan.dueItems()).hasSize(163);
            assertThat(plan.visits()).allMatch(visit -> visit.labourHours() > 0);
            assertThat(PlanDocument.read(PlanDocument.write(plan))).isEqualTo(plan);
        }
    }
}
