package dev.injectorplanner.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.UnixOperatingSystemMXBean;
import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.testkit.DemoSite;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.plan.Policy;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A depot is planned again and again while people read pages: heap after a collection, threads, file handles and files stay
 * where they were after the first tenth. {@code -Dsoak.plans=500 -Dsoak.minutes=60}, whichever comes first.
 */
@Tag("benchmark")
class SoakBenchmark {
    private static final int PLANS = Integer.getInteger("soak.plans", 500);
    private static final long NANOS = 60_000_000_000L * Integer.getInteger("soak.minutes", 60);
    private static final int READERS = 3;
    private static final String[] PAGES = {"/week", "/plan", "/trucks", "/trucks/T022", "/order", "/alerts", "/bay"};

    @TempDir
    private Path folder;

    private final AtomicLong pages = new AtomicLong();
    private final AtomicBoolean done = new AtomicBoolean();

    private record State(long heapMb, int threads, long handles, long files, long storeKb) {
        @Override
        public String toString() {
            return "heap " + heapMb + " MB, threads " + threads + ", handles " + handles + ", files " + files
                    + ", store " + storeKb + " KB";
        }
    }

    @Test
    void plans_and_readers_leave_nothing_behind() throws Exception {
        PrintStream err = System.err;
        ByteArrayOutputStream log = new ByteArrayOutputStream();
        System.setErr(new PrintStream(log, true));
        try (DemoSite site = DemoSite.start(folder)) {
            List<Thread> readers = new ArrayList<>();
            for (int i = 0; i < READERS; i++) {
                readers.add(reader(site.app().address()));
            }
            long begun = System.nanoTime();
            List<State> states = new ArrayList<>();
            int plans = 0;
            int step = Math.max(1, PLANS / 10);
            while (plans < PLANS && System.nanoTime() - begun < NANOS) {
                Instant at = DemoSite.NOW.plusSeconds(plans);
                var planned = site.application()
                        .planning()
                        .planAndKeep("soak " + plans, at, DemoFleet.TODAY, Policy.standard(), DemoSite.HOME);
                new Alerts(site.application().store().dataSource()).update(planned, at);
                plans++;
                if (plans % step == 0) {
                    states.add(state());
                    System.out.printf("%d plans, %d pages: %s%n", plans, pages.get(), states.get(states.size() - 1));
                }
            }
            done.set(true);
            for (Thread reader : readers) {
                reader.join();
            }
            System.out.printf(
                    "%d plans and %d pages in %d s, %d characters of log%n",
                    plans, pages.get(), (System.nanoTime() - begun) / 1_000_000_000L, log.size());
            assertFlat(states);
        } finally {
            System.setErr(err);
        }
    }

    private static void assertFlat(List<State> states) {
        State early = states.get(Math.min(1, states.size() - 1));
        State late = states.get(states.size() - 1);
        assertThat(late.heapMb()).isLessThanOrEqualTo(early.heapMb() + 16);
        assertThat(late.threads()).isLessThanOrEqualTo(early.threads() + 10);
        assertThat(late.handles()).isLessThanOrEqualTo(early.handles() + 20);
        assertThat(late.files()).isLessThanOrEqualTo(early.files() + 2);
    }

    private Thread reader(URI address) {
        Thread thread = new Thread(() -> {
            try {
                Visitor visitor = Visitor.as(Role.MANAGER, address);
                for (int i = 0; !done.get(); i++) {
                    assertThat(visitor.get(PAGES[i % PAGES.length]).statusCode())
                            .isEqualTo(200);
                    pages.incrementAndGet();
                }
            } catch (IOException | InterruptedException e) {
                throw new IllegalStateException(e);
            }
        });
        thread.start();
        return thread;
    }

    private State state() throws IOException {
        System.gc();
        var heap = ManagementFactory.getMemoryMXBean().getHeapMemoryUsage();
        var system = (UnixOperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        try (Stream<Path> files = Files.walk(folder)) {
            List<Path> all = files.filter(Files::isRegularFile).toList();
            long bytes = 0;
            for (Path file : all) {
                bytes += Files.exists(file) ? Files.size(file) : 0;
            }
            return new State(
                    heap.getUsed() >> 20,
                    ManagementFactory.getThreadMXBean().getThreadCount(),
                    system.getOpenFileDescriptorCount(),
                    all.size(),
                    bytes >> 10);
        }
    }
}
