package dev.injectorplanner.core.history;

import dev.injectorplanner.core.fleet.FailureAnswer;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.usage.FleetUsage;
import dev.injectorplanner.core.usage.MeterUsage;
import dev.injectorplanner.core.usage.TruckUsage;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The lives of all injectors in a fleet's tables, as far as they were observed. A truck's records begin with its
 * first meter reading, or on the day named for it or its depot, and end with its last reading: an injector that was in before enters at the age it had then (delayed entry), because had it
 * failed earlier nobody would have noted it; one that came out before is left out. Lives of age 0 are left out.
 */
public final class LifeHistory {
    private final FleetUsage usage;
    private final LocalDate today;
    private final List<UnitLife> units = new ArrayList<>();
    private final List<FailureQuestion> questions;
    private final Map<String, LocalDate> notRecordedUntil = new HashMap<>();
    private int beforeRecords;
    private int withoutAge;
    private int unknownHistory;

    /** @param today the day the usage was made for; what was noted after it is left alone */
    public LifeHistory(FleetIndex index, FleetUsage usage, LocalDate today) {
        this.usage = usage;
        this.today = today;
        for (FailureAnswer answer : index.fleet().failureAnswers()) {
            if (answer.answer() == FailureAnswer.Answer.NOT_RECORDED) {
                notRecordedUntil.put(answer.part(), answer.answeredOn());
            }
        }
        for (Truck truck : index.fleet().trucks()) {
            TruckUsage meters = usage.find(truck.truck()).orElse(null);
            LocalDate from = usage.recordsFrom(truck.truck());
            List<FittedInjector> rows = index.injectorsOf(truck.truck());
            if (meters == null || from == null) {
                withoutAge += rows.size();
            } else {
                rows.forEach(row -> add(truck, row, meters, from));
            }
        }
        questions = FailureQuestion.of(units, index.fleet().failureAnswers());
        Set<String> asked = questions.stream().map(FailureQuestion::part).collect(Collectors.toSet());
        units.removeIf(unit -> asked.contains(unit.part()));
    }

    /** Parts with long service and no failure on record: nothing is learned of them until somebody answers. */
    public List<FailureQuestion> questions() {
        return questions;
    }

    /** Injectors fitted before the records began, or of unknown origin: no life is learned from them. */
    public int unknownHistory() {
        return unknownHistory;
    }

    /** Lives under observation, by truck, cylinder and day of fitting. */
    public List<UnitLife> units() {
        return List.copyOf(units);
    }

    /** Injectors that came out before their truck's records begin. */
    public int beforeRecords() {
        return beforeRecords;
    }

    /** Injectors whose age no meter shows, or whose age is 0. */
    public int withoutAge() {
        return withoutAge;
    }

    /** Age of a unit on a day within its observation, within its observed stretch; null where the meters cannot say. */
    public @Nullable Double ageOn(UnitLife unit, LocalDate day, Clock clock) {
        Span span = unit.on(clock);
        TruckUsage meters = usage.find(unit.truck()).orElse(null);
        if (span == null || meters == null) {
            return null;
        }
        MeterUsage meter = clock.of(meters);
        Double then = meter.meterOn(day);
        Double atExit = meter.meterOn(unit.exitOn());
        return then == null || atExit == null
                ? null
                : Double.valueOf(Math.max(span.entry(), Math.min(span.exit(), span.exit() - (atExit - then))));
    }

    /** Usual use a week of a unit's truck on a clock; 0 where it is not known. */
    public double perWeek(UnitLife unit, Clock clock) {
        return usage.find(unit.truck())
                .map(meters -> clock.of(meters).perWeek())
                .orElse(0.0);
    }

