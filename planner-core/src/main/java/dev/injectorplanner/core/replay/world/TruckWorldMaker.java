package dev.injectorplanner.core.replay.world;

import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.Vin;
import dev.injectorplanner.core.replay.scenario.FamilyTruth;
import dev.injectorplanner.core.replay.scenario.Scenario;
import dev.injectorplanner.core.replay.scenario.ShopTruth;
import dev.injectorplanner.core.truth.Draws;
import dev.injectorplanner.core.truth.TruckClock;
import dev.injectorplanner.core.truth.UsagePath;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/** Makes the trucks of a scenario, one by one, each drawn by itself. */
final class TruckWorldMaker {
    private static final long TRUCKS = 1;
    private static final double DAYS_A_YEAR = 365.25;
    private static final double IDLER_SPEED = 0.55;
    private static final double IDLER_WEAR = 1.35;
    private static final int SALE_NOTICE_DAYS = 182;

    private final Scenario scenario;
    private final long seed;
    private final LocalDate begin;
    private final LocalDate until;
    private final int planned;

    TruckWorldMaker(Scenario scenario, long seed, LocalDate begin, int weeks) {
        this.scenario = scenario;
        this.seed = seed;
        this.begin = begin;
        this.planned = 7 * weeks;
        this.until = begin.plusDays(planned);
    }

    TruckWorld make(int number) {
        Draws draws = Draws.keyed(seed, TRUCKS, number);
        ShopTruth shop = scenario.shop();
        int family = family(draws.uniform());
        FamilyTruth truth = scenario.families().get(family);
        EngineFamily engine = scenario.site().family(truth.family());
        LocalDate start =
                begin.minusDays((long) (DAYS_A_YEAR * draws.between(shop.youngestYears(), shop.oldestYears())));
        boolean idler = draws.chance(shop.idlerShare());
        double spread = StrictMath.exp(draws.normal(0, shop.truckSpread()));
        double wear = (idler ? IDLER_WEAR : 1) / spread;
        double speed = truth.kmPerHour() * (idler ? IDLER_SPEED : 1);
        LocalDate replaced =
                draws.chance(shop.replacedMeterShare()) ? begin.minusDays(draws.whole(60, 600)) : LocalDate.MAX;
        double soldAt = draws.uniform();
        UsagePath path = new UsagePath(draws, truth.kmPerWeek(), speed, start, until);
        Depot depot =
                scenario.site().depots().get(number % scenario.site().depots().size());
        Truck truck = truck(number, engine, depot, start);
        int firstDay = (int) start.toEpochDay();
        int sold = soldDay(soldAt);
        return new TruckWorld(new TruckWorld.Make(
                seed,
                number,
                truck,
                engine,
                family,
                new TruckClock(
                        truck.truck(), depot.timeZone(), path, replaced.isAfter(start) ? replaced : LocalDate.MAX),
                firstDay,
                daily(path, start),
                wear,
                sold,
                sold == TruckWorld.NEVER ? sold : sold - SALE_NOTICE_DAYS,
                new FalseCodes(scenario.signs(), truth.kmPerWeek(), firstDay, (int) until.toEpochDay())
                        .days(seed, number, engine.cylinders()),
                null,
                new UnitMaker(truth, scenario.signs()),
                scenario.signs()));
    }

    private Truck truck(int number, EngineFamily engine, Depot depot, LocalDate start) {
        return new Truck(
                String.format(Locale.ROOT, "T%03d", number + 1),
                new Vin(String.format(Locale.ROOT, "ZZ9%02dTRK0%08d", engine.cylinders(), number)),
                depot.depot(),
                engine.family(),
                engine.family() + " " + depot.depot(),
                start,
                null,
                null);
    }

    private int family(double draw) {
        List<FamilyTruth> families = scenario.families();
        double at = draw * families.stream().mapToDouble(FamilyTruth::share).sum();
        for (int i = 0; i < families.size(); i++) {
            at -= families.get(i).share();
            if (at < 0) {
                return i;
            }
        }
        return families.size() - 1;
    }

    private int soldDay(double draw) {
        double share = scenario.shop().soldPerYear() * planned / DAYS_A_YEAR;
        return draw < share ? (int) begin.toEpochDay() + 28 + (int) (draw / share * (planned - 28)) : TruckWorld.NEVER;
    }

    private double[] daily(UsagePath path, LocalDate start) {
        double[] km = new double[(int) (until.toEpochDay() - start.toEpochDay()) + 8];
        for (int day = 0; day < km.length; day++) {
            km[day] = path.kmOn(start.plusDays(day));
        }
        return km;
    }
}
