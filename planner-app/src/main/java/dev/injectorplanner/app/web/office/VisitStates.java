package dev.injectorplanner.app.web.office;

import dev.injectorplanner.core.plan.Holds;
import dev.injectorplanner.core.visit.Visit;

/** How a visit stands: a shape and words. */
public final class VisitStates {
    private VisitStates() {}

    /**
     * A state.
     *
     * @param mark the name of its shape
     * @param words its words
     * @param strong whether somebody must act
     */
    public record State(String mark, String words, boolean strong) {}

    public static State of(DepotPlan plan, Visit visit, Holds holds) {
        if (plan.isDone(visit.truck(), visit.week())) {
            return new State("done", "done", false);
        }
        boolean pinned = visit.week().equals(holds.pins().get(visit.truck()));
        boolean told = visit.week().equals(holds.confirmed().get(visit.truck()));
        boolean waits = !visit.cylinders().isEmpty()
                && plan.shortList().stream().anyMatch(line -> line.truck().equals(visit.truck()));
        String words = pinned ? told ? "pinned, confirmed" : "pinned" : told ? "confirmed" : "planned";
        if (waits) {
            return new State("wait", told || pinned ? words + ", waits for parts" : "waits for parts", true);
        }
        return new State(pinned ? "pin" : told ? "told" : "plan", words, false);
    }
}
