package dev.injectorplanner.core.replay.outlook;

import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.replay.scenario.FamilyTruth;
import dev.injectorplanner.core.replay.scenario.Scenario;
import dev.injectorplanner.core.replay.world.TruckToday;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.usage.InjectorAge;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The trucks of a fleet as its plan sees them today: usage, ages, and what signs do to each injector's hazard. */
final class FleetNow {
    private static final double DEFAULT_AGE_KM = 100_000;

    private final Plan plan;
    private final Map<String, Map<Integer, InjectorAge>> ages = new HashMap<>();
    private final Map<String, Map<Integer, InjectorRisk>> risks = new HashMap<>();
    final List<TruckToday> trucks = new ArrayList<>();
    final List<String> leftOut = new ArrayList<>();
    final Map<String, Integer> names = new TreeMap<>();
    int assumedAges;

    FleetNow(FleetSnapshot fleet, Plan plan, Scenario own) {
        this.plan = plan;
        plan.injectors()
                .forEach(age -> ages.computeIfAbsent(age.truck(), name -> new HashMap<>())
                        .put(age.cylinder(), age));
        plan.risks()
                .forEach(risk -> risks.computeIfAbsent(risk.truck(), name -> new HashMap<>())
                        .put(risk.cylinder(), risk));
        for (Truck truck : fleet.trucks()) {
            if (truck.inServiceAt(plan.today())) {
                add(truck, own);
            }
        }
    }

    private void add(Truck truck, Scenario own) {
        Map<Integer, InjectorAge> known = ages.getOrDefault(truck.truck(), Map.of());
        double perWeek = known.values().stream()
                .mapToDouble(InjectorAge::kmPerWeek)
                .max()
                .orElse(0);
        int family = placeOf(truck.family(), own);
        if (family < 0 || !(perWeek > 0)) {
            leftOut.add(truck.truck());
            return;
        }
        EngineFamily engine = own.site().family(truck.family());
        List<TruckToday.Fitted> fitted = new ArrayList<>();
        for (int cylinder : engine.allCylinders()) {
            fitted.add(fitted(truck, known, cylinder));
        }
        names.put(truck.truck(), trucks.size());
        trucks.add(new TruckToday(truck, family, perWeek, fitted));
    }

    private static int placeOf(String family, Scenario own) {
        List<FamilyTruth> families = own.families();
        for (int i = 0; i < families.size(); i++) {
            if (families.get(i).family().equals(family)) {
                return i;
            }
        }
        return -1;
    }

    private TruckToday.Fitted fitted(Truck truck, Map<Integer, InjectorAge> known, int cylinder) {
        InjectorAge age = known.get(cylinder);
        Double km = age == null ? null : age.km();
        InjectorRisk risk = risks.getOrDefault(truck.truck(), Map.of()).get(cylinder);
        double multiplier = risk == null ? 1 : risk.multiplier();
        if (age != null && km != null) {
            return new TruckToday.Fitted(km, age.origin(), age.fittedOn(), multiplier);
        }
        assumedAges++;
        double assumed = known.values().stream()
                .mapToDouble(each -> each.km() == null ? DEFAULT_AGE_KM : each.km())
                .average()
                .orElse(DEFAULT_AGE_KM);
        return new TruckToday.Fitted(assumed, Origin.NEW, plan.today(), multiplier);
    }
}
