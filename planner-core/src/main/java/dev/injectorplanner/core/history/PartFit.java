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
import java.util.function.DoublePredicate;
import java.util.function.ToDoubleFunction;

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

    /** Turns in which the trucks' wear and the life are fitted to each other. */
    private static final int WEAR_ROUNDS = 3;

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
        TruckWear wear = TruckWear.NONE;
        List<Model> models = models(clock, wear);
        for (int round = 0; round < WEAR_ROUNDS; round++) {
            wear = wear(models);
            models = models(clock, wear);
            if (!wear.differs()) {
                break;
            }
        }
        TruckWear found = wear;
        models.stream()
                .sorted(Comparator.comparing(model -> model.life.origin()))
                .forEach(model -> book.add(model.life, model.predictive, found));
    }

    /** A model of each origin; the one with the most failures first. */
    private List<Model> models(Clock clock, TruckWear wear) {
        List<Group> groups = Origin.KNOWN.stream()
                .map(origin -> group(origin, clock, wear))
                .sorted(Comparator.comparingDouble(Group::events).reversed())
                .toList();
        Model first = model(groups.get(0), clock, defaultPrior(clock), DEFAULT);
        boolean lends = groups.get(0).events() >= LifeBook.ENOUGH_FOR_PRIOR;
        WeibullPrior lent = new WeibullPrior(
                Math.max(0.1, Math.min(50, first.life.life().shape())),
                ORIGIN_SHAPE_FACTOR,
                first.life.life().scale(),
                ORIGIN_SCALE_FACTOR);
        return List.of(
                first, model(groups.get(1), clock, lends ? lent : defaultPrior(clock), lends ? OTHER_ORIGIN : DEFAULT));
    }

    /** What wear of each truck the failures beside the expected ones tell, early ones left out: they are no wear. */
    private TruckWear wear(List<Model> models) {
        TruckWear.Tally tally = new TruckWear.Tally();
        for (Model model : models) {
            for (UnitLife unit : model.group.units()) {
                Span span = unit.on(model.life.clock());
                if (span != null) {
                    double exit = exitOf(unit, span, remaining.of(part, model.life.clock()));
                    double event = unit.failedOrWould() && !model.isEarly.test(exit)
                            ? unit.end() == LifeEnd.WORN ? worn.applyAsDouble(unit) : 1
                            : 0;
                    tally.add(
                            unit.truck(), event, model.life.life().cumulativeHazard(span.entry(), exit - span.entry()));
                }
            }
        }
        return tally.wear(models.get(0).life.life().shape());
    }

    /** Adds a model of units that fail sooner, each origin's with the life before the change as a wide prior. */
    void addChangedTo(LifeBook book) {
        Clock clock = book.clockOf(part);
        for (Origin origin : Origin.KNOWN) {
            Group group = group(origin, clock, book.wearOf(part));
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

    private record Group(Origin origin, List<UnitLife> units, long failures, long worn, LifeRecords records) {
        /** Failures, and worn ones as far as they are believed. */
        double events() {
            return records.believedEvents();
        }
    }

    private record Model(PartLife life, PredictiveLife predictive, Group group, DoublePredicate isEarly) {}

    private Group group(Origin origin, Clock clock, TruckWear wear) {
        List<UnitLife> own = units.stream()
                .filter(unit -> unit.origin() == origin && unit.on(clock) != null)
                .toList();
        return new Group(
                origin,
                own,
                own.stream().filter(unit -> unit.end() == LifeEnd.FAILED).count(),
                own.stream().filter(unit -> unit.end() == LifeEnd.WORN).count(),
                records(own, clock, remaining.of(part, clock))
                        .withHazards(own.stream()
                                .mapToDouble(unit -> wear.hazardOf(unit.truck()))
                                .toArray())
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
                exits[i] = exitOf(unit, span, later);
                events[i] = unit.failedOrWould();
            }
        }
        return LifeRecords.of(entries, exits, events, null);
    }

    private static double exitOf(UnitLife unit, Span span, double later) {
        return span.exit() + (unit.knownBeyondExit() ? later : 0);
    }

    private Model model(Group group, Clock clock, WeibullPrior prior, String whose) {
        Optional<EarlyFailureFit.Found> found = EarlyFailureFit.of(group.records(), prior);
        EarlyFailures early = found.map(EarlyFailureFit.Found::early).orElse(EarlyFailures.NONE);
        LifeRecords wear = found.map(each -> group.records().withEvents(age -> !each.isEarly(age)))
                .orElse(group.records());
        WeibullPosterior posterior = WeibullPosterior.of(wear, prior);
        PredictiveLife predictive = PredictiveLife.of(posterior, early);
        DoublePredicate isEarly = age -> found.map(each -> each.isEarly(age)).orElse(false);
        if (wear.believedEvents() >= LifeBook.ENOUGH_FAILURES) {
            try {
                WeibullLife life = WeibullFit.of(wear).life();
                return new Model(life(group, clock, life, early, LifeSource.FITTED, ""), predictive, group, isEarly);
            } catch (NoEstimateException unfit) {
                return posterior(group, clock, posterior, predictive, whose, isEarly);
            }
        }
        return posterior(group, clock, posterior, predictive, whose, isEarly);
    }

    private Model posterior(
            Group group,
            Clock clock,
            WeibullPosterior posterior,
            PredictiveLife predictive,
            String whose,
            DoublePredicate isEarly) {
        LifeSource source = group.records().size() == 0 ? LifeSource.PRIOR : LifeSource.POSTERIOR;
        return new Model(
                life(group, clock, posterior.centralLife(), predictive.early(), source, whose),
                predictive,
                group,
                isEarly);
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
