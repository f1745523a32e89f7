package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.due.DueItem;
import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A truck with an open safety fault, and what the plan does about it. The first thing that a plan tells.
 *
 * @param truck the truck
 * @param depot where it is looked after
 * @param dueItems its safety faults, most pressing first
 * @param hours labour of the diagnosis
 * @param start when its diagnosis begins, local time of the depot; null where there is none
 * @param bay the bay, counted from 1; null where there is none
 * @param heldOff who holds the diagnosis off, or null
 * @param inTheWay why there is no diagnosis though nobody holds it off, or why it is not sooner, in words; else null
 */
public record SafetyCase(
        String truck,
        String depot,
        List<DueItem> dueItems,
        double hours,
        @Nullable LocalDateTime start,
        @Nullable Integer bay,
        @Nullable HeldOff heldOff,
        @Nullable String inTheWay) {
    /** What may happen, for whoever thinks of waiting. Common practice; the engine maker and local codes take precedence. */
    public static final String WARNING =
            "Fuel that leaks can catch fire on hot parts, and fuel under high pressure cuts through skin. A truck with wrong"
                    + " fuel pressure can lose power or stop on the road. Do not drive it before it has been looked at.";

    public SafetyCase {
        truck = Require.name("truck", truck);
        depot = Require.name("depot", depot);
        dueItems = List.copyOf(dueItems);
    }

    /** One line for the top of plan, page and digest. */
    public String words() {
        String fault = dueItems.isEmpty() ? "safety fault" : dueItems.get(0).evidence();
        String more = dueItems.size() > 1 ? ", and " + (dueItems.size() - 1) + " more" : "";
        HeldOff held = heldOff;
        if (held != null) {
            return "Truck " + truck + ": " + fault + more + ". Diagnosis HELD OFF by " + held.by() + " since "
                    + held.since() + ": " + held.reason() + ". " + WARNING;
        }
        LocalDateTime at = start;
        String plan = at == null
                ? "No diagnosis planned: " + inTheWay
                : "Diagnosis on " + at.toLocalDate() + " at " + at.toLocalTime() + ", bay " + bay
                        + (inTheWay == null ? "" : " (" + inTheWay + ")");
        return "Truck " + truck + ": " + fault + more + ". " + plan + ". Do not drive it before then.";
    }
}
