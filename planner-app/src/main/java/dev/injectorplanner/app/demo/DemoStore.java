package dev.injectorplanner.app.demo;

import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.jobs.DepotZones;
import dev.injectorplanner.app.jobs.JobKind;
import dev.injectorplanner.app.jobs.JobTimes;
import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.core.generate.DemoFleet;
import java.nio.file.Path;
import java.util.List;
import javax.sql.DataSource;

/** What lies in the demo's store. */
public final class DemoStore {
    private DemoStore() {}

    /**
     * What filling it gave.
     *
     * @param reports of the files, in their order
     * @param planned the plan that is in force there, with its fleet
     */
    public record Filled(List<FileReport> reports, Planned planned) {
        public Filled {
            reports = List.copyOf(reports);
        }
    }

    /**
     * Loads files, plans all depots as of the demo's day, and raises alerts, as the nightly job would have. Scheduled jobs are
     * left to be run by hand: by the wall's clock they would plan for another day than the pages show.
     */
    public static Filled fill(Application application, List<Path> files, LoadListener listener) {
        List<FileReport> reports = application.intake().load(files, LoadSettings.of(Mode.GOOD_ROWS), listener);
        Planned planned = application
                .planning()
                .planAndKeep(
                        "demo",
                        DemoDay.PLANNED_AT,
                        DemoFleet.TODAY,
                        application.planning().policy(),
                        null);
        new Alerts(application.store().dataSource()).update(planned, DemoDay.PLANNED_AT, "demo");
        byHandOnly(application.store().dataSource());
        return new Filled(reports, planned);
    }

    private static void byHandOnly(DataSource pool) {
        JobTimes times = new JobTimes(pool, new DepotZones(pool));
        for (JobKind kind : JobKind.values()) {
            times.set(kind, "", kind.defaultTimes(), false);
        }
    }
}
