package dev.injectorplanner.core.history;

import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.life.EarlyFailureFit;
import dev.injectorplanner.core.life.EarlyFailures;
import dev.injectorplanner.core.life.LifeRecords;
import dev.injectorplanner.core.life.NoEstimateException;
import dev.injectorplanner.core.life.PredictiveLife;
import dev.injectorplanner.core.life.WeibullFit;
import dev.injectorplanner.core.life.WeibullLife;
import dev.injectorplanner.core.life.WeibullPosterior;
import dev.injectorplanner.core.life.WeibullPrior;
import dev.injectorplanner.core.usage.UnknownAge;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** Fits one part: chooses its clock, then a model for each origin. */
final class PartFit {
    static final String DEFAULT = "planner default";
    static final String OTHER_ORIGIN = "the part's other origin";
    static final String BEFORE_CHANGE = "the part's life before the change";
    private static final WeibullPrior DEFAULT_KM =
            new WeibullPrior(UnknownAge.USUAL_SHAPE, 1.5, UnknownAge.USUAL_SCALE_KM, 1.6);
    private static final WeibullPrior DEFAULT_HOURS =
            new WeibullPrior(UnknownAge.USUAL_SHAPE, 1.5, UnknownAge.USUAL_SCALE_HOURS, 1.8);
    private static final double ORIGIN_SHAPE_FACTOR = 1.25;
    private static final double ORIGIN_SCALE_FACTOR = 1.35;
    private static final double CHANGE_SHAPE_FACTOR = 1.25;
    private static final double CHANGE_SCALE_FACTOR = 1.6;

    private final String part;
    private final List<UnitLife> units;
    private final RemainingDelay remaining;
    private final ToDoubleFunction<UnitLife> worn;

    PartFit(String part, List<UnitLife> units, RemainingDelay remaining, ToDoubleFunction<UnitLife> worn) {
        this.part = part;
        this.units = units;
        this.remaining = remaining;
        this.worn = worn;
    }

    void addTo(LifeBook book) {
        Clock clock = new ClockChoice(part, units, remaining).choose();
        List<Group> groups = Origin.KNOWN.stream()
                .map(origin -> group(origin, clock))
                .sorted(Comparator.comparingDouble(Group::events).reversed())
                .toList();
        Model first = model(groups.get(0), clock, defaultPrior(clock), DEFAULT);
        boolean lends = groups.get(0).events() >= LifeBook.ENOUGH_FOR_PRIOR;
        WeibullPrior lent = new WeibullPrior(
                Math.max(0.1, Math.min(50, first.life.life().shape())),
                ORIGIN_SHAPE_FACTOR,
                first.life.life().scale(),
                ORIGIN_SCALE_FACTOR);
        Model second = model(groups.get(1), clock, lends ? lent : defaultPrior(clock), lends ? OTHER_ORIGIN : DEFAULT);
        Stream.of(first, second)
                .sorted(Comparator.comparing(model -> model.life.origin()))
                .forEach(model -> book.add(model.life, model.predictive));
    }

    /** Adds a model of units that fail sooner, each origin's with the life before the change as a wide prior. */
    void addChangedTo(LifeBook book) {
        Clock clock = book.clockOf(part);
        for (Origin origin : Origin.KNOWN) {
            Group group = group(origin, clock);
            book.changes().stream()
                    .filter(change -> change.part().equals(part) && change.origin() == origin)
                    .filter(change -> group.records().size() > 0)
                    .forEach(change -> {
                        Model apart =
                                model(group, clock, wide(book.before(change).life()), BEFORE_CHANGE);
                        book.addChanged(apart.life, apart.predictive);
                    });
        }
    }

    private static WeibullPrior wide(WeibullLife before) {
        return new WeibullPrior(
                Math.max(0.1, Math.min(50, before.shape())),
                CHANGE_SHAPE_FACTOR,
                before.scale() / CHANGE_SCALE_FACTOR,
                CHANGE_SCALE_FACTOR);
    }

    private static WeibullPrior defaultPrior(Clock clock) {
        return clock == Clock.DISTANCE ? DEFAULT_KM : DEFAULT_HOURS;
    }

    private record Group(Origin origin, long failures, long worn, LifeRecords records) {
        /** Failures, and worn ones as far as they are believed. */
        double events() {
            return records.believedEvents();
        }
    }

    private record Model(PartLife life, PredictiveLife predictive) {}

    private Group group(Origin origin, Clock clock) {
        List<UnitLife> own = units.stream()
                .filter(unit -> unit.origin() == origin && unit.on(clock) != null)
                .toList();
        return new Group(
                origin,
                own.stream().filter(unit -> unit.end() == LifeEnd.FAILED).count(),
                own.stream().filter(unit -> unit.end() == LifeEnd.WORN).count(),
                records(own, clock, remaining.of(part, clock))
                        .withEventShares(own.stream()
                                .mapToDouble(unit -> unit.end() == LifeEnd.WORN ? worn.applyAsDouble(unit) : 1)
                                .toArray()));
    }

    /** Units as life records on a clock that all of them have; the worn ones fail {@code later} after they came out, the healthy ones were alive then. */
    static LifeRecords records(List<UnitLife> units, Clock clock, double later) {
        double[] entries = new double[units.size()];
        double[] exits = new double[units.size()];
        boolean[] events = new boolean[units.size()];
        for (int i = 0; i < exits.length; i++) {
            UnitLife unit = units.get(i);
            Span span = unit.on(clock);
            if (span != null) {
                entries[i] = span.entry();
                exits[i] = span.exit() + (unit.knownBeyondExit() ? later : 0);
                events[i] = unit.failedOrWould();
            }
        }
        return LifeRecords.of(entries, exits, events, null);
    }

    private Model model(Group group, Clock clock, WeibullPrior prior, String whose) {
        Optional<EarlyFailureFit.Found> found = EarlyFailureFit.of(group.records());
        EarlyFailures early = found.map(EarlyFailureFit.Found::early).orElse(EarlyFailures.NONE);
        LifeRecords wear = found.map(each -> group.records().withEvents(age -> !each.isEarly(age)))
                .orElse(group.records());
        WeibullPosterior posterior = WeibullPosterior.of(wear, prior);
        PredictiveLife predictive = PredictiveLife.of(posterior, early);
        if (wear.believedEvents() >= LifeBook.ENOUGH_FAILURES) {
            try {
                WeibullLife life = WeibullFit.of(wear).life();
                return new Model(life(group, clock, life, early, LifeSource.FITTED, ""), predictive);
            } catch (NoEstimateException unfit) {
                return posterior(group, clock, posterior, predictive, whose);
            }
        }
        return posterior(group, clock, posterior, predictive, whose);
    }

    private Model posterior(
            Group group, Clock clock, WeibullPosterior posterior, PredictiveLife predictive, String whose) {
        LifeSource source = group.records().size() == 0 ? LifeSource.PRIOR : LifeSource.POSTERIOR;
        return new Model(life(group, clock, posterior.centralLife(), predictive.early(), source, whose), predictive);
    }

    private PartLife life(
            Group group, Clock clock, WeibullLife life, EarlyFailures early, LifeSource source, String prior) {
        return new PartLife(
                part,
                group.origin(),
                clock,
                life,
                early,
                source,
                prior,
                group.failures(),
                group.worn(),
                group.records().suspensionCount());
    }
}
