package dev.injectorplanner.app.intake;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.demo.FleetFiles;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.ShopRecords;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.generate.FleetGenerator;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Made-up fleets: written as files, loaded, stored, read back. */
class RoundTripTest {
    private static final List<Long> SEEDS = List.of(11L, 12L, 13L);

    @TempDir
    private Path folder;

    @Test
    void what_was_written_is_what_comes_back_whatever_the_columns_look_like() throws IOException {
        for (long seed : SEEDS) {
            FleetSnapshot fleet =
                    new FleetGenerator(DemoFleet.ofSize(8, seed)).generate().snapshot();
            Path files = Files.createDirectories(folder.resolve("files" + seed));
            List<Path> written = FleetFiles.write(fleet, files);
            try (Store store = Store.open(StoreSettings.embedded(folder.resolve("data" + seed)))) {
                assertThat(load(store, written)).as("seed %d", seed).noneMatch(FileReport::anyRefused);
                assertSame(store.snapshot(), fleet, "seed " + seed);
                for (Path file : written) {
                    shuffle(file, new Random(seed));
                }
                assertThat(load(store, written))
                        .as("seed %d, shuffled", seed)
                        .allSatisfy(report -> assertThat(report.tables())
                                .allSatisfy(
                                        count -> assertThat(count.unchanged()).isEqualTo(count.read())));
                assertSame(store.snapshot(), fleet, "seed " + seed + ", shuffled");
            }
        }
    }

    /** Names the first row that differs; a whole fleet is too long to read. */
    private static void assertSame(FleetSnapshot actual, FleetSnapshot expected, String when) {
        Iterator<?> one = rows(actual).iterator();
        Iterator<?> other = rows(expected).iterator();
        while (one.hasNext() && other.hasNext()) {
            assertThat((Object) one.next()).as(when).isEqualTo(other.next());
        }
        assertThat(one.hasNext()).as("more rows, " + when).isEqualTo(other.hasNext());
    }

    private static List<Object> rows(FleetSnapshot fleet) {
        return Stream.concat(rowsOf(FleetSnapshot.class, fleet), rowsOf(ShopRecords.class, fleet.shop()))
                .collect(Collectors.toList());
    }

    private static Stream<Object> rowsOf(Class<?> type, Object tables) {
        return Arrays.stream(type.getRecordComponents())
                .filter(component -> component.getType() == List.class)
                .flatMap(component -> {
                    try {
                        return ((List<?>) component.getAccessor().invoke(tables)).stream();
                    } catch (ReflectiveOperationException e) {
                        throw new IllegalStateException(e);
                    }
                });
    }

    private static List<FileReport> load(Store store, List<Path> files) {
        return new Intake(store).load(files, LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT);
    }

    /** Columns in another order under other spellings of their headings. */
    private static void shuffle(Path file, Random random) throws IOException {
        List<String> lines = Files.readAllLines(file);
        List<Integer> order = new ArrayList<>(
                IntStream.range(0, lines.get(0).split(",", -1).length).boxed().toList());
        Collections.shuffle(order, random);
        List<String> shuffled = new ArrayList<>();
        for (String line : lines) {
            String[] cells = line.split(",", -1);
            if (cells.length != order.size()) {
                return; // a quoted comma: this file stays as it is
            }
            shuffled.add(order.stream().map(at -> cells[at]).collect(Collectors.joining(",")));
        }
        shuffled.set(0, respelled(shuffled.get(0), random));
        Files.write(file, shuffled);
    }

    private static String respelled(String headings, Random random) {
        return switch (random.nextInt(3)) {
            case 0 -> headings.toUpperCase(Locale.ROOT);
            case 1 -> headings.replace('_', ' ');
            default -> headings.replace("_", "-").replace(",", " , ");
        };
    }
}
