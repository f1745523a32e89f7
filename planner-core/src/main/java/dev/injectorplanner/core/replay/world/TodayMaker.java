package dev.injectorplanner.core.replay.world;

import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.replay.scenario.FamilyTruth;
import dev.injectorplanner.core.replay.scenario.Scenario;
import dev.injectorplanner.core.truth.Draws;
import dev.injectorplanner.core.truth.TruckClock;
import dev.injectorplanner.core.truth.UsagePath;
import java.time.LocalDate;
import java.util.List;

/** Real trucks from today on: their km a week go on with chance, their injectors live on from the age they have. */
final class TodayMaker {
    private static final long PATH = 51;
    private static final long LIFE = 52;
    private static final double WEEK_NOISE = 0.2;
    private static final double YEAR_NOISE = 0.1;
    private static final double KM_PER_HOUR = 50;

    private final Scenario scenario;
    private final long seed;
    private final LocalDate monday;
    private final int weeks;

    TodayMaker(Scenario scenario, long seed, LocalDate monday, int weeks) {
        this.scenario = scenario;
        this.seed = seed;
        this.monday = monday;
        this.weeks = weeks;
    }

    TruckWorld make(int number, TruckToday today) {
        FamilyTruth truth = scenario.families().get(today.family());
        EngineFamily engine = scenario.site().family(truth.family());
        UnitMaker maker = new UnitMaker(truth, scenario.signs());
        Depot depot = scenario.site().depots().stream()
                .filter(each -> each.depot().equals(today.truck().depot()))
                .findFirst()
                .orElseThrow(() ->
                        new IllegalArgumentException("truck " + today.truck().truck() + " is at no depot of the site"));
        LocalDate leaves = today.truck().outOfServiceOn();
        Draws draws = Draws.keyed(seed, PATH, number);
        int first = (int) monday.toEpochDay();
        // its meters are not read on: an outlook keeps no records
        UsagePath meters = new UsagePath(draws, today.kmPerWeek(), KM_PER_HOUR, monday, monday.plusWeeks(1));
        return new TruckWorld(new TruckWorld.Make(
                seed,
                number,
                today.truck(),
                engine,
                today.family(),
                new TruckClock(today.truck().truck(), depot.timeZone(), meters, LocalDate.MAX),
                first,
                km(draws, today.kmPerWeek()),
                1,
                leaves == null ? TruckWorld.NEVER : (int) leaves.toEpochDay(),
                0,
                new FalseCodes(scenario.signs(), today.kmPerWeek(), first, first + 7 * weeks)
                        .days(seed, number, engine.cylinders()),
                firstFits(number, today, maker),
                maker,
                scenario.signs()));
    }

    private double[] km(Draws draws, double perWeek) {
        double[] km = new double[7 * weeks + 8];
        double usual = perWeek * StrictMath.exp(draws.normal(-0.5 * YEAR_NOISE * YEAR_NOISE, YEAR_NOISE));
        double perDay = 0;
        for (int day = 1; day < km.length; day++) {
            perDay = day % 7 == 1 ? usual * Math.max(0, draws.normal(1, WEEK_NOISE)) / 7 : perDay;
            km[day] = km[day - 1] + perDay;
        }
        return km;
    }

    private TruckWorld.FirstFit[] firstFits(int number, TruckToday today, UnitMaker maker) {
        List<TruckToday.Fitted> fitted = today.cylinders();
        TruckWorld.FirstFit[] fits = new TruckWorld.FirstFit[fitted.size()];
        for (int c = 0; c < fits.length; c++) {
            TruckToday.Fitted one = fitted.get(c);
            TrueUnit unit = maker.make(Draws.keyed(seed, LIFE, number, c), one.origin(), one.ageKm(), one.multiplier());
            fits[c] = new TruckWorld.FirstFit(unit, (int) one.fittedOn().toEpochDay(), -one.ageKm());
        }
        return fits;
    }
}
