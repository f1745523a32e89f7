package dev.injectorplanner.core.due;

import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.risk.FleetRisk;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.InjectorAge;
import java.time.temporal.ChronoUnit;

/**
 * Chance of failing within 12 weeks against a limit in percent. Due in the week in which the chance of the 12 weeks that
 * follow first reaches it, at the truck's usual pace and the injector's condition of today.
 */
final class RiskRule {
    private RiskRule() {}

    static void apply(TruckCheck truck, InjectorAge age, FleetRisk risks) {
        truck.rule(RuleKind.RISK)
                .ifPresent(rule ->
                        risks.find(age.truck(), age.cylinder()).ifPresent(risk -> hold(truck, rule, risks, risk)));
    }

    private static void hold(TruckCheck truck, DueRule rule, FleetRisk risks, InjectorRisk risk) {
        int most = (int) Math.max(0, ChronoUnit.WEEKS.between(truck.today, truck.until));
        risks.weeksUntilChance(risk, rule.limit() / 100, most)
                .ifPresent(weeks -> truck.due(
                        risk.cylinder(),
                        DueKind.RISK,
                        null,
                        DueAction.REPLACE,
                        Figures.whole(risk.age()) + " " + risk.clock().unit() + " since fitting, " + risk.condition(),
                        Figures.tenths(rule.limit()) + " % chance of failing within 12 weeks",
                        rule.source(),
                        truck.today.plusWeeks(weeks)));
    }
}
