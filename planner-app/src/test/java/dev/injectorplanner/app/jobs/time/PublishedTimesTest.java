package dev.injectorplanner.app.jobs.time;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Due times against crontab(5) cases and clock changes from outside; sources stand beside the files in {@code published}. */
class PublishedTimesTest {
    static Stream<JsonNode> crontab() {
        return JsonMapper.shared().readTree(text("crontab.json")).get("cases").valueStream();
    }

    static Stream<List<String>> localTimes() {
        return text("local-times.csv").lines().skip(1).map(line -> List.of(line.split(",", -1)));
    }

    static Stream<List<String>> clockChanges() {
        return text("clock-changes.csv").lines().skip(1).map(line -> List.of(line.split(",", -1)));
    }

    @ParameterizedTest
    @MethodSource("crontab")
    void times_of_a_crontab_line(JsonNode given) {
        String line = given.get("expression").asString();
        LocalTimes times = LocalTimes.of(line, ZoneId.of(given.get("zone").asString()));
        Instant after = instant(given.get("after").asString());
        if (given.has("expected")) {
            assertThat(next(times, after, given.get("expected").size())).isEqualTo(instants(given.get("expected")));
        } else {
            // Our policy: a skipped time is due when the clock jumps (croner's), a doubled one once (cron_parser's).
            JsonNode ours = given.get(line.startsWith("30 2") ? "croner" : "cron_parser");
            assertThat(next(times, after, ours.size())).isEqualTo(instants(ours));
        }
    }

    @ParameterizedTest
    @MethodSource("localTimes")
    void a_daily_time_is_due_once_on_every_day_of_the_table(List<String> row) {
        ZoneId zone = ZoneId.of(row.get(0));
        LocalDateTime local = LocalDateTime.parse(row.get(1));
        LocalTimes times = LocalTimes.of(local.getMinute() + " " + local.getHour() + " * * *", zone);
        Instant midnight = local.toLocalDate().atStartOfDay(zone).toInstant();
        Instant nextMidnight =
                local.toLocalDate().plusDays(1).atStartOfDay(zone).toInstant();
        Instant due = times.nextAfter(midnight.minusMillis(1));
        if (row.get(2).equals("gap")) {
            assertThat(due).isEqualTo(zone.getRules().getTransition(local).getInstant());
            assertThat(due).isBetween(instant(row.get(3)), instant(row.get(4)));
        } else {
            assertThat(due).isEqualTo(instant(row.get(3))); // the earlier of the two where it comes twice
        }
        assertThat(times.nextAfter(due)).isAfterOrEqualTo(nextMidnight);
        assertThat(times.latestUntil(nextMidnight.minusMillis(1))).isEqualTo(due);
    }

    @ParameterizedTest
    @MethodSource("clockChanges")
    void a_time_inside_the_change_is_due_at_the_jump_or_the_first_time(List<String> row) {
        ZoneId zone = ZoneId.of(row.get(0));
        Instant change = instant(row.get(1));
        boolean gap = row.get(6).equals("gap");
        LocalDateTime doubtful = (gap
                        ? OffsetDateTime.parse(row.get(2)).toLocalDateTime()
                        : OffsetDateTime.parse(row.get(3)).toLocalDateTime())
                .plusMinutes(gap ? 31 : 30);
        LocalTimes times = LocalTimes.of(doubtful.getMinute() + " " + doubtful.getHour() + " * * *", zone);
        Instant due = times.nextAfter(change.minusSeconds(3_599));
        assertThat(due).isEqualTo(gap ? change : change.minusSeconds(1_800));
        assertThat(times.nextAfter(due)).isAfter(change.plusSeconds(12 * 3_600));
    }

    @Test
    void a_quarter_of_an_hour_stays_one_through_both_changes() {
        for (String zone : List.of("America/Chicago", "Europe/Berlin")) {
            LocalTimes times = LocalTimes.of("*/15 * * * *", ZoneId.of(zone));
            for (String start :
                    List.of("2026-03-08T05:00Z", "2026-11-01T04:00Z", "2026-03-28T22:00Z", "2026-10-24T21:00Z")) {
                Instant from = instant(start);
                List<Instant> due = next(times, from, 40);
                for (int i = 0; i < 40; i++) {
                    assertThat(due.get(i)).isEqualTo(from.plusSeconds(900L * (i + 1)));
                }
            }
        }
    }

    private static List<Instant> next(LocalTimes times, Instant after, int count) {
        List<Instant> found = new ArrayList<>();
        Instant at = after;
        for (int i = 0; i < count; i++) {
            at = times.nextAfter(at);
            found.add(at);
        }
        return found;
    }

    private static List<Instant> instants(JsonNode list) {
        return list.valueStream().map(node -> instant(node.asString())).toList();
    }

    private static Instant instant(String text) {
        return OffsetDateTime.parse(text).toInstant();
    }

    private static String text(String file) {
        try (InputStream in = PublishedTimesTest.class.getResourceAsStream("/published/" + file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
