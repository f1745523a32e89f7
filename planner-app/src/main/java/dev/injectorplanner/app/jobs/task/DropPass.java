package dev.injectorplanner.app.jobs.task;

import dev.injectorplanner.app.drop.DropFolder;
import dev.injectorplanner.app.drop.DropResult;
import dev.injectorplanner.app.drop.DropResult.Outcome;
import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadState;
import dev.injectorplanner.app.intake.TableCount;
import dev.injectorplanner.app.jobs.JobContext;
import dev.injectorplanner.app.jobs.JobTask;
import dev.injectorplanner.app.jobs.TaskResult;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** One look into the drop folder. */
public final class DropPass implements JobTask {
    private final DropFolder folder;
    private final InstantSource clock;
    private final Consumer<List<FileReport>> told;

    /** @param told hears of the files that were loaded */
    public DropPass(DropFolder folder, InstantSource clock, Consumer<List<FileReport>> told) {
        this.folder = folder;
        this.clock = clock;
        this.told = told;
    }

    @Override
    public TaskResult run(JobContext context) {
        LoadState state = new LoadState(clock);
        List<DropResult> all = folder.pass(new LoadListener() {
            @Override
            public void starting(Path file, long rows) {
                state.starting(file, rows);
                context.progress().accept(state.line());
            }

            @Override
            public void refused(Path file, long rows) {
                state.refused(file, rows);
            }

            @Override
            public void done(Path file, long rows) {
                state.done(file, rows);
                context.progress().accept(state.line());
            }
        });
        told.accept(DropResult.loaded(all));
        Map<String, Long> counts = new LinkedHashMap<>();
        counts.put("loaded", count(all, Outcome.DONE));
        counts.put("refused", count(all, Outcome.REFUSED));
        counts.put("waiting", count(all, Outcome.WAITING));
        List<TableCount> tables = DropResult.loaded(all).stream()
                .flatMap(report -> report.tables().stream())
                .toList();
        if (!tables.isEmpty()) {
            long read = tables.stream().mapToLong(TableCount::read).sum();
            long refused = tables.stream().mapToLong(TableCount::refused).sum();
            counts.put("rows read", read);
            counts.put("rows stored or unchanged", read - refused);
            counts.put("rows refused", refused);
        }
        return TaskResult.counted(counts);
    }

    private static long count(List<DropResult> all, Outcome outcome) {
        return all.stream().filter(each -> each.outcome() == outcome).count();
    }
}
