package dev.injectorplanner.reports.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.schedule.days.DayPlan;
import dev.injectorplanner.core.schedule.days.DayPlan.Laid;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.reports.testkit.SmallFleet;
import dev.injectorplanner.reports.testkit.SmallPlan;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;

class VisitCalendarTest {
    private static final LocalDateTime SEVEN = LocalDateTime.of(2026, 3, 3, 7, 0);

    @Test
    void a_visit_with_bay_and_hour_is_timed_in_the_depots_zone() throws Exception {
        VEvent event = event(timed(SmallPlan.standard()), "+T2");
        assertThat(value(event, "DTSTART")).isEqualTo("20260303T070000");
        assertThat(value(event, "DTEND")).isEqualTo("20260303T150000");
        assertThat(event.getRequiredProperty("DTSTART")
                        .getRequiredParameter("TZID")
                        .getValue())
                .isEqualTo("Europe/Berlin");
        assertThat(value(event, "LOCATION")).isEqualTo("North yard, bay 2");
        assertThat(value(event, "SUMMARY")).isEqualTo("+T2: injectors of cylinders 1 3, valve clearances");
    }

    /** The end of an event of days is the day after it: RFC 5545, 3.6.1. */
    @Test
    void a_visit_without_a_day_is_there_all_week_and_blocks_nobody() throws Exception {
        VEvent event = event(SmallPlan.standard(), "T1");
        assertThat(value(event, "DTSTART")).isEqualTo("20260309");
        assertThat(value(event, "DTEND")).isEqualTo("20260316");
        assertThat(value(event, "TRANSP")).isEqualTo("TRANSPARENT");
        assertThat(value(event, "DESCRIPTION"))
                .isEqualTo("8.0 h of labour, 30.0 l of coolant drained\n"
                        + "@why: a text that begins like a formula stays a text");
    }

    @Test
    void the_same_plan_gives_the_same_bytes() throws Exception {
        assertThat(bytes(timed(SmallPlan.standard()))).isEqualTo(bytes(timed(SmallPlan.standard())));
    }

    @Test
    void a_later_plan_moves_the_same_event() throws Exception {
        Plan later = moved(SmallPlan.standard(), SmallFleet.TODAY.plusDays(1));
        VEvent before = event(SmallPlan.standard(), "T1");
        VEvent after = event(later, "T1");
        assertThat(value(after, "UID")).isEqualTo(value(before, "UID"));
        assertThat(Integer.parseInt(value(after, "SEQUENCE")))
                .isGreaterThan(Integer.parseInt(value(before, "SEQUENCE")));
        assertThat(value(after, "DTSTART")).isEqualTo("20260316");
        assertThat(value(after, "DTSTAMP")).isEqualTo("20260303T000000Z");
    }

    /** The library's own check of RFC 5545, and of RFC 5546 where a method were given. */
    @Test
    void the_calendar_is_valid() throws Exception {
        assertThat(read(timed(SmallPlan.standard())).validate(true).getEntries())
                .isEmpty();
    }

    @Test
    void each_visit_is_an_event_of_its_own() throws Exception {
        List<String> uids = read(SmallPlan.standard()).getComponents(Component.VEVENT).stream()
                .map(event -> value(event, "UID"))
                .toList();
        assertThat(uids).hasSize(3).doesNotHaveDuplicates();
    }

    @Test
    void no_visits_are_a_calendar_all_the_same() throws Exception {
        assertThat(read(SmallPlan.withoutVisits()).getComponents(Component.VEVENT))
                .isEmpty();
    }

    @Test
    void lines_are_folded_at_75_octets_and_end_in_crlf() throws Exception {
        String text = new String(bytes(timed(SmallPlan.standard())), StandardCharsets.UTF_8);
        assertThat(text).endsWith("END:VCALENDAR\r\n").doesNotContain("\r\n\r\n");
        assertThat(text.replace("\r\n", "")).doesNotContain("\n", "\r");
        assertThat(text.split("\r\n"))
                .allSatisfy(line ->
                        assertThat(line.getBytes(StandardCharsets.UTF_8)).hasSizeLessThanOrEqualTo(75));
    }

