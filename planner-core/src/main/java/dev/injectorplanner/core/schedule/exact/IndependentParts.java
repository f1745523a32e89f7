package dev.injectorplanner.core.schedule.exact;

import dev.injectorplanner.core.schedule.ScheduleRequest;
import dev.injectorplanner.core.schedule.TruckOptions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Splits a request into parts that share nothing: depots, joined where a duty group has trucks in several. */
final class IndependentParts {
    private final Map<String, String> leader = new TreeMap<>();

    private IndependentParts() {}

    /** The parts by depot, trucks within each by name. */
    static List<ScheduleRequest> of(ScheduleRequest request) {
        IndependentParts parts = new IndependentParts();
        Map<String, String> depotOfGroup = new TreeMap<>();
        for (TruckOptions truck : request.trucks()) {
            parts.leader.putIfAbsent(truck.depot(), truck.depot());
            if (truck.dutyGroup() != null) {
                String other = depotOfGroup.putIfAbsent(truck.dutyGroup(), truck.depot());
                parts.join(truck.depot(), other == null ? truck.depot() : other);
            }
        }
        Map<String, List<TruckOptions>> trucks = new TreeMap<>();
        for (TruckOptions truck : request.trucks()) {
            trucks.computeIfAbsent(parts.leaderOf(truck.depot()), none -> new ArrayList<>())
                    .add(truck);
        }
        List<ScheduleRequest> list = new ArrayList<>();
        trucks.forEach((leader, those) -> list.add(parts.part(request, leader, those, depotOfGroup)));
        return list;
    }

    private ScheduleRequest part(
            ScheduleRequest request, String leader, List<TruckOptions> trucks, Map<String, String> depotOfGroup) {
        return new ScheduleRequest(
                request.weeks(),
                trucks.stream()
                        .sorted(Comparator.comparing(TruckOptions::truck))
                        .toList(),
                request.depots().stream()
                        .filter(row -> leader.equals(leaderOf(row.depot())))
                        .toList(),
                request.groups().stream()
                        .filter(row -> {
                            String depot = depotOfGroup.get(row.dutyGroup());
                            return depot != null && leader.equals(leaderOf(depot));
                        })
                        .toList());
    }

    private void join(String one, String other) {
        leader.putIfAbsent(other, other);
        leader.put(leaderOf(one), leaderOf(other));
    }

    private String leaderOf(String depot) {
        String at = depot;
        String above = leader.getOrDefault(at, at);
        while (!above.equals(at)) {
            at = above;
            above = leader.getOrDefault(at, at);
        }
        return at;
    }
}
