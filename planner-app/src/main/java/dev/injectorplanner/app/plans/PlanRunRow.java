package dev.injectorplanner.app.plans;

import dev.injectorplanner.core.plan.Plan;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.LoggerFactory;
import tools.jackson.core.JacksonException;

@Entity
@Table(name = "plan_run")
class PlanRunRow {
    static final String ALL_DEPOTS = "*";

    /** Rises from plan to plan, whichever node keeps it. */
    @Id
    private long id;

    @Column(nullable = false, length = 200)
    private String runKey;

    @Column(length = 60)
    private @Nullable String depot;

    @Column(nullable = false, length = 60)
    private String depotKey;

    @Column(nullable = false)
    private LocalDate madeFor;

    @Column(nullable = false)
    private Instant keptAt;

    @Column(nullable = false, length = 8)
    private String firstWeek;

    @Column(nullable = false)
    private int weeks;

    @Column(nullable = false)
    private double cost;

    private @Nullable Double bound;

    @Column(length = 1_000_000_000)
    private byte @Nullable [] document;

    protected PlanRunRow() {}

    static PlanRunRow of(long id, String runKey, @Nullable String depot, Instant at, Plan plan) {
        PlanRunRow row = new PlanRunRow();
        row.id = id;
        row.runKey = runKey;
        row.depot = depot;
        row.depotKey = depot == null ? ALL_DEPOTS : depot;
        row.madeFor = plan.today();
        row.keptAt = at;
        row.firstWeek = plan.firstWeek().toString();
        row.weeks = plan.weeks();
        row.cost = plan.cost().cost();
        row.bound = plan.cost().bound();
        row.document = PlanDocument.write(plan);
        return row;
    }

    long id() {
        return id;
    }

    /** The plan it keeps; throws where its document was let go. */
    KeptPlan kept() {
        byte[] kept = document;
        if (kept == null) {
            throw new IllegalStateException("plan " + id + " is no longer stored in full");
        }
        return new KeptPlan(id, depot, keptAt, PlanDocument.read(kept));
    }

    /** The same; empty where an earlier version wrote a document that cannot be read any more: its pages ask for a new plan. */
    Optional<KeptPlan> findKept() {
        try {
            return Optional.of(kept());
        } catch (JacksonException e) {
            LoggerFactory.getLogger(PlanRunRow.class)
                    .warn("Plan {} cannot be read: {}. Fix: plan again", id, e.getOriginalMessage());
            return Optional.empty();
        }
    }
}
