package dev.injectorplanner.app.web.truck;

import dev.injectorplanner.app.web.chart.Axis;
import dev.injectorplanner.app.web.chart.Chart;
import dev.injectorplanner.app.web.chart.Chart.Frame;
import dev.injectorplanner.app.web.chart.Ink;
import dev.injectorplanner.app.web.chart.Plot;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.due.DueRule;
import dev.injectorplanner.core.fleet.Bank;
import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.units.Figures;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Stream;

/** One time line of a truck: its odometer with what happened, and below it each cylinder's tests, all on the same days. */
final class TimeLinePictures {
    private static final int MOST_YEARS = 3;
    private static final int MOST_POINTS = 120;
    private static final int TOLD = 10;
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM uuuu", Locale.UK);
    private static final DateTimeFormatter YEAR = DateTimeFormatter.ofPattern("uuuu", Locale.UK);

    private final DepotPlan plan;
    private final Truck truck;
    private final EngineFamily family;
    private final CylinderTests tests;
    private final MeterReplacements meters;
    private final ZoneId zone;
    private final LocalDate from;

    TimeLinePictures(DepotPlan plan, Truck truck, EngineFamily family, CylinderTests tests) {
        this.plan = plan;
        this.truck = truck;
        this.family = family;
        this.tests = tests;
        this.zone = plan.site().timeZone();
        this.meters = new MeterReplacements(plan.fleet().readingsOf(truck.truck()), plan.units(), zone);
        this.from = from();
    }

    /** A cylinder's small picture. */
    public record Small(int number, String bank, String state, String mark, Chart chart) {}

    /**
     * The pictures.
     *
     * @param since the first day on them, in words
     * @param odometer with what happened; null figures where there are fewer than two readings
     * @param replaced replaced meters in words
     * @param cylinders one picture each
     * @param limits limits of the tests in words
     */
    public record View(
            String since,
            boolean any,
            Chart.Both odometer,
            List<String> replaced,
            List<Small> cylinders,
            String limits) {}

    View view() {
        List<Small> small = new ArrayList<>();
        for (Bank bank : family.banks()) {
            for (int cylinder : bank.cylinders()) {
                String state = tests.state(cylinder);
                String mark = state.equals("over limit") ? "replace" : state.equals("near limit") ? "care" : "plan";
                small.add(new Small(
                        cylinder, family.banks().size() == 1 ? "" : bank.name(), state, mark, cylinder(cylinder)));
            }
        }
        small.sort(Comparator.comparingInt(Small::number));
        List<MeterReplacements.Point> points = shown();
        return new View(
                DisplayFormat.date(from),
                points.size() >= 2,
                new Chart.Both(
                        odometer(points, Frame.TIME_WIDE, 9), odometer(points, Frame.TIME_NARROW, 4), figures(points)),
                meters.list().stream().map(each -> each.words() + ".").toList(),
                small,
                limits());
    }

    private LocalDate from() {
        LocalDate least = plan.today().minusYears(MOST_YEARS);
        LocalDate first = Stream.of(
                        plan.fleet().readingsOf(truck.truck()).stream().map(each -> day(each.takenAt())),
                        tests.all().stream().map(each -> day(each.testedAt())))
                .flatMap(days -> days)
                .min(Comparator.naturalOrder())
                .orElse(plan.today().minusMonths(1));
        return first.isBefore(least) ? least : first;
    }

    private LocalDate day(Instant at) {
        return LocalDate.ofInstant(at, zone);
    }

    private boolean isShown(LocalDate day) {
        return !day.isBefore(from) && !day.isAfter(plan.today());
    }

    private double place(Instant at) {
        return at.getEpochSecond() / 86_400.0;
    }

    private Axis days(int most, DateTimeFormatter words) {
        return Axis.days(from, plan.today(), most, words::format);
    }

    /** Readings on the line, thinned evenly. */
    private List<MeterReplacements.Point> shown() {
        List<MeterReplacements.Point> all = meters.countedOn().stream()
                .filter(each -> each.day() >= from.toEpochDay()
                        && each.day() < plan.today().toEpochDay() + 1)
                .toList();
        int step = Math.max(1, (int) Math.ceil(all.size() / (double) MOST_POINTS));
        List<MeterReplacements.Point> points = new ArrayList<>();
        for (int at = 0; at < all.size(); at++) {
            if (at % step == 0 || at == all.size() - 1) {
                points.add(all.get(at));
            }
        }
        return points;
    }

