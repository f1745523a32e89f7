package dev.injectorplanner.core.due;

import dev.injectorplanner.core.due.TruckCheck.Dated;
import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.InjectorAge;
import java.util.List;
import java.util.Locale;

/**
 * The latest balance and return-flow test of a cylinder against its limit, within the window and since fitting. One value
 * over its limit asks for a second look; replaced is what is far over, or has a second sign against it. Common practice: test
 * values scatter, and most single values a little over belong to sound injectors.
 */
public final class TestRules {
    /** Unit in which limits of the balance test are given. */
    public static final String BALANCE_UNIT = "mm3/stroke";

    /** Unit in which limits of the return-flow test are given. */
    public static final String RETURN_FLOW_UNIT = "ml/min";

    /** A value this many times its limit needs no second look: common practice of no source. */
    private static final double FAR_OVER = 1.5;

    private TestRules() {}

    static void apply(TruckCheck truck, InjectorAge age) {
        truck.rule(RuleKind.BALANCE).ifPresent(rule -> test(truck, age, rule, TestKind.BALANCE, DueKind.BALANCE));
        truck.rule(RuleKind.RETURN_FLOW)
                .ifPresent(rule -> test(truck, age, rule, TestKind.RETURN_FLOW, DueKind.RETURN_FLOW));
    }

    /** Whether a test can be checked against a limit: its unit is the limit's. Contribution tests have no limit. */
    public static boolean comparable(CylinderTest test) {
        String unit = test.unit().toLowerCase(Locale.ROOT).replace("³", "3").replace(" ", "");
        return switch (test.test()) {
            case BALANCE -> unit.equals(BALANCE_UNIT);
            case RETURN_FLOW -> unit.equals(RETURN_FLOW_UNIT);
            case CONTRIBUTION -> false;
        };
    }

    private static void test(TruckCheck truck, InjectorAge age, DueRule rule, TestKind test, DueKind kind) {
        List<Dated<CylinderTest>> tests = truck.tests.stream()
                .filter(dated ->
                        dated.row().cylinder() == age.cylinder() && dated.row().test() == test)
                .filter(dated -> comparable(dated.row()))
                .filter(dated ->
                        truck.within(dated.day(), rule.window()) && dated.day().isAfter(age.fittedOn()))
                .toList();
        if (tests.isEmpty()) {
            return;
        }
        Dated<CylinderTest> latest = tests.get(tests.size() - 1);
        CylinderTest shown = latest.row();
        double ratio = value(shown) / rule.limit();
        if (ratio > 1) {
            boolean sure = ratio >= FAR_OVER || isSeconded(truck, age, rule, tests);
            String state = shown.engineState().isEmpty() ? "" : ", " + shown.engineState();
            truck.due(
                    age.cylinder(),
                    kind,
                    null,
                    sure ? DueAction.REPLACE : DueAction.INSPECT,
                    words(test) + " " + Figures.tenths(shown.value()) + " " + shown.unit() + " on " + latest.day()
                            + state + (sure ? "" : "; one value over its limit: test again before replacing"),
                    Figures.tenths(rule.limit()) + " " + shown.unit() + (test == TestKind.BALANCE ? " either way" : ""),
                    rule.source(),
                    latest.day());
        }
    }

    private static double value(CylinderTest test) {
        return test.test() == TestKind.BALANCE ? Math.abs(test.value()) : test.value();
    }

    /** Whether another day's test, the other test, or a fault of the cylinder speaks against the injector as well. */
    private static boolean isSeconded(
            TruckCheck truck, InjectorAge age, DueRule rule, List<Dated<CylinderTest>> sameTests) {
        boolean again = sameTests.stream()
                        .filter(dated -> value(dated.row()) > rule.limit())
                        .map(Dated::day)
                        .distinct()
                        .count()
                > 1;
        return again || isOtherOver(truck, age, rule) || hasFault(truck, age, rule);
    }

    private static boolean isOtherOver(TruckCheck truck, InjectorAge age, DueRule rule) {
        TestKind other = rule.kind() == RuleKind.BALANCE ? TestKind.RETURN_FLOW : TestKind.BALANCE;
        return truck.rule(rule.kind() == RuleKind.BALANCE ? RuleKind.RETURN_FLOW : RuleKind.BALANCE)
                .map(limit -> truck.tests.stream()
                        .filter(dated -> dated.row().cylinder() == age.cylinder()
                                && dated.row().test() == other
                                && comparable(dated.row()))
                        .filter(dated -> truck.within(dated.day(), limit.window())
                                && dated.day().isAfter(age.fittedOn()))
                        .anyMatch(dated -> value(dated.row()) > limit.limit()))
                .orElse(false);
    }

    private static boolean hasFault(TruckCheck truck, InjectorAge age, DueRule rule) {
        return truck.faults.stream()
                .filter(fault -> fault.row().cylinder() != null && fault.row().cylinder() == age.cylinder())
                .anyMatch(fault -> truck.within(fault.day(), rule.window())
                        && fault.day().isAfter(age.fittedOn())
                        && !truck.isAnswered(fault));
    }

    private static String words(TestKind test) {
        return test == TestKind.BALANCE ? "balance" : "return flow";
    }
}
