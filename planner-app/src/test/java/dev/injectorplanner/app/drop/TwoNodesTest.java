package dev.injectorplanner.app.drop;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.drop.DropResult.Outcome;
import dev.injectorplanner.app.intake.Intake;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.testkit.Database;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several nodes at one folder: each file is taken by one of them. */
class TwoNodesTest {
    private static final int FILES = 60;
    private static final int NODES = 4;

    @TempDir
    private Path folder;

    @Test
    void each_file_is_taken_by_one_node_only() throws Exception {
        for (int i = 0; i < FILES; i++) {
            Files.writeString(folder.resolve("stock " + i + ".csv"), "" + i);
        }
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.sorted().toList();
        }
        List<Integer> taken = together(node -> {
            TakenFolder mine = new TakenFolder(folder.resolve("taken"), "node-" + node);
            int count = 0;
            for (Path file : files) {
                count += mine.take(file).isPresent() ? 1 : 0;
            }
            return count;
        });
        assertThat(taken.stream().mapToInt(Integer::intValue).sum()).isEqualTo(FILES);
        try (Stream<Path> all = Files.walk(folder.resolve("taken"))) {
            assertThat(all.filter(Files::isRegularFile)).hasSize(FILES);
        }
    }

    @Test
    void names_in_one_folder_are_given_once() throws Exception {
        List<List<Path>> reserved = together(node -> {
            List<Path> mine = new ArrayList<>();
            for (int i = 0; i < FILES; i++) {
                mine.add(FreeName.reserve(folder, "stock.csv"));
            }
            return mine;
        });
        assertThat(reserved.stream().flatMap(List::stream))
                .hasSize(FILES * NODES)
                .doesNotHaveDuplicates();
    }

    @Test
    void nodes_on_one_store_load_every_file_once() throws Exception {
        Store store = Database.POSTGRESQL.empty();
        for (int i = 0; i < FILES; i++) {
            Path file = Files.writeString(
                    folder.resolve("readings " + i + ".csv"),
                    "truck,taken_at,odometer_km,engine_hours\nT-1,2026-03-01T00:%02d:00Z,%d,\n"
                            .formatted(i, 200_000 + i));
            Files.setLastModifiedTime(file, FileTime.from(Instant.now().minusSeconds(60)));
        }
        int before = store.snapshot().readings().size();
        List<List<DropResult>> passes = together(node -> new DropFolder(
                        new Intake(store), DropSettings.standard(folder), "node-" + node, Clock.systemUTC())
                .pass());
        List<DropResult> all = passes.stream().flatMap(List::stream).toList();
        assertThat(all)
                .extracting(DropResult::outcome)
                .containsOnly(Outcome.DONE)
                .hasSize(FILES);
        assertThat(all).extracting(DropResult::name).doesNotHaveDuplicates();
        assertThat(store.snapshot().readings()).hasSize(before + FILES);
        try (Stream<Path> done = Files.list(folder.resolve("done"))) {
            assertThat(done).hasSize(FILES);
        }
    }

    private interface Work<T> {
        T of(int node) throws Exception;
    }

    private static <T> List<T> together(Work<T> work) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(NODES);
        CyclicBarrier start = new CyclicBarrier(NODES);
        try {
            List<Callable<T>> all = new ArrayList<>();
            for (int node = 0; node < NODES; node++) {
                int number = node;
                all.add(() -> {
                    start.await();
                    return work.of(number);
                });
            }
            List<T> results = new ArrayList<>();
            for (Future<T> future : threads.invokeAll(all)) {
                results.add(future.get());
            }
            return results;
        } finally {
            threads.shutdownNow();
        }
    }
}
