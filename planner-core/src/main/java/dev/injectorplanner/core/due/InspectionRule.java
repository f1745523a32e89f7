package dev.injectorplanner.core.due;

import dev.injectorplanner.core.risk.InspectionDates;
import dev.injectorplanner.core.risk.TestPlan;
import dev.injectorplanner.core.risk.TruckInspection;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.InjectorAge;
import java.util.List;

/**
 * Due for inspection: the week in which a visit for a test alone pays most, and none where testing saves nothing. Beside it,
 * where the site sets one, its limit on the chance of a road failure from an undetected defect.
 */
final class InspectionRule {
    private final DueItems.Forecasts forecasts;
    private final UnseenLimit limit;

    InspectionRule(DueItems.Forecasts forecasts, UnseenLimit limit) {
        this.forecasts = forecasts;
        this.limit = limit;
    }

    void apply(TruckCheck truck, List<InjectorAge> ages) {
        InspectionDates dates = new InspectionDates(forecasts.risk(), truck.today);
        forecasts.tests().of(truck.truck).ifPresent(plan -> pays(truck, ages, dates, plan));
        if (limit.isOn()) {
            dates.find(truck.usage, ages, limit.chance(), truck.until)
                    .ifPresent(inspection -> passes(truck, inspection));
        }
    }

    private void pays(TruckCheck truck, List<InjectorAge> ages, InspectionDates dates, TestPlan plan) {
        Integer week = plan.dueWeek();
        if (week != null) {
            truck.due(
                    null,
                    DueKind.INSPECTION,
                    null,
                    DueAction.INSPECT,
                    lastTest(dates, truck, ages) + Figures.percent(plan.defectChance())
                            + " chance that an injector has a hidden defect today",
                    "a test pays for itself: worth " + Figures.whole(plan.saves()) + ", costs "
                            + Figures.whole(plan.costs()),
                    DueRule.COST,
                    forecasts.weeks().dayOf(week));
        }
    }

    private void passes(TruckCheck truck, TruckInspection inspection) {
        truck.due(
                null,
                DueKind.INSPECTION,
                null,
                DueAction.INSPECT,
                lastTest(inspection)
                        + "chance since then of a road failure from an undetected defect "
                        + Figures.percent(inspection.chanceNow())
                        + (inspection.estimated() ? "" : "; delay and sensitivity are planner defaults"),
                Figures.tenths(100 * limit.chance()) + " % for a road failure from an undetected defect",
                limit.source(),
                inspection.by());
    }

    private static String lastTest(InspectionDates dates, TruckCheck truck, List<InjectorAge> ages) {
        return dates.lastTest(truck.usage, ages)
                .map(test -> "injectors last tested on " + test.day() + ", " + Figures.km(test.kmAgo()) + " ago; ")
                .orElse("no full injector test on record; ");
    }

    private static String lastTest(TruckInspection inspection) {
        return inspection.lastTestOn() == null
                ? "no full injector test on record, " + Figures.km(inspection.sinceKm()) + "; "
                : "injectors last tested on " + inspection.lastTestOn() + ", " + Figures.km(inspection.sinceKm())
                        + " ago; ";
    }
}
