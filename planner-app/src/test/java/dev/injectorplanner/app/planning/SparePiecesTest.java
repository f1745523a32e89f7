package dev.injectorplanner.app.planning;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.store.OneFleet;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.allocation.AllocatedPieces;
import dev.injectorplanner.core.allocation.PieceSource;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.plan.Plan;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Depots that are planned one by one send each other what none of them needs. */
class SparePiecesTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);
    private static final String PART = "KV-8140";

    @TempDir
    private Path folder;

    /** The demo, in which one depot has sixty injectors and the others none. */
    private static FleetSnapshot oneFullShelf(String full) {
        FleetSnapshot demo = DemoFleet.make().snapshot();
        List<StockLine> stock = new ArrayList<>(demo.stock());
        stock.removeIf(line -> line.part().equals(PART));
        stock.add(new StockLine(full, PART, 60));
        return new FleetSnapshot(
                demo.depots(),
                demo.capacity(),
                demo.engineFamilies(),
                demo.access(),
                demo.dutyGroups(),
                demo.trucks(),
                demo.injectors(),
                demo.readings(),
                demo.faults(),
                demo.cylinderTests(),
                demo.parts(),
                demo.jobParts(),
                stock,
                demo.purchaseLines(),
                demo.away(),
                demo.intervals(),
                demo.rules(),
                demo.shop());
    }

    @Test
    void a_depot_planned_alone_is_sent_what_the_full_one_can_spare_and_no_piece_twice() {
        try (Application application = Application.open(StoreSettings.embedded(folder))) {
            FleetSnapshot demo = DemoFleet.make().snapshot();
            List<String> depots = new ArrayList<>(List.of("Brennick"));
            demo.depots().stream()
                    .map(Depot::depot)
                    .filter(depot -> !depots.contains(depot))
                    .forEach(depots::add);
            String full = "Brennick";
            OneFleet.into(application.store(), oneFullShelf(full));
            Planning planning = application.planning();
            double needed = 0;
            double sent = 0;
            for (String depot : depots) {
                Plan plan = planning.planAndKeep("first " + depot, Instant.EPOCH, TODAY, planning.policy(), depot)
                        .plan();
                needed += plan.parts().shelves().stream()
                        .filter(shelf ->
                                shelf.depot().equals(full) && shelf.part().equals(PART))
                        .mapToDouble(shelf -> shelf.needed())
                        .sum();
                double those = pieces(plan).stream()
                        .filter(each -> each.source() == PieceSource.TRANSFER)
                        .peek(each -> assertThat(each.fromDepot()).isEqualTo(full))
                        .mapToDouble(AllocatedPieces::quantity)
                        .sum();
                sent += those;
            }
            assertThat(sent).isPositive();
            assertThat(needed + sent).isLessThanOrEqualTo(60);
        }
    }

    private static List<AllocatedPieces> pieces(Plan plan) {
        return plan.parts().allocation().pieces().stream()
                .filter(each -> each.part().equals(PART))
                .toList();
    }
}
