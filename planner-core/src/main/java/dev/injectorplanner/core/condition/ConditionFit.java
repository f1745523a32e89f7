package dev.injectorplanner.core.condition;

import dev.injectorplanner.core.history.Clock;
import dev.injectorplanner.core.history.LifeBook;
import dev.injectorplanner.core.history.LifeEnd;
import dev.injectorplanner.core.history.LifeHistory;
import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.history.RemainingDelay;
import dev.injectorplanner.core.history.Span;
import dev.injectorplanner.core.history.UnitLife;
import dev.injectorplanner.core.life.EffectRecords;
import dev.injectorplanner.core.life.EffectsFit;
import dev.injectorplanner.core.life.NoEstimateException;
import dev.injectorplanner.core.life.ProportionalHazards;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Learns the ratios of signs from a fleet's history by landmarks: every twelve weeks back from today each injector's signs
 * are noted, and held over the twelve weeks that follow. Pieces of life in counting-process form go to proportional hazards
 * (Efron ties); so a ratio says what a sign seen now means for the next twelve weeks as a whole. Failures seen over expected
 * within weeks 1 to 4, 5 to 12 and 13 to 26 then tell how the hazard runs, after a sign and after none. Source:
 * van Houwelingen (2007), Dynamic prediction by landmarking in event history analysis, Scandinavian Journal of Statistics
 * 34:70-85. The time of the fit is the cumulative hazard of each injector's own part and origin, on which all share one
 * baseline.
 *
 * <p>A sign is fitted where at least {@link #FAILURES_PER_SIGN} failures came with it and as many without it, and where the
 * fleet has ten failures a fitted sign (Peduzzi and others 1996, Journal of Clinical Epidemiology 49:1373-1379, on events
 * per variable); the others keep the planner's default.
 */
public final class ConditionFit {
    /** Days between landmarks, and over which a ratio holds. */
    public static final int LANDMARK_DAYS = 84;

    /** Failures with a sign, and without it, that its fit takes. */
    public static final int FAILURES_PER_SIGN = 10;

    private static final int MOST_PIECES = 200_000;
    private static final double MEDIAN = Math.log(2);

    private final LifeHistory history;
    private final LifeBook lives;
    private final FleetSigns signs;
    private final RemainingDelay remaining;
    private final LocalDate today;
    private final List<Piece> pieces = new ArrayList<>();

    /**
     * @param period 0 for weeks 1 to 4 after a landmark, 1 for 5 to 12, 2 for 13 to 26
     * @param failed whether it ends with a failure
     * @param share failures it stands for: of one found worn, the chance that it would have failed in this period
     */
    private record Piece(int period, double start, double stop, boolean failed, double share, Set<Sign> signs) {}

    private ConditionFit(
            LifeHistory history, LifeBook lives, FleetSigns signs, RemainingDelay remaining, LocalDate today) {
        this.history = history;
        this.lives = lives;
        this.signs = signs;
        this.remaining = remaining;
        this.today = today;
    }

    /**
     * Learns from a history. Beyond 200,000 pieces of life only every n-th injector is used.
     *
     * @param remaining what an injector found worn would have run on, as for the lives: it counts as failed that much later,
     *     exponentially spread
     */
    public static ConditionModel of(
            LifeHistory history, LifeBook lives, FleetSigns signs, RemainingDelay remaining, LocalDate today) {
        return new ConditionFit(history, lives, signs, remaining, today).fit();
    }

    private ConditionModel fit() {
        List<UnitLife> units = history.units();
        long days = 0;
        for (UnitLife unit : units) {
            days += unit.exitOn().toEpochDay() - unit.observedFrom().toEpochDay();
        }
        int every = (int) (1 + days / LANDMARK_DAYS / MOST_PIECES);
        for (int i = 0; i < units.size(); i += every) {
            cut(units.get(i));
        }
        List<Piece> near = nearPieces();
        List<SignEffect> effects = effects(near);
        double mean = mean(near, effects);
        return new ConditionModel(effects, mean, profile(effects, mean, true), profile(effects, mean, false));
    }

    /** Follows a life from every landmark at which it was under observation. */
    private void cut(UnitLife unit) {
        long first = unit.observedFrom().toEpochDay();
        long wait = Math.floorMod(today.toEpochDay() - first, (long) LANDMARK_DAYS);
        LocalDate landmark = LocalDate.ofEpochDay(first + wait);
        while (landmark.isBefore(unit.exitOn())) {
            follow(unit, landmark);
            landmark = landmark.plusDays(LANDMARK_DAYS);
        }
    }

    private void follow(UnitLife unit, LocalDate landmark) {
        PartLife model = lives.of(unit.part(), unit.origin());
        Clock clock = model.clock();
        Span span = unit.on(clock);
        Double age = history.ageOn(unit, landmark, clock);
        if (span == null || age == null) {
            return;
        }
        Set<Sign> shown = Sign.counting(signs.of(unit.truck()).on(unit.cylinder(), unit.fittedOn(), landmark));
        double left = unit.knownBeyondExit() ? remaining.of(unit.part(), clock) : 0;
        double end = span.exit() + MEDIAN * left;
        double begun = model.life().cumulativeHazard(age);
        double from = age;
        for (int period = 0; period < Profile.PERIODS; period++) {
            double to = ageAt(unit, span, landmark.plusDays(Profile.ENDS[period]), clock);
            double ended = Math.max(begun, model.life().cumulativeHazard(Math.min(end, to)));
            boolean failed = unit.failedOrWould() && end > from && end <= to;
            double share = unit.end() == LifeEnd.WORN && left > 0
                    ? Math.exp(-Math.max(0, from - span.exit()) / left)
                            - Math.exp(-Math.max(0, to - span.exit()) / left)
                    : failed ? 1 : 0;
            pieces.add(new Piece(period, begun, ended, failed && ended > begun, share, shown));
            begun = ended;
            from = to;
        }
    }

    /** Age on a day: by the meter until the end of observation, at the truck's usual pace beyond. */
    private double ageAt(UnitLife unit, Span span, LocalDate day, Clock clock) {
        if (!day.isBefore(unit.exitOn())) {
            long beyond = day.toEpochDay() - unit.exitOn().toEpochDay();
            return span.exit() + history.perWeek(unit, clock) / 7 * beyond;
        }
        Double age = history.ageOn(unit, day, clock);
        return age == null ? span.exit() : age;
    }

    private List<Piece> nearPieces() {
        return pieces.stream()
                .filter(piece -> piece.period < 2 && piece.stop > piece.start)
                .toList();
    }

    private static List<SignEffect> effects(List<Piece> near) {
        long failures = near.stream().filter(Piece::failed).count();
        List<Sign> fitted = new ArrayList<>();
        for (Sign sign : Sign.values()) {
            long with = failuresWith(near, sign);
            if (with >= FAILURES_PER_SIGN
                    && failures - with >= FAILURES_PER_SIGN
                    && failures >= 10L * (fitted.size() + 1)) {
                fitted.add(sign);
            }
        }
        List<SignEffect> effects = ConditionModel.defaultEffects();
        if (fitted.isEmpty()) {
            return effects;
        }
        try {
            EffectsFit fit = ProportionalHazards.fit(records(near, fitted));
            for (int j = 0; j < fitted.size(); j++) {
                Sign sign = fitted.get(j);
                effects.set(
                        sign.ordinal(),
                        new SignEffect(
                                sign,
                                Math.exp(fit.effects().get(j).value()),
                                ConditionModel.FITTED,
                                failuresWith(near, sign)));
            }
        } catch (NoEstimateException unfit) {
            return effects;
        }
        return effects;
    }

    private static long failuresWith(List<Piece> near, Sign sign) {
        return near.stream()
                .filter(piece -> piece.failed && piece.signs.contains(sign))
                .count();
    }

    private static EffectRecords records(List<Piece> near, List<Sign> fitted) {
        int rows = near.size();
        double[] starts = new double[rows];
        double[] stops = new double[rows];
        boolean[] events = new boolean[rows];
        double[][] columns = new double[fitted.size()][rows];
        for (int i = 0; i < rows; i++) {
            Piece piece = near.get(i);
            starts[i] = piece.start;
            stops[i] = piece.stop;
            events[i] = piece.failed;
            for (int j = 0; j < columns.length; j++) {
                columns[j][i] = piece.signs.contains(fitted.get(j)) ? 1 : 0;
            }
        }
        return EffectRecords.of(
                starts, stops, events, null, fitted.stream().map(Sign::words).toList(), columns);
    }

    /** Mean ratio over the pieces of the first twelve weeks, weighed by their hazard. */
    private static double mean(List<Piece> near, List<SignEffect> effects) {
        double weighed = 0;
        double all = 0;
        for (Piece piece : near) {
            double hazard = piece.stop - piece.start;
            weighed += hazard * ConditionModel.ratio(effects, piece.signs);
            all += hazard;
        }
        return all > 0 ? weighed / all : 1;
    }

    /** Failures seen over expected by period, of pieces after a clear sign or after none. */
    private Profile profile(List<SignEffect> effects, double mean, boolean shown) {
        double[] seen = new double[Profile.PERIODS];
        double[] expected = new double[Profile.PERIODS];
        for (Piece piece : pieces) {
            if (ConditionModel.shows(piece.signs) == shown) {
                double ratio = ConditionModel.ratio(effects, piece.signs) / mean;
                seen[piece.period] += piece.share;
                expected[piece.period] += (piece.stop - piece.start) * (piece.period < 2 ? ratio : 1);
            }
        }
        return Profile.of(seen, expected);
    }
}
