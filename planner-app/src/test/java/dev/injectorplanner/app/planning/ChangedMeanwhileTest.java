package dev.injectorplanner.app.planning;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.holds.HoldBook;
import dev.injectorplanner.app.plans.KeptPlans;
import dev.injectorplanner.app.site.SettingKinds;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.app.store.OneFleet;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.schedule.EarliestFit;
import dev.injectorplanner.core.units.SiteUnits;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Somebody sets a figure while a plan is being made with the one before. */
class ChangedMeanwhileTest {
    @TempDir
    private Path folder;

    private Application application;
    private SiteSettings settings;

    @BeforeEach
    void open() {
        application = Application.open(StoreSettings.embedded(folder));
        OneFleet.into(application.store());
        settings = application.settings();
    }

    @AfterEach
    void close() {
        application.close();
    }

    /** Plans and keeps, and somebody does something in the middle of it. */
    private boolean isBeforeChange(Runnable meanwhile) {
        Planner planner = new Planner(request -> {
            meanwhile.run();
            return new EarliestFit().schedule(request);
        });
        Store store = application.store();
        Planning planning = new Planning(store, planner, new HoldBook(store), new KeptPlans(store));
        Planning.Planned planned = planning.plan(OneOfEach.DAY, planning.policy(), null);
        long number = planning.keep("run", Instant.EPOCH, planned, null, "ann");
        return settings.isBeforeChange(number);
    }

    private void wish(String typed) {
        settings.change(
                List.of(new SiteSettings.Wish(SettingKinds.get("rescheduling-cost"), typed, null)),
                SiteUnits.METRIC,
                "ann");
    }

    @Test
    void a_plan_that_ends_after_the_change_was_made_before_it() {
        assertThat(isBeforeChange(() -> wish("120"))).isTrue();
    }

    @Test
    void a_change_before_it_was_begun_is_known_to_it() {
        wish("120");

        assertThat(isBeforeChange(() -> {})).isFalse();
    }

    @Test
    void what_was_refused_changed_nothing() {
        assertThat(isBeforeChange(() -> wish("many"))).isFalse();
    }
}
