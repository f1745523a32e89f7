package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.defect.DefectDefaults;
import dev.injectorplanner.core.due.RuleBook;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.generate.FleetGenerator;
import dev.injectorplanner.core.generate.FleetSpec;
import dev.injectorplanner.core.generate.GeneratedFleet;
import dev.injectorplanner.core.usage.FleetUsage;
import dev.injectorplanner.core.usage.InjectorAge;
import java.time.LocalDate;
import java.util.List;

/** A fleet with everything the forecasts need, learned on one day. */
record Forecasted(FleetSnapshot fleet, FleetIndex index, FleetUsage usage, List<InjectorAge> ages, FleetRisk risk) {
    static Forecasted on(FleetSnapshot fleet, LocalDate day) {
        FleetIndex index = new FleetIndex(fleet);
        FleetUsage usage = new FleetUsage(index, 365, day);
        List<InjectorAge> ages = usage.injectorAges();
        return new Forecasted(
                fleet,
                index,
                usage,
                ages,
                FleetRisk.of(index, usage, ages, new RuleBook(fleet)::ratio, day, DefectDefaults.STANDARD, 1, null));
    }

    /** A made-up fleet of three years' history with a reading a fortnight. */
    static GeneratedFleet made(int trucks, long seed, LocalDate today) {
        FleetSpec spec = DemoFleet.ofSize(trucks, seed);
        return new FleetGenerator(new FleetSpec(spec.catalogue(), seed, trucks, today, 1_095, 14, 0.02)).generate();
    }
}
