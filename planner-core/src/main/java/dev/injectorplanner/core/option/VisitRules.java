package dev.injectorplanner.core.option;

import dev.injectorplanner.core.check.Require;
import io.soabase.recordbuilder.core.RecordBuilder;

/**
 * How visits are weighed, in the site's currency.
 *
 * @param bayPerVisit use of a bay, moving the truck in and out, paperwork
 * @param coolantPerLitre a litre of coolant drained: what is lost, and its handling
 * @param downtimePerDay a day that a truck without a duty group stands
 * @param latePerDay a day that a cylinder is past a limit of the rules
 * @param taskLatePerDay a day that a scheduled service or an inspection is late
 * @param warrantyTestWorth a test made in time before a warranty ends
 * @param rescheduling cost moving a visit that was confirmed
 * @param frozenWeeks confirmed visits of this many first weeks stay where they are
 * @param keptSets the most sets of cylinders kept a truck and week
 */
@RecordBuilder
@RecordBuilder.Options(addClassRetainedGenerated = true)
public record VisitRules(
        double bayPerVisit,
        double coolantPerLitre,
        double downtimePerDay,
        double latePerDay,
        double taskLatePerDay,
        double warrantyTestWorth,
        double reschedulingCost,
        int frozenWeeks,
        int keptSets)
        implements VisitRulesBuilder.With {
    public VisitRules {
        Require.notNegative("bay_per_visit", bayPerVisit);
        Require.notNegative("coolant_per_litre", coolantPerLitre);
        Require.notNegative("downtime_per_day", downtimePerDay);
        Require.notNegative("late_per_day", latePerDay);
        Require.notNegative("task_late_per_day", taskLatePerDay);
        Require.notNegative("warranty_test_worth", warrantyTestWorth);
        Require.notNegative("rescheduling_cost", reschedulingCost);
        Require.within("frozen_weeks", frozenWeeks, 0, 26);
        Require.within("kept_sets", keptSets, 1, 50);
    }

    /** Planner defaults, until the site gives its own. */
    public static VisitRules standard() {
        return new VisitRules(60, 3, 250, 12, 6, 250, 80, 1, 3);
    }
}
