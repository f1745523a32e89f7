package dev.injectorplanner.reports.workbook;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.visit.Visit;
import java.util.Collection;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The same words on every sheet. */
public final class Words {
    private Words() {}

    /** {@code Plan of 2026-03-02, weeks 2026-W10 to 2026-W35}. */
    public static String planOf(Plan plan) {
        return "Plan of " + plan.today() + ", weeks " + plan.firstWeek() + " to "
                + plan.firstWeek().plus(plan.weeks() - 1);
    }

    /** {@code 1 2 7}. */
    public static String cylinders(Collection<Integer> cylinders) {
        return cylinders.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    /** What a visit does besides cylinders: {@code injector test, valve clearances}. */
    public static String along(Visit visit) {
        return Stream.concat(visit.inspection() ? Stream.of("injector test") : Stream.empty(), visit.tasks().stream())
                .collect(Collectors.joining(", "));
    }

    /** An enum constant as a person writes it: {@code return flow}. */
    public static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** A quantity without needless decimals, at most two. */
    public static String quantity(double value) {
        return Require.plain(Math.rint(value * 100) / 100);
    }
}
