package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.condition.FleetSigns;
import dev.injectorplanner.core.condition.Sign;
import dev.injectorplanner.core.condition.SignEffect;
import dev.injectorplanner.core.condition.TestLimit;
import dev.injectorplanner.core.condition.TruckSigns;
import dev.injectorplanner.core.defect.DefectBook;
import dev.injectorplanner.core.defect.DefectDefaults;
import dev.injectorplanner.core.defect.DefectModel;
import dev.injectorplanner.core.defect.FailurePath;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.history.FailureQuestion;
import dev.injectorplanner.core.history.LifeBook;
import dev.injectorplanner.core.history.LifeHistory;
import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.life.PredictiveLife;
import dev.injectorplanner.core.usage.FleetUsage;
import dev.injectorplanner.core.usage.InjectorAge;
import dev.injectorplanner.core.usage.MeterUsage;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a fleet's records say of the chance of failure: life models by part and origin, defect models by part, and the risk of every fitted injector whose age and usage are known.
 */
public final class FleetRisk {
    private final FleetUsage usage;
    private final LifeHistory history;
    private final FleetSigns signs;
    private final DefectBook learnedBook;
    private final DefectBook book;
    private final DefectDefaults given;
    private final LifeBook lives;
    private final List<SignEffect> signEffects;
    private final List<FailureQuestion> questions;
    private final Map<String, String> depots = new LinkedHashMap<>();
    private final Map<String, InjectorRisk> risks = new LinkedHashMap<>();
    private final Map<String, PartLife> models = new HashMap<>();
    private final Set<TestKind> testKinds;
    private int unknown;

    private FleetRisk(
            FleetIndex index,
            FleetUsage usage,
            TestLimit limits,
            LocalDate today,
            DefectDefaults otherwise,
            double signWeight,
            @Nullable FleetLives shared) {
        this.usage = usage;
        given = otherwise;
        history = new LifeHistory(index, usage, today);
        signs = new FleetSigns(index, limits);
        if (shared != null) {
            learnedBook = shared.defects;
            lives = shared.lives;
            signEffects = shared.signEffects;
            questions = shared.questions;
            testKinds = shared.testKinds;
        } else {
            LearnedLives learned =
                    LearnedLives.of(history, parts(index), signs, otherwise, today, part -> supplier(index, part));
            lives = learned.lives();
            learnedBook = new ForecastLevel(lives, usage, new DefectChances(signs, today))
                    .level(learned.defects(), usage.injectorAges());
            signEffects = SignEffects.of(learnedBook, lives, history, signs);
            questions = history.questions();
            testKinds = signs.testKinds();
        }
        book = learnedBook.withSignWeight(signWeight);
        for (Truck truck : index.fleet().trucks()) {
            depots.put(truck.truck(), truck.depot());
        }
    }

    private static String supplier(FleetIndex index, String part) {
        return index.findPart(part).map(Part::supplier).orElse("");
    }

    private static List<String> parts(FleetIndex index) {
        return Stream.concat(
                        index.fleet().engineFamilies().stream().map(EngineFamily::injectorPart),
                        index.fleet().injectors().stream().map(FittedInjector::part))
                .distinct()
                .sorted()
                .toList();
    }

    /**
     * Learns from the fleet's history and judges every fitted injector.
     *
     * @param ages the fitted injectors, as {@link FleetUsage#injectorAges} lists them
     * @param limits holds tests against their limits
     * @param today the day the usage was made for
     * @param otherwise how defects behave where there are too few records
     * @param signWeight how far signs are believed, 1 as the records say
     * @param shared lives of a fleet that has all injector parts of this one; null to learn them here
     */
    public static FleetRisk of(
            FleetIndex index,
            FleetUsage usage,
            List<InjectorAge> ages,
            TestLimit limits,
            LocalDate today,
            DefectDefaults otherwise,
            double signWeight,
            @Nullable FleetLives shared) {
        FleetRisk risk = new FleetRisk(index, usage, limits, today, otherwise, signWeight, shared);
        ages.forEach(age -> risk.judge(age, today));
        return risk;
    }

    /** What was learned here, to judge parts of the fleet by. */
    public FleetLives shared() {
        return new FleetLives(lives, learnedBook, testKinds, signEffects, questions);
    }

