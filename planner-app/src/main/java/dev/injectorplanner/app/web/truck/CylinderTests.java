package dev.injectorplanner.app.web.truck;

import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.due.DueRule;
import dev.injectorplanner.core.due.RuleBook;
import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.units.Figures;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Tests of a truck's injectors: one row a day and test, its cylinders as columns, held against the limits. */
final class CylinderTests {
    /** From this share of its limit on, a value is near it. */
    static final double NEAR = 0.8;

    private final List<CylinderTest> tests;
    private final EngineFamily family;
    private final RuleBook rules;
    private final ZoneId zone;

    CylinderTests(DepotPlan plan, Truck truck, EngineFamily family) {
        this.tests = plan.fleet().testsOf(truck.truck());
        this.family = family;
        this.rules = new RuleBook(plan.fleet().fleet());
        this.zone = plan.site().timeZone();
    }

    /** A value of a cylinder: empty where it was not tested. */
    public record Cell(String value, boolean over) {}

    /** A test on a day. */
    public record Row(LocalDate day, String on, String test, List<Cell> cells, String limit, String unit) {}

    private record Key(LocalDate day, TestKind test, String unit) {}

    /** The newest first. */
    List<Row> rows() {
        Map<Key, Map<Integer, CylinderTest>> days = new TreeMap<>(Comparator.comparing(Key::day)
                .reversed()
                .thenComparing(Key::test)
                .thenComparing(Key::unit));
        for (CylinderTest each : tests) { // of two on a day, the later
            days.computeIfAbsent(new Key(day(each), each.test(), each.unit()), key -> new TreeMap<>())
                    .put(each.cylinder(), each);
        }
        List<Row> rows = new ArrayList<>();
        days.forEach((key, values) -> rows.add(new Row(
                key.day(),
                DisplayFormat.shortDate(key.day()),
                word(key.test()),
                family.allCylinders().stream()
                        .map(cylinder -> cell(values.get(cylinder)))
                        .toList(),
                limit(key.test()).map(rule -> Figures.tenths(rule.limit())).orElse("none"),
                key.unit())));
        return rows;
    }

    private Cell cell(@org.jspecify.annotations.Nullable CylinderTest test) {
        return test == null
                ? new Cell("", false)
                : new Cell(Figures.tenths(test.value()).replace('-', '\u2212'), ratio(test) > 1);
    }

    /** A day's tests in one line: {@code balance, return flow; 3 over its limit}. */
    List<TruckFile.Row> days() {
        Map<LocalDate, List<CylinderTest>> days = new TreeMap<>(Comparator.reverseOrder());
        tests.forEach(each ->
                days.computeIfAbsent(day(each), day -> new ArrayList<>()).add(each));
        List<TruckFile.Row> rows = new ArrayList<>();
        days.forEach((day, of) -> rows.add(new TruckFile.Row(
                day,
                DisplayFormat.shortDate(day),
                "test: "
                        + String.join(
                                ", ",
                                of.stream()
                                        .map(each -> word(each.test()))
                                        .distinct()
                                        .sorted()
                                        .toList()),
                judged(of))));
        return rows;
    }

    private String judged(List<CylinderTest> of) {
        List<Integer> over = of.stream()
                .filter(each -> ratio(each) > 1)
                .map(CylinderTest::cylinder)
                .distinct()
                .sorted()
                .toList();
        List<Integer> near = of.stream()
                .filter(each -> ratio(each) >= NEAR && !over.contains(each.cylinder()))
                .map(CylinderTest::cylinder)
                .distinct()
                .sorted()
                .toList();
        String words = over.isEmpty() ? "" : "cylinder " + DisplayFormat.numbers(over) + " over limit";
        if (!near.isEmpty()) {
            words += (words.isEmpty() ? "cylinder " : ", ") + DisplayFormat.numbers(near) + " near it";
        }
        return words.isEmpty() ? "all inside limits" : words;
    }

    /** The latest values of a cylinder against their limits: over, near, inside, or not tested. */
    String state(int cylinder) {
        double worst = Double.NaN;
        for (TestKind kind : List.of(TestKind.BALANCE, TestKind.RETURN_FLOW)) {
            List<CylinderTest> of = of(cylinder, kind);
            double ratio = of.isEmpty() ? Double.NaN : ratio(of.get(of.size() - 1));
            worst = Double.isNaN(worst) || ratio > worst ? ratio : worst;
        }
        return Double.isNaN(worst)
                ? "not tested"
                : worst > 1 ? "over limit" : worst >= NEAR ? "near limit" : "inside limits";
    }

    /** Tests of a cylinder that can be held against a limit, by time. */
    List<CylinderTest> of(int cylinder, TestKind kind) {
        return tests.stream()
                .filter(each -> each.cylinder() == cylinder && each.test() == kind)
                .filter(each -> !Double.isNaN(ratio(each)))
                .sorted(Comparator.comparing(CylinderTest::testedAt))
                .toList();
    }

    /** Value over limit; NaN where they cannot be compared. */
    double ratio(CylinderTest test) {
        return rules.ratio(family.family(), test);
    }

    Optional<DueRule> limit(TestKind kind) {
        return switch (kind) {
            case BALANCE -> rules.find(family.family(), RuleKind.BALANCE);
            case RETURN_FLOW -> rules.find(family.family(), RuleKind.RETURN_FLOW);
            case CONTRIBUTION -> Optional.empty();
        };
    }

    /** The site's or the planner's limit for the chance of failing within 12 weeks, 0..1; empty for none. */
    Optional<Double> riskLimit() {
        return rules.find(family.family(), RuleKind.RISK).map(rule -> rule.limit() / 100);
    }

    List<CylinderTest> all() {
        return tests;
    }

    private LocalDate day(CylinderTest test) {
        return LocalDate.ofInstant(test.testedAt(), zone);
    }

    private static String word(TestKind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
