package dev.injectorplanner.core.finding;

import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.InjectorAge;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** Testing before a warranty ends, while a claim can still be made: the injector's own, or the truck's. */
final class WarrantyRule {
    private WarrantyRule() {}

    static void apply(TruckCase truck, InjectorAge age) {
        truck.rule(RuleKind.WARRANTY)
                .ifPresent(rule -> truck.index.findPart(age.part()).ifPresent(part -> ofPart(truck, age, rule, part)));
    }

    private static void ofPart(TruckCase truck, InjectorAge age, DueRule rule, Part part) {
        LocalDate byMonths = part.warrantyMonths() == 0 ? null : age.fittedOn().plusMonths(part.warrantyMonths());
        Double km = age.km();
        LocalDate byKm =
                part.warrantyKm() == 0 || km == null ? null : truck.dayAt(part.warrantyKm(), km, age.kmPerWeek());
        LocalDate end = earlier(byMonths, byKm);
        if (end == null || end.isBefore(truck.today) || tested(truck, age.cylinder(), end, rule)) {
            return;
        }
        String reach = end.equals(byMonths)
                ? Figures.count(part.warrantyMonths(), "month", "months") + " from fitting on " + age.fittedOn()
                : Figures.km(part.warrantyKm()) + " from fitting, " + Figures.km(km == null ? 0 : km) + " now, "
                        + Figures.whole(age.kmPerWeek()) + " a week";
        inspect(truck, age.cylinder(), rule, "warranty of part " + age.part() + " ends on " + end + ": " + reach, end);
    }

    /** The truck's own warranty: its injectors are tested together. */
    static void ofTruck(TruckCase truck) {
        LocalDate end = truck.truck.warrantyUntil();
        truck.rule(RuleKind.WARRANTY)
                .filter(rule -> end != null && !end.isBefore(truck.today) && !tested(truck, null, end, rule))
                .ifPresent(rule -> inspect(
                        truck, null, rule, "warranty of the truck ends on " + end, end == null ? truck.today : end));
    }

    private static void inspect(
            TruckCase truck, @Nullable Integer cylinder, DueRule rule, String evidence, LocalDate end) {
        truck.due(
                cylinder,
                FindingKind.WARRANTY,
                null,
                Action.INSPECT,
                evidence,
                "test within the " + Figures.whole(rule.limit()) + " days before it ends",
                rule.source(),
                end);
    }

    private static @Nullable LocalDate earlier(@Nullable LocalDate one, @Nullable LocalDate other) {
        return one == null ? other : other == null || one.isBefore(other) ? one : other;
    }

    private static boolean tested(TruckCase truck, @Nullable Integer cylinder, LocalDate end, DueRule rule) {
        LocalDate from = end.minusDays(Math.round(rule.limit()));
        for (CylinderTest test : truck.index.testsOf(truck.truck.truck())) {
            LocalDate day = truck.dayOf(test.testedAt());
            boolean counts = cylinder == null || test.cylinder() == cylinder;
            if (counts && !day.isBefore(from) && !day.isAfter(truck.today)) {
                return true;
            }
        }
        return false;
    }
}
