package dev.injectorplanner.app.jobs;

import dev.injectorplanner.app.jobs.JobKind.Scope;
import dev.injectorplanner.app.jobs.time.LocalTimes;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.check.InvalidValueException;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.sql.DataSource;

/** When jobs run: the depot's own setting, else the site's for all depots, else the default. */
public final class JobTimes {
    private final StoreSql sql;
    private final DepotZones zones;

    public JobTimes(DataSource pool, DepotZones zones) {
        this.sql = new StoreSql(pool);
        this.zones = zones;
    }

    private record Place(String job, String depot) {}

    private record Set(String line, boolean enabled) {}

    /** Every job of {@code kinds} for every depot it runs for, in that order. */
    public List<JobSetting> list(Collection<JobKind> kinds) {
        Map<Place, Set> stored = stored();
        Map<String, ZoneId> depots = zones.zones();
        List<JobSetting> settings = new ArrayList<>();
        for (JobKind kind : kinds) {
            if (kind.scope() == Scope.FLEET) {
                settings.add(setting(kind, "", DepotZones.fleet(depots), stored));
            } else {
                depots.forEach((depot, zone) -> settings.add(setting(kind, depot, zone, stored)));
            }
        }
        return settings;
    }

    private static JobSetting setting(JobKind kind, String depot, ZoneId zone, Map<Place, Set> stored) {
        Set own = stored.get(new Place(kind.name(), depot));
        Set set = own != null ? own : stored.get(new Place(kind.name(), ""));
        return set == null
                ? new JobSetting(kind, depot, LocalTimes.of(kind.defaultTimes(), zone), true, false)
                : new JobSetting(kind, depot, LocalTimes.of(set.line(), zone), set.enabled(), true);
    }

    private Map<Place, Set> stored() {
        Map<Place, Set> stored = new HashMap<>();
        sql.list(
                        "select job, depot, at_times, enabled from job_setting",
                        row -> Map.entry(
                                new Place(row.getString(1), row.getString(2)),
                                new Set(row.getString(3), row.getBoolean(4))))
                .forEach(entry -> stored.put(entry.getKey(), entry.getValue()));
        return stored;
    }

    /**
     * Sets when a job runs.
     *
     * @param depot one depot; empty for all, or for a job of the whole fleet
     * @param line a crontab line
     * @throws InvalidValueException where line or depot is none
     */
    public void set(JobKind kind, String depot, String line, boolean enabled) {
        checkDepot(kind, depot);
        String clean = LocalTimes.of(line, ZoneOffset.UTC).line();
        sql.retried(connection -> {
            StoreSql.update(connection, "delete from job_setting where job = ? and depot = ?", kind.name(), depot);
            return StoreSql.update(
                    connection,
                    "insert into job_setting (job, depot, at_times, enabled) values (?, ?, ?, ?)",
                    kind.name(),
                    depot,
                    clean,
                    enabled);
        });
    }

    /** Back to what holds for all depots, or to the default. */
    public void reset(JobKind kind, String depot) {
        checkDepot(kind, depot);
        sql.retried(connection ->
                StoreSql.update(connection, "delete from job_setting where job = ? and depot = ?", kind.name(), depot));
    }

    /** @throws InvalidValueException where the job is not one of depots, or the depot is not known, naming those that are */
    public void checkDepot(JobKind kind, String depot) {
        if (depot.isEmpty()) {
            return;
        }
        if (kind.scope() == Scope.FLEET) {
            throw new InvalidValueException(
                    "depot",
                    depot,
                    "must be left out: the " + kind.words() + " runs for the whole fleet",
                    "leave it out");
        }
        Collection<String> known = zones.zones().keySet();
        if (!known.contains(depot)) {
            throw new InvalidValueException(
                    "depot",
                    depot,
                    "is not known",
                    known.isEmpty() ? "load the depots first" : "choose one of " + String.join(", ", known));
        }
    }
}
