package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.condition.SignEffect;
import dev.injectorplanner.core.coolant.CoolantNeed;
import dev.injectorplanner.core.coolant.CoolantPlan;
import dev.injectorplanner.core.cores.CoreOwed;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.history.LifeChange;
import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.parts.PartNeed;
import dev.injectorplanner.core.parts.PartsPlan;
import dev.injectorplanner.core.risk.ExpectedFailures;
import dev.injectorplanner.core.risk.FailureBand;
import dev.injectorplanner.core.risk.FamilyInspection;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.schedule.WeekLoad;
import dev.injectorplanner.core.usage.InjectorAge;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.core.warranty.WarrantyClaim;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/**
 * What is to be done, when, and with what.
 *
 * @param today the day it was made for
 * @param firstWeek the ISO week that holds {@code today}
 * @param weeks weeks in the horizon
 * @param cost what it costs against doing nothing, and how far from the best it may be
 * @param injectors every fitted injector with its age, by truck and cylinder
 * @param risks chance of failing of every fitted injector whose age and usage are known, by truck and cylinder
 * @param lives life models in use, by part and origin
 * @param signEffects what signs do to the hazard, one a sign
 * @param inspections cheapest distance between tests, one a family
 * @param expectedFailures failures to expect if nothing is replaced, by depot, part and week
 * @param dueItems what is due within the horizon, most pressing first
 * @param visits by depot, week and truck
 * @param reasons why each truck comes in when it does, or not at all, by truck
 * @param unplanned what is due and no visit of the plan answers, by truck and reason
 * @param days bay, day and hour of the visits of the first two weeks, by depot
 * @param loads hours of every depot and week
 * @param parts what to buy: needs, short list, unplanned need, order list
 * @param cores old units owed back, the most urgent first
 * @param claims warranty claims still to be made
 * @param coolant coolant by visit, and by depot and week
 * @param assumptions what the plan takes as given
 * @param safety trucks with an open safety fault: the first thing to tell
 * @param lifeChanges injectors that fail sooner than those fitted before them
 * @param failureBands failures to expect within 4, 12 and 26 weeks if nothing is replaced, with bands, by depot and part
 * @param records what the records behind the plan lack, and what somebody has to answer
 */
public record Plan(
        LocalDate today,
        IsoWeek firstWeek,
        int weeks,
        PlanCost cost,
        List<InjectorAge> injectors,
        List<InjectorRisk> risks,
        List<PartLife> lives,
        List<SignEffect> signEffects,
        List<FamilyInspection> inspections,
        List<ExpectedFailures> expectedFailures,
        List<DueItem> dueItems,
        List<Visit> visits,
        List<TruckReason> reasons,
        List<Unplanned> unplanned,
        List<DepotDays> days,
        List<WeekLoad> loads,
        PartsPlan parts,
        List<CoreOwed> cores,
        List<WarrantyClaim> claims,
        CoolantPlan coolant,
        List<Assumption> assumptions,
        List<SafetyCase> safety,
        List<LifeChange> lifeChanges,
        List<FailureBand> failureBands,
        RecordsState records) {
    public Plan { // lists that a plan kept earlier lacks are empty
        safety = safety == null ? List.of() : List.copyOf(safety);
        lifeChanges = lifeChanges == null ? List.of() : List.copyOf(lifeChanges);
        failureBands = failureBands == null ? List.of() : List.copyOf(failureBands);
        injectors = List.copyOf(injectors);
        risks = List.copyOf(risks);
        lives = List.copyOf(lives);
        signEffects = List.copyOf(signEffects);
        inspections = List.copyOf(inspections);
        expectedFailures = List.copyOf(expectedFailures);
        dueItems = List.copyOf(dueItems);
        visits = List.copyOf(visits);
        reasons = List.copyOf(reasons);
        unplanned = List.copyOf(unplanned);
        days = List.copyOf(days);
        loads = List.copyOf(loads);
        cores = List.copyOf(cores);
        claims = List.copyOf(claims);
        assumptions = List.copyOf(assumptions);
        records = Objects.requireNonNullElse(records, RecordsState.WHOLE); // absent from plans that were kept before
    }

    /** Parts by depot, week and part. */
    public List<PartNeed> partNeeds() {
        return parts.needs();
    }

    /**
     * Whether a visit is its truck's main one, of which pins, confirmations and moves speak: neither a diagnosis nor a second
     * visit beside it.
     */
    public boolean isMain(Visit visit) {
        return !visit.diagnosis()
                && reasons.stream()
                        .noneMatch(reason -> reason.truck().equals(visit.truck())
                                && reason.week() != null
                                && !reason.week().equals(visit.week()));
    }

    /** {@link #dueItems} under its earlier name. */
    public List<DueItem> findings() {
        return dueItems;
    }

    /** Coolant by visit. */
    public List<CoolantNeed> coolantNeeds() {
        return coolant.needs();
    }
}
