package dev.injectorplanner.core.replay.scenario;

import dev.injectorplanner.core.check.InvalidValueException;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The named scenarios. Their figures are invented and plausible, not measured: they differ in what makes planning hard, so
 * that a rule that is right in one is wrong in another.
 */
public final class Scenarios {
    private static final int TRUCKS = 40;
    private static final double DELAY_KM = 14_000;

    private static final SignTruth USUAL_SIGNS =
            new SignTruth(6_000, 90_000, 0.1, 1.6, 7, 12, 52, SignTruth.Codes.TOLD_APART);
    private static final SignTruth WEAK_SIGNS =
            new SignTruth(15_000, 90_000, 0.1, 1.9, 3.2, 16, 24, SignTruth.Codes.TOLD_APART);
    private static final SignTruth STRONG_SIGNS =
            new SignTruth(1_500, 400_000, 0.02, 1.0, 11, 6, 85, SignTruth.Codes.TOLD_APART);
    private static final SignTruth FALSE_CODES =
            new SignTruth(6_000, 25_000, 1, 1.7, 7, 13, 52, SignTruth.Codes.TOLD_APART);

    private static final LifeComponent WEAR_V8 = new LifeComponent(1, 2.5, 420_000, DELAY_KM, 0.15);
    private static final LifeComponent WEAR_SIX = new LifeComponent(0.92, 3, 450_000, DELAY_KM, 0.15);
    private static final LifeComponent EARLY_SIX = new LifeComponent(0.08, 0.8, 60_000, 6_000, 0.2);

    private static final FamilyTruth V8 = new FamilyTruth(ReplaySite.V8, 1, 2_900, 62, 300_000, List.of(WEAR_V8), 0, 1);
    private static final FamilyTruth SIX =
            new FamilyTruth(ReplaySite.SIX, 1, 2_500, 54, 320_000, List.of(WEAR_SIX, EARLY_SIX), 0, 1);

    private static final List<Scenario> ALL = List.of(
            scenario(
                    "mixed",
                    "V8 that wear and inline six with 8 % early failures, noisy tests, some false codes",
                    TRUCKS,
                    List.of(V8, SIX),
                    USUAL_SIGNS,
                    ShopTruth.ordinary()),
            scenario("v8-wear", "V8 only, wear of shape 2.5", TRUCKS, List.of(V8), USUAL_SIGNS, ShopTruth.ordinary()),
            scenario(
                    "six-early",
                    "inline six only, 8 % of injectors fail early",
                    TRUCKS,
                    List.of(SIX),
                    USUAL_SIGNS,
                    ShopTruth.ordinary()),
            scenario(
                    "weak-tests",
                    "tests and codes that hardly tell a defect from chance",
                    TRUCKS,
                    List.of(V8, SIX),
                    WEAK_SIGNS,
                    ShopTruth.ordinary()),
            scenario(
                    "strong-tests",
                    "tests and codes that show nearly every defect, and long delays",
                    TRUCKS,
                    List.of(
                            V8.withLives(new LifeComponent(1, 2.5, 420_000, 26_000, 0.03)),
                            SIX.withLives(
                                    new LifeComponent(0.92, 3, 450_000, 26_000, 0.03),
                                    new LifeComponent(0.08, 0.8, 60_000, 12_000, 0.05))),
                    STRONG_SIGNS,
                    ShopTruth.ordinary()),
            scenario(
                    "false-codes",
                    "many false codes and harness faults",
                    TRUCKS,
                    List.of(V8, SIX),
                    FALSE_CODES,
                    ShopTruth.ordinary()),
            scenario(
                    "circuit-codes",
                    "mixed, where worn injectors and chafed wires store the same circuit codes",
                    TRUCKS,
                    List.of(V8, SIX),
                    USUAL_SIGNS.withCodes(SignTruth.Codes.ALIKE),
                    ShopTruth.ordinary()),
            scenario(
                    "sudden",
                    "six in ten failures come without a sign",
                    TRUCKS,
                    List.of(
                            V8.withLives(new LifeComponent(1, 2.5, 420_000, DELAY_KM, 0.6)),
                            SIX.withLives(
                                    new LifeComponent(0.92, 3, 450_000, DELAY_KM, 0.6),
                                    new LifeComponent(0.08, 0.8, 60_000, 6_000, 0.6))),
                    USUAL_SIGNS,
                    ShopTruth.ordinary()),
            scenario(
                    "small-fleet",
                    "eight trucks, few failures on record",
                    8,
                    List.of(V8, SIX),
                    USUAL_SIGNS,
                    ShopTruth.ordinary().withTrucks(0.5, 4, 0)),
            scenario(
                    "ageing",
                    "old trucks of both families with reman units; a quarter is sold each year",
                    TRUCKS,
                    List.of(V8.withReman(0.5, 0.8), SIX.withReman(0.5, 0.8)),
                    USUAL_SIGNS,
                    ShopTruth.ordinary().withTrucks(4, 9, 0.25)),
            scenario(
                    "no-signs",
                    "no failure gives a warning of any kind",
                    TRUCKS,
                    List.of(
                            V8.withLives(new LifeComponent(1, 2.5, 420_000, 0, 1)),
                            SIX.withLives(
                                    new LifeComponent(0.92, 3, 450_000, 0, 1),
                                    new LifeComponent(0.08, 0.8, 60_000, 0, 1))),
                    USUAL_SIGNS,
                    ShopTruth.ordinary()),
            scenario(
                    "by-chance",
                    "constant hazard: age says nothing, no signs",
                    TRUCKS,
                    List.of(V8.withLives(new LifeComponent(1, 1, 420_000, 0, 1))),
                    USUAL_SIGNS,
                    ShopTruth.ordinary()));

    private Scenarios() {}

    private static Scenario scenario(
            String name, String words, int trucks, List<FamilyTruth> families, SignTruth signs, ShopTruth shop) {
        return new Scenario(name, words, trucks, ReplaySite.tables(), families, signs, shop);
    }

    /** All of them, in the order in which they are shown. */
    public static List<Scenario> list() {
        return ALL;
    }

    /** @throws InvalidValueException where none is called so, with those that there are */
    public static Scenario getScenario(String name) {
        return ALL.stream()
                .filter(scenario -> scenario.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new InvalidValueException(
                        "scenario",
                        name,
                        "is unknown; there are "
                                + ALL.stream().map(Scenario::name).collect(Collectors.joining(", ")),
                        "name one of them"));
    }
}
