package dev.injectorplanner.core.condition;

import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.fleet.Truck;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** The signs of every truck of a fleet. */
public final class FleetSigns {
    private final Map<String, TruckSigns> trucks = new LinkedHashMap<>();
    private final Set<TestKind> testKinds = EnumSet.noneOf(TestKind.class);
    private final boolean faults;

    public FleetSigns(FleetIndex index, TestLimit limits) {
        faults = index.fleet().faults().stream().anyMatch(fault -> fault.cylinder() != null);
        for (Truck truck : index.fleet().trucks()) {
            TruckSigns signs = new TruckSigns(index, truck, limits);
            trucks.put(truck.truck(), signs);
            testKinds.addAll(signs.testKinds());
        }
    }

    /** Kinds of tests on record that can be held against a limit. */
    public Set<TestKind> testKinds() {
        return Collections.unmodifiableSet(testKinds);
    }

    /** Whether the fleet has any fault of a cylinder on record: where it has none, their absence says nothing. */
    public boolean hasFaults() {
        return faults;
    }

    /** @throws IllegalArgumentException for a truck that the fleet does not have */
    public TruckSigns of(String truck) {
        TruckSigns signs = trucks.get(truck);
        if (signs == null) {
            throw new IllegalArgumentException("no truck \"" + truck + "\" in the fleet");
        }
        return signs;
    }
}
