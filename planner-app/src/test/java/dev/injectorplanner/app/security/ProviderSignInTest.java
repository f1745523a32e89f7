package dev.injectorplanner.app.security;

import static org.assertj.core.api.Assertions.assertThat;

import com.nimbusds.jwt.JWTClaimsSet;
import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.Account;
import dev.injectorplanner.app.people.NewPerson;
import dev.injectorplanner.app.people.People;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.app.web.Listening;
import dev.injectorplanner.app.web.RunningApp;
import dev.injectorplanner.app.web.WebApp;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.wiring.JobsSettings;
import dev.injectorplanner.app.wiring.ProviderSettings;
import dev.injectorplanner.app.wiring.Settings;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Date;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * Signing in through a provider, over HTTP. What a token must say: OpenID Connect Core 1.0, section 3.1.3.7; state and
 * proof key: RFC 6749, section 10.12, and RFC 7636.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ProviderSignInTest {
    private static final String OWN = "quiet lorry under rain";
    private static final String FAILED = "Signing in through the yard did not work. Fix: try again;";

    @TempDir
    private static Path folder;

    private SmallProvider provider;
    private RunningApp app;
    private People people;

    @BeforeAll
    void start() throws Exception {
        provider = new SmallProvider(0);
        Application application = Application.open(StoreSettings.embedded(folder.resolve("data")));
        people = new People(application.store().dataSource(), new Pbkdf2Hashing());
        people.add(new NewPerson("administrator", Set.of(Role.ADMINISTRATOR), null), OWN, false, "test");
        people.add(new NewPerson("buyer", Set.of(Role.BUYER), null), OWN, true, "test");
        people.add(new NewPerson("gone@fleet.example", Set.of(Role.BUYER), null), OWN, true, "test");
        people.setDisabled("gone@fleet.example", true, "test");
        app = WebApp.start(
                CompletableFuture.completedFuture(application),
                JobsSettings.of(Settings.none()),
                Listening.here(0),
                new SiteClock(InstantSource.system()),
                Optional.of(new ProviderSettings(
                        URI.create(provider.issuer()),
                        SmallProvider.CLIENT,
                        SmallProvider.SECRET,
                        "the yard",
                        ProviderSettings.Match.EMAIL)));
    }

    @AfterAll
    void stop() {
        app.close();
        provider.close();
    }

    private static String location(HttpResponse<String> answer) {
        return answer.headers().firstValue("Location").orElse("");
    }

    /** The provider's answer as a browser carries it: the address to go back to. */
    private static String answer(String asked) throws Exception {
        return HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(URI.create(asked)).build(), BodyHandlers.ofString())
                .headers()
                .firstValue("Location")
                .orElseThrow();
    }

    private HttpResponse<String> signIn(Visitor visitor) throws Exception {
        return visitor.get(answer(location(visitor.get("/sign-in/provider"))));
    }

    private String refusal(Consumer<JWTClaimsSet.Builder> says) throws Exception {
        provider.say(says);
        Visitor visitor = Visitor.nobody(app.address());
        assertThat(location(signIn(visitor))).isEqualTo("/sign-in?provider");
        String page = visitor.get("/sign-in?provider").body();
        assertThat(location(visitor.get("/order"))).as("not signed in").endsWith("/sign-in");
        return page;
    }

    @Test
    void who_is_known_gets_in_under_a_new_session_with_the_role_given_here() throws Exception {
        provider.say(claims -> claims.claim("roles", "administrator"));
        Visitor visitor = Visitor.nobody(app.address());
        assertThat(visitor.get("/sign-in").body()).contains("href=\"/sign-in/provider\"", "Sign in through the yard");
        String asked = location(visitor.get("/sign-in/provider"));
        String before = visitor.session();
        HttpResponse<String> in = visitor.get(answer(asked));
        assertThat(location(in)).isEqualTo("/");
        assertThat(before).isNotEmpty();
        assertThat(visitor.session()).isNotEmpty().isNotEqualTo(before);
        assertThat(location(visitor.get("/")))
                .as("a store without trucks is set up first, by whom may load files")
                .isEqualTo("/imports/start");
        assertThat(visitor.get("/order").statusCode()).isEqualTo(200);
        assertThat(visitor.get("/trucks").statusCode())
                .as("no password of here to change first")
                .isEqualTo(200);
        assertThat(visitor.get("/settings").statusCode()).isEqualTo(403);
        assertThat(people.find("buyer").map(Account::signedInAt)).isPresent();
        assertThat(provider.problems()).isEmpty();
    }

    @Test
    void the_page_asked_for_is_gone_to_and_no_other_site() throws Exception {
        provider.say(claims -> {});
        Visitor visitor = Visitor.nobody(app.address());
        visitor.get("/coolant?depot=");
        assertThat(location(signIn(visitor))).isEqualTo(app.address() + "/coolant?depot=&continue");
    }

    @Test
    void what_an_administrator_changes_ends_such_a_session_too() throws Exception {
        people.add(new NewPerson("moved", Set.of(Role.BUYER), null), OWN, false, "test");
        provider.say(claims -> claims.claim("email", "MOVED"));
        Visitor visitor = Visitor.nobody(app.address());
        assertThat(location(signIn(visitor))).isEqualTo("/");
        people.setDisabled("moved", true, "test");
        assertThat(location(visitor.get("/trucks"))).isEqualTo("/sign-in?ended");
    }

    @Test
    void nobody_is_added_by_signing_in() throws Exception {
        int before = people.list().size();
        assertThat(refusal(claims -> claims.claim("email", "new@fleet.example")))
                .contains("the yard knows you as new@fleet.example, and there is no user with that name here. Fix: ask"
                        + " the administrator to add you under it.");
        assertThat(people.list()).hasSize(before);
    }

    @Test
    void who_is_kept_out_stays_out() throws Exception {
        assertThat(refusal(claims -> claims.claim("email", "gone@fleet.example")))
                .contains("gone@fleet.example is disabled here. Fix: ask the administrator.");
    }

    @Test
    void an_address_that_was_not_verified_is_nobodys() throws Exception {
        assertThat(refusal(claims -> claims.claim("email_verified", false)))
                .contains("the yard has not verified the address buyer. Fix: verify it there");
        assertThat(refusal(claims -> claims.claim("email_verified", null))).contains("has not verified");
    }

    @Test
    void a_name_that_is_script_is_shown_as_text() throws Exception {
        assertThat(refusal(claims -> claims.claim("email", "<script>alert(1)</script>")))
                .contains("&lt;script&gt;")
                .doesNotContain("<script");
    }

    @Test
    void a_token_for_another_request_or_program_or_time_or_of_another_is_refused() throws Exception {
        assertThat(refusal(claims -> claims.claim("nonce", "of another request")))
                .contains(FAILED);
        assertThat(refusal(claims -> claims.audience("another program"))).contains(FAILED);
        assertThat(refusal(claims -> claims.issuer("https://another.example"))).contains(FAILED);
        assertThat(refusal(
                        claims -> claims.expirationTime(Date.from(Instant.now().minusSeconds(600)))
                                .issueTime(Date.from(Instant.now().minusSeconds(900)))))
                .contains(FAILED);
        provider.signWithAnother();
        Visitor visitor = Visitor.nobody(app.address());
        assertThat(location(signIn(visitor))).isEqualTo("/sign-in?provider");
        assertThat(visitor.get("/sign-in?provider").body()).contains(FAILED);
        assertThat(visitor.get("/sign-in?provider").body()).as("said once").doesNotContain(FAILED);
    }

    @Test
    void an_answer_that_nobody_asked_for_is_refused() throws Exception {
        provider.say(claims -> {});
        Visitor other = Visitor.nobody(app.address());
        String stolen = answer(location(other.get("/sign-in/provider")));
        Visitor visitor = Visitor.nobody(app.address());
        assertThat(location(visitor.get(stolen))).as("another's session").isEqualTo("/sign-in?provider");
        visitor.get("/sign-in/provider");
        assertThat(location(visitor.get(stolen))).as("another state").isEqualTo("/sign-in?provider");
        assertThat(location(visitor.get("/sign-in/provider/back"))).isEqualTo("/sign-in?provider");
        assertThat(location(visitor.get("/sign-in/another"))).isEqualTo("/sign-in?provider");
        assertThat(location(visitor.get("/order"))).endsWith("/sign-in");
    }

    @Test
    void pages_start_without_the_provider_and_say_so_at_sign_in() throws Exception {
        int port;
        try (SmallProvider gone = new SmallProvider(0)) {
            port = gone.port();
        }
        ProviderSettings set = new ProviderSettings(
                URI.create("http://127.0.0.1:" + port),
                SmallProvider.CLIENT,
                null,
                "later",
                ProviderSettings.Match.EMAIL);
        Provider later = new Provider(set, Duration.ZERO);
        Provider patient = new Provider(set, Duration.ofHours(1));
        assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> patient.findByRegistrationId(Provider.ID)))
                .isInstanceOf(ProviderDownException.class);
        assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> later.findByRegistrationId(Provider.ID)))
                .isInstanceOf(ProviderDownException.class)
                .hasMessageContaining("cannot be read");
        try (SmallProvider back = new SmallProvider(port)) {
            assertThat(later.findByRegistrationId(Provider.ID)).isNotNull();
            assertThat(later.findByRegistrationId(Provider.ID)).isNotNull();
            assertThat(back.descriptions()).as("asked once").isEqualTo(1);
            assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> patient.findByRegistrationId(Provider.ID)))
                    .as("nobody waits for it again so soon")
                    .isInstanceOf(ProviderDownException.class);
            assertThat(back.descriptions()).isEqualTo(1);
        }
    }

    @Test
    void a_provider_that_calls_itself_otherwise_is_not_used() {
        Provider other = new Provider(new ProviderSettings(
                URI.create(provider.issuer() + "/"), SmallProvider.CLIENT, null, "x", ProviderSettings.Match.EMAIL));
        assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> other.findByRegistrationId(Provider.ID)))
                .isInstanceOf(ProviderDownException.class)
                .hasMessageContaining("identifies itself as " + provider.issuer());
    }
}
