package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.due.DueRule;
import dev.injectorplanner.core.due.RuleBook;
import dev.injectorplanner.core.due.SafetyLimit;
import dev.injectorplanner.core.due.TestRules;
import dev.injectorplanner.core.due.UnseenLimit;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.option.VisitRules;
import dev.injectorplanner.core.parts.PartNeed;
import dev.injectorplanner.core.parts.PartsPlan;
import dev.injectorplanner.core.risk.FamilyInspection;
import dev.injectorplanner.core.risk.FleetRisk;
import dev.injectorplanner.core.schedule.days.ShiftBook;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.FleetUsage;
import dev.injectorplanner.core.usage.MeterFlag;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Everything a plan takes as given, with whose assumption it is. */
final class Assumptions {
    private static final String SITE = "site";
    private static final String DEFAULT = "planner default";
    private static final String PRACTICE = "common practice";
    private static final int SHOWN = 5;

    private final List<Assumption> rows = new ArrayList<>();

    List<Assumption> list() {
        return rows;
    }

    void add(String topic, String text, String source) {
        rows.add(new Assumption(topic, text, source));
    }

    /** Whose the figures of a line are, by whether each is the usual one. */
    static String whose(boolean... usual) {
        boolean any = false;
        boolean all = true;
        for (boolean each : usual) {
            any |= each;
            all &= each;
        }
        return all ? DEFAULT : any ? SITE + " and " + DEFAULT : SITE;
    }

    Assumptions policy(Policy policy) {
        Policy usual = Policy.standard();
        add(
                "horizon",
                Figures.count(policy.weeks(), "week", "weeks") + " from the week of today",
                whose(policy.weeks() == usual.weeks()));
        add(
                "usage",
                "km and hours a week come from the median slope of the meter readings of the last "
                        + policy.usageWindowDays() + " days, parked time included (Theil 1950, Sen 1968)",
                whose(policy.usageWindowDays() == usual.usageWindowDays()));
        add(
                "bay",
                "a truck in a bay gets " + Figures.given(policy.bayHoursPerDay()) + " h of work a day",
                whose(policy.bayHoursPerDay() == usual.bayHoursPerDay()));
        add(
                "inspection",
                "testing a truck's injectors takes " + Figures.given(policy.inspectionHours()) + " h",
                whose(policy.inspectionHours() == usual.inspectionHours()));
        return this;
    }

    Assumptions rules(RuleBook book, FleetIndex index) {
        for (DueRule rule : book.listDefaultsInUse()) {
            String window = rule.windowDays() == null ? "" : " within " + rule.windowDays() + " days";
            add(
                    "rule " + rule.kind().name().toLowerCase(Locale.ROOT),
                    "limit " + Figures.tenths(rule.limit()) + " " + unit(rule.kind()) + window
                            + ", until the site sets its own; the engine maker's limits come first",
                    PRACTICE);
        }
        if (!index.fleet().intervals().isEmpty()) {
            add(
                    "scheduled services",
                    "due an interval after the last one on record; where none is on record, taken as done at each multiple of the"
                            + " interval so far, by meter or months in service",
                    DEFAULT);
        }
        long apart = index.fleet().cylinderTests().stream()
                .filter(test -> test.test() != TestKind.CONTRIBUTION && !TestRules.comparable(test))
                .count();
        if (apart > 0) {
            add(
                    "tests",
                    Figures.count(apart, "test is", "tests are") + " in a unit other than " + TestRules.BALANCE_UNIT
                            + " or " + TestRules.RETURN_FLOW_UNIT + " and not checked against a limit",
                    DEFAULT);
        }
        return this;
    }

    private static String unit(RuleKind kind) {
        return switch (kind) {
            case AGE_MONTHS -> "months since fitting";
            case DISTANCE_KM -> "km since fitting";
            case ENGINE_HOURS -> "engine hours since fitting";
            case FAULTS -> "faults of one cylinder";
            case BALANCE -> TestRules.BALANCE_UNIT + " either way";
            case RETURN_FLOW -> TestRules.RETURN_FLOW_UNIT;
            case RISK -> "%";
            case WARRANTY -> "days before a warranty ends in which to test";
            case SAFETY -> "days from the first report to the bay";
        };
    }

    /** What the records lack; questions about failures stand with the lives. */
    Assumptions records(RecordsState records) {
        DepotRecords.sentences(records.depots()).forEach(words -> add("records", words, DEFAULT));
        return this;
    }

    Assumptions usage(FleetUsage usage) {
        List<MeterFlag> flags = usage.flags();
        if (!flags.isEmpty()) {
            String first = flags.stream().limit(SHOWN).map(MeterFlag::words).collect(Collectors.joining("; "));
            String more = flags.size() > SHOWN ? "; and " + (flags.size() - SHOWN) + " more" : "";
            add(
                    "meter readings",
                    Figures.count(flags.size(), "reading is", "readings are") + " left out of the usage: " + first
                            + more,
                    DEFAULT);
        }
        List<String> above = usage.disbelievedOdometers();
        if (!above.isEmpty()) {
            add(
                    "odometers at fitting",
                    "above today's reading and not used; the readings around that day are used instead: "
                            + firstOf(above),
                    DEFAULT);
        }
        List<String> unknown = usage.trucksWithoutUsage();
        if (!unknown.isEmpty()) {
            add(
                    "usage not known",
                    Figures.count(unknown.size(), "truck has", "trucks have")
                            + " fewer than two good readings, so the usage is unknown: " + firstOf(unknown),
                    DEFAULT);
        }
        return this;
    }

