package dev.injectorplanner.app.command;

import dev.injectorplanner.core.plan.PlanChange;
import dev.injectorplanner.core.plan.PlanChange.Stay;
import dev.injectorplanner.core.units.SiteForm;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What a trial changes, on the terminal. */
final class ChangePrinter {
    private static final int SHOWN = 40;

    private final PrintWriter out;
    private final String currency;

    ChangePrinter(PrintWriter out, SiteForm form) {
        this.out = out;
        this.currency = form.currency().isEmpty() ? "" : form.currency() + " ";
    }

    void print(PlanChange change) {
        out.printf(
                Locale.ROOT,
                "%nPreview: the plan costs %,.0f %s%s, takes %+.1f hours, and expects %+.2f failures (%.1f"
                        + " before)%n",
                Math.abs(change.cost()),
                currency,
                change.cost() < 0 ? "less" : "more",
                change.hours(),
                change.expectedFailures(),
                change.expectedFailuresBefore());
        Double gap = change.gap();
        Double before = change.gapBefore();
        if (gap != null && before != null) {
            out.printf(
                    Locale.ROOT, "Within %.2f %% of the best possible plan, before %.2f %%%n", 100 * gap, 100 * before);
        }
        change.visits().stream()
                .limit(SHOWN)
                .forEach(visit -> out.println("  " + visit.truck() + " (" + visit.depot() + "): "
                        + inShort(visit.before()) + " -> " + inShort(visit.after())));
        if (change.visits().size() > SHOWN) {
            out.printf("  ... %d visits in total%n", change.visits().size());
        }
        if (change.visits().isEmpty()) {
            out.println("  No visit moves.");
        }
    }

    private static String inShort(@Nullable Stay stay) {
        if (stay == null) {
            return "no visit";
        }
        List<String> work = new ArrayList<>();
        if (!stay.cylinders().isEmpty()) {
            work.add("cyl " + stay.cylinders().stream().map(String::valueOf).collect(Collectors.joining(" ")));
        }
        work.addAll(stay.along());
        return stay.week() + " (" + String.join(", ", work) + ")";
    }
}
