package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.parts.FailureForecast;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.visit.Visit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Chances of the injectors that no visit of the plan replaces. */
final class UnplannedChances implements FailureForecast {
    private final Map<String, List<InjectorRisk>> byDepotAndPart = new TreeMap<>();

    UnplannedChances(List<InjectorRisk> risks, List<Visit> visits) {
        Map<String, Set<Integer>> renewed = new HashMap<>();
        visits.forEach(visit ->
                renewed.computeIfAbsent(visit.truck(), truck -> new HashSet<>()).addAll(visit.cylinders()));
        for (InjectorRisk risk : risks) {
            if (!renewed.getOrDefault(risk.truck(), Set.of()).contains(risk.cylinder())) {
                byDepotAndPart
                        .computeIfAbsent(key(risk.depot(), risk.part()), key -> new ArrayList<>())
                        .add(risk);
            }
        }
    }

    @Override
    public double[] chancesWithin(String depot, String part, int days) {
        return byDepotAndPart.getOrDefault(key(depot, part), List.of()).stream()
                .mapToDouble(risk -> risk.chanceWithin(days))
                .toArray();
    }

    private static String key(String depot, String part) {
        return depot + "\n" + part;
    }
}
