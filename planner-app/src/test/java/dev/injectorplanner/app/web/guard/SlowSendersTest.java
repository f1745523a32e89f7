package dev.injectorplanner.app.web.guard;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.testkit.PlannerRuns;
import dev.injectorplanner.app.testkit.Visitor;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

@PlannerRuns
class SlowSendersTest {
    private static final int MANY = 210;

    @Test
    void many_who_send_half_a_body_silence_nobody_who_only_asks(URI address) throws Exception {
        Visitor manager = Visitor.as(Role.MANAGER, address);
        List<Socket> slow = new ArrayList<>();
        try {
            for (int i = 0; i < MANY; i++) {
                slow.add(halfABody(address));
            }
            for (int i = 0; i < 5; i++) {
                HttpResponse<String> health = HttpClient.newHttpClient()
                        .send(
                                HttpRequest.newBuilder(address.resolve("/actuator/health"))
                                        .timeout(Duration.ofSeconds(5))
                                        .build(),
                                BodyHandlers.ofString());
                assertThat(health.statusCode()).isEqualTo(200);
            }
            HttpResponse<String> page = manager.send(
                    HttpRequest.newBuilder(address.resolve("/trucks")).timeout(Duration.ofSeconds(5)));
            assertThat(page.statusCode()).isEqualTo(200);
            HttpResponse<String> refused = Visitor.nobody(address)
                    .send(HttpRequest.newBuilder(address.resolve("/sign-in"))
                            .timeout(Duration.ofSeconds(5))
                            .header("Content-Type", "application/x-www-form-urlencoded")
                            .POST(HttpRequest.BodyPublishers.ofString("name=manager&password=x")));
            assertThat(refused.statusCode()).as("of the same address").isEqualTo(503);
            assertThat(refused.body()).contains("Too many uploads at a time", "Nothing was changed");
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
        assertThat(manager.post("/password", "/sign-in", Map.of("name", "manager", "password", Visitor.PASSWORD))
                        .statusCode())
                .as("once they are gone")
                .isEqualTo(302);
    }

    private static Socket halfABody(URI address) throws Exception {
        Socket socket = new Socket(address.getHost(), address.getPort());
        socket.getOutputStream()
                .write(("POST /sign-in HTTP/1.1\r\nHost: " + address.getAuthority()
                                + "\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: 1000\r\n\r\nname=ma")
                        .getBytes(StandardCharsets.US_ASCII));
        socket.getOutputStream().flush();
        return socket;
    }
}
