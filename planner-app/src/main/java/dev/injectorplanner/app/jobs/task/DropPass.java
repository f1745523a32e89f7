package dev.injectorplanner.app.jobs.task;

import dev.injectorplanner.app.drop.DropFolder;
import dev.injectorplanner.app.drop.Dropped;
import dev.injectorplanner.app.drop.Dropped.Outcome;
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
        List<Dropped> all = folder.pass();
        told.accept(Dropped.loaded(all));
        Map<String, Long> counts = new LinkedHashMap<>();
        counts.put("loaded", count(all, Outcome.DONE));
        counts.put("refused", count(all, Outcome.REFUSED));
        counts.put("waiting", count(all, Outcome.WAITING));
        return TaskResult.counted(counts);
    }

    private static long count(List<Dropped> all, Outcome outcome) {
        return all.stream().filter(each -> each.outcome() == outcome).count();
    }
}
