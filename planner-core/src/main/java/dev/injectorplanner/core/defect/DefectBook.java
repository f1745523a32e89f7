package dev.injectorplanner.core.defect;

import dev.injectorplanner.core.condition.FleetSigns;
import dev.injectorplanner.core.condition.SignTrack;
import dev.injectorplanner.core.history.Clock;
import dev.injectorplanner.core.history.LifeBook;
import dev.injectorplanner.core.history.LifeEnd;
import dev.injectorplanner.core.history.LifeHistory;
import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.history.Span;
import dev.injectorplanner.core.history.UnitLife;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The defect model of every injector part, learned from a fleet's history: first one for all parts of a clock, which then
 * counts as prior for each part, so that a part with few failures borrows from the others.
 */
public final class DefectBook {
    /** Lives that a fit takes at the most; of more, an even share. */
    private static final int MOST_LIVES = 6_000;

    /** Weeks of a life that are followed at the most: what was shown before says nothing of a defect now. */
    private static final int MOST_WEEKS = 208;

    private static final double USUAL_KM_PER_WEEK = 1_500;
    private static final double USUAL_KM_PER_HOUR = 50;

    private final Map<String, Entry> entries = new TreeMap<>();

    /**
     * One part.
     *
     * @param model how its injectors come to fail
     * @param clock what its ages are counted in
     * @param perWeek mean use a week of its injectors
     * @param kmPerHour km an engine hour of its trucks
     */
    public record Entry(DefectModel model, Clock clock, double perWeek, double kmPerHour) {
        /** Rate per unit of the clock at which a defect shows and the injector is taken out, where signs are watched. */
        public double showsPerUse() {
            return Evidence.showsPerWeek(model) / perWeek;
        }

        /** Mean delay in km. */
        public double meanDelayKm() {
            return clock == Clock.DISTANCE ? model.meanDelay() : model.meanDelay() * kmPerHour;
        }
    }

    private DefectBook() {}

    /**
     * Learns from a history.
     *
     * @param parts parts that must have a model, whether or not the history tells of them
     */
    public static DefectBook of(
            LifeHistory history, List<String> parts, LifeBook lives, FleetSigns signs, DefectDefaults prior) {
        DefectBook book = new DefectBook();
        Map<String, List<UnitLife>> byPart = new TreeMap<>();
        parts.forEach(part -> byPart.put(part, new ArrayList<>()));
        history.units()
                .forEach(unit -> byPart.computeIfAbsent(unit.part(), part -> new ArrayList<>())
                        .add(unit));
        for (Clock clock : Clock.values()) {
            Map<String, List<UnitLife>> own = new TreeMap<>(byPart);
            own.keySet().removeIf(part -> lives.clockOf(part) != clock);
            book.learn(own, clock, lives, signs, prior);
        }
        return book;
    }

    private void learn(
            Map<String, List<UnitLife>> byPart, Clock clock, LifeBook lives, FleetSigns signs, DefectDefaults prior) {
        List<UnitLife> all = new ArrayList<>();
        byPart.values().forEach(all::addAll);
        double kmPerHour = kmPerHour(all).orElse(USUAL_KM_PER_HOUR);
        double unitsPerKm = clock == Clock.DISTANCE ? 1 : 1 / kmPerHour;
        double perWeek = perWeek(all, clock).orElse(USUAL_KM_PER_WEEK * unitsPerKm);
        DefectModel given = prior.model(unitsPerKm, perWeek);
        DefectModel fleet =
                DefectFit.of(watched(all, clock, lives, signs), signs.hasFaults() ? given : given.withoutFaults());
        byPart.forEach((part, units) -> {
            DefectModel own = byPart.size() == 1 ? fleet : DefectFit.of(watched(units, clock, lives, signs), fleet);
            entries.put(
                    part,
                    new Entry(
                            own,
                            clock,
                            perWeek(units, clock).orElse(perWeek),
                            kmPerHour(units).orElse(kmPerHour)));
        });
    }

    /** The same book with the signs of each part believed less or more, as {@link DefectModel#withSignWeight} says. */
    public DefectBook withSignWeight(double weight) {
        if (weight == 1) {
            return this;
        }
        DefectBook book = new DefectBook();
        entries.forEach((part, old) -> book.entries.put(
                part, new Entry(old.model().withSignWeight(weight), old.clock(), old.perWeek(), old.kmPerHour())));
        return book;
    }

