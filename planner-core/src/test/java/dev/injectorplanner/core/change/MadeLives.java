package dev.injectorplanner.core.change;

import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.history.LifeEnd;
import dev.injectorplanner.core.history.Span;
import dev.injectorplanner.core.history.UnitLife;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Lives of a made-up fleet: Weibull of shape 2.5 and scale 420,000 km, renewed at 250,000 km or at failure, and from a day
 * on of another scale. Eight percent fail early where asked for. Seen from a day on, with delayed entry.
 */
final class MadeLives {
    static final String PART = "PN-1";
    static final LocalDate RECORDS = LocalDate.of(2022, 1, 1);
    private static final double PER_DAY = 410;
    private static final double RENEWED = 250_000;

    private final Random random;
    private final int cylinders;
    private final LocalDate changed;
    private final double scaleFactor;
    private final double early;

    MadeLives(long seed, int cylinders, LocalDate changed, double scaleFactor, double early) {
        this.random = new Random(seed);
        this.cylinders = cylinders;
        this.changed = changed;
        this.scaleFactor = scaleFactor;
        this.early = early;
    }

    /** Every life from its beginning, some years before the records, to a last day. */
    List<UnitLife> until(LocalDate last) {
        List<UnitLife> units = new ArrayList<>();
        for (int position = 0; position < cylinders; position++) {
            LocalDate fitted = RECORDS.minusDays(random.nextInt(900) + 1);
            while (fitted.isBefore(last)) {
                double life = drawn(fitted);
                double out = Math.min(life, RENEWED);
                LocalDate exit = fitted.plusDays((long) Math.max(1, Math.ceil(out / PER_DAY)));
                add(units, position, fitted, exit, life <= RENEWED, last);
                fitted = exit;
            }
        }
        return units;
    }

    private double drawn(LocalDate fitted) {
        if (random.nextDouble() < early) {
            return -60_000 * Math.log(1 - random.nextDouble());
        }
        double scale = 420_000 * (fitted.isBefore(changed) ? 1 : scaleFactor);
        return scale * Math.pow(-Math.log(1 - random.nextDouble()), 1 / 2.5);
    }

    private static void add(
            List<UnitLife> units, int position, LocalDate fitted, LocalDate exit, boolean failed, LocalDate last) {
        LocalDate from = fitted.isBefore(RECORDS) ? RECORDS : fitted;
        LocalDate to = exit.isAfter(last) ? last : exit;
        if (to.isAfter(from)) {
            double entry = PER_DAY * (from.toEpochDay() - fitted.toEpochDay());
            Span km = new Span(entry, PER_DAY * (to.toEpochDay() - fitted.toEpochDay()));
            LifeEnd end = exit.isAfter(last) ? LifeEnd.IN_SERVICE : failed ? LifeEnd.FAILED : LifeEnd.HEALTHY;
            units.add(new UnitLife(
                    "T" + position / 8, 1 + position % 8, PART, Origin.NEW, fitted, from, to, end, km, null));
        }
    }
}
