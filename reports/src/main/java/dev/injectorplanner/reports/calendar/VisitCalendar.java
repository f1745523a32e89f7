package dev.injectorplanner.reports.calendar;

import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.schedule.days.DayPlan;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.reports.workbook.Words;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.Name;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Transp;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;

/**
 * A depot's visits as a calendar: timed where bay and hour are known, else over the whole ISO week. The same plan gives
 * the same bytes. A visit keeps its identity from plan to plan, whatever week it moves to, until its truck's injectors
 * are touched; a later plan's version has the higher sequence number.
 */
public final class VisitCalendar {
    private static final int UNFOLDED = Integer.MAX_VALUE / 2;

    private final Plan plan;
    private final Depot depot;
    private final SiteForm form;
    private final Map<String, LocalDate> lastWork = new HashMap<>();

    /** In km, litres and degrees C. */
    public VisitCalendar(FleetSnapshot fleet, Plan plan, String depot) {
        this(fleet, plan, depot, SiteForm.STANDARD);
    }

    /**
     * In a site's form.
     *
     * @throws IllegalArgumentException where the fleet has no such depot
     */
    public VisitCalendar(FleetSnapshot fleet, Plan plan, String depot, SiteForm form) {
        this.plan = plan;
        this.form = form;
        this.depot = fleet.depots().stream()
                .filter(each -> each.depot().equals(depot))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the fleet has no depot " + depot));
        for (FittedInjector injector : fleet.injectors()) {
            LocalDate out = injector.removedOn();
            worked(injector.truck(), injector.fittedOn());
            worked(injector.truck(), out == null ? injector.fittedOn() : out);
        }
        for (CylinderTest test : fleet.cylinderTests()) {
            worked(test.truck(), test.testedAt().atZone(ZoneOffset.UTC).toLocalDate());
        }
    }

    private void worked(String truck, LocalDate day) {
        lastWork.merge(truck, day, (one, other) -> one.isAfter(other) ? one : other);
    }

    public void write(OutputStream out) throws IOException {
        Calendar calendar = new Calendar();
        calendar.add(new ProdId("-//Injector Planner//Visits//EN"));
        calendar.add(ImmutableVersion.VERSION_2_0);
        calendar.add(ImmutableCalScale.GREGORIAN);
        calendar.add(new Name("Visits, " + depot.name()));
        LocalDate last = plan.firstWeek().plus(plan.weeks()).monday();
        calendar.add(ZoneTable.of(depot.timeZone(), plan.firstWeek().monday(), last));
        visits().forEach(visit -> calendar.add(event(visit)));
        StringWriter unfolded = new StringWriter();
        new CalendarOutputter(true, UNFOLDED).output(calendar, unfolded);
        out.write(OctetFolding.fold(unfolded.toString()).getBytes(StandardCharsets.UTF_8));
    }

    private List<Visit> visits() {
        return plan.visits().stream()
                .filter(visit -> visit.depot().equals(depot.depot()))
                .toList();
    }

    private VEvent event(Visit visit) {
        VEvent event = new VEvent(false);
        event.add(new Uid(uid(visit)));
        event.add(new DtStamp(plan.today().atStartOfDay(ZoneOffset.UTC).toInstant()));
        event.add(new Sequence((int) plan.today().toEpochDay()));
        Optional<DayPlan.Laid> place = DepotDays.find(plan.days(), visit);
        if (place.isPresent()) {
            event.add(new DtStart<>(place.get().start().atZone(depot.timeZone())));
            event.add(new DtEnd<>(place.get().end().atZone(depot.timeZone())));
        } else {
            event.add(new DtStart<>(visit.week().monday()));
            event.add(new DtEnd<>(visit.week().sunday().plusDays(1)));
            event.add(new Transp(Transp.VALUE_TRANSPARENT)); // somewhere in that week: it blocks nobody's day
        }
        event.add(new Summary(visit.truck() + ": " + work(visit)));
        event.add(new Location(
                depot.name() + place.map(laid -> ", bay " + laid.bay()).orElse("")));
        event.add(new Description(form.sentence(description(visit))));
        return event;
    }

    /** Source of the form: RFC 4122, 4.3, a UUID made from a name. */
    private String uid(Visit visit) {
        String name = visit.truck() + (visit.diagnosis() ? " diagnosis" : "") + " after "
                + lastWork.getOrDefault(visit.truck(), LocalDate.MIN);
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)).toString();
    }

    private static String work(Visit visit) {
        String along = Words.along(visit);
        if (visit.cylinders().isEmpty()) {
            return along;
        }
        String injectors = (visit.cylinders().size() == 1 ? "injector of cylinder " : "injectors of cylinders ")
                + Words.cylinders(visit.cylinders());
        return along.isEmpty() ? injectors : injectors + ", " + along;
    }

    private static String description(Visit visit) {
        String hours = String.format(Locale.ROOT, "%.1f h of labour", visit.labourHours());
        String coolant = visit.drainedLitres() > 0
                ? String.format(Locale.ROOT, ", %.1f l of coolant drained", visit.drainedLitres())
                : "";
        return hours + coolant + "\n" + visit.why();
    }
}
