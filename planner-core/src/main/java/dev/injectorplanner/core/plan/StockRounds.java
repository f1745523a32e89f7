package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.allocation.KitNeed;
import dev.injectorplanner.core.allocation.SharedStock;
import dev.injectorplanner.core.option.PricedVisit;
import dev.injectorplanner.core.parts.SharedKits;
import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.schedule.ScheduleRequest;
import dev.injectorplanner.core.schedule.VisitOption;
import dev.injectorplanner.core.schedule.VisitScheduler;
import dev.injectorplanner.core.schedule.exact.CostOf;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Shares the stock among the visits of a schedule, in rounds. The first schedule is made as if each visit had all stock for
 * itself: no schedule with shared stock costs less, so its bound stays the bound. Then, round by round: pieces are given
 * to its visits; a visit whose kit cannot be complete moves to its best other week, or is left out; every other visit is
 * priced with the pieces that are left; and the depots in which something became dearer are searched again from there.
 * Each round ends in a plan that can be carried out, the cheapest is kept, and there are at most {@link #ROUNDS}.
 */
final class StockRounds {
    /** Searches after the first one. */
    static final int ROUNDS = 3;

    /** Turns in which visits move; where kits still lack pieces after them, visits are left out, which ends it. */
    private static final int MOVES = 4;

    /** Sharing that costs less than this share of the plan is not searched again. */
    private static final double ENOUGH = 1e-4;

    private static final double ROUNDING = 1e-6;

    private final FleetPricing pricing;
    private final List<PricedTruck> trucks;
    private final VisitScheduler scheduler;

    /** A draft whose visits have their kits. */
    record Shared(Draft draft, SharedStock stock, Set<String> movedTrucks) {
        boolean moved() {
            return !movedTrucks.isEmpty();
        }
    }

    StockRounds(FleetPricing pricing, List<PricedTruck> trucks, VisitScheduler scheduler) {
        this.pricing = pricing;
        this.trucks = trucks;
        this.scheduler = scheduler;
    }

    /** @param alone a schedule priced as if each visit had all stock for itself */
    Shared settle(Draft alone) {
        Shared best = null;
        Draft at = alone;
        for (int round = 0; ; round++) {
            Shared shared = share(alone, at);
            best = best == null || isBetter(shared.draft(), best.draft()) ? shared : best;
            double dearer = shared.draft().schedule().cost() - at.schedule().cost();
            boolean enough = !shared.moved()
                    && dearer
                            <= Math.max(
                                    ROUNDING, ENOUGH * Math.abs(at.schedule().cost()));
            Draft next = enough || round == ROUNDS ? null : again(at, shared.draft());
            if (next == null) {
                return best;
            }
            at = next;
        }
    }

    private static boolean isBetter(Draft one, Draft other) {
        int broken = one.schedule().brokenWishes().size();
        int othersBroken = other.schedule().brokenWishes().size();
        return broken != othersBroken
                ? broken < othersBroken
                : one.schedule().cost() < other.schedule().cost() - ROUNDING;
    }

    /** Gives pieces to a schedule's visits and prices all options with what is left. */
    Shared share(Draft alone, Draft at) {
        Map<String, PricedVisit> chosen = new LinkedHashMap<>();
        at.schedule()
                .choices()
                .forEach(choice ->
                        chosen.put(choice.truck(), at.choicesOf(choice.truck()).visitOf(choice.option())));
        SharedStock stock = pricing.kits().share(needs(at, chosen, true));
        KitMoves moves = new KitMoves(at);
        Map<String, PricedVisit> now = chosen;
        for (int turn = 0; !stock.unmet().isEmpty(); turn++) {
            now = moves.settle(stock, now, turn < MOVES);
            stock = pricing.kits().share(needs(at, now, true));
        }
        return new Shared(priced(alone, at, stock, now, moves), stock, moves.movedTrucks());
    }

    /** Kits of visits, of all or of those that stock in hand and on order has to serve. */
    private List<KitNeed> needs(Draft at, Map<String, PricedVisit> chosen, boolean nearOnly) {
        KitPrices kits = at.builder().kits();
        List<SharedKits.Planned> planned = new ArrayList<>();
        chosen.forEach((name, visit) -> {
            TruckChoices truck = at.choicesOf(name);
            LocalDate by = kits.lastStart(truck.priced(), visit);
            boolean parts = !pricing.kitOf(truck.priced(), visit).whole().isEmpty();
            if (parts && by != null && (!nearOnly || by.isBefore(pricing.ordersReach()))) {
                planned.add(new SharedKits.Planned(
                        FleetPricing.standIn(
                                truck.priced(), visit, at.learned().firstWeek().plus(visit.week())),
                        by,
                        truck.options().hasWish()));
            }
        });
        return pricing.kits().needs(planned);
    }

    private Draft priced(Draft alone, Draft at, SharedStock stock, Map<String, PricedVisit> chosen, KitMoves moves) {
        TruckChoicesBuilder builder = at.builder().with(at.builder().kits().beside(stock, chosen));
        Map<String, TruckChoices> cases = builder.choicesOf(trucks);
        ScheduleRequest request = PreparedFleet.request(at.learned(), at.calendar(), at.safety(), cases);
        List<Schedule.Choice> choices = new ArrayList<>();
        for (TruckChoices truck : cases.values()) {
            PricedVisit visit = chosen.get(truck.truck().truck());
            if (visit != null) {
                VisitOption option =
                        truck.options().options().get(truck.visits().indexOf(visit));
                choices.add(new Schedule.Choice(truck.truck().truck(), option));
            }
        }
        List<Schedule.BrokenWish> broken = new ArrayList<>(at.schedule().brokenWishes());
        broken.addAll(moves.brokenWishes());
        List<Schedule.NotPlaced> notPlaced = notPlaced(at, request, chosen, moves);
        double cost = CostOf.schedule(request, choices);
        Double bound = alone.schedule().bound();
        boolean sameWishes = broken.size() <= alone.schedule().brokenWishes().size();
        Schedule schedule = new Schedule(
                choices,
                notPlaced,
                cost,
                bound == null || !sameWishes ? null : Double.valueOf(Math.min(bound, cost)),
                broken,
                alone.schedule().stop());
        return at.with(builder, cases, request, schedule);
    }

    private static List<Schedule.NotPlaced> notPlaced(
            Draft at, ScheduleRequest request, Map<String, PricedVisit> chosen, KitMoves moves) {
        Map<String, String> reasons = new HashMap<>();
        at.schedule().notPlaced().forEach(truck -> reasons.put(truck.truck(), truck.reason()));
        return request.trucks().stream()
                .filter(truck -> !chosen.containsKey(truck.truck()))
                .map(truck -> new Schedule.NotPlaced(
                        truck.truck(),
                        moves.movedTrucks().contains(truck.truck())
                                ? KitMoves.NO_KIT
                                : reasons.getOrDefault(truck.truck(), KitMoves.NO_KIT)))
                .toList();
    }

    /** Searches the depots again in which sharing made something dearer; null where nothing else comes out. */
    private @Nullable Draft again(Draft at, Draft shared) {
        ScheduleRequest part = SharedDepots.part(shared.request(), dearer(at, shared));
        Set<String> asked = new HashSet<>();
        part.trucks().forEach(truck -> asked.add(truck.truck()));
        Schedule now = shared.schedule();
        Schedule from = SharedDepots.only(now, asked);
        Schedule found = scheduler.reschedule(part, from);
        if (found.choices().equals(from.choices())) {
            return null;
        }
        Schedule together = SharedDepots.together(shared.request(), now, found, asked);
        return shared.with(shared.builder(), shared.cases(), shared.request(), together);
    }

    private static Set<String> dearer(Draft at, Draft shared) {
        Map<String, VisitOption> was = new HashMap<>();
        at.schedule().choices().forEach(choice -> was.put(choice.truck(), choice.option()));
        Set<String> depots = new HashSet<>();
        for (Schedule.Choice choice : shared.schedule().choices()) {
            VisitOption before = was.remove(choice.truck());
            if (before == null
                    || choice.option().cost() > before.cost() + ROUNDING
                    || choice.option().week() != before.week()) {
                depots.add(shared.choicesOf(choice.truck()).truck().depot());
            }
        }
        was.keySet().forEach(left -> depots.add(shared.choicesOf(left).truck().depot()));
        return depots;
    }

    /**
     * Gives second visits whose services take parts what is left without a shipment; one that finds nothing left is taken out.
     *
     * @param seconds shortened by those
     */
    Draft withKitsOf(Draft draft, List<SecondVisit> seconds) {
        KitPrices kits = draft.builder().kits();
        Map<SecondVisit, KitNeed> needs = new LinkedHashMap<>();
        for (SecondVisit second : seconds) {
            KitNeed need = kits.need(second.truck().priced(), second.visit(), false);
            if (!need.pieces().isEmpty()) {
                needs.put(second, need);
            }
        }
        if (needs.isEmpty()) {
            return draft;
        }
        SharedStock stock = pricing.kits().share(draft.kits());
        boolean same = stock.unmet().isEmpty();
        needs.forEach((second, need) -> {
            boolean left = same && stock.price(need.depot(), need.by(), need.pieces()) == 0 && stock.admit(need);
            if (!left) {
                seconds.remove(second);
            }
        });
        return same && seconds.stream().anyMatch(needs::containsKey)
                ? draft.with(stock.allocation(), stock.served())
                : draft;
    }

    /** Kits that an ordinary order reaches in time take what is left. */
    Draft withAllKits(Shared best) {
        Draft draft = best.draft();
        Map<String, PricedVisit> chosen = new LinkedHashMap<>();
        draft.schedule()
                .choices()
                .forEach(choice -> chosen.put(
                        choice.truck(), draft.choicesOf(choice.truck()).visitOf(choice.option())));
        for (KitNeed need : needs(draft, chosen, false)) {
            if (!best.stock().holds(need) && !best.stock().admit(need)) {
                throw new IllegalStateException("truck " + need.truck() + ", " + need.week()
                        + ": its kit can be ordered in time and was found not to be");
            }
        }
        return draft.with(best.stock().allocation(), best.stock().served());
    }
}
