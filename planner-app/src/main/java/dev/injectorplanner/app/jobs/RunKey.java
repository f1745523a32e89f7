package dev.injectorplanner.app.jobs;

import dev.injectorplanner.app.jobs.JobKind.Scope;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * What makes a run one and the same, however often and wherever it is started.
 *
 * @param kind the job
 * @param depot the depot it is for; empty for the whole fleet
 * @param due when it was due, to the second
 */
public record RunKey(JobKind kind, String depot, Instant due) {
    public RunKey {
        due = due.truncatedTo(ChronoUnit.SECONDS);
        if (depot.isEmpty() == (kind.scope() == Scope.DEPOT)) {
            throw new InvalidValueException(
                    "depot",
                    depot,
                    depot.isEmpty()
                            ? "is missing: the " + kind.words() + " runs for one depot"
                            : "must be left out: the " + kind.words() + " runs for the whole fleet",
                    depot.isEmpty() ? "name the depot" : "leave the depot out");
        }
        if (!depot.isEmpty()) {
            depot = Require.name("depot", depot);
        }
    }

    /** The depot, or nothing for the whole fleet. */
    public Optional<String> findDepot() {
        return depot.isEmpty() ? Optional.empty() : Optional.of(depot);
    }

    /** The key as it is stored: job, depot, due time. */
    public String text() {
        return kind.name() + "/" + depot + "/" + due;
    }

    @Override
    public String toString() {
        return kind.words() + (depot.isEmpty() ? "" : " of depot " + depot) + ", due " + due;
    }
}
