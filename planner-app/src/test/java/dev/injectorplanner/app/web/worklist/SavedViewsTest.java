package dev.injectorplanner.app.web.worklist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.testkit.Database;
import dev.injectorplanner.app.web.worklist.SavedViews.SavedView;
import dev.injectorplanner.core.check.InvalidValueException;
import java.time.Instant;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Views are a person's own, replaced under the same name, and no more than a menu can hold. */
class SavedViewsTest {
    private static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");

    @ParameterizedTest
    @EnumSource
    void kept_replaced_and_forgotten(Database database) {
        Store store = database.empty();
        SavedViews views = new SavedViews(store.dataSource());
        views.save("kim", "old tippers", "sort=since", NOW);
        views.save("kim", " old tippers ", "sort=-since", NOW);
        views.save("lee", "mine", "faults=on", NOW);

        assertThat(views.list("kim")).containsExactly(new SavedView("old tippers", "sort=-since"));
        views.forget("kim", "mine", NOW);
        assertThat(views.list("lee")).hasSize(1);
        views.forget("kim", "old tippers", NOW);
        assertThat(views.list("kim")).isEmpty();
        assertThatThrownBy(() -> views.save("kim", " ", "", NOW)).isInstanceOf(InvalidValueException.class);
        for (int at = 0; at < 20; at++) {
            views.save("kim", "view " + at, "", NOW);
        }
        assertThatThrownBy(() -> views.save("kim", "one more", "", NOW)).hasMessageContaining("20");
        views.save("kim", "view 3", "faults=on", NOW);
        assertThat(views.list("kim")).hasSize(20).contains(new SavedView("view 3", "faults=on"));
    }
}
