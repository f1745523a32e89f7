package dev.injectorplanner.app.jobs.task;

import dev.injectorplanner.app.drop.DropFolder;
import dev.injectorplanner.app.drop.DropResult;
import dev.injectorplanner.app.drop.DropResult.Outcome;
import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.jobs.JobContext;
import dev.injectorplanner.app.jobs.JobTask;
import dev.injectorplanner.app.jobs.TaskResult;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** One look into the drop folder. */
public final class DropPass implements JobTask {
    private final DropFolder folder;
    private final Consumer<List<FileReport>> told;

    /** @param told hears of the files that were loaded */
    public DropPass(DropFolder folder, Consumer<List<FileReport>> told) {
        this.folder = folder;
        this.told = told;
    }

    @Override
    public TaskResult run(JobContext context) {
        List<DropResult> all = folder.pass();
        told.accept(DropResult.loaded(all));
        Map<String, Long> counts = new LinkedHashMap<>();
        counts.put("loaded", count(all, Outcome.DONE));
        counts.put("refused", count(all, Outcome.REFUSED));
        counts.put("waiting", count(all, Outcome.WAITING));
        return TaskResult.counted(counts);
    }

    private static long count(List<DropResult> all, Outcome outcome) {
        return all.stream().filter(each -> each.outcome() == outcome).count();
    }
}
