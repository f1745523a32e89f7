package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.change.ChangeWatch;
import dev.injectorplanner.core.condition.FleetSigns;
import dev.injectorplanner.core.defect.DefectBook;
import dev.injectorplanner.core.defect.DefectDefaults;
import dev.injectorplanner.core.history.Clock;
import dev.injectorplanner.core.history.LifeBook;
import dev.injectorplanner.core.history.LifeChange;
import dev.injectorplanner.core.history.LifeEnd;
import dev.injectorplanner.core.history.LifeHistory;
import dev.injectorplanner.core.history.RemainingDelay;
import dev.injectorplanner.core.history.UnitLife;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * Lives and defects learned from one history. Each needs the other: an injector found worn lives on in the records for what
 * was left of its delay. So lives are fitted with the delay given, then defects, then lives again with the delay found.
 */
record LearnedLives(LifeBook lives, DefectBook defects) {
    /** Where in its delay a defect is found when it is found, on average: a planner default. */
    private static final double FOUND_AT = 0.5;

    private static final double USUAL_KM_PER_HOUR = 50;

    /**
     * Learns lives and defects; what fails sooner than before is learned apart.
     *
     * @param supplierOf names a part's supplier, empty where it has none
     */
    static LearnedLives of(
            LifeHistory history,
            List<String> parts,
            FleetSigns signs,
            DefectDefaults given,
            LocalDate today,
            UnaryOperator<String> supplierOf) {
        RemainingDelay before =
                (part, clock) -> FOUND_AT * given.meanDelayKm() / (clock == Clock.DISTANCE ? 1 : USUAL_KM_PER_HOUR);
        LifeBook all = LifeBook.of(history, parts, before);
        List<LifeChange> changes = new ChangeWatch(before, today, supplierOf).find(history.units(), all);
        LifeBook first = changes.isEmpty() ? all : LifeBook.of(history, parts, before, unit -> 1, changes);
        DefectBook defects = DefectBook.of(history, parts, first, signs, given);
        boolean anyWorn = history.units().stream().anyMatch(unit -> unit.end() == LifeEnd.WORN);
        if (!anyWorn) {
            return new LearnedLives(first, defects);
        }
        RemainingDelay found = (part, clock) -> FOUND_AT
                * (clock == Clock.DISTANCE
                        ? defects.of(part).meanDelayKm()
                        : defects.of(part).meanDelayKm() / defects.of(part).kmPerHour());
        Map<UnitLife, Double> worn = new HashMap<>();
        LifeBook lives = LifeBook.of(
                history,
                parts,
                found,
                unit -> worn.computeIfAbsent(unit, each -> defects.chanceWorn(each, first, signs)),
                changes);
        return new LearnedLives(lives, DefectBook.of(history, parts, lives, signs, given));
    }
}
