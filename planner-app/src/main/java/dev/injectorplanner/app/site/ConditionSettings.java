package dev.injectorplanner.app.site;

import static dev.injectorplanner.app.site.SettingKinds.figure;

import dev.injectorplanner.core.defect.DefectDefaults;
import dev.injectorplanner.core.due.SafetyLimit;
import dev.injectorplanner.core.plan.Policy;
import java.util.List;

/** Safety, and the assumptions of injector tests. */
final class ConditionSettings {
    private static final Policy POLICY = Policy.standard();
    private static final SafetyLimit SAFETY = POLICY.safety();
    private static final DefectDefaults DEFECTS = POLICY.defects();

    static final List<SettingKind> LIST = List.of(
            figure(
                    "safety-days",
                    SettingArea.SAFETY,
                    "Days to the bay",
                    "from the first sighting of a fuel leak or a fault of the fuel pressure; a rule of the kind safety goes before it",
                    Measure.DAYS,
                    0,
                    60,
                    SAFETY.days(),
                    safety((rules, v) -> rules.withDays((int) v))),
            figure(
                    "safety-window-days",
                    SettingArea.SAFETY,
                    "Gap between reports",
                    "reports of one fault that are further apart start its days to the bay again; only a recorded repair closes it",
                    Measure.DAYS,
                    1,
                    365,
                    SAFETY.windowDays(),
                    safety((rules, v) -> rules.withWindowDays((int) v))),
            figure(
                    "diagnosis-hours",
                    SettingArea.SAFETY,
                    "Diagnosis visit",
                    "labour to find the cause of a safety fault, without parts",
                    Measure.HOURS,
                    0.25,
                    24,
                    SAFETY.diagnosisHours(),
                    safety(SafetyLimit::withDiagnosisHours)),
            figure(
                    "inspection-hours",
                    SettingArea.INSPECTION,
                    "Testing a truck’s injectors",
                    "labour for one balance and return-flow test",
                    Measure.HOURS,
                    0,
                    24,
                    POLICY.inspectionHours(),
                    (policy, kept) -> policy.withInspectionHours(number(kept))),
            figure(
                    "unseen-failure-limit",
                    SettingArea.INSPECTION,
                    "Limit on undetected defects",
                    "a truck is due for a test when the chance of a road failure from an undetected defect exceeds this; 100 % means"
                            + " no limit, so that tests come only where they pay",
                    Measure.PERCENT,
                    0.0001,
                    1,
                    POLICY.unseenFailureLimit(),
                    (policy, kept) -> policy.withUnseenFailureLimit(number(kept))),
            figure(
                    "defect-delay",
                    SettingArea.INSPECTION,
                    "From defect to failure",
                    "average distance, until the fleet’s own data is enough",
                    Measure.DISTANCE,
                    100,
                    1_000_000,
                    DEFECTS.meanDelayKm(),
                    defects(DefectDefaults::withMeanDelayKm)),
            figure(
                    "test-sensitivity",
                    SettingArea.INSPECTION,
                    "Defects that a test finds",
                    "of the defects present, until the fleet’s own data is enough",
                    Measure.PERCENT,
                    0.01,
                    1,
                    DEFECTS.sensitivity(),
                    defects(DefectDefaults::withSensitivity)),
            figure(
                    "silent-share",
                    SettingArea.INSPECTION,
                    "Failures without an earlier fault",
                    "of all failures, until the fleet’s own data is enough",
                    Measure.PERCENT,
                    0,
                    1,
                    DEFECTS.silentShare(),
                    defects(DefectDefaults::withSilentShare)));

    private ConditionSettings() {}

    private interface SafetyChange {
        SafetyLimit of(SafetyLimit rules, double value);
    }

    private interface DefectChange {
        DefectDefaults of(DefectDefaults rules, double value);
    }

    private static SettingKind.Effect safety(SafetyChange change) {
        return (policy, kept) -> policy.withSafety(change.of(policy.safety(), number(kept)));
    }

    private static SettingKind.Effect defects(DefectChange change) {
        return (policy, kept) -> policy.withDefects(change.of(policy.defects(), number(kept)));
    }

    private static double number(String kept) {
        return Double.parseDouble(kept);
    }
}
