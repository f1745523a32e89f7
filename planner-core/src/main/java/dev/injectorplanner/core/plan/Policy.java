package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.coolant.CoolantRules;
import dev.injectorplanner.core.defect.DefectDefaults;
import dev.injectorplanner.core.due.SafetyLimit;
import dev.injectorplanner.core.due.UnseenLimit;
import dev.injectorplanner.core.option.VisitRules;
import dev.injectorplanner.core.parts.OrderRules;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * How a plan is to be made.
 *
 * @param weeks weeks in the horizon, 1 to 104
 * @param usageWindowDays readings of that many days back tell the usage
 * @param inspectionHours labour of testing a truck's injectors
 * @param bayHoursPerDay hours of work a truck in a bay gets a day
 * @param unseenFailureLimit the site's limit on the chance of a road failure from an undetected defect, 1 for none
 * @param orders how the site buys
 * @param coolant how the site handles coolant
 * @param visits how visits are weighed
 * @param safety how soon a truck with a fuel leak or a fault of its fuel pressure must come in
 * @param defects how defects behave where there are too few records
 * @param accessShareHours hours of access labour that a cylinder bears, by family, as the last plans paid it ({@link AccessLabourShares}); the
 *     full set's access labour divided by its cylinders where missing
 * @param staleReadingDays a truck whose last reading is older than that is reported, 1 to 3,650
 * @param figures the planning figures that no record tells
 */
@RecordBuilder
@RecordBuilder.Options(addClassRetainedGenerated = true)
public record Policy(
        int weeks,
        int usageWindowDays,
        double inspectionHours,
        double bayHoursPerDay,
        double unseenFailureLimit,
        OrderRules orders,
        CoolantRules coolant,
        VisitRules visits,
        SafetyLimit safety,
        DefectDefaults defects,
        Map<String, Double> accessShareHours,
        int staleReadingDays,
        PlanningFigures figures)
        implements PolicyBuilder.With {
    /** A truck not read for longer is reported: planner default. */
    public static final int USUAL_STALE_DAYS = 30;

    public Policy {
        Require.within("weeks", weeks, 1, 104);
        Require.within("usage_window_days", usageWindowDays, 14, 3_650);
        Require.within("inspection_hours", inspectionHours, 0, 24);
        Require.within("bay_hours_per_day", bayHoursPerDay, 1, 24);
        Require.within("unseen_failure_limit", unseenFailureLimit, 0.0001, 1);
        Require.within("stale_reading_days", staleReadingDays, 1, 3_650);
        accessShareHours = Collections.unmodifiableMap(new TreeMap<>(accessShareHours));
        accessShareHours.values().forEach(hours -> Require.notNegative("set_up_share_hours", hours));
    }

    /** With the usual planning figures. */
    public Policy(
            int weeks,
            int usageWindowDays,
            double inspectionHours,
            double bayHoursPerDay,
            double unseenFailureLimit,
            OrderRules orders,
            CoolantRules coolant,
            VisitRules visits,
            SafetyLimit safety,
            DefectDefaults defects,
            Map<String, Double> accessShareHours,
            int staleReadingDays) {
        this(
                weeks,
                usageWindowDays,
                inspectionHours,
                bayHoursPerDay,
                unseenFailureLimit,
                orders,
                coolant,
                visits,
                safety,
                defects,
                accessShareHours,
                staleReadingDays,
                PlanningFigures.STANDARD);
    }

    /** With the usual patience for readings. */
    public Policy(
            int weeks,
            int usageWindowDays,
            double inspectionHours,
            double bayHoursPerDay,
            double unseenFailureLimit,
            OrderRules orders,
            CoolantRules coolant,
            VisitRules visits,
            SafetyLimit safety,
            DefectDefaults defects,
            Map<String, Double> accessShareHours) {
        this(
                weeks,
                usageWindowDays,
                inspectionHours,
                bayHoursPerDay,
                unseenFailureLimit,
                orders,
                coolant,
                visits,
                safety,
                defects,
                accessShareHours,
                USUAL_STALE_DAYS);
    }

    /** With the usual haste for leaks, usual defects and the first run's access shares. */
    public Policy(
            int weeks,
            int usageWindowDays,
            double inspectionHours,
            double bayHoursPerDay,
            double unseenFailureLimit,
            OrderRules orders,
            CoolantRules coolant,
            VisitRules visits) {
        this(
                weeks,
                usageWindowDays,
                inspectionHours,
                bayHoursPerDay,
                unseenFailureLimit,
                orders,
                coolant,
                visits,
                SafetyLimit.standard(),
                DefectDefaults.STANDARD,
                Map.of());
    }

    /** 26 weeks, a year of readings, half an hour a test, one eight-hour shift a truck, standard buying and coolant. */
    public static Policy standard() {
        return new Policy(
                26,
                365,
                0.5,
                8,
                UnseenLimit.OFF,
                OrderRules.standard(),
                CoolantRules.standard(),
                VisitRules.standard());
    }

    /** {@link #accessShareHours} under its earlier name. */
    public Map<String, Double> setUpShareHours() {
        return accessShareHours;
    }

    /** {@link #withAccessShareHours} under its earlier name. */
    public Policy withSetUpShareHours(Map<String, Double> other) {
        return withAccessShareHours(other);
    }
}
