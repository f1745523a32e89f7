package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.finding.DueFinding;
import java.util.List;

/**
 * A truck with something due that has no visit in the plan.
 *
 * @param truck the truck
 * @param depot its depot
 * @param findings what is due
 * @param reason why it has no visit
 */
public record Unplanned(String truck, String depot, List<DueFinding> findings, String reason) {
    public Unplanned {
        findings = List.copyOf(findings);
    }
}