    /** Source: EU directive 2000/84/EC, last Sunday of March at 1:00 UTC. */
    @Test
    void the_zone_changes_its_clock_on_the_last_sunday_of_march() {
        String zone = ZoneTable.of(ZoneId.of("Europe/Berlin"), LocalDate.of(2026, 3, 2), LocalDate.of(2026, 4, 30))
                .toString();
        assertThat(zone)
                .contains("BEGIN:DAYLIGHT", "DTSTART:20260329T020000", "TZOFFSETFROM:+0100", "TZOFFSETTO:+0200")
                .contains("BEGIN:STANDARD", "DTSTART:20251026T030000", "TZNAME:CET", "TZNAME:CEST");
    }

    @Test
    void a_zone_that_never_changes_has_one_row() {
        String zone = ZoneTable.of(ZoneId.of("UTC"), LocalDate.of(2026, 3, 2), LocalDate.of(2027, 3, 2))
                .toString();
        assertThat(zone)
                .containsOnlyOnce("BEGIN:STANDARD")
                .contains("TZOFFSETTO:+0000")
                .doesNotContain("DAYLIGHT");
    }

    @Test
    void an_hour_after_the_change_is_the_right_moment() throws Exception {
        Plan plan = SmallPlan.standard();
        LocalDateTime afterChange = LocalDateTime.of(2026, 3, 30, 7, 0);
        List<Visit> visits = plan.visits();
        while (visits.stream()
                .anyMatch(visit ->
                        visit.truck().equals("T3") && visit.week().monday().isBefore(afterChange.toLocalDate()))) {
            visits = moved(with(plan, visits, List.of(), SmallFleet.TODAY), SmallFleet.TODAY)
                    .visits();
        }
        VEvent event = event(with(plan, visits, List.of(laid("T3", afterChange)), SmallFleet.TODAY), "T3");
        ZonedDateTime start = ZonedDateTime.from(event.getDateTimeStart().getDate());
        assertThat(start.toInstant()).isEqualTo(Instant.parse("2026-03-30T05:00:00Z"));
    }

    @Test
    void an_unknown_depot_is_a_fault_of_the_caller() {
        assertThatThrownBy(() -> new VisitCalendar(SmallFleet.snapshot(), SmallPlan.standard(), "South"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("South");
    }

    private static Plan timed(Plan plan) {
        return with(plan, plan.visits(), List.of(laid("+T2", SEVEN)), plan.today());
    }

    private static DepotDays laid(String truck, LocalDateTime start) {
        return new DepotDays(
                SmallFleet.DEPOT,
                new DayPlan(List.of(new Laid(truck, 2, start, start.plusHours(8), List.of())), List.of()));
    }

    private static Plan moved(Plan plan, LocalDate today) {
        List<Visit> visits = new ArrayList<>();
        plan.visits()
                .forEach(visit -> visits.add(new Visit(
                        visit.truck(),
                        visit.depot(),
                        visit.family(),
                        visit.week().plus(1),
                        visit.cylinders(),
                        visit.steps(),
                        visit.tasks(),
                        visit.inspection(),
                        visit.labourHours(),
                        visit.drainedLitres(),
                        visit.dueItems(),
                        visit.why())));
        return with(plan, visits, List.of(), today);
    }

    private static Plan with(Plan plan, List<Visit> visits, List<DepotDays> days, LocalDate today) {
        return new Plan(
                today,
                plan.firstWeek(),
                plan.weeks(),
                plan.cost(),
                plan.injectors(),
                plan.risks(),
                plan.lives(),
                plan.signEffects(),
                plan.inspections(),
                plan.expectedFailures(),
                plan.dueItems(),
                visits,
                plan.reasons(),
                plan.unplanned(),
                days,
                plan.loads(),
                plan.parts(),
                plan.cores(),
                plan.claims(),
                plan.coolant(),
                plan.assumptions(),
                plan.safety(),
                plan.lifeChanges(),
                plan.failureBands(),
                plan.records());
    }

    private static byte[] bytes(Plan plan) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new VisitCalendar(SmallFleet.snapshot(), plan, SmallFleet.DEPOT).write(out);
        return out.toByteArray();
    }

    private static Calendar read(Plan plan) throws Exception {
        return new CalendarBuilder().build(new StringReader(new String(bytes(plan), StandardCharsets.UTF_8)));
    }

    private static VEvent event(Plan plan, String truck) throws Exception {
        return read(plan).<VEvent>getComponents(Component.VEVENT).stream()
                .filter(event -> value(event, "SUMMARY").startsWith(truck + ":"))
                .findFirst()
                .orElseThrow();
    }

    private static String value(Component component, String property) {
        return component.getRequiredProperty(property).getValue();
    }
}
