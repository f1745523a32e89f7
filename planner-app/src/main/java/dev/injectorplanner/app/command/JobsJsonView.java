package dev.injectorplanner.app.command;

import dev.injectorplanner.app.jobs.JobRun;
import dev.injectorplanner.app.jobs.JobSetting;
import java.time.Instant;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Jobs as JSON has them. */
final class JobsJsonView {
    private JobsJsonView() {}

    record RunView(
            String job,
            @Nullable String depot,
            Instant due,
            boolean byHand,
            String outcome,
            int attempt,
            Instant startedAt,
            @Nullable Instant endedAt,
            @Nullable Instant nextTryAt,
            int passedOver,
            String counts,
            @Nullable String error) {}

    record TimesView(
            String job,
            @Nullable String depot,
            String times,
            String zone,
            boolean enabled,
            boolean bySite,
            Instant next) {}

    static RunView of(JobRun run) {
        return new RunView(
                run.key().kind().option(),
                run.key().findDepot().orElse(null),
                run.key().due(),
                run.byHand(),
                run.outcome().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                run.attempt(),
                run.started(),
                run.ended(),
                run.nextTry(),
                run.passedOver(),
                run.counts(),
                run.error());
    }

    static TimesView of(JobSetting setting, Instant now) {
        return new TimesView(
                setting.kind().option(),
                setting.depot().isEmpty() ? null : setting.depot(),
                setting.times().line(),
                setting.times().zone().getId(),
                setting.enabled(),
                setting.bySite(),
                setting.times().nextAfter(now));
    }
}