    private double shown(double km) {
        return plan.units().ofKm(km);
    }

    private Chart odometer(List<MeterReplacements.Point> points, Frame frame, int most) {
        double least =
                points.stream().mapToDouble(each -> shown(each.km())).min().orElse(0);
        double highest =
                points.stream().mapToDouble(each -> shown(each.km())).max().orElse(1);
        Plot plot = new Plot(
                frame, days(most, MONTH), Axis.even(least, Math.max(least + 1, highest), 4, true, Figures::whole));
        for (MeterReplacements.Replaced each : meters.list()) {
            if (isShown(each.day())) {
                plot.upright(Ink.EVENT, each.day().toEpochDay(), least, highest);
                plot.label(each.day().toEpochDay(), least, true, "meter replaced");
            }
        }
        plot.line(
                Ink.LINE,
                points.stream()
                        .map(each -> new Plot.Spot(each.day(), shown(each.km())))
                        .toList());
        int step = Math.max(1, points.size() / TOLD);
        for (int at = 0; at < points.size(); at += step) {
            MeterReplacements.Point each = points.get(at);
            String km = Figures.whole(shown(each.km()));
            plot.tell(
                    each.day(),
                    (double) Math.max(1, plan.today().toEpochDay() - from.toEpochDay()) / TOLD,
                    DisplayFormat.shortDate(LocalDate.ofEpochDay((long) each.day())) + ": " + km + " "
                            + plan.units().distanceUnit(),
                    List.of(new Plot.Value(shown(each.km()), km)));
        }
        events(plot);
        return plot.legend(Ink.LINE, "odometer, " + plan.units().distanceUnit() + ", counted on over replaced meters")
                .chart("Odometer and what happened", words(points));
    }

    private void events(Plot plot) {
        plot.row(0, "Fitted").row(1, "Faults").row(2, "Tests");
        for (FittedInjector each : plan.fleet().injectorsOf(truck.truck())) {
            if (each.fittingKnown() && isShown(each.fittedOn())) {
                plot.event(Ink.DOT, 0, each.fittedOn().toEpochDay());
            }
        }
        for (Fault each : plan.fleet().faultsOf(truck.truck())) {
            if (isShown(day(each.seenAt()))) {
                plot.event(Ink.FAULT, 1, place(each.seenAt()));
            }
        }
        tests.all().stream()
                .map(each -> day(each.testedAt()))
                .filter(this::isShown)
                .distinct()
                .forEach(day -> plot.event(Ink.INTERVAL, 2, day.toEpochDay()));
    }

    private String words(List<MeterReplacements.Point> points) {
        if (points.size() < 2) {
            return "Fewer than two odometer readings";
        }
        return Figures.count(points.size(), "reading", "readings") + ", from "
                + plan.units().distance(points.get(0).km()) + " to "
                + plan.units().distance(points.get(points.size() - 1).km());
    }

    private Chart.Figures figures(List<MeterReplacements.Point> points) {
        TreeMap<LocalDate, String> months = new TreeMap<>();
        for (MeterReplacements.Point each : points) { // the last of each month
            LocalDate day = LocalDate.ofEpochDay((long) each.day());
            months.put(day.withDayOfMonth(1), DisplayFormat.shortDate(day) + "\n" + Figures.whole(shown(each.km())));
        }
        return new Chart.Figures(
                List.of("Last reading of the month", plan.units().distanceUnit()),
                months.values().stream().map(each -> List.of(each.split("\n"))).toList());
    }

    private Chart cylinder(int cylinder) {
        Chart balance = tests(cylinder, TestKind.BALANCE, Frame.SMALL_ABOVE, true);
        return tests(cylinder, TestKind.RETURN_FLOW, Frame.SMALL_BELOW, false).with(balance);
    }

