package dev.injectorplanner.app.web.calendar;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.calendar.CalendarFeeds;
import dev.injectorplanner.app.plans.KeptPlan;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.app.web.frame.Fleets;
import dev.injectorplanner.app.web.frame.PlansInForce;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.reports.calendar.VisitCalendar;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/**
 * A depot's visits as a calendar. The address is the secret: it needs no sign-in, since calendar programs cannot sign in. An
 * address that was closed, one that never was, and a depot without a plan all answer the same.
 */
@RestController
public class CalendarPage {
    /** The path in front of the secret. */
    public static final String PATH = "/calendar/";

    private static final MediaType CALENDAR = new MediaType("text", "calendar", StandardCharsets.UTF_8);

    private final CalendarFeeds feeds;
    private final PlansInForce plans;
    private final Fleets fleets;
    private final SiteSettings settings;

    CalendarPage(Application application, PlansInForce plans, Fleets fleets) {
        this.feeds = new CalendarFeeds(application.store().dataSource());
        this.plans = plans;
        this.fleets = fleets;
        this.settings = application.settings();
    }

    @GetMapping(PATH + "{token}.ics")
    ResponseEntity<byte[]> calendar(@PathVariable("token") String token) throws IOException {
        Optional<CalendarFeeds.Feed> feed = feeds.find(token);
        if (feed.isEmpty()) {
            return ResponseEntity.notFound().build();
        }
        String depot = feed.get().depot();
        Optional<KeptPlan> plan = plans.find(depot);
        Optional<FleetIndex> fleet = fleets.find(depot);
        if (plan.isEmpty() || fleet.isEmpty()) {
            return ResponseEntity.notFound().build();
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new VisitCalendar(fleet.get().fleet(), plan.get().plan(), depot, settings.form()).write(out);
        return ResponseEntity.ok()
                .contentType(CALENDAR)
                .header("Content-Disposition", "inline; filename=\"visits.ics\"")
                .body(out.toByteArray());
    }
}
