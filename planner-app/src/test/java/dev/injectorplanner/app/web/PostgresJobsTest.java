package dev.injectorplanner.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.testkit.PlannerRuns;
import dev.injectorplanner.app.testkit.Visitor;
import java.net.URI;
import org.junit.jupiter.api.Test;

@PlannerRuns(on = PlannerRuns.Database.POSTGRES)
class PostgresJobsTest {
    @Test
    void serves_on_postgresql_where_copies_are_the_databases_own(URI address) throws Exception {
        assertThat(Visitor.nobody(address).get("/actuator/health").body()).isEqualTo("{\"status\":\"UP\"}");
        assertThat(Visitor.as(Role.MANAGER, address).get("/jobs").body())
                .containsPattern("Not set up here: [^.]*backup")
                .contains("nightly plan", "North")
                .doesNotContain("pg_dump");
        assertThat(Visitor.as(Role.ADMINISTRATOR, address).get("/jobs").body())
                .containsPattern("pg_dump --format=custom --file=planner.dump postgresql://\\w+@localhost:\\d+/\\w+")
                .containsPattern("pg_restore --exit-on-error .*/\\w+_restored planner.dump")
                .containsPattern("serve --database jdbc:postgresql://localhost:\\d+/\\w+_restored");
    }
}
