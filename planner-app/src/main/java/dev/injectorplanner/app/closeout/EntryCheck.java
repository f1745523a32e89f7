package dev.injectorplanner.app.closeout;

import dev.injectorplanner.app.closeout.CloseOutEntry.Cylinder;
import dev.injectorplanner.app.closeout.CloseOutEntry.Used;
import dev.injectorplanner.app.entry.EntryProblems;
import dev.injectorplanner.app.entry.KnownFleet;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.fleet.Truck;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Checks a whole entry against the fleet, and gathers all that is wrong with it. */
final class EntryCheck {
    private static final double MOST_HOURS = 500;
    private static final double MOST_PIECES = 10_000;

    private final Connection connection;
    private final StoreWriter writer;
    private final KnownFleet known;
    private final CloseOutEntry entry;
    private final EntryProblems problems = new EntryProblems();

    private final @Nullable CloseOut before;

    EntryCheck(Connection connection, StoreWriter writer, CloseOutEntry entry) {
        this(connection, writer, entry, null);
    }

    /** @param before the version that it corrects, already undone, or null */
    EntryCheck(Connection connection, StoreWriter writer, CloseOutEntry entry, @Nullable CloseOut before) {
        this.connection = connection;
        this.writer = writer;
        this.known = new KnownFleet(writer);
        this.entry = entry;
        this.before = before;
    }

    /**
     * @param at now
     * @param today today at the depot: nothing can be done later
     * @throws RefusedEntryException with all that is wrong
     */
    Checked check(Instant at, LocalDate today) throws SQLException {
        Truck truck = known.truck(entry.truck());
        ZoneId zone = known.depot(truck.depot()).timeZone();
        LocalDate doneOn = day(truck, today);
        Instant moment = moment(doneOn, at, zone);
        double hours = hours();
        new MeterCheck(connection, truck.truck(), moment, entry.meterReplaced(), problems)
                .check(entry.odometerKm(), entry.engineHours());
        problems.guarded("extras", () -> Require.text("extras", entry.extras()));
        LocalDate recheck = entry.recheckOn();
        if (recheck != null && recheck.isBefore(doneOn)) {
            problems.add(
                    "recheckOn", "recheck \"" + recheck + "\": is before the day of the work", "enter a later day");
        }
        week();
        parts();
        tasks(truck);
        List<NewInjector> injectors = cylinders(truck, doneOn);
        tests(moment, known.familyOf(truck));
        problems.throwIfAny();
        return new Checked(entry, truck, doneOn, hours, moment, injectors);
    }

    private LocalDate day(Truck truck, LocalDate today) {
        LocalDate day = entry.doneOn();
        if (day == null) {
            problems.add("doneOn", "date: is empty", "enter the date of the work");
            return today;
        }
        if (day.isAfter(today)) {
            problems.add("doneOn", "day \"" + day + "\": is after today, " + today, "enter the date of the work");
        } else if (day.isBefore(truck.inServiceOn())) {
            problems.add(
                    "doneOn",
                    "day \"" + day + "\": truck " + truck.truck() + " came into service on " + truck.inServiceOn(),
                    "enter the date of the work");
        }
        return day;
    }

    /**
     * When it was finished: the hour entered; else what the corrected version says of the same day; else now, or noon of an
     * earlier day. A second later each time that the truck has a reading or test then.
     */
    private Instant moment(LocalDate doneOn, Instant at, ZoneId zone) throws SQLException {
        Instant moment = finished(doneOn, at, zone);
        while (taken(moment)) {
            moment = moment.plusSeconds(1);
        }
        return moment;
    }

    private Instant finished(LocalDate doneOn, Instant at, ZoneId zone) {
        LocalTime hour = entry.finishedAt();
        if (before != null && before.doneOn().equals(doneOn)) {
            LocalTime kept = before.finishedAt().atZone(zone).toLocalTime().truncatedTo(ChronoUnit.MINUTES);
            if (hour == null || hour.truncatedTo(ChronoUnit.MINUTES).equals(kept)) {
                return before.finishedAt();
            }
        }
        boolean today = LocalDate.ofInstant(at, zone).equals(doneOn);
        if (hour == null) {
            return today
                    ? at.truncatedTo(ChronoUnit.SECONDS)
                    : doneOn.atTime(LocalTime.NOON).atZone(zone).toInstant();
        }
        Instant finished = doneOn.atTime(hour).atZone(zone).toInstant();
        if (today && finished.isAfter(at.plusSeconds(60))) {
            problems.add(
                    "finishedAt",
                    "hour finished \"" + hour + "\": is after now, "
                            + at.atZone(zone).toLocalTime().truncatedTo(ChronoUnit.MINUTES),
                    "enter the hour at which the work was finished");
        }
        return finished;
    }

