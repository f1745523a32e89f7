package dev.injectorplanner.core.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.fleet.Origin;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;

/** Trucks that wear their injectors faster than others. Truths are drawn here from their seeds; nothing is published. */
class F01_TruckWearTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final RemainingDelay NONE = (part, clock) -> 0;
    private static final double SHAPE = 2.5;
    private static final double SCALE = 420_000;

    private final Map<String, Double> truth = new TreeMap<>();

    /** Twelve lives a truck, watched for at most 400,000 km; its hazard is the usual one times a draw. */
    private List<UnitLife> units(long seed, int trucks, double gammaShape) {
        Random random = new Random(seed);
        GammaDistribution gamma = gammaShape == 0 ? null : new GammaDistribution(gammaShape, 1 / gammaShape);
        Well19937c bits = new Well19937c(seed);
        truth.clear();
        List<UnitLife> units = new ArrayList<>();
        for (int t = 0; t < trucks; t++) {
            String truck = "T%03d".formatted(t);
            double hazard = gamma == null ? 1 : gamma.inverseCumulativeProbability(bits.nextDouble());
            truth.put(truck, hazard);
            for (int i = 0; i < 12; i++) {
                double life = SCALE * Math.pow(-Math.log1p(-random.nextDouble()) / hazard, 1 / SHAPE);
                double watched = 100_000 + 300_000 * random.nextDouble();
                double km = Math.min(life, watched);
                units.add(new UnitLife(
                        truck,
                        i + 1,
                        "P",
                        Origin.NEW,
                        DAY.minusDays(900),
                        DAY.minusDays(900),
                        DAY,
                        life <= watched ? LifeEnd.FAILED : LifeEnd.IN_SERVICE,
                        new Span(0, km),
                        new Span(0, km / 50)));
            }
        }
        return units;
    }

    private static LifeBook book(List<UnitLife> units) {
        return LifeBook.of(List.of("P"), units, NONE);
    }

    @Test
    void trucksThatDifferAreFoundAndTheLifeIsThatOfAUsualOne() {
        double shapes = 0;
        for (long seed = 1; seed <= 5; seed++) {
            List<UnitLife> units = units(seed, 40, 3);
            LifeBook book = book(units);
            TruckWear wear = book.wearOf("P");
            assertThat(wear.differs()).as("seed %d", seed).isTrue();
            assertThat(wear.shape()).as("seed %d", seed).isBetween(1.2, 9.0);
            assertThat(correlation(wear)).as("seed %d", seed).isGreaterThan(0.55);
            shapes += book.of("P", Origin.NEW).life().shape() / 5;
            assertThat(book.predictive(book.of("P", Origin.NEW), hardest()).survival(200_000))
                    .as("the hardest truck, seed %d", seed)
                    .isLessThan(book.predictive(book.of("P", Origin.NEW)).survival(200_000) - 0.05);
        }
        assertThat(shapes).isCloseTo(SHAPE, within(0.35));
    }

    private String hardest() {
        return truth.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
    }

    private double correlation(TruckWear wear) {
        List<double[]> pairs = new ArrayList<>();
        truth.forEach((truck, hazard) -> pairs.add(new double[] {Math.log(hazard), Math.log(wear.of(truck))}));
        double meanX = pairs.stream().mapToDouble(pair -> pair[0]).average().orElse(0);
        double meanY = pairs.stream().mapToDouble(pair -> pair[1]).average().orElse(0);
        double xy = 0;
        double xx = 0;
        double yy = 0;
        for (double[] pair : pairs) {
            xy += (pair[0] - meanX) * (pair[1] - meanY);
            xx += (pair[0] - meanX) * (pair[0] - meanX);
            yy += (pair[1] - meanY) * (pair[1] - meanY);
        }
        return xy / Math.sqrt(xx * yy);
    }

    @Test
    void trucksThatAreAlikeStayAlike() {
        int found = 0;
        for (long seed = 101; seed <= 140; seed++) {
            found += book(units(seed, 40, 0)).wearOf("P").differs() ? 1 : 0;
        }
        assertThat(found).as("one in twenty by chance").isLessThanOrEqualTo(5);
    }

    @Test
    void fewFailuresTellNothingOfTrucks() {
        List<UnitLife> few = units(7, 4, 1);
        assertThat(book(few).wearOf("P").differs()).isFalse();
        assertThat(book(few).wearOf("P").of("T001")).isEqualTo(1);
        assertThat(TruckWear.NONE.hardestTenth()).isEqualTo(1);
    }

    @Test
    void oneTruckThatEatsInjectorsDoesNotChangeTheClock() {
        List<UnitLife> units = new ArrayList<>(units(3, 30, 0));
        for (int i = 0; i < 14; i++) { // idles: half the pace, and fails at three fifths of the usual km
            double km = 0.6 * SCALE * Math.pow(-Math.log((i + 0.5) / 14), 1 / SHAPE);
            units.add(new UnitLife(
                    "IDLER",
                    i + 1,
                    "P",
                    Origin.NEW,
                    DAY.minusDays(900),
                    DAY.minusDays(900),
                    DAY,
                    LifeEnd.FAILED,
                    new Span(0, km),
                    new Span(0, km / 25)));
        }
        LifeBook book = book(units);
        assertThat(book.clockOf("P")).isEqualTo(Clock.DISTANCE);
        assertThat(book.wearOf("P").of("IDLER")).isGreaterThan(1.15);
        assertThat(book.of("P", Origin.NEW).life().shape()).isCloseTo(SHAPE, within(0.4));
    }
}
