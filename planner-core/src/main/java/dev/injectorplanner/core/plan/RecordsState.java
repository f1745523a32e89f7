package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.history.FailureQuestion;
import dev.injectorplanner.core.usage.FleetUsage;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the records behind a plan lack, and what somebody has to answer before they can be believed.
 *
 * @param depots what each depot's records lack
 * @param questions parts with long service and no failure on record
 */
public record RecordsState(List<DepotRecords> depots, List<FailureQuestion> questions) {
    /** Nothing is missing. */
    public static final RecordsState WHOLE = new RecordsState(List.of(), List.of());

    public RecordsState {
        depots = List.copyOf(depots);
        questions = List.copyOf(questions);
    }

    static RecordsState of(
            FleetIndex index, FleetUsage usage, List<FailureQuestion> questions, int staleDays, LocalDate today) {
        List<DepotRecords> depots = new ArrayList<>();
        for (Depot depot : index.fleet().depots()) {
            List<Truck> trucks = index.fleet().trucks().stream()
                    .filter(truck -> truck.depot().equals(depot.depot()) && truck.inServiceAt(today))
                    .toList();
            depots.add(of(index, usage, depot.depot(), trucks, staleDays, today));
        }
        Set<String> parts =
                index.fleet().injectors().stream().map(FittedInjector::part).collect(Collectors.toSet());
        return new RecordsState(
                depots,
                questions.stream()
                        .filter(question -> parts.contains(question.part()))
                        .toList());
    }

    private static DepotRecords of(
            FleetIndex index, FleetUsage usage, String depot, List<Truck> trucks, int staleDays, LocalDate today) {
        List<String> none = new ArrayList<>();
        List<String> some = new ArrayList<>();
        List<DepotRecords.Silent> silent = new ArrayList<>();
        TreeSet<String> noAccess = new TreeSet<>();
        int unknown = 0;
        for (Truck truck : trucks) {
            List<FittedInjector> fitted = index.injectorsOf(truck.truck()).stream()
                    .filter(row -> row.fittedAt(today))
                    .toList();
            EngineFamily family = index.family(truck.family());
            if (fitted.isEmpty()) {
                none.add(truck.truck());
            } else if (fitted.size() < family.cylinders()) {
                some.add(truck.truck());
            }
            unknown += (int) fitted.stream().filter(row -> !row.fittingKnown()).count();
            LocalDate last = usage.lastReading(truck.truck());
            if (last == null || last.plusDays(staleDays).isBefore(today)) {
                silent.add(new DepotRecords.Silent(truck.truck(), last));
            }
            if (index.accessOf(family.family()).isEmpty()) {
                noAccess.add(family.family());
            }
        }
        return new DepotRecords(depot, trucks.size(), none, some, silent, List.copyOf(noAccess), unknown, staleDays);
    }

    /** Everything that somebody must know before believing a chance or a count, the questions first; empty where all is there. */
    public List<String> sentences() {
        return Stream.concat(
                        questions.stream().map(question -> question.words() + " " + question.meanwhile()),
                        DepotRecords.sentences(depots).stream())
                .toList();
    }

    /** What is said of one truck: that it is silent, or has no injectors on record. */
    public List<String> sentencesOf(String truck) {
        return depots.stream().flatMap(each -> each.sentencesOf(truck).stream()).toList();
    }

    /** The open question about a part. */
    public Optional<FailureQuestion> questionOf(String part) {
        return questions.stream().filter(each -> each.part().equals(part)).findFirst();
    }

    /** What the plans of several depots lack; a plan that stands for several of them counts once. */
    public static RecordsState together(List<RecordsState> parts) {
        return new RecordsState(
                parts.stream().flatMap(each -> each.depots.stream()).distinct().toList(),
                List.copyOf(parts.stream()
                        .flatMap(each -> each.questions.stream())
                        .collect(Collectors.toMap(
                                FailureQuestion::part, each -> each, (one, other) -> one, TreeMap::new))
                        .values()));
    }

    /** The part of one depot. */
    public RecordsState of(String depot) {
        return new RecordsState(
                depots.stream().filter(each -> each.depot().equals(depot)).toList(), questions);
    }
}
