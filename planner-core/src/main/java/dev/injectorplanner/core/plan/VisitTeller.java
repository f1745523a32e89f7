package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.finding.Action;
import dev.injectorplanner.core.finding.DueFinding;
import dev.injectorplanner.core.finding.FindingKind;
import dev.injectorplanner.core.option.PricedVisit;
import dev.injectorplanner.core.option.Rider;
import dev.injectorplanner.core.option.VisitReason;
import dev.injectorplanner.core.risk.FleetRisk;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.visit.Visit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Tells a truck's chosen way as a visit: its work, what it answers, and why. */
final class VisitTeller {
    private final FleetRisk risk;
    private final IsoWeek firstWeek;
    private final Moves moves;

    VisitTeller(FleetRisk risk, IsoWeek firstWeek, Moves moves) {
        this.risk = risk;
        this.moves = moves;
        this.firstWeek = firstWeek;
    }

    Visit visit(TruckCase truck, PricedVisit chosen) {
        List<String> tasks = chosen.riders().stream()
                .map(Rider::name)
                .filter(name -> !name.equals(Rider.INSPECTION))
                .toList();
        boolean inspection = tasks.size() < chosen.riders().size();
        VisitReason reason = moves.reason(truck, chosen);
        List<DueFinding> findings = new ArrayList<>(answered(truck, chosen, tasks, inspection));
        findings.addAll(worthwhile(truck, chosen, reason, findings));
        findings.sort(Comparator.comparing((DueFinding finding) -> finding.kind() != FindingKind.SAFETY)
                .thenComparing(finding -> finding.action() != Action.REPLACE)); // what is opened for, first
        return new Visit(
                truck.truck().truck(),
                truck.truck().depot(),
                truck.truck().family(),
                firstWeek.plus(chosen.week()),
                chosen.cylinders(),
                truck.sets().steps(chosen.set()),
                tasks,
                inspection,
                Figures.tidy(chosen.labourHours()),
                Figures.tidy(truck.sets().drainedLitres(chosen.set())),
                findings,
                why(findings, tasks, chosen) + " " + reason.words());
    }

    /** Findings of the truck that the visit answers, in their order. */
    static List<DueFinding> answered(TruckCase truck, PricedVisit chosen, List<String> tasks, boolean inspection) {
        return truck.findings().stream()
                .filter(finding -> switch (finding.action()) {
                    case REPLACE ->
                        finding.cylinder() != null && chosen.cylinders().contains(finding.cylinder());
                    case INSPECT -> inspection;
                    case SERVICE -> tasks.contains(finding.task());
                })
                .toList();
    }

    /** Cylinders that no rule asks for are done since leaving them would cost more. */
    private List<DueFinding> worthwhile(
            TruckCase truck, PricedVisit chosen, VisitReason reason, List<DueFinding> answered) {
        List<DueFinding> rows = new ArrayList<>();
        for (VisitReason.Cylinder done : reason.done()) {
            boolean asked = answered.stream()
                    .anyMatch(finding -> finding.cylinder() != null && finding.cylinder() == done.cylinder());
            if (!asked) {
                rows.add(new DueFinding(
                        truck.truck().truck(),
                        truck.truck().depot(),
                        done.cylinder(),
                        FindingKind.COST,
                        null,
                        Action.REPLACE,
                        evidence(truck.truck().truck(), done.cylinder()),
                        "leaving it out of this visit costs " + Figures.whole(done.otherWayCosts()) + " more",
                        "deferral cost",
                        firstWeek.plus(chosen.week()).sunday()));
            }
        }
        return rows;
    }

    private String evidence(String truck, int cylinder) {
        Optional<InjectorRisk> known = risk.find(truck, cylinder);
        return known.map(injector ->
                        Figures.whole(injector.age()) + " " + injector.clock().unit() + " since fitting, "
                                + Figures.whole(100 * injector.chance12()) + " % chance of failing within 12 weeks")
                .orElse("age not known");
    }

    private static String why(List<DueFinding> findings, List<String> tasks, PricedVisit chosen) {
        if (findings.isEmpty()) {
            return "Pinned to this week.";
        }
        DueFinding first = findings.get(0);
        String subject = first.cylinder() != null
                ? "Cylinder " + first.cylinder()
                : first.task() != null ? first.task() : "The truck";
        int others = findings.size() - 1;
        String joins = others == 0 ? "" : " " + Figures.count(others, "more finding joins.", "more findings join.");
        String rides = tasks.isEmpty() || chosen.cylinders().isEmpty()
                ? ""
                : tasks.stream().collect(Collectors.joining(", ", " Rides along: ", "."));
        return subject + ": " + first.evidence() + "; " + first.limit() + " (" + first.limitSource() + "), due "
                + first.by() + "." + joins + rides;
    }
}
