package dev.injectorplanner.app.web.truck;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.store.FleetMerge;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.app.testkit.Database;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A truck is found by its name, its VIN, a serial that is or was in it, or the part that is in it. */
class TruckSearchTest {
    static Stream<Arguments> searches() {
        return Stream.of(Database.values())
                .flatMap(database -> Stream.of(
                        Arguments.of(database, "", List.of("T-1", "T-2")),
                        Arguments.of(database, "t-1", List.of("T-1")),
                        Arguments.of(database, "axkp042", List.of("T-1")),
                        Arguments.of(database, "wdb1234", List.of("T-2")),
                        Arguments.of(database, "s100", List.of("T-1")),
                        Arguments.of(database, "inj-4r", List.of("T-1")),
                        Arguments.of(database, "%", List.of()),
                        Arguments.of(database, "T_1", List.of())));
    }

    @ParameterizedTest
    @MethodSource("searches")
    void what_is_found(Database database, String piece, List<String> trucks) {
        Store store = database.empty();
        try (StoreWriter writer = store.writer()) {
            FleetMerge.into(writer, OneOfEach.fleet());
            writer.commit();
        }
        TruckSearch search = new TruckSearch(store);
        assertThat(search.find(piece, null, 100))
                .extracting(TruckSearch.Row::truck)
                .isEqualTo(trucks);
        assertThat(search.find(piece, "North", 100))
                .extracting(TruckSearch.Row::truck)
                .isEqualTo(trucks);
        assertThat(search.find(piece, "elsewhere", 100)).isEmpty();
    }
}
