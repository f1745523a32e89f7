package dev.injectorplanner.core.due;

import dev.injectorplanner.core.due.TruckCheck.Dated;
import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.InjectorAge;
import java.util.Locale;

/** The latest balance and return-flow test of a cylinder against its limit, within the window and since fitting. */
public final class TestRules {
    /** Unit in which limits of the balance test are given. */
    public static final String BALANCE_UNIT = "mm3/stroke";

    /** Unit in which limits of the return-flow test are given. */
    public static final String RETURN_FLOW_UNIT = "ml/min";

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
        Dated<CylinderTest> latest = null;
        for (Dated<CylinderTest> dated : truck.tests) {
            CylinderTest row = dated.row();
            boolean counts = row.cylinder() == age.cylinder()
                    && row.test() == test
                    && comparable(row)
                    && truck.within(dated.day(), rule.window())
                    && !dated.day().isBefore(age.fittedOn());
            latest = counts ? dated : latest;
        }
        if (latest == null) {
            return;
        }
        CylinderTest shown = latest.row();
        double value = test == TestKind.BALANCE ? Math.abs(shown.value()) : shown.value();
        if (value > rule.limit()) {
            String state = shown.engineState().isEmpty() ? "" : ", " + shown.engineState();
            truck.due(
                    age.cylinder(),
                    kind,
                    null,
                    DueAction.REPLACE,
                    words(test) + " " + Figures.tenths(shown.value()) + " " + shown.unit() + " on " + latest.day()
                            + state,
                    Figures.tenths(rule.limit()) + " " + shown.unit() + (test == TestKind.BALANCE ? " either way" : ""),
                    rule.source(),
                    latest.day());
        }
    }

    private static String words(TestKind test) {
        return test == TestKind.BALANCE ? "balance" : "return flow";
    }
}
