package dev.injectorplanner.app.jobs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.app.store.FleetMerge;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.check.InvalidValueException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobTimesTest {
    @TempDir
    private Path folder;

    @Test
    void a_depots_own_time_goes_before_the_one_for_all_and_that_before_the_default() {
        try (Store store = Store.open(StoreSettings.embedded(folder))) {
            try (StoreWriter writer = store.writer()) {
                FleetMerge.into(writer, OneOfEach.fleet());
                writer.commit();
            }
            JobTimes times = new JobTimes(store.dataSource(), new DepotZones(store.dataSource()));
            JobKind plan = JobKind.NIGHTLY_PLAN;
            assertThat(only(times)).isEqualTo("30 2 * * * Europe/Riga true false");
            times.set(plan, "", "0 1 * * *", true);
            assertThat(only(times)).isEqualTo("0 1 * * * Europe/Riga true true");
            times.set(plan, "North", "0  3 * *   mon-fri", false);
            assertThat(only(times)).isEqualTo("0 3 * * mon-fri Europe/Riga false true");
            times.reset(plan, "North");
            times.reset(plan, "");
            assertThat(only(times)).isEqualTo("30 2 * * * Europe/Riga true false");
            assertThatThrownBy(() -> times.set(plan, "South", "0 1 * * *", true))
                    .isInstanceOf(InvalidValueException.class)
                    .hasMessageContaining("Fix: choose one of North");
            assertThatThrownBy(() -> times.set(JobKind.BACKUP, "North", "0 1 * * *", true))
                    .hasMessageContaining("runs for the whole fleet");
            assertThatThrownBy(() -> times.set(plan, "", "at night", true)).hasMessageContaining("five fields");
        }
    }

    private static String only(JobTimes times) {
        List<JobSetting> list = times.list(List.of(JobKind.NIGHTLY_PLAN));
        assertThat(list).hasSize(1);
        JobSetting setting = list.get(0);
        return setting.times() + " " + setting.enabled() + " " + setting.bySite();
    }

    @Test
    void the_fleet_keeps_the_time_of_most_depots() {
        ZoneId riga = ZoneId.of("Europe/Riga");
        ZoneId berlin = ZoneId.of("Europe/Berlin");
        assertThat(DepotZones.fleet(Map.of("a", riga, "b", berlin, "c", riga))).isEqualTo(riga);
        assertThat(DepotZones.fleet(Map.of("a", riga, "b", berlin))).isEqualTo(berlin);
        assertThat(DepotZones.fleet(Map.of())).isEqualTo(ZoneOffset.UTC);
    }
}
