package dev.injectorplanner.app.web.office;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.testkit.DemoSite;
import dev.injectorplanner.app.testkit.Visitor;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Two managers replan a depot at the same time while a third reads: all are answered. */
class ReplanUnderReadersTest {
    private static final int ROUNDS = 5;

    @Test
    @Timeout(300)
    void everybody_is_answered(@TempDir Path folder) throws Exception {
        try (DemoSite site = DemoSite.start(folder)) {
            ExecutorService people = Executors.newFixedThreadPool(3);
            URI address = site.app().address();
            List<Callable<List<Integer>>> work =
                    List.of(() -> replanning(address), () -> replanning(address), () -> reading(address));
            List<Integer> answers = new ArrayList<>();
            for (Future<List<Integer>> each : people.invokeAll(work)) {
                answers.addAll(each.get());
            }
            people.shutdown();
            assertThat(answers).containsOnly(200, 302);
        }
    }

    private static List<Integer> replanning(URI address) throws Exception {
        Visitor manager = Visitor.as(Role.MANAGER, address);
        List<Integer> answers = new ArrayList<>();
        for (int i = 0; i < ROUNDS; i++) {
            answers.add(manager.post("/plan", "/plan/anew", Map.of("depot", DemoSite.HOME))
                    .statusCode());
        }
        return answers;
    }

    private static List<Integer> reading(URI address) throws Exception {
        Visitor manager = Visitor.as(Role.MANAGER, address);
        List<Integer> answers = new ArrayList<>();
        for (int i = 0; i < 4 * ROUNDS; i++) {
            answers.add(manager.get(i % 2 == 0 ? "/plan" : "/week").statusCode());
        }
        return answers;
    }
}
