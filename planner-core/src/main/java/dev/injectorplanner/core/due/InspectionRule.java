package dev.injectorplanner.core.due;

import dev.injectorplanner.core.risk.InspectionDates;
import dev.injectorplanner.core.risk.TruckInspection;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.InjectorAge;
import java.util.List;

/** Due for inspection: the chance that a defect nobody has seen fails on the road passes the limit. */
final class InspectionRule {
    private InspectionRule() {}

    static void apply(TruckCheck truck, List<InjectorAge> ages, InspectionDates dates, UnseenLimit limit) {
        dates.find(truck.usage, ages, truck.until)
                .ifPresent(inspection -> truck.due(
                        null,
                        DueKind.INSPECTION,
                        null,
                        DueAction.INSPECT,
                        evidence(inspection),
                        Figures.tenths(100 * limit.chance()) + " % for a road failure from an undetected defect",
                        limit.source(),
                        inspection.by()));
    }

    private static String evidence(TruckInspection inspection) {
        String last = inspection.lastTestOn() == null
                ? "no full injector test on record, "
                : "injectors last tested on " + inspection.lastTestOn() + ", ";
        return last + Figures.km(inspection.sinceKm())
                + " ago; chance since then of a road failure from an undetected defect "
                + Figures.percent(inspection.chanceNow())
                + (inspection.estimated() ? "" : "; delay and sensitivity are planner defaults");
    }
}
