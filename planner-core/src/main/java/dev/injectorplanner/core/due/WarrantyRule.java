package dev.injectorplanner.core.due;

import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.InjectorAge;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Testing before a warranty ends, while a claim can still be made: the injectors' own, or the truck's. Injectors whose
 * warranty ends for one reason on one day are one due item: a test takes the whole engine.
 */
final class WarrantyRule {
    private record Ending(LocalDate day, String evidence) {}

    private WarrantyRule() {}

    static void apply(TruckCheck truck, List<InjectorAge> ages) {
        truck.rule(RuleKind.WARRANTY).ifPresent(rule -> {
            Map<Ending, List<Integer>> endings = new LinkedHashMap<>();
            for (InjectorAge age : ages) {
                Ending ending = truck.index
                        .findPart(age.part())
                        .map(part -> of(truck, age, part))
                        .orElse(null);
                if (ending != null && !tested(truck, age.cylinder(), ending.day, rule)) {
                    endings.computeIfAbsent(ending, key -> new ArrayList<>()).add(age.cylinder());
                }
            }
            endings.forEach((ending, cylinders) -> inspect(truck, cylinders, rule, ending));
            LocalDate end = truck.truck.warrantyUntil();
            if (end != null && !end.isBefore(truck.today) && !tested(truck, null, end, rule)) {
                inspect(truck, List.of(), rule, new Ending(end, "warranty of the truck ends on " + end));
            }
        });
    }

    private static @Nullable Ending of(TruckCheck truck, InjectorAge age, Part part) {
        if (!age.fittingKnown()) {
            return null; // nobody can claim for an injector of unknown age
        }
        LocalDate byMonths = part.warrantyMonths() == 0 ? null : age.fittedOn().plusMonths(part.warrantyMonths());
        Double km = age.km();
        LocalDate byKm =
                part.warrantyKm() == 0 || km == null ? null : truck.dayAt(part.warrantyKm(), km, age.kmPerWeek());
        LocalDate end = earlier(byMonths, byKm);
        if (end == null || end.isBefore(truck.today) || !truck.inHorizon(end)) {
            return null;
        }
        String reach = end.equals(byMonths)
                ? Figures.count(part.warrantyMonths(), "month", "months")
                : Figures.km(part.warrantyKm()) + " at " + Figures.km(age.kmPerWeek()) + " a week";
        return new Ending(
                end,
                "warranty of part " + age.part() + " ends on " + end + ", " + reach + " from fitting on "
                        + age.fittedOn());
    }

    private static void inspect(TruckCheck truck, List<Integer> cylinders, DueRule rule, Ending ending) {
        String which = cylinders.size() < 2
                ? ""
                : "cylinders " + cylinders.stream().map(String::valueOf).collect(Collectors.joining(", ")) + ": ";
        truck.due(
                cylinders.size() == 1 ? cylinders.get(0) : null,
                DueKind.WARRANTY,
                null,
                DueAction.INSPECT,
                which + ending.evidence,
                "test within the " + Figures.whole(rule.limit()) + " days before it ends",
                rule.source(),
                ending.day);
    }

    private static @Nullable LocalDate earlier(@Nullable LocalDate one, @Nullable LocalDate other) {
        return one == null ? other : other == null || one.isBefore(other) ? one : other;
    }

    private static boolean tested(TruckCheck truck, @Nullable Integer cylinder, LocalDate end, DueRule rule) {
        LocalDate from = end.minusDays(Math.round(rule.limit()));
        return truck.tests.stream()
                .filter(test -> cylinder == null || test.row().cylinder() == cylinder)
                .anyMatch(test -> !test.day().isBefore(from) && !test.day().isAfter(truck.today));
    }
}
