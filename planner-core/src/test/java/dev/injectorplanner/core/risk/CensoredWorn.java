package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.history.LifeEnd;
import dev.injectorplanner.core.history.UnitLife;
import dev.injectorplanner.core.life.LifeRecords;
import dev.injectorplanner.core.life.WeibullFit;
import java.util.List;

/** The same history with injectors found worn counted as not seen to fail. */
final class CensoredWorn {
    private CensoredWorn() {}

    static double scale(Forecasted fleet, String part, Origin origin) {
        List<UnitLife> units = fleet.risk().history().units().stream()
                .filter(unit -> unit.part().equals(part) && unit.origin() == origin && unit.km() != null)
                .toList();
        double[] entries = units.stream().mapToDouble(unit -> unit.km().entry()).toArray();
        double[] exits = units.stream().mapToDouble(unit -> unit.km().exit()).toArray();
        boolean[] events = new boolean[exits.length];
        for (int i = 0; i < events.length; i++) {
            events[i] = units.get(i).end() == LifeEnd.FAILED;
        }
        return WeibullFit.of(LifeRecords.of(entries, exits, events, null)).scale();
    }
}
