package dev.injectorplanner.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Commands by PostgreSQL's manual, chapters pg_dump, createdb, pg_restore and "Connection URIs" (34.1.1.2). */
class DatabaseToolsTest {
    private static DatabaseTools of(String url, String user) {
        return DatabaseTools.of(new StoreSettings(url, user, "secret"));
    }

    @Test
    void a_database_on_another_machine() {
        DatabaseTools tools = of("jdbc:postgresql://db.example:5433/planner?sslmode=require", "fleet");
        assertThat(tools.backup())
                .isEqualTo("pg_dump --format=custom --file=planner.dump postgresql://fleet@db.example:5433/planner");
        assertThat(tools.restore())
                .containsExactly(
                        "createdb --maintenance-db=postgresql://fleet@db.example:5433/planner planner_restored",
                        "pg_restore --exit-on-error --single-transaction --no-owner"
                                + " --dbname=postgresql://fleet@db.example:5433/planner_restored planner.dump");
        assertThat(tools.serve())
                .isEqualTo("java -jar planner.jar serve --database jdbc:postgresql://db.example:5433/planner_restored");
    }

    @Test
    void the_short_form_means_this_machine_and_nobody_is_the_tools_own_default() {
        assertThat(of("jdbc:postgresql:planner", "").backup())
                .isEqualTo("pg_dump --format=custom --file=planner.dump postgresql://localhost/planner");
    }

    @Test
    void names_that_a_shell_would_read_are_quoted_and_the_password_is_not_printed() {
        DatabaseTools tools = of("jdbc:postgresql://localhost/my%20planner", "o'hara & co");
        assertThat(tools.backup()).endsWith(" postgresql://o%27hara%20%26%20co@localhost/my%20planner");
        assertThat(tools.restore().get(0)).endsWith(" 'my planner_restored'");
        assertThat(tools.toString()).doesNotContain("secret");
    }
}