    private static String firstOf(List<String> names) {
        String first = names.stream().limit(SHOWN).collect(Collectors.joining(", "));
        return names.size() > SHOWN ? first + " and " + (names.size() - SHOWN) + " more" : first;
    }

    Assumptions risk(FleetRisk risk, List<FamilyInspection> inspections, UnseenLimit unseen) {
        new RiskAssumptions(this).list(risk, inspections, unseen);
        return this;
    }

    /** How soon a leak brings a truck in. */
    Assumptions safety(SafetyLimit limit) {
        add(
                "safety: bring in now",
                "a truck with a fuel leak or a fuel pressure fault (generic codes P0087, P0088, P008A, P008B, P0093,"
                        + " P0094; SPN 94 and 157 at severe levels, 1239, 1240) comes in within "
                        + Figures.count(limit.days(), "day", "days")
                        + " of the first report, on the first open day with a free bay, for a diagnosis of "
                        + Figures.given(limit.diagnosisHours())
                        + " h without parts, before every other visit; it stays open until a repair of the fuel system or"
                        + " \"no fault found\" is recorded with a name, or an injector is fitted on a later day; the engine maker's manual and local codes may ask to stop it at"
                        + " once; a rule of the kind safety goes before it",
                limit.source().equals(DueRule.DEFAULT) ? PRACTICE : SITE);
        return this;
    }

    Assumptions visits(VisitRules rules, ShiftBook shifts, FleetIndex index) {
        VisitRules usual = VisitRules.standard();
        add(
                "visits",
                "at most one visit per truck in the plan, and its diagnosis before it; cylinders and week are chosen for the lowest sum"
                        + " of deferral costs, shared access and downtime (Wildeman, Dekker and Smit 1997); in weeks"
                        + " before the parts can arrive, one express shipment is added",
                DEFAULT);
        add(
                "shared access labour",
                "a bay costs " + Figures.given(rules.bayPerVisit()) + ", coolant "
                        + Figures.given(rules.coolantPerLitre()) + " a litre, a day off the road "
                        + Figures.given(rules.downtimePerDay()) + " unless the duty group sets its own cost",
                whose(
                        rules.bayPerVisit() == usual.bayPerVisit(),
                        rules.coolantPerLitre() == usual.coolantPerLitre(),
                        rules.downtimePerDay() == usual.downtimePerDay()));
        add(
                "confirmed visits",
                "rescheduling one costs " + Figures.given(rules.reschedulingCost()) + "; in the first "
                        + Figures.count(rules.frozenWeeks(), "week", "weeks") + " they stay where they are",
                whose(
                        rules.reschedulingCost() == usual.reschedulingCost(),
                        rules.frozenWeeks() == usual.frozenWeeks()));
        shifts(shifts, index);
        add(
                "being late",
                "each day past a site limit costs " + Figures.given(rules.latePerDay())
                        + ", each day a task or test is late " + Figures.given(rules.taskLatePerDay())
                        + "; a test done before a warranty ends is worth " + Figures.given(rules.warrantyTestWorth()),
                whose(
                        rules.latePerDay() == usual.latePerDay(),
                        rules.taskLatePerDay() == usual.taskLatePerDay(),
                        rules.warrantyTestWorth() == usual.warrantyTestWorth()));
        return this;
    }

    private void shifts(ShiftBook shifts, FleetIndex index) {
        add(
                "days",
                "visits in the first two weeks get a bay, day and hour; starts on the quarter hour, one technician per bay, no"
                        + " piece of work under an hour; overtime only where the week's plain hours are used up",
                DEFAULT);
        if (index.fleet().depots().stream().anyMatch(depot -> !shifts.isSites(depot.depot()))) {
            add(
                    "shifts",
                    "a depot without rows in the table shifts starts at " + ShiftBook.OPENS
                            + ", with half an hour's break at noon",
                    DEFAULT);
        }
    }

    Assumptions supply(FleetIndex index, Policy policy, PartsPlan parts, LocalDate today) {
        add(
                "order-by day",
                "counted back from the Monday of the visits by the longest lead time, to be on the safe side",
                DEFAULT);
        List<String> past = index.fleet().purchaseLines().stream()
                .filter(line -> line.overdue(today))
                .map(line -> line.order() + " " + line.part())
                .toList();
        if (!past.isEmpty()) {
            add("overdue purchase lines", "not counted until a new day is confirmed: " + firstOf(past), DEFAULT);
        }
        List<String> unknown = parts.needs().stream()
                .map(PartNeed::part)
                .distinct()
                .filter(part -> index.findPart(part).isEmpty())
                .sorted()
                .toList();
        if (!unknown.isEmpty()) {
            add("parts missing from the parts table", "no lead time known, order today: " + firstOf(unknown), DEFAULT);
        }
        rows.addAll(SupplyAssumptions.of(index, policy.orders(), policy.coolant(), parts));
        return this;
    }
}
