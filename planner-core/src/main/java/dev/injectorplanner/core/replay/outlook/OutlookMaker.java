package dev.injectorplanner.core.replay.outlook;

import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.replay.ReplayWatch;
import dev.injectorplanner.core.replay.keeper.AgesAndSigns;
import dev.injectorplanner.core.replay.keeper.RuleFigures;
import dev.injectorplanner.core.replay.keeper.RuleSearch;
import dev.injectorplanner.core.replay.own.OwnFleet;
import dev.injectorplanner.core.replay.own.UncertainLives;
import dev.injectorplanner.core.replay.run.FleetRun;
import dev.injectorplanner.core.replay.run.Ledger;
import dev.injectorplanner.core.replay.scenario.Scenario;
import dev.injectorplanner.core.replay.world.TruckToday;
import dev.injectorplanner.core.replay.world.World;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/** Plays a fleet forward from today, many times, and tells what each month used. */
public final class OutlookMaker {
    private static final int SEARCHED_TRUCKS = 40;
    private static final int SEARCHED_RUNS = 4;
    private static final int SEARCHED_WEEKS = 156;
    private static final double LEFT_IN = 0.95;

    /** The buyer orders for what is planned: shelves are never what a visit waits for. */
    private static final double PLENTY = 10;

    private static final long SEARCH_SEED = 987_654_321L;

    private final Plan plan;
    private final OutlookRequest request;
    private final ReplayWatch watch;
    private final Scenario own;
    private final UncertainLives lives;
    private final FleetNow now;
    private final LocalDate monday;
    private final int weeks;

    private OutlookMaker(FleetSnapshot fleet, Plan plan, OutlookRequest request, ReplayWatch watch) {
        this.plan = plan;
        this.request = request;
        this.watch = watch;
        own = OwnFleet.scenario(fleet, plan).withShelfSets(PLENTY);
        lives = new UncertainLives(own, plan);
        now = new FleetNow(fleet, plan, own);
        monday = plan.firstWeek().monday();
        LocalDate end = plan.today().withDayOfMonth(1).plusMonths(request.months());
        weeks = (int) Math.ceil(ChronoUnit.DAYS.between(monday, end) / 7.0);
    }

    /**
     * The outlook of a fleet.
     *
     * @param plan made of that fleet; its visits are carried out, with rules after its last week
     * @param watch told of progress, asked whether to stop
     * @throws dev.injectorplanner.core.check.InvalidValueException where no truck's usage and injector part are known
     */
    public static Outlook make(FleetSnapshot fleet, Plan plan, OutlookRequest request, ReplayWatch watch) {
        return new OutlookMaker(fleet, plan, request, watch).make();
    }

    private Outlook make() {
        List<RuleFigures> figures = noTighterThanThePlan(rules());
        List<String> depots = now.trucks.stream()
                .map(truck -> truck.truck().depot())
                .distinct()
                .toList();
        Tally tally = new Tally(plan.today(), request.months(), request.runs(), depots);
        AtomicInteger played = new AtomicInteger();
        Threads.forEach(request.threads(), request.runs(), number -> {
            if (!watch.stopped()) {
                play(number, figures, tally);
                tally.finish(number);
                watch.progress("outlook", played.incrementAndGet(), request.runs());
            }
        });
        return new Outlook(
                plan.today(),
                plan.firstWeek().plus(plan.weeks() - 1).sunday(),
                played.get(),
                played.get() < request.runs(),
                words(figures),
                now.leftOut,
                now.assumedAges,
                tally.months(),
                tally.depots(),
                tally.parts(),
                tally.totals(),
                tally.partTotals());
    }

    private void play(int number, List<RuleFigures> figures, Tally tally) {
        long seed = request.seed() * 1_000_003 + number;
        World world = World.from(lives.drawn(seed), now.trucks, monday, weeks, seed);
        FleetRun run = new FleetRun(world);
        run.beginJournal(tally.of(number));
        run.playUntil(world.end(), new PlanThenRules(plan, now.names, run, figures));
    }

    /**
     * Rules by which the plan's end is no edge: what the plan, judging by the same lives, leaves in to its last day, they leave
     * in too.
     */
    private List<RuleFigures> noTighterThanThePlan(List<RuleFigures> rules) {
        Map<String, Set<Integer>> planned = new HashMap<>();
        plan.visits()
                .forEach(visit -> planned.computeIfAbsent(visit.truck(), name -> new HashSet<>())
                        .addAll(visit.cylinders()));
        List<RuleFigures> figures = new ArrayList<>();
        for (int family = 0; family < rules.size(); family++) {
            double[] left = left(family, planned);
            double oldest = left.length == 0 ? 0 : left[(int) (LEFT_IN * (left.length - 1))];
            figures.add(rules.get(family).noTighterThan(oldest));
        }
        return figures;
    }

    /** Ages in km at the plan's end of the injectors that it leaves in, ascending. */
    private double[] left(int family, Map<String, Set<Integer>> planned) {
        List<Double> ages = new ArrayList<>();
        for (TruckToday truck : now.trucks) {
            Set<Integer> done = planned.getOrDefault(truck.truck().truck(), Set.of());
            for (int c = 0; truck.family() == family && c < truck.cylinders().size(); c++) {
                if (!done.contains(c + 1)) {
                    ages.add(truck.cylinders().get(c).ageKm() + plan.weeks() * truck.kmPerWeek());
                }
            }
        }
        return ages.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    }

    private String words(List<RuleFigures> figures) {
        List<String> words = new ArrayList<>();
        for (int family = 0; family < figures.size(); family++) {
            words.add(own.families().get(family).family() + ": "
                    + figures.get(family).words());
        }
        return String.join("; ", words);
    }

    /** The cheapest ages and signs for this fleet, by its own learned lives, on a part of its trucks. */
    private List<RuleFigures> rules() {
        int step = Math.max(1, now.trucks.size() / SEARCHED_TRUCKS);
        List<TruckToday> some = IntStream.range(0, now.trucks.size())
                .filter(place -> place % step == 0)
                .mapToObj(now.trucks::get)
                .toList();
        List<FleetRun> starts = IntStream.range(0, SEARCHED_RUNS)
                .mapToObj(run -> new FleetRun(World.from(own, some, monday, SEARCHED_WEEKS, SEARCH_SEED + run)))
                .toList();
        AtomicInteger tried = new AtomicInteger();
        return new RuleSearch(own.families().size(), figures -> {
                    double[] cost = new double[figures.size()];
                    watch.progress("rules of replacement", tried.incrementAndGet(), 0);
                    List<List<Ledger>> ledgers = new ArrayList<>();
                    starts.forEach(each -> ledgers.add(List.of()));
                    Threads.forEach(request.threads(), watch.stopped() ? 0 : starts.size(), place -> {
                        FleetRun run = starts.get(place).copy(false);
                        run.playUntil(run.end(), new AgesAndSigns(figures));
                        ledgers.set(place, run.ledgers());
                    });
                    for (List<Ledger> ledger : ledgers) {
                        for (int family = 0; family < ledger.size(); family++) {
                            cost[family] += ledger.get(family).cost();
                        }
                    }
                    return cost;
                })
                .findBriefly();
    }
}
