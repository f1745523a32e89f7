package dev.injectorplanner.app.web.truck;

import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.truck.TruckFile.Row;
import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Repair;
import dev.injectorplanner.core.fleet.TaskDone;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.units.Figures;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What is on record of a truck: injectors in and out, repairs, services, faults, tests. */
final class TruckTimeLine {
    private final DepotPlan plan;
    private final Truck truck;

    TruckTimeLine(DepotPlan plan, Truck truck) {
        this.plan = plan;
        this.truck = truck;
    }

    /** The newest first; tests as one line a day. */
    List<Row> rows() {
        List<Row> rows = new ArrayList<>(work());
        plan.fleet().faultsOf(truck.truck()).forEach(fault -> rows.add(fault(fault)));
        rows.addAll(new CylinderTests(plan, truck, plan.fleet().family(truck.family())).days());
        new MeterReplacements(
                        plan.fleet().readingsOf(truck.truck()),
                        plan.units(),
                        plan.site().timeZone())
                .list()
                .forEach(each -> rows.add(row(each.day(), "meter replaced", each.words())));
        rows.sort(Comparator.comparing(Row::day).reversed());
        return rows;
    }

    /** Injectors fitted and taken out, repairs and services. */
    List<Row> work() {
        List<Row> rows = new ArrayList<>();
        for (FittedInjector each : plan.fleet().injectorsOf(truck.truck())) {
            String serial = each.serial() == null ? "" : ", serial " + each.serial();
            rows.add(row(
                    each.fittedOn(),
                    each.fittingKnown() ? "" : "before the records began",
                    "cylinder " + each.cylinder() + ": injector fitted",
                    each.part() + ", " + word(each.origin()) + serial + at(each.odometerKm())));
            LocalDate removed = each.removedOn();
            if (removed != null) {
                Found found = each.found();
                rows.add(row(
                        removed,
                        "cylinder " + each.cylinder() + ": injector removed",
                        "found " + (found == null ? "unknown" : word(found)) + serial + at(each.removedOdometerKm())));
            }
        }
        plan.fleet().repairsOf(truck.truck()).forEach(repair -> rows.add(repair(repair)));
        plan.fleet().tasksDoneOf(truck.truck()).forEach(done -> rows.add(service(done)));
        return rows;
    }

    private Row repair(Repair repair) {
        Double hours = repair.hours();
        return row(
                repair.doneOn(),
                repair.foundNothing() ? "diagnosis: no fault found" : "repair: " + repair.what(),
                "by " + repair.by()
                        + (hours == null ? "" : ", " + Figures.tenths(hours) + " h")
                        + at(repair.odometerKm())
                        + (repair.remark().isEmpty() ? "" : "; " + repair.remark()));
    }

    private Row service(TaskDone done) {
        Double hours = done.engineHours();
        String read = at(done.odometerKm()) + (hours == null ? "" : ", at " + Figures.whole(hours) + " engine hours");
        return row(done.doneOn(), "service: " + done.task(), read.isEmpty() ? "done" : "done" + read);
    }

    /** Tests of the injectors. */
    List<Row> tests() {
        return plan.fleet().testsOf(truck.truck()).stream().map(this::test).toList();
    }

    private Row test(CylinderTest test) {
        return row(
                day(test.testedAt()),
                "cylinder " + test.cylinder() + ": " + word(test.test()) + " test",
                Figures.tenths(test.value()) + " " + test.unit()
                        + (test.engineState().isEmpty() ? "" : ", " + test.engineState()));
    }

    private Row fault(Fault fault) {
        Integer cylinder = fault.cylinder();
        return row(
                day(fault.seenAt()),
                (cylinder == null ? "truck" : "cylinder " + cylinder) + ": fault",
                fault.code().inWords() + ", " + Figures.count(fault.count(), "time", "times") + until(fault)
                        + at(fault.odometerKm()));
    }

    /** How long an episode lasted, in words; empty for one report. */
    private String until(Fault fault) {
        if (!fault.isEpisode() || fault.isUncounted()) {
            return "";
        }
        LocalDate last = day(fault.until());
        long minutes = Duration.between(fault.seenAt(), fault.until()).toMinutes();
        return last.equals(day(fault.seenAt()))
                ? " in " + Figures.count(Math.max(1, minutes), "minute", "minutes")
                : " until " + DisplayFormat.shortDate(last);
    }

    private LocalDate day(Instant at) {
        return LocalDate.ofInstant(at, plan.site().timeZone());
    }

    private static Row row(LocalDate day, String words, String what, String detail) {
        return new Row(day, words.isEmpty() ? DisplayFormat.shortDate(day) : words, what, detail);
    }

    private static Row row(LocalDate day, String what, String detail) {
        return new Row(day, DisplayFormat.shortDate(day), what, detail);
    }

    private String at(@Nullable Double km) {
        return km == null ? "" : ", at " + plan.units().distance(km);
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
