package dev.injectorplanner.app.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.app.calendar.CalendarFeeds.Feed;
import dev.injectorplanner.app.calendar.CalendarFeeds.NewFeed;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.testkit.Database;
import java.time.Instant;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CalendarFeedsTest {
    private static final Instant NOW = Instant.parse("2026-03-02T05:00:00Z");

    @ParameterizedTest
    @EnumSource(Database.class)
    void a_token_opens_its_depot_until_it_is_revoked(Database database) {
        CalendarFeeds feeds = new CalendarFeeds(database.empty().dataSource());
        NewFeed north = feeds.make("North", NOW);
        NewFeed south = feeds.make("South", NOW);
        assertThat(feeds.find(north.token())).hasValue(north.feed());
        assertThat(feeds.find(south.token()).map(Feed::depot)).hasValue("South");
        assertThat(feeds.find(north.token() + "A")).isEmpty();
        assertThat(feeds.find("")).isEmpty();
        feeds.revoke(north.feed().id(), NOW.plusSeconds(60));
        assertThat(feeds.find(north.token())).isEmpty();
        assertThat(feeds.find(south.token())).isPresent();
        assertThat(feeds.list()).extracting(Feed::revokedAt).containsExactly(NOW.plusSeconds(60), null);
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void the_store_does_not_know_the_token(Database database) {
        Store store = database.empty();
        NewFeed feed = new CalendarFeeds(store.dataSource()).make("North", NOW);
        String kept = new StoreSql(store.dataSource())
                .inTransaction(connection -> StoreSql.list(
                                connection, "select token_hash from calendar_feed", row -> row.getString(1))
                        .get(0));
        assertThat(kept).hasSize(64).doesNotContain(feed.token());
        assertThat(feed.token()).hasSize(43).matches("[A-Za-z0-9_-]+");
        assertThat(feed.toString()).doesNotContain(feed.token());
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void what_is_not_there_is_said_in_words(Database database) {
        CalendarFeeds feeds = new CalendarFeeds(database.empty().dataSource());
        assertThatThrownBy(() -> feeds.make("West", NOW))
                .hasMessage("depot \"West\": is not known. Fix: choose one of North, South.");
        assertThatThrownBy(() -> feeds.revoke(7, NOW))
                .hasMessage("calendar \"7\": is not an active address. Fix: use a number from the list of calendars.");
    }
}
