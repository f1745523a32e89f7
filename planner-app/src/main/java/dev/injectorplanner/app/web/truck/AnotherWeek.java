package dev.injectorplanner.app.web.truck;

import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.option.VisitReason;
import dev.injectorplanner.core.option.VisitReason.OtherWeek;
import dev.injectorplanner.core.plan.TruckReason;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.schedule.WeekLoad;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The same work in the weeks around the one planned: what it costs, what it risks, and what is in the way. */
final class AnotherWeek {
    /** A bar of a chance ends here. */
    private static final double WIDEST = 0.4;

    private static final int BAR = 56;

    private final DepotPlan plan;
    private final String truck;
    private final double bill;

    AnotherWeek(DepotPlan plan, String truck, double bill) {
        this.plan = plan;
        this.truck = truck;
        this.bill = bill;
    }

    /**
     * One week.
     *
     * @param iso for addresses
     * @param hours of the depot, booked of available
     * @param dearer expected money above the week planned
     * @param weighs lateness past limits, no money; empty for none
     * @param filled part of the risk's bar
     * @param inTheWay what keeps the truck out, or that nothing does
     * @param free whether nothing does
     */
    public record Row(
            String iso,
            String week,
            String hours,
            String bill,
            String deferring,
            String moving,
            String dearer,
            String weighs,
            String risk,
            double filled,
            String parts,
            String inTheWay,
            boolean free,
            boolean planned) {}

    /** By week; empty where no visit is planned, or where its plan was kept before weeks were looked at. */
    List<Row> rows() {
        Optional<Visit> visit = plan.findVisit(truck);
        VisitReason reason = plan.findReason(truck).map(TruckReason::reason).orElse(null);
        if (visit.isEmpty() || reason == null || reason.otherWeeks().isEmpty()) {
            return List.of();
        }
        IsoWeek first = plan.plan().firstWeek();
        int own = first.weeksUntil(visit.get().week());
        List<OtherWeek> weeks = new ArrayList<>(reason.otherWeeks());
        weeks.add(new OtherWeek(own, 0, 0, 0, true, null));
        weeks.sort(Comparator.comparingInt(OtherWeek::week));
        return weeks.stream()
                .map(each -> row(each, first.plus(each.week()), each.week() == own))
                .toList();
    }

    private Row row(OtherWeek other, IsoWeek week, boolean planned) {
        double money = other.deferring() + other.moving();
        double risk = riskUntil(week);
        String limit = other.limit();
        return new Row(
                week.toString(),
                DisplayFormat.week(week) + ", " + DisplayFormat.day(week.monday()),
                plan.findLoad(week).map(AnotherWeek::hours).orElse(""),
                DisplayFormat.money(bill),
                planned ? "" : DisplayFormat.more(other.deferring()),
                planned ? "" : DisplayFormat.more(other.moving()),
                planned ? "planned" : DisplayFormat.more(money),
                Math.abs(other.weights()) < 0.5 ? "" : DisplayFormat.more(other.weights()),
                DisplayFormat.chance(risk),
                Math.rint(Math.min(1, risk / WIDEST) * BAR * 10) / 10,
                other.partsInTime() ? "yes" : "no",
                limit == null ? "nothing" : inWords(limit),
                limit == null,
                planned);
    }

    private String inWords(String limit) {
        return plan.units().sentence(limit);
    }

    private static String hours(WeekLoad load) {
        return DisplayFormat.tenth(load.labourHours()) + " of " + DisplayFormat.tenth(load.availableHours());
    }

    /** Chance that an injector of the truck fails on the road before the week begins; in this week, before it ends. */
    private double riskUntil(IsoWeek week) {
        LocalDate day = week.monday().isAfter(plan.today()) ? week.monday() : plan.today();
        double days = Math.max(0, ChronoUnit.DAYS.between(plan.today(), day));
        double alive = 1;
        for (InjectorRisk risk : plan.risksOf(truck)) {
            alive *= 1 - risk.chanceWithin(days);
        }
        return 1 - alive;
    }

    /** How many of them are open: the one sentence above the table. */
    static String answer(List<Row> rows, Visit visit) {
        if (rows.isEmpty()) {
            return "";
        }
        long free = rows.stream().filter(row -> row.free() && !row.planned()).count();
        return "The same work of " + DisplayFormat.tenth(visit.labourHours()) + " h in another week: "
                + (free == 0 ? "none of these is open." : Figures.count(free, "week is open.", "weeks are open."));
    }
}
