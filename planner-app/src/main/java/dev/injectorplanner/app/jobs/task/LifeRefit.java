package dev.injectorplanner.app.jobs.task;

import dev.injectorplanner.app.jobs.JobContext;
import dev.injectorplanner.app.jobs.JobTask;
import dev.injectorplanner.app.jobs.TaskResult;
import dev.injectorplanner.app.planning.Planning;
import dev.injectorplanner.core.due.RuleBook;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.history.LifeSource;
import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.risk.FleetRisk;
import dev.injectorplanner.core.usage.FleetUsage;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Fits lives to the records of the whole fleet, keeps them, and counts what changed since the last refit. */
public final class LifeRefit implements JobTask {
    private final Planning planning;
    private final RefittedLives kept;

    public LifeRefit(Planning planning, RefittedLives kept) {
        this.planning = planning;
        this.kept = kept;
    }

    @Override
    public TaskResult run(JobContext context) {
        List<PartLife> lives = fit(context.day());
        Map<String, RefittedLives.Figures> before = kept.newest();
        Map<String, Long> counts = new LinkedHashMap<>();
        counts.put("lives", (long) lives.size());
        counts.put(
                "fitted to records",
                lives.stream()
                        .filter(life -> life.source() == LifeSource.FITTED)
                        .count());
        counts.put(
                "new",
                lives.stream().filter(life -> !before.containsKey(key(life))).count());
        counts.put(
                "changed", lives.stream().filter(life -> changed(before, life)).count());
        return new TaskResult(counts, kept.keeping(context.key(), lives));
    }

    private List<PartLife> fit(LocalDate today) {
        FleetIndex index = new FleetIndex(planning.fleet(null));
        Policy policy = planning.policy();
        FleetUsage usage = new FleetUsage(index, policy.usageWindowDays(), today);
        RuleBook rules = new RuleBook(index.fleet());
        return FleetRisk.of(index, usage, List.of(), rules::ratio, today, policy.defects(), 1, null)
                .lives()
                .lives();
    }

    private static boolean changed(Map<String, RefittedLives.Figures> before, PartLife life) {
        RefittedLives.Figures was = before.get(key(life));
        return was != null && !was.equals(RefittedLives.Figures.of(life));
    }

    private static String key(PartLife life) {
        return RefittedLives.key(life.part(), life.origin().name());
    }
}
