package dev.injectorplanner.core.generate;

import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.truth.Draws;
import dev.injectorplanner.core.truth.UsagePath;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** The injectors of one engine from its first day: what failed, what was found in time, what was replaced along. */
final class EngineStory {
    private static final double REMAN_SHARE = 0.45;
    private static final double ALONGSIDE_SHARE = 0.5;
    private static final double ALONGSIDE_FROM = 0.65;

    private final Draws draws;
    private final Catalogue catalogue;
    private final EngineFamily family;
    private final EngineUse use;
    private final UsagePath path;
    private final LocalDate today;
    private final List<Unit> running = new ArrayList<>();
    private final List<Unit> all = new ArrayList<>();

    EngineStory(Draws draws, Catalogue catalogue, EngineUse use, UsagePath path, LocalDate start, LocalDate today) {
        this.draws = draws;
        this.catalogue = catalogue;
        this.family = catalogue.family(use.family());
        this.use = use;
        this.path = path;
        this.today = today;
        for (int cylinder : family.allCylinders()) {
            fit(cylinder, Origin.NEW, start, path.kmOn(start), true);
        }
    }

    /** Every unit that ever was in, in the order of fitting. */
    List<Unit> tell() {
        while (true) {
            Unit next = running.get(0);
            for (Unit unit : running) {
                next = unit.fittedKm + unit.outKm() < next.fittedKm + next.outKm() ? unit : next;
            }
            double atKm = next.fittedKm + next.outKm();
            LocalDate day = path.dayAt(atKm);
            if (!day.isBefore(today)) {
                break;
            }
            day = day.isAfter(next.fittedOn) ? day : next.fittedOn.plusDays(1);
            replace(next, day, next.reason());
            openFor(day);
        }
        running.forEach(unit -> unit.endKm = path.kmOn(today) - unit.fittedKm);
        return all;
    }

    /** The engine is open: sometimes those near their planned distance are replaced along. */
    private void openFor(LocalDate day) {
        if (!draws.chance(ALONGSIDE_SHARE)) {
            return;
        }
        for (Unit unit : List.copyOf(running)) {
            double ageKm = path.kmOn(day) - unit.fittedKm;
            if (ageKm > ALONGSIDE_FROM * use.plannedKm() && day.isAfter(unit.fittedOn)) {
                replace(unit, day, InjectorTruth.End.ALONGSIDE);
            }
        }
    }

    private void replace(Unit unit, LocalDate day, InjectorTruth.End end) {
        unit.end = end;
        unit.removedOn = day;
        unit.endKm = end == InjectorTruth.End.ALONGSIDE ? path.kmOn(day) - unit.fittedKm : unit.outKm();
        running.remove(unit);
        fit(
                unit.cylinder,
                draws.chance(REMAN_SHARE) ? Origin.REMAN : Origin.NEW,
                day,
                Math.max(path.kmOn(day), unit.fittedKm + unit.endKm),
                false);
    }

    private void fit(int cylinder, Origin origin, LocalDate day, double km, boolean factory) {
        TrueLife life = catalogue.life(family.injectorPart(), origin);
        Unit unit = new Unit(draws, cylinder, life, day, km, use.plannedKm(), factory);
        running.add(unit);
        all.add(unit);
    }
}
