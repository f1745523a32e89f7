package dev.injectorplanner.app.security;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Scope;
import dev.injectorplanner.app.testkit.PlannerRuns;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.app.web.RunningApp;
import java.net.URI;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Text that tries to be more than text: in pages it is shown as it is, in files for spreadsheets it is no formula. */
@PlannerRuns
class StoredScriptTest {
    private static final String SCRIPT = "<script>alert(1)</script>\"'><img src=x onerror=alert(2)>";

    @Test
    void stored_text_is_shown_and_never_run(URI address, RunningApp app) throws Exception {
        Visitor administrator = Visitor.as(Role.ADMINISTRATOR, address);
        app.application().audit().record(SCRIPT, SCRIPT, SCRIPT, SCRIPT, SCRIPT);
        administrator.post(
                "/settings/tokens",
                "/settings/tokens/make",
                Map.of("name", SCRIPT, "scope", Scope.PLAN_READ.text(), "days", "7"));
        for (String path : new String[] {"/settings/audit", "/settings/tokens"}) {
            assertThat(Visitor.withoutOwnScript(administrator.get(path).body()))
                    .as(path)
                    .contains("&lt;script&gt;alert(1)")
                    .doesNotContain("<script", "<img");
        }
    }

    @Test
    void what_was_typed_and_refused_is_shown_and_never_run(URI address) throws Exception {
        Visitor administrator = Visitor.as(Role.ADMINISTRATOR, address);
        assertThat(Visitor.withoutOwnScript(administrator
                        .post("/settings/people", "/settings/people/add", Map.of("name", SCRIPT, "role", "buyer"))
                        .body()))
                .contains("cannot be used as a sign-in name", "&lt;script&gt;")
                .doesNotContain("<script", "<img");
        for (String path : List.of("/trucks?find=", "/find?q=")) {
            assertThat(Visitor.withoutOwnScript(administrator
                            .get(path + "%3Cscript%3Ealert(1)%3C/script%3E")
                            .body()))
                    .contains("&lt;script&gt;")
                    .doesNotContain("<script");
        }
    }

    @Test
    void the_exported_trail_holds_no_formula(URI address, RunningApp app) throws Exception {
        app.application().audit().record("=1+1", "@SUM(A1)", "+1", "-1", "quote \" and, comma");
        assertThat(Visitor.as(Role.ADMINISTRATOR, address)
                        .get("/settings/audit.csv")
                        .body())
                .startsWith("id,at,who,what,subject,before,after\r\n")
                .contains("\"'=1+1\",\"'@SUM(A1)\",\"'+1\",\"'-1\",\"quote \"\" and, comma\"\r\n");
    }
}
