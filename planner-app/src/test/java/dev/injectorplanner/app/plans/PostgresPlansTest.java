package dev.injectorplanner.app.plans;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.store.StoreSettings;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

class PostgresPlansTest extends PlansContract {
    private EmbeddedPostgres postgres;

    @Override
    StoreSettings store(Path data) throws Exception {
        postgres = EmbeddedPostgres.start();
        return settings();
    }

    /** Two programs on one database take turns: the plan kept last is in force, whoever kept it. */
    @Test
    void of_two_nodes_the_later_plan_is_in_force() {
        try (Application other = Application.open(settings())) {
            application.plans().keep("one", DEPOT, NIGHT, plan);
            for (int run = 1; run <= 8; run++) {
                other.plans().keep("other " + run, DEPOT, NIGHT.plusSeconds(run), plan);
            }
            long last = application.plans().keep("one again", DEPOT, NIGHT.plusSeconds(9), plan);
            assertThat(other.plans().findInForce(DEPOT))
                    .hasValueSatisfying(kept -> assertThat(kept.id()).isEqualTo(last));
        }
    }

    private StoreSettings settings() {
        return new StoreSettings(postgres.getJdbcUrl("postgres", "postgres"), "postgres", "postgres");
    }

    @AfterAll
    void stop() throws Exception {
        postgres.close();
    }
}