    private Chart tests(int cylinder, TestKind kind, Frame frame, boolean above) {
        List<CylinderTest> of = tests.of(cylinder, kind).stream()
                .filter(each -> isShown(day(each.testedAt())))
                .toList();
        double limit = tests.limit(kind).map(DueRule::limit).orElse(1.0);
        double most = Math.max(
                limit,
                of.stream().mapToDouble(each -> Math.abs(each.value())).max().orElse(0));
        Axis values = Axis.even(above ? -most : 0, most, above ? 4 : 2, false, Figures::tenths);
        Axis time = above ? days(0, YEAR) : days(4, months());
        Plot plot = new Plot(frame, time, values);
        if (tests.limit(kind).isPresent()) {
            plot.limit(Ink.LIMIT, limit, "");
            if (above) {
                plot.limit(Ink.LIMIT, -limit, "");
            }
        }
        fittings(plot, cylinder, values);
        runs(plot, cylinder, of);
        for (CylinderTest each : of) {
            plot.dot(place(each.testedAt()), each.value(), tests.ratio(each) > 1 ? 5 : 2.6);
            String value = signed(each.value(), above);
            plot.tell(
                    place(each.testedAt()),
                    14,
                    DisplayFormat.shortDate(day(each.testedAt())) + ": " + value + " " + each.unit(),
                    List.of(new Plot.Value(each.value(), value)));
        }
        if (!of.isEmpty()) {
            CylinderTest last = of.get(of.size() - 1);
            plot.label(place(last.testedAt()), last.value(), true, signed(last.value(), above));
        }
        if (!above) {
            faults(plot, cylinder);
        }
        return plot.chart("Cylinder " + cylinder + ", balance and return flow", about(cylinder));
    }

    private DateTimeFormatter months() {
        return from.isBefore(plan.today().minusYears(2)) ? YEAR : DateTimeFormatter.ofPattern("MMM uu", Locale.UK);
    }

    private static String signed(double value, boolean above) {
        String figure = Figures.tenths(value).replace('-', '\u2212');
        return above && value > 0 ? "+" + figure : figure;
    }

    private void fittings(Plot plot, int cylinder, Axis values) {
        plan.fleet().injectorsOf(truck.truck()).stream()
                .filter(each -> each.cylinder() == cylinder && each.fittingKnown() && isShown(each.fittedOn()))
                .forEach(each -> plot.upright(Ink.EVENT, each.fittedOn().toEpochDay(), values.from(), values.to()));
    }

    private void faults(Plot plot, int cylinder) {
        plan.fleet().faultsOf(truck.truck()).stream()
                .filter(each -> each.cylinder() != null && each.cylinder() == cylinder && isShown(day(each.seenAt())))
                .forEach(each -> plot.fault(place(each.seenAt())));
    }

    /** One line for each injector that was in: tests of the one before it are another's. */
    private void runs(Plot plot, int cylinder, List<CylinderTest> of) {
        List<LocalDate> fitted = plan.fleet().injectorsOf(truck.truck()).stream()
                .filter(each -> each.cylinder() == cylinder)
                .map(FittedInjector::fittedOn)
                .sorted()
                .toList();
        TreeMap<Long, List<Plot.Spot>> runs = new TreeMap<>();
        for (CylinderTest each : of) {
            LocalDate day = day(each.testedAt());
            long run = fitted.stream().filter(on -> !on.isAfter(day)).count();
            runs.computeIfAbsent(run, none -> new ArrayList<>())
                    .add(new Plot.Spot(place(each.testedAt()), each.value()));
        }
        runs.values().forEach(spots -> plot.line(Ink.LINE, spots));
    }

    private String about(int cylinder) {
        List<String> words = new ArrayList<>();
        for (TestKind kind : List.of(TestKind.BALANCE, TestKind.RETURN_FLOW)) {
            List<CylinderTest> of = tests.of(cylinder, kind);
            String name = kind == TestKind.BALANCE ? "balance" : "return flow";
            words.add(
                    of.isEmpty()
                            ? name + " not tested"
                            : name + " from " + Figures.tenths(of.get(0).value()) + " to "
                                    + Figures.tenths(of.get(of.size() - 1).value()) + " "
                                    + of.get(of.size() - 1).unit());
        }
        return String.join("; ", words) + ". " + tests.state(cylinder) + ". All figures are in the table of tests";
    }

    private String limits() {
        return Stream.of(TestKind.BALANCE, TestKind.RETURN_FLOW)
                .flatMap(kind -> tests.limit(kind).stream()
                        .map(rule -> (kind == TestKind.BALANCE
                                        ? "balance " + Figures.tenths(rule.limit()) + " mm³ a stroke either way"
                                        : "return flow " + Figures.tenths(rule.limit()) + " ml a minute")
                                + " (" + rule.source() + ")"))
                .reduce((one, other) -> one + ", " + other)
                .map(words -> "Limits: " + words + ".")
                .orElse("");
    }
}
