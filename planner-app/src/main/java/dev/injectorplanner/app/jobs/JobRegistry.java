package dev.injectorplanner.app.jobs;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which job does what here. A job without a task is never fired, and shown as not set up. */
public final class JobRegistry {
    private final Map<JobKind, JobTask> tasks;

    private JobRegistry(Map<JobKind, JobTask> tasks) {
        this.tasks = tasks;
    }

    public static Builder builder() {
        return new Builder();
    }

    public Optional<JobTask> find(JobKind kind) {
        return Optional.ofNullable(tasks.get(kind));
    }

    /** The jobs that have a task, in their order. */
    public Set<JobKind> kinds() {
        return Collections.unmodifiableSet(tasks.keySet());
    }

    /** Gathers tasks. */
    public static final class Builder {
        private final Map<JobKind, JobTask> tasks = new EnumMap<>(JobKind.class);

        private Builder() {}

        /** @throws IllegalArgumentException where the job has a task already */
        public Builder add(JobKind kind, JobTask task) {
            if (tasks.putIfAbsent(kind, task) != null) {
                throw new IllegalArgumentException("two tasks for the " + kind.words());
            }
            return this;
        }

        public JobRegistry build() {
            return new JobRegistry(new EnumMap<>(tasks));
        }
    }
}
