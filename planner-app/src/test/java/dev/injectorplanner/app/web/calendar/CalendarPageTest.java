package dev.injectorplanner.app.web.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.calendar.CalendarFeeds;
import dev.injectorplanner.app.calendar.CalendarFeeds.NewFeed;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.testkit.PlannerRuns;
import dev.injectorplanner.app.web.RunningApp;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.visit.Visit;
import java.io.StringReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Instant;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;

/** A calendar program looks in: no sign-in, only the secret address. */
@PlannerRuns
class CalendarPageTest {
    private static final Instant NOW = Instant.parse("2026-03-02T04:00:00Z");

    private static HttpResponse<String> get(URI address, String token) throws Exception {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(address.resolve("/calendar/" + token + ".ics"))
                                .build(),
                        BodyHandlers.ofString());
    }

    @Test
    void the_secret_address_shows_the_visits_until_it_is_closed(RunningApp app) throws Exception {
        CalendarFeeds feeds = new CalendarFeeds(app.application().store().dataSource());
        NewFeed feed = feeds.make("North", NOW);
        assertThat(get(app.address(), feed.token()).statusCode())
                .as("no plan yet")
                .isEqualTo(404);
        List<Visit> visits = app.application()
                .planning()
                .planAndKeep("test", NOW, OneOfEach.DAY, Policy.standard(), "North")
                .plan()
                .visits();

        HttpResponse<String> answer = get(app.address(), feed.token());
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type")).hasValue("text/calendar;charset=UTF-8");
        Calendar calendar = new CalendarBuilder().build(new StringReader(answer.body()));
        assertThat(calendar.<VEvent>getComponents("VEVENT")).hasSameSizeAs(visits);

        assertThat(get(app.address(), "guessed").statusCode()).isEqualTo(404);
        feeds.revoke(feed.feed().id(), NOW);
        assertThat(get(app.address(), feed.token()).statusCode()).isEqualTo(404);
    }
}
