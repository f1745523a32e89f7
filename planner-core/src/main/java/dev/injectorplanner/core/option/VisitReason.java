package dev.injectorplanner.core.option;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.units.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Why a visit is what it is: why these cylinders, why this week, what was left out. Every figure is a cost against the
 * visit as planned, in the site's currency: above zero the other way is dearer.
 *
 * @param saves what the visit saves against none
 * @param sharedCost cost of its shared access: labour, coolant, bay
 * @param downtime cost of standing
 * @param done cylinders it does, each with what the visit would cost more without it
 * @param left cylinders it leaves, each with what the visit would cost more with it
 * @param weekEarlier what the same work costs more a week earlier, or null in the first week
 * @param weekLater what it costs more a week later, or null in the last week
 * @param earlierLimit the limit that prevents a week earlier, in words, or null
 * @param laterLimit the limit that prevents a week later, in words, or null
 * @param otherWeeks the same work in the weeks around it, by week; empty where only the truck was looked at
 */
public record VisitReason(
        double saves,
        double sharedCost,
        double downtime,
        List<Cylinder> done,
        List<Cylinder> left,
        @Nullable Double weekEarlier,
        @Nullable Double weekLater,
        @Nullable String earlierLimit,
        @Nullable String laterLimit,
        List<OtherWeek> otherWeeks) {
    public VisitReason { // a plan kept earlier has no other weeks
        done = List.copyOf(done);
        left = List.copyOf(left);
        otherWeeks = otherWeeks == null ? List.of() : List.copyOf(otherWeeks);
    }

    /** Without a look at the weeks around it. */
    public VisitReason(
            double saves,
            double sharedCost,
            double downtime,
            List<Cylinder> done,
            List<Cylinder> left,
            @Nullable Double weekEarlier,
            @Nullable Double weekLater,
            @Nullable String earlierLimit,
            @Nullable String laterLimit) {
        this(saves, sharedCost, downtime, done, left, weekEarlier, weekLater, earlierLimit, laterLimit, List.of());
    }

    /**
     * A cylinder and the other way with it.
     *
     * @param cylinder the cylinder
     * @param otherWayCosts what the visit costs more with the cylinder the other way
     */
    public record Cylinder(int cylinder, double otherWayCosts) {}

    /**
     * The visit in another week, the rest of the schedule where it is.
     *
     * @param costs what it costs more
     * @param limit the limit that prevents it, in words, or null
     */
    public record Move(double costs, @Nullable String limit) {}

    /**
     * The same work in another week, the rest of the schedule where it is. Costs are differences from the week planned, in the
     * site's currency; what is neither deferring nor a weight is standing, overtime, express and rescheduling.
     *
     * @param week weeks from the plan's first, >= 0
     * @param costs what it costs more in all
     * @param deferring of that, expected failures, wear and services until then; below zero it saves
     * @param weights of that, lateness past limits, no money
     * @param partsInTime whether stock, orders or an express shipment can bring its parts in time; true where the truck cannot come
     *     anyway
     * @param limit the limit that prevents it, in words, or null
     */
    public record OtherWeek(
            int week,
            double costs,
            double deferring,
            double weights,
            boolean partsInTime,
            @Nullable String limit) {
        private static final double MOST = 1e12;

        public OtherWeek {
            Require.within("week", week, 0, 520);
            Require.within("costs", costs, -MOST, MOST);
            Require.within("deferring", deferring, -MOST, MOST);
            Require.within("weights", weights, -MOST, MOST);
        }

        /** Standing, overtime, express and rescheduling. */
        public double moving() {
            return costs - deferring - weights;
        }
    }

    /** The same with the weeks around it. */
    public VisitReason withOtherWeeks(List<OtherWeek> weeks) {
        return new VisitReason(
                saves, sharedCost, downtime, done, left, weekEarlier, weekLater, earlierLimit, laterLimit, weeks);
    }

    /** The reason of a visit that a pricer priced, by the truck's own figures: depot and duty group are not looked at. */
    public static VisitReason of(OptionPricer pricer, PricedVisit visit) {
        int week = visit.week();
        return of(
                pricer,
                visit,
                week == 0 ? null : moved(pricer, visit, week - 1),
                week == pricer.weeks() - 1 ? null : moved(pricer, visit, week + 1));
    }

    /**
     * The same with what is known of the weeks beside it.
     *
     * @param earlier a week earlier, or null in the first week
     * @param later a week later, or null in the last week
     */
    public static VisitReason of(OptionPricer pricer, PricedVisit visit, @Nullable Move earlier, @Nullable Move later) {
        List<Cylinder> done = new ArrayList<>();
        List<Cylinder> left = new ArrayList<>();
        for (int cylinder : pricer.pricedCylinders()) {
            int bit = CylinderSets.maskOf(List.of(cylinder));
            double other = pricer.price(visit.week(), visit.set() ^ bit, visit.rideAlongs())
                            .cost()
                    - visit.cost();
            ((visit.set() & bit) != 0 ? done : left).add(new Cylinder(cylinder, other));
        }
        return new VisitReason(
                -visit.cost(),
                visit.sharedCost(),
                visit.downtime(),
                done,
                left,
                earlier == null ? null : Double.valueOf(earlier.costs()),
                later == null ? null : Double.valueOf(later.costs()),
                earlier == null ? null : earlier.limit(),
                later == null ? null : later.limit());
    }

    private static Move moved(OptionPricer pricer, PricedVisit visit, int week) {
        return new Move(pricer.price(week, visit.set(), visit.rideAlongs()).cost() - visit.cost(), null);
    }

    /** In words, two or three sentences. */
    public String words() {
        StringBuilder words = new StringBuilder("Saves ").append(money(saves)).append(" compared with no visit.");
        if (done.size() > 1) {
            words.append(" Shared access ")
                    .append(money(sharedCost))
                    .append(" is shared by ")
                    .append(done.size())
                    .append('.');
        }
        List<String> others = left.stream()
                .filter(each -> each.otherWayCosts() > 0)
                .map(each -> each.cylinder() + " (" + money(each.otherWayCosts()) + ")")
                .toList();
        if (!done.isEmpty() && !others.isEmpty()) {
            words.append(" Adding another would cost more: cylinder ")
                    .append(String.join(", ", others))
                    .append('.');
        }
        return words.append(weeks()).toString();
    }

    private String weeks() {
        List<String> moves = new ArrayList<>();
        if (weekEarlier != null) {
            moves.add("a week earlier " + told(weekEarlier, earlierLimit));
        }
        if (weekLater != null) {
            moves.add("a week later " + told(weekLater, laterLimit));
        }
        boolean limited = earlierLimit != null || laterLimit != null;
        return moves.isEmpty()
                ? ""
                : " " + moves.stream().collect(Collectors.joining(limited ? "; " : ", ", "Moving it: ", "."));
    }

    private static String told(double cost, @Nullable String limit) {
        if (limit == null) {
            return cost < 0 ? "saves " + money(-cost) : "costs " + money(cost);
        }
        return (cost < 0 ? "would save " + money(-cost) : "would cost " + money(cost)) + " but is not possible: "
                + limit;
    }

    private static String money(double amount) {
        return Figures.whole(Math.rint(amount));
    }
}
