package dev.injectorplanner.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.check.InvalidValueException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProviderSettingsTest {
    @TempDir
    private Path folder;

    private Optional<ProviderSettings> read(Map<String, String> environment, String... lines) throws Exception {
        Path file = Files.writeString(folder.resolve("site.properties"), String.join("\n", lines));
        return ProviderSettings.find(Settings.read(file, ProviderSettings.names()), environment);
    }

    @Test
    void without_settings_there_is_no_provider() throws Exception {
        assertThat(read(Map.of(), "")).isEmpty();
        assertThatThrownBy(() -> read(Map.of(), "oidc.client-id=planner"))
                .hasMessage("oidc.client-id \"planner\": is set without oidc.issuer. Fix: set both, or none.");
    }

    @Test
    void the_secret_comes_from_the_environment_or_a_file_and_is_never_written_out() throws Exception {
        String[] lines = {"oidc.issuer=https://id.fleet.example/yard", "oidc.client-id=planner"};
        assertThat(read(Map.of(ProviderSettings.SECRET, "of the environment"), lines)
                        .orElseThrow()
                        .secret())
                .isEqualTo("of the environment");
        Path secret = Files.writeString(folder.resolve("secret"), "of the file\n");
        ProviderSettings set = read(Map.of(), lines[0], lines[1], "oidc.client-secret-file=" + secret)
                .orElseThrow();
        assertThat(set.secret()).isEqualTo("of the file");
        assertThat(set)
                .hasToString(
                        "https://id.fleet.example/yard, client planner, matched by email, called id.fleet.example");
        assertThat(read(Map.of(), lines).orElseThrow().secret()).isNull();
        assertThatThrownBy(
                        () -> read(Map.of(), lines[0], lines[1], "oidc.client-secret-file=" + folder.resolve("none")))
                .hasMessageContaining("cannot be read, or is empty. Fix: ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "http://id.fleet.example",
                "http://localhost.fleet.example",
                "http://127.0.0.1.fleet.example",
                "ftp://id.fleet.example",
                "https:///yard",
                "https://id.fleet.example?x=1",
                "id.fleet.example",
                "not an address"
            })
    void an_issuer_that_is_not_safe_is_refused(String issuer) {
        assertThatThrownBy(() -> read(Map.of(), "oidc.issuer=" + issuer, "oidc.client-id=planner"))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("oidc.issuer")
                .hasMessageContaining("Fix: ");
    }

    @Test
    void on_this_machine_it_may_do_without_tls() throws Exception {
        for (String host : new String[] {"localhost", "127.0.0.1", "[::1]"}) {
            assertThat(read(Map.of(), "oidc.issuer=http://" + host + ":9000", "oidc.client-id=planner")
                            .orElseThrow()
                            .isHere())
                    .isTrue();
        }
    }

    @Test
    void how_people_are_matched_is_one_of_two_ways() throws Exception {
        String[] lines = {"oidc.issuer=https://id.fleet.example", "oidc.client-id=planner"};
        assertThat(read(Map.of(), lines[0], lines[1], "oidc.match=preferred_username")
                        .orElseThrow()
                        .match())
                .isEqualTo(ProviderSettings.Match.PREFERRED_USERNAME);
        assertThatThrownBy(() -> read(Map.of(), lines[0], lines[1], "oidc.match=sub"))
                .hasMessageContaining("choose email or preferred_username");
        assertThatThrownBy(() -> read(Map.of(), lines[0])).hasMessageContaining("oidc.client-id");
    }
}
