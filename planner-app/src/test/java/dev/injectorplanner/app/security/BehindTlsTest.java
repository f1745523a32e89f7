package dev.injectorplanner.app.security;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.app.web.Listening;
import dev.injectorplanner.app.web.RunningApp;
import dev.injectorplanner.app.web.WebApp;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.wiring.JobsSettings;
import dev.injectorplanner.app.wiring.ProviderSettings;
import dev.injectorplanner.app.wiring.Settings;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** Behind a proxy that speaks TLS: cookies go over TLS alone, browsers are told to come by TLS, addresses say so. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BehindTlsTest {
    @TempDir
    private static Path folder;

    private SmallProvider provider;
    private RunningApp app;

    @BeforeAll
    void start() throws Exception {
        provider = new SmallProvider(0);
        Application application = Application.open(StoreSettings.embedded(folder.resolve("data")));
        app = WebApp.start(
                CompletableFuture.completedFuture(application),
                JobsSettings.of(Settings.none()),
                Listening.on("127.0.0.1", 0, true),
                new SiteClock(InstantSource.system()),
                Optional.of(new ProviderSettings(
                        URI.create(provider.issuer()),
                        SmallProvider.CLIENT,
                        null,
                        "the yard",
                        ProviderSettings.Match.PREFERRED_USERNAME)));
    }

    @AfterAll
    void stop() {
        app.close();
        provider.close();
    }

    @Test
    void the_cookie_goes_over_tls_alone_whatever_is_forwarded() throws Exception {
        for (String scheme : new String[] {"https", "http"}) {
            HttpResponse<String> page = Visitor.nobody(app.address())
                    .send(HttpRequest.newBuilder(app.address().resolve("/sign-in"))
                            .header("X-Forwarded-Proto", scheme));
            assertThat(page.headers().firstValue("Set-Cookie").orElseThrow())
                    .contains("Secure", "HttpOnly", "SameSite=Lax");
        }
    }

    @Test
    void browsers_are_told_to_come_by_tls() throws Exception {
        HttpResponse<String> page = Visitor.nobody(app.address())
                .send(HttpRequest.newBuilder(app.address().resolve("/sign-in")).header("X-Forwarded-Proto", "https"));
        assertThat(page.headers().firstValue("Strict-Transport-Security").orElse(""))
                .contains("max-age=31536000");
    }

    @Test
    void the_provider_sends_people_back_to_the_address_of_the_proxy() throws Exception {
        String answer = raw("/sign-in/provider");
        String location = answer.lines()
                .filter(line -> line.startsWith("Location: "))
                .findFirst()
                .orElseThrow();
        assertThat(URLDecoder.decode(location, StandardCharsets.UTF_8))
                .contains("redirect_uri=https://planner.fleet.example/sign-in/provider/back")
                .contains("code_challenge_method=S256")
                .contains("scope=openid profile");
    }

    /** Thirty tries of an address are let through in five minutes; what a caller writes before the proxy's word changes nothing. */
    @Test
    void the_limit_of_an_address_counts_the_caller_that_the_proxy_names() throws Exception {
        HttpResponse<String> page = Visitor.nobody(app.address())
                .send(HttpRequest.newBuilder(app.address().resolve("/sign-in")));
        String cookie = page.headers().firstValue("Set-Cookie").orElseThrow().split(";", 2)[0];
        String csrf = page.body().split("name=\"_csrf\" value=\"", 2)[1].split("\"", 2)[0];
        String last = "";
        for (int i = 0; i < 31; i++) {
            last = Visitor.nobody(app.address())
                    .send(HttpRequest.newBuilder(app.address().resolve("/sign-in"))
                            .header("Cookie", cookie)
                            .header("X-Forwarded-Proto", "https")
                            .header("X-Forwarded-For", "10.0.0." + i + ", 198.51.100.9")
                            .header("Content-Type", "application/x-www-form-urlencoded")
                            .POST(HttpRequest.BodyPublishers.ofString("name=nobody" + i + "&password=x&_csrf="
                                    + URLEncoder.encode(csrf, StandardCharsets.UTF_8))))
                    .headers()
                    .firstValue("Location")
                    .orElse("");
            assertThat(last.contains("wait=")).as("try " + i + " " + last).isEqualTo(i == 30);
        }
    }

    /** With the name of the proxy as host, which the usual client does not let one set. */
    private String raw(String path) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", app.address().getPort())) {
            socket.setSoTimeout(20_000);
            socket.getOutputStream()
                    .write(("GET " + path + " HTTP/1.1\r\nHost: planner.fleet.example\r\nX-Forwarded-Proto: https\r\n"
                                    + "X-Forwarded-For: 203.0.113.7\r\nConnection: close\r\n\r\n")
                            .getBytes(StandardCharsets.ISO_8859_1));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
