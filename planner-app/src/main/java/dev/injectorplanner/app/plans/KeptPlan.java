package dev.injectorplanner.app.plans;

import dev.injectorplanner.core.plan.Plan;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A plan that was kept.
 *
 * @param id its number
 * @param depot the depot it plans, or null for all
 * @param keptAt when it was kept
 * @param plan the plan
 */
public record KeptPlan(long id, @Nullable String depot, Instant keptAt, Plan plan) {}