    private void add(Truck truck, FittedInjector row, TruckUsage meters, LocalDate truckFrom) {
        LocalDate last = lastDay(truck);
        LocalDate removedOn = row.removedOn();
        boolean out = removedOn != null && !removedOn.isAfter(lastDayOfService(truck));
        LocalDate exitOn = out && removedOn != null ? removedOn : last;
        LocalDate recordsFrom = latest(truckFrom, notRecordedUntil.get(row.part()));
        boolean failedAtOnce = out && exitOn.equals(row.fittedOn()) && row.found() == Found.FAILED;
        if (!exitOn.isAfter(recordsFrom) && !failedAtOnce || exitOn.isBefore(recordsFrom)) {
            beforeRecords += row.fittedOn().isAfter(last) ? 0 : 1;
            return;
        }
        if (!row.fittingKnown() || row.origin() == Origin.UNKNOWN) {
            unknownHistory++;
            return;
        }
        boolean seenFromNew = !row.fittedOn().isBefore(recordsFrom);
        LocalDate from = seenFromNew ? row.fittedOn() : recordsFrom;
        Span km = spanOf(row, meters, from, exitOn, out, failedAtOnce, Clock.DISTANCE);
        Span hours = spanOf(row, meters, from, exitOn, out, failedAtOnce, Clock.HOURS);
        if (km == null && hours == null) {
            withoutAge++;
            return;
        }
        units.add(new UnitLife(
                row.truck(),
                row.cylinder(),
                row.part(),
                row.origin(),
                row.fittedOn(),
                from,
                exitOn,
                out ? endOf(row) : LifeEnd.IN_SERVICE,
                km,
                hours));
    }

    private @Nullable Span spanOf(
            FittedInjector row,
            TruckUsage meters,
            LocalDate from,
            LocalDate exitOn,
            boolean out,
            boolean failedAtOnce,
            Clock clock) {
        MeterUsage meter = clock.of(meters);
        if (failedAtOnce) { // within its first day: that day's use is the most it can have run
            return meter.perWeek() > 0 ? new Span(0, meter.perWeek() / 7) : null;
        }
        return from.isBefore(exitOn) ? span(row, meter, from, exitOn, out, clock) : null;
    }

    /** The last day on which the truck was seen at work: of its last reading, never today's because it is today. */
    private LocalDate lastDay(Truck truck) {
        LocalDate read = usage.lastReading(truck.truck());
        LocalDate end = lastDayOfService(truck);
        return read == null || read.isAfter(end) ? end : read;
    }

    private LocalDate lastDayOfService(Truck truck) {
        LocalDate out = truck.outOfServiceOn();
        return out == null || out.isAfter(today) ? today : out;
    }

    private static LocalDate latest(LocalDate one, @Nullable LocalDate other) {
        return other == null || one.isAfter(other) ? one : other;
    }

    private @Nullable Span span(
            FittedInjector row, MeterUsage meter, LocalDate from, LocalDate exitOn, boolean out, Clock clock) {
        boolean distance = clock == Clock.DISTANCE;
        Double noted = distance ? row.odometerKm() : row.engineHours();
        Double notedOut = distance ? row.removedOdometerKm() : row.removedEngineHours();
        Double fitted = meter.meterAt(row.fittedOn(), noted, today);
        Double exit = out ? meter.meterAt(exitOn, notedOut, today) : meter.meterOn(exitOn);
        Double begun = from.equals(row.fittedOn()) ? fitted : meter.meterOn(from);
        if (fitted == null || exit == null || begun == null) {
            return null;
        }
        double entry = Math.max(0, begun - fitted);
        return exit - fitted > entry ? new Span(entry, exit - fitted) : null;
    }

    private static LifeEnd endOf(FittedInjector row) {
        Found found = row.found();
        return switch (found == null ? Found.UNKNOWN : found) {
            case FAILED -> LifeEnd.FAILED;
            case WORN -> LifeEnd.WORN;
            case HEALTHY -> LifeEnd.HEALTHY;
            case UNKNOWN -> LifeEnd.TAKEN_OUT;
        };
    }
}