    private void judge(InjectorAge age, LocalDate today) {
        PartLife model = lives.of(age.part(), age.origin(), age.fittedOn());
        models.put(key(age.truck(), age.cylinder()), model);
        Double now = model.clock().of(age);
        MeterUsage meter = model.clock().of(usage.of(age.truck()));
        if (now == null || !meter.known()) {
            unknown++;
            return;
        }
        TruckSigns shown = signs.of(age.truck());
        DefectBook.Entry entry = book.of(age.part());
        PredictiveLife life = lives.predictive(model, age.truck());
        double defective = new DefectChances(signs, today).of(age, now, meter, entry.model(), life);
        Chances chances = new Chances(entry.model(), life, now, UsageAhead.of(meter));
        double[] within = chances.within(defective);
        Set<Sign> now12 = shown.on(age.cylinder(), age.fittedOn(), today);
        risks.put(
                key(age.truck(), age.cylinder()),
                new InjectorRisk(
                        age.truck(),
                        depots.getOrDefault(age.truck(), ""),
                        age.cylinder(),
                        age.part(),
                        age.origin(),
                        model.clock(),
                        now,
                        Sign.words(now12),
                        chances.multiplier(within[1]),
                        entry.model().failures() >= DefectEstimate.ENOUGH ? SignEffect.FITTED : SignEffect.DEFAULT,
                        defective,
                        within[0],
                        within[1],
                        within[2]));
    }

    private static String key(String truck, int cylinder) {
        return truck + "\n" + cylinder;
    }

    /** Every fitted injector whose age and usage are known, by truck and cylinder. */
    public List<InjectorRisk> risks() {
        return List.copyOf(risks.values());
    }

    /** The risk of the injector in a cylinder; empty where there is none, or its age or usage is not known. */
    public Optional<InjectorRisk> find(String truck, int cylinder) {
        return Optional.ofNullable(risks.get(key(truck, cylinder)));
    }

    /** Fitted injectors whose age or usage no meter shows. */
    public int unknown() {
        return unknown;
    }

    /** Parts with long service and no failure on record, in the whole fleet that the lives were learned from. */
    public List<FailureQuestion> questions() {
        return questions;
    }

    /** Whether the fleet has any balance or return-flow test on record. */
    public boolean tested() {
        return !testKinds.isEmpty();
    }

    /** Kinds of tests that the fleet has on record and that can be held against a limit. */
    public Set<TestKind> testKinds() {
        return testKinds;
    }

    public LifeHistory history() {
        return history;
    }

    public LifeBook lives() {
        return lives;
    }

    /** Life model of a fitted injector, of its batch where that fails sooner. */
    public PartLife lifeOf(InjectorRisk injector) {
        PartLife model = models.get(key(injector.truck(), injector.cylinder()));
        return model == null ? lives.of(injector.part(), injector.origin()) : model;
    }

    /** How signs change the chance of failing, for a typical injector of the part with the most failures. */
    public List<SignEffect> signEffects() {
        return signEffects;
    }

    /** The defect model of a part. */
    public DefectBook.Entry defectModelOf(String part) {
        return book.of(part);
    }

    public FleetSigns signs() {
        return signs;
    }

    /** One a part, by part. */
    public List<DefectEstimate> defects() {
        return book.entries().keySet().stream().map(this::defectsOf).toList();
    }

    /** @throws IllegalArgumentException for a part that no family and no fitted injector has */
    public DefectEstimate defectsOf(String part) {
        return DefectEstimate.of(part, book.of(part), given);
    }

    /**
     * In how many weeks an injector's chance of failing within the 12 weeks that follow reaches a limit, at its truck's
     * usual pace and its condition of today; empty if not within {@code most} weeks.
     */
    public OptionalInt weeksUntilChance(InjectorRisk risk, double limit, int most) {
        PartLife model = lifeOf(risk);
        UsageAhead ahead = UsageAhead.of(model.clock().of(usage.of(risk.truck())));
        DefectModel defects = book.of(risk.part()).model();
        FailurePath path =
                new FailurePath(defects, lives.predictive(model, risk.truck()), risk.age(), risk.defectChance(), 0);
        for (int week = 0; week <= most; week++) {
            Chances then = new Chances(defects, lives.predictive(model, risk.truck()), path.age(), ahead);
            double chance = week == 0 ? risk.chance12() : then.within(path.chanceDefective())[1];
            if (chance >= limit) {
                return OptionalInt.of(week);
            }
            path.goOn(ahead.perWeek());
        }
        return OptionalInt.empty();
    }
}
