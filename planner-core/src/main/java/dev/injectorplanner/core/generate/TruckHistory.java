package dev.injectorplanner.core.generate;

import dev.injectorplanner.core.fleet.AwayWindow;
import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.fleet.Truck;
import java.util.List;

/** Everything made up about one truck, so that a fleet of any size can be made truck by truck. */
public record TruckHistory(
        Truck truck,
        List<FittedInjector> injectors,
        List<Reading> readings,
        List<Fault> faults,
        List<CylinderTest> tests,
        List<AwayWindow> away,
        List<InjectorTruth> truth) {}
