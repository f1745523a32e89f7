package dev.injectorplanner.core.generate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.truth.Draws;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class FleetGeneratorTest {
    private static final FleetSpec SPEC = DemoFleet.ofSize(60, 42);
    private static final GeneratedFleet FLEET = new FleetGenerator(SPEC).generate();

    @Test
    void theSameSeedGivesTheSameFleet() {
        assertThat(new FleetGenerator(SPEC).generate()).isEqualTo(FLEET);
        assertThat(new FleetGenerator(DemoFleet.ofSize(60, 43))
                        .generate()
                        .snapshot()
                        .trucks())
                .isNotEqualTo(FLEET.snapshot().trucks());
    }

    /** Kept so that a change of the draws is noticed: the demo's figures and everyone's benchmarks hang on them. */
    @Test
    void theDrawsStayWhatTheyAre() {
        Draws draws = new Draws(1);
        assertThat(draws.uniform()).isEqualTo((-7995527694508729151L >>> 11) * 0x1.0p-53);
        assertThat(draws.uniform()).isEqualTo((-4689498862643123097L >>> 11) * 0x1.0p-53);
        GeneratedFleet demo = DemoFleet.make();
        assertThat(demo.snapshot().trucks()).hasSize(60);
        assertThat(demo.snapshot().injectors()).hasSize(644);
        assertThat(demo.snapshot().readings()).hasSize(7_689);
        assertThat(demo.snapshot().faults()).hasSize(1_310 + 3); // drawn, and those of the trucks that must not wait
        assertThat(demo.snapshot().cylinderTests()).hasSize(6_508);
    }

    @Test
    void trucksDoNotHangOnOneAnother() {
        TruckHistory ninth =
                new FleetGenerator(SPEC).trucks().skip(8).findFirst().orElseThrow();
        assertThat(FLEET.snapshot().trucks().get(8)).isEqualTo(ninth.truck());
    }

    /**
     * Lives drawn for one part and origin against their Weibull, by the greatest distance of the two distribution curves
     * (Kolmogorov 1933): below 1.95 / sqrt(n) but once in a thousand samples.
     */
    @Test
    void livesFollowTheStatedWeibull() {
        GeneratedFleet large = new FleetGenerator(DemoFleet.ofSize(400, 7)).generate();
        for (TrueLife life : large.truth().lives()) {
            double[] lives = large.truth().injectors().stream()
                    .filter(unit -> unit.part().equals(life.part()) && unit.origin() == life.origin())
                    .mapToDouble(InjectorTruth::lifeKm)
                    .sorted()
                    .toArray();
            double distance = 0;
            for (int i = 0; i < lives.length; i++) {
                double stated = -Math.expm1(-Math.pow(lives[i] / life.scaleKm(), life.shape()));
                distance = Math.max(distance, Math.abs(stated - (i + 1.0) / lives.length));
                distance = Math.max(distance, Math.abs(stated - (double) i / lives.length));
            }
            assertThat(lives.length).as(life.toString()).isGreaterThan(60);
            assertThat(distance).as(life.toString()).isLessThan(1.95 / Math.sqrt(lives.length));
        }
    }

    /** A failure stands in the tables on the day its true life was used up: within two days' driving. */
    @Test
    void failuresInTheTablesAgreeWithTheTruth() {
        Map<String, InjectorTruth> truth = new HashMap<>();
        FLEET.truth().injectors().forEach(unit -> truth.put(key(unit.truck(), unit.cylinder(), unit.fittedOn()), unit));
        int compared = 0;
        for (FittedInjector row : FLEET.snapshot().injectors()) {
            InjectorTruth unit = truth.get(key(row.truck(), row.cylinder(), row.fittedOn()));
            assertThat(row.found() == Found.FAILED)
                    .as(row.toString())
                    .isEqualTo(unit.end() == InjectorTruth.End.FAILED);
            Double fitted = row.odometerKm();
            Double removed = row.removedOdometerKm();
            if (row.found() == Found.FAILED && fitted != null && removed != null && removed > fitted) {
                assertThat(removed - fitted).as(row.toString()).isCloseTo(unit.lifeKm(), within(1_300.0));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(30);
    }

    private static String key(String truck, int cylinder, LocalDate fittedOn) {
        return truck + "/" + cylinder + "/" + fittedOn;
    }

    @Test
    void faultsComeBeforeFailures() {
        FleetSnapshot fleet = FLEET.snapshot();
        Map<String, List<Fault>> faults = fleet.faults().stream().collect(Collectors.groupingBy(Fault::truck));
        List<FittedInjector> failed = fleet.injectors().stream()
                .filter(row -> row.found() == Found.FAILED)
                .toList();
        long warned = failed.stream()
                .filter(row -> faults.getOrDefault(row.truck(), List.of()).stream()
                        .filter(fault -> fault.cylinder() == row.cylinder())
                        .map(fault -> fault.seenAt().atOffset(ZoneOffset.UTC).toLocalDate())
                        .anyMatch(day -> !day.isAfter(row.removedOn())
                                && day.isAfter(row.removedOn().minusDays(120))))
                .count();
        assertThat(failed.size()).isGreaterThan(20);
        assertThat(warned).isGreaterThan((long) (0.6 * failed.size()));
    }

    @Test
    void codesFitTheirPartAndSerialsAreTheirOwn() {
        Map<String, Part> parts =
                FLEET.snapshot().parts().stream().collect(Collectors.toMap(Part::part, Function.identity()));
        List<String> serials = new ArrayList<>();
        for (FittedInjector row : FLEET.snapshot().injectors()) {
            if (row.calibrationCode() != null) {
                assertThat(parts.get(row.part()).acceptsCode(row.calibrationCode()))
                        .as(row.toString())
                        .isTrue();
                serials.add(row.serial());
            }
        }
        assertThat(serials).hasSizeGreaterThan(300).doesNotHaveDuplicates();
    }

    @Test
    void odometersRiseUnlessToldOfANewMeter() {
        Map<String, Double> last = new HashMap<>();
        int replaced = 0;
        for (Reading reading : new FleetGenerator(DemoFleet.ofSize(200, 5))
                .generate()
                .snapshot()
                .readings()) {
            Double before = last.put(reading.truck(), reading.odometerKm());
            replaced += reading.meterReplaced() ? 1 : 0;
            if (before != null && !reading.meterReplaced()) {
                assertThat(reading.odometerKm()).as(reading.toString()).isGreaterThanOrEqualTo(before);
            }
        }
        assertThat(replaced).isGreaterThan(0);
    }

    @Test
    void inverseTransformMeetsTheQuantilesOfTheWeibull() {
        Draws draws = new Draws(99);
        double[] lives = new double[20_001];
        Arrays.setAll(lives, i -> draws.weibull(2.5, 400_000));
        Arrays.sort(lives);
        double median = 400_000 * Math.pow(Math.log(2), 1 / 2.5);
        double tenth = 400_000 * Math.pow(-Math.log(0.9), 1 / 2.5);
        assertThat(lives[10_000]).isCloseTo(median, within(0.02 * median));
        assertThat(lives[2_000]).isCloseTo(tenth, within(0.03 * tenth));
    }
}