    /** The same book with another model of one of its parts. */
    public DefectBook with(String part, DefectModel model) {
        DefectBook book = new DefectBook();
        book.entries.putAll(entries);
        Entry old = of(part);
        book.entries.put(part, new Entry(model, old.clock(), old.perWeek(), old.kmPerHour()));
        return book;
    }

    private static Optional<Double> kmPerHour(List<UnitLife> units) {
        double km = 0;
        double hours = 0;
        for (UnitLife unit : units) {
            Span onKm = unit.km();
            Span onHours = unit.hours();
            if (onKm != null && onHours != null) {
                km += onKm.exit();
                hours += onHours.exit();
            }
        }
        return km > 0 && hours > 0 ? Optional.of(km / hours) : Optional.empty();
    }

    private static Optional<Double> perWeek(List<UnitLife> units, Clock clock) {
        double use = 0;
        double weeks = 0;
        for (UnitLife unit : units) {
            Span span = unit.on(clock);
            if (span != null) {
                use += span.exit() - span.entry();
                weeks += days(unit) / 7.0;
            }
        }
        return use > 0 ? Optional.of(use / weeks) : Optional.empty();
    }

    private static long days(UnitLife unit) {
        return Math.max(1, unit.exitOn().toEpochDay() - unit.observedFrom().toEpochDay());
    }

    private static List<WatchedLife> watched(List<UnitLife> units, Clock clock, LifeBook lives, FleetSigns signs) {
        List<WatchedLife> watched = new ArrayList<>();
        int every = 1 + units.size() / MOST_LIVES;
        for (int i = 0; i < units.size(); i += every) {
            UnitLife unit = units.get(i);
            Span span = unit.on(clock);
            if (span != null) {
                watched.add(watched(unit, span, lives, signs));
            }
        }
        return Collections.unmodifiableList(watched);
    }

    /** The last {@link #MOST_WEEKS} of a life; of a failed one without its last day, when the failure itself shows. */
    private static WatchedLife watched(UnitLife unit, Span span, LifeBook lives, FleetSigns signs) {
        double all = days(unit) / 7.0;
        double pace = (span.exit() - span.entry()) / all;
        double skipped = Math.max(0, Math.floor(all) - MOST_WEEKS);
        LocalDate after = unit.observedFrom().plusWeeks((long) skipped);
        int weeks = (int) Math.ceil(all - skipped - 1e-9);
        LocalDate until = unit.end() == LifeEnd.FAILED ? unit.exitOn().minusDays(1) : unit.exitOn();
        SignTrack track = signs.of(unit.truck()).track(unit.cylinder(), after, until, weeks);
        PartLife model = lives.of(unit.part(), unit.origin(), unit.fittedOn());
        return new WatchedLife(
                lives.predictive(model, unit.truck()),
                span.entry() + skipped * pace,
                pace,
                all - skipped - (weeks - 1),
                unit.end(),
                track);
    }

    /**
     * Chance that an injector taken out worn really had a defect, given what it showed before: of many sound ones taken out on
     * age some are called worn by mistake.
     *
     * @param lives those that this book was learned with
     */
    public double chanceWorn(UnitLife unit, LifeBook lives, FleetSigns signs) {
        Entry entry = of(unit.part());
        Span span = unit.on(entry.clock());
        if (span == null) {
            return 1;
        }
        WatchedLife life = watched(unit, span, lives, signs);
        DefectModel model = entry.model();
        double chance = model.chanceDefective(life.life(), life.firstAge(), life.perWeek(), life.track());
        double worn = chance * model.defective().worn();
        return worn / (worn + (1 - chance) * model.sound().worn());
    }

    /** All parts, in order. */
    public Map<String, Entry> entries() {
        return Collections.unmodifiableMap(entries);
    }

    /** @throws IllegalArgumentException for a part that the book was not made for */
    public Entry of(String part) {
        Entry entry = entries.get(part);
        if (entry == null) {
            throw new IllegalArgumentException("no defect model of part \"" + part + "\"");
        }
        return entry;
    }
}