    private boolean taken(Instant moment) throws SQLException {
        boolean read = !StoreSql.list(
                        connection,
                        "select 1 from reading where truck = ? and taken_at = ?",
                        row -> 1,
                        entry.truck(),
                        moment)
                .isEmpty();
        return read
                || !StoreSql.list(
                                connection,
                                "select 1 from cylinder_test where truck = ? and tested_at = ?",
                                row -> 1,
                                entry.truck(),
                                moment)
                        .isEmpty();
    }

    private double hours() {
        Double hours = entry.labourHours();
        if (hours == null) {
            problems.add("labourHours", "hours worked: is empty", "enter the total hours of everyone who worked on it");
            return 0;
        }
        problems.guarded("labourHours", () -> Require.within("hours worked", hours, 0, MOST_HOURS));
        return hours;
    }

    private void parts() {
        Set<String> seen = new HashSet<>();
        for (Used used : entry.used()) {
            String field = "used." + used.part();
            if (known.findPart(used.part()).isEmpty()) {
                problems.add(field, "part \"" + used.part() + "\": is not known", "choose a part of the kit");
            } else if (!seen.add(used.part())) {
                problems.add(field, "part \"" + used.part() + "\": is a duplicate", "add the quantities together");
            }
            problems.guarded(field, () -> Require.within("pieces of " + used.part(), used.pieces(), 0, MOST_PIECES));
        }
    }

    private List<NewInjector> cylinders(Truck truck, LocalDate doneOn) throws SQLException {
        EngineFamily family = known.familyOf(truck);
        List<FittedInjector> injectors = writer.ofTrucks(FittedInjector.class, List.of(truck.truck()));
        Set<Integer> renewed = entry.cylinders().stream()
                .filter(Cylinder::fitted)
                .map(Cylinder::cylinder)
                .collect(Collectors.toSet());
        CylinderCheck check = new CylinderCheck(connection, known, truck, injectors, doneOn, renewed, problems);
        Set<Integer> seen = new HashSet<>();
        List<NewInjector> checked = new ArrayList<>();
        for (Cylinder each : entry.cylinders()) {
            if (!family.allCylinders().contains(each.cylinder()) || !seen.add(each.cylinder())) {
                problems.add(
                        "c" + each.cylinder() + ".serial",
                        "cylinder \"" + each.cylinder() + "\": is a duplicate, or is not a task of family "
                                + family.family(),
                        "enter each of cylinders 1 to " + family.cylinders() + " once");
            } else if (each.fitted()) {
                NewInjector injector = check.check(each);
                if (injector != null) {
                    checked.add(injector);
                }
            } else {
                reason(each);
            }
        }
        return checked;
    }

    private void reason(Cylinder each) {
        String field = "c" + each.cylinder() + ".reason";
        if (each.reason().isBlank()) {
            problems.add(
                    field,
                    "Cylinder " + each.cylinder() + ": not done, and no reason given",
                    "enter why, so that the next plan can be understood");
        }
        problems.guarded(field, () -> Require.text("reason", each.reason()));
    }

    private void week() {
        String week = entry.week();
        if (week != null) {
            problems.guarded("week", () -> {
                if (!IsoWeek.parse(week).toString().equals(week)) { // plans and holds know it written so
                    throw new InvalidValueException(
                            "week", week, "is not written the way plans write weeks", "write " + IsoWeek.parse(week));
                }
                return week;
            });
        }
    }

    private void tasks(Truck truck) {
        List<String> known = writer.all(IntervalTask.class).stream()
                .filter(row -> row.family().equals(truck.family()))
                .map(IntervalTask::task)
                .toList();
        Set<String> seen = new HashSet<>();
        entry.tasks().stream()
                .filter(task -> !seen.add(task))
                .forEach(task -> problems.add("task", "task \"" + task + "\": is a duplicate", "enter it once"));
        seen.stream()
                .filter(task -> !known.contains(task))
                .forEach(task -> problems.add(
                        "task",
                        "task \"" + task + "\": is not a task of family " + truck.family(),
                        known.isEmpty()
                                ? "enter it under extras; the family has no scheduled services"
                                : "choose from " + String.join(", ", known)));
    }

    private void tests(Instant moment, EngineFamily family) {
        Set<String> seen = new HashSet<>();
        for (CloseOutEntry.Test test : entry.tests()) {
            String field = "t" + test.cylinder() + "." + test.test();
            if (test.cylinder() > family.cylinders() || !seen.add(field)) {
                problems.add(
                        field,
                        "test of cylinder \"" + test.cylinder() + "\": is a duplicate, or family " + family.family()
                                + " has no such cylinder",
                        "enter each of cylinders 1 to " + family.cylinders() + " once");
            }
            problems.guarded(field, () -> test(entry.truck(), test, moment));
        }
    }

    static CylinderTest test(String truck, CloseOutEntry.Test test, Instant moment) {
        return new CylinderTest(
                truck, test.cylinder(), moment, test.test(), test.value(), test.unit(), test.engineState());
    }
}
