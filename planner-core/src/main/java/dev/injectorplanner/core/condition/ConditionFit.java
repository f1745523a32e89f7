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
 * (Efron ties); so a ratio says what a sign seen now means for the next twelve weeks, neither more at once nor later. Source:
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
    private static final double SLOW = 10;

    private final LifeHistory history;
    private final LifeBook lives;
    private final FleetSigns signs;
    private final RemainingDelay remaining;
    private final LocalDate today;
    private final List<Piece> pieces = new ArrayList<>();

    private record Piece(double start, double stop, boolean failed, Set<Sign> signs) {}

    private ConditionFit(
            LifeHistory history, LifeBook lives, FleetSigns signs, RemainingDelay remaining, LocalDate today) {
        this.history = history;
        this.lives = lives;
        this.signs = signs;
        this.remaining = remaining;
        this.today = today;
    }

    /**
     * Learns from a history. Beyond 200,000 pieces of life every so many-th injector tells.
     *
     * @param remaining what an injector found worn would have run on, as for the lives: it counts as failed where that falls
     *     into the twelve weeks in which it came out
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
        List<SignEffect> effects = effects();
        return new ConditionModel(effects, mean(effects));
    }

    /** Cuts a life at the landmarks. */
    private void cut(UnitLife unit) {
        long first = unit.observedFrom().toEpochDay();
        long last = unit.exitOn().toEpochDay();
        long toLandmark = Math.floorMod(today.toEpochDay() - first, (long) LANDMARK_DAYS);
        LocalDate from = unit.observedFrom();
        LocalDate next = LocalDate.ofEpochDay(first + (toLandmark == 0 ? LANDMARK_DAYS : toLandmark));
        while (from.toEpochDay() < last) {
            LocalDate until = next.toEpochDay() < last ? next : unit.exitOn();
            piece(unit, from, until, next);
            from = until;
            next = next.plusDays(LANDMARK_DAYS);
        }
    }

    private void piece(UnitLife unit, LocalDate from, LocalDate until, LocalDate windowEnd) {
        PartLife model = lives.of(unit.part(), unit.origin());
        Clock clock = model.clock();
        Span span = unit.on(clock);
        Double start = history.ageOn(unit, from, clock);
        Double stop = history.ageOn(unit, until, clock);
        if (start == null || stop == null || span == null) {
            return;
        }
        double begun = from.equals(unit.observedFrom()) ? span.entry() : start;
        double ended = stop;
        boolean failed = false;
        if (until.equals(unit.exitOn())) {
            ended = span.exit();
            failed = unit.end() == LifeEnd.FAILED;
        }
        if (until.equals(unit.exitOn()) && unit.knownBeyondExit()) {
            double ahead = history.perWeek(unit, clock) / 7 * (windowEnd.toEpochDay() - until.toEpochDay());
            double left = remaining.of(unit.part(), clock);
            failed = unit.end() == LifeEnd.WORN && left <= ahead;
            ended += Math.min(left, ahead);
        }
        double hazardBegun = model.life().cumulativeHazard(begun);
        double hazardEnded = model.life().cumulativeHazard(ended);
        if (hazardEnded > hazardBegun) {
            Set<Sign> shown = Sign.counting(signs.of(unit.truck()).on(unit.cylinder(), unit.fittedOn(), from));
            pieces.add(new Piece(hazardBegun, hazardEnded, failed, shown));
        }
    }

    private List<SignEffect> effects() {
        long failures = pieces.stream().filter(Piece::failed).count();
        List<Sign> fitted = new ArrayList<>();
        for (Sign sign : Sign.values()) {
            long with = failuresWith(sign);
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
            EffectsFit fit = ProportionalHazards.fit(records(fitted));
            for (int j = 0; j < fitted.size(); j++) {
                Sign sign = fitted.get(j);
                effects.set(
                        sign.ordinal(),
                        new SignEffect(
                                sign,
                                Math.exp(fit.effects().get(j).value()),
                                ConditionModel.FITTED,
                                failuresWith(sign)));
            }
        } catch (NoEstimateException unfit) {
            return effects;
        }
        return effects;
    }

    private long failuresWith(Sign sign) {
        return pieces.stream()
                .filter(piece -> piece.failed && piece.signs.contains(sign))
                .count();
    }

    private EffectRecords records(List<Sign> fitted) {
        int rows = pieces.size();
        double[] starts = new double[rows];
        double[] stops = new double[rows];
        boolean[] events = new boolean[rows];
        double[][] columns = new double[fitted.size()][rows];
        for (int i = 0; i < rows; i++) {
            Piece piece = pieces.get(i);
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

    /**
     * Mean ratio over all pieces, weighed by their hazard, times expected over seen failures: so that forecasts for injectors
     * in service add up to what happened to them. A workshop that takes out defects leaves fewer failures than the lives
     * alone tell. Ten failures of the one and the other are added, so that few failures move it little.
     */
    private double mean(List<SignEffect> effects) {
        double weighed = 0;
        double all = 0;
        long failures = 0;
        for (Piece piece : pieces) {
            double hazard = piece.stop - piece.start;
            weighed += hazard * ConditionModel.ratio(effects, piece.signs);
            all += hazard;
            failures += piece.failed ? 1 : 0;
        }
        return all > 0 ? weighed / all * (all + SLOW) / (failures + SLOW) : 1;
    }
}
